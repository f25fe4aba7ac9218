package leafturn.web.sheet;

import leafturn.quantity.Measure;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.WeatherStation;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;

/** A weather station as it is entered. */
final class StationForm extends SheetForm<WeatherStation> {
  StationForm() {
    super(Kind.STATION, "weather station");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    return StationFields.shape(setting.units());
  }

  @Override
  public Form begun(Setting setting) {
    return super.begun(setting).with("windHeightM", Measure.DISTANCE.begun(2, setting.units()));
  }

  @Override
  public String title(WeatherStation content, Setting setting) {
    return content.name();
  }
}
