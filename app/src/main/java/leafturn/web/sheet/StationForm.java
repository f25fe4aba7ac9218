package leafturn.web.sheet;

import leafturn.quantity.Measure;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.WeatherStation;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;

/** A weather station as it is entered. */
final class StationForm extends SheetForm<WeatherStation> {
  StationForm() {
    super(Kind.STATION, "weather station");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    return FormShape.of(
        Field.text("name", "Name").needed(),
        Field.text("origin", "Where its record comes from")
            .hint("Pages name it wherever its weather is shown.")
            .needed(),
        Field.number("windHeightM", "Height of the wind measurement", Measure.DISTANCE)
            .hint("Above ground. 2 m, 6.6 ft: the height the evaporation equation is made for.")
            .needed(),
        Field.number("latitudeDeg", "Latitude", "degrees, south negative"),
        Field.number("longitudeDeg", "Longitude", "degrees, west negative"),
        Field.number("elevationM", "Height above sea level", Measure.DISTANCE),
        Field.flag("standIn", "It stands in for a record of one's own")
            .hint("Pages then say that the weather is not that of the property."));
  }

  @Override
  public Form begun(Setting setting) {
    return super.begun(setting).with("windHeightM", Measure.DISTANCE.typed(2, setting.units()));
  }

  @Override
  public String title(WeatherStation content, Setting setting) {
    return content.name();
  }
}
