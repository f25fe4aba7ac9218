package leafturn.web.sheet;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.records.sheet.ForecastSheet;
import leafturn.records.sheet.Kind;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** A forecast as it is corrected. */
final class ForecastForm extends SheetForm<ForecastSheet> {
  ForecastForm() {
    super(Kind.FORECAST, "forecast");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    List<Group> groups = new ArrayList<>();
    groups.add(
        new Group(
            "",
            "",
            List.of(
                Field.text("origin", "Whose forecast it is").needed(),
                Field.date("issued", "Made on").needed(),
                Field.date("first", "Its first day").needed())));
    groups.addAll(Rows.of(document, "days", 1, 1, ForecastForm::day));
    return new FormShape(groups);
  }

  private static Group day(int number) {
    String at = "days[" + number + "].";
    return Group.row(
        "Day " + (number + 1),
        Field.number(at + "minimumC", "Lowest", Measure.TEMPERATURE),
        Field.number(at + "maximumC", "Highest", Measure.TEMPERATURE),
        Field.number(at + "rainMm", "Rain", Measure.WATER),
        Field.number(at + "rainChanceFraction", "Chance of rain, 0 to 1", ""),
        Field.number(at + "windMPerS", "Wind", Measure.WIND_SPEED));
  }

  @Override
  public String title(ForecastSheet content, Setting setting) {
    return "Forecast until " + DayWords.dayAndYear(content.last());
  }
}
