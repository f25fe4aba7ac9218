package leafturn.web.sheet;

import java.util.List;
import leafturn.quantity.Measure;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** A property as it is entered. */
final class PropertyForm extends SheetForm<Property> {
  PropertyForm() {
    super(Kind.PROPERTY, "property");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    return new FormShape(
        List.of(
            new Group(
                "",
                "",
                List.of(
                    Field.text("name", "Name").hint("What its people call it.").needed(),
                    Field.number("latitudeDeg", "Latitude", "°, south negative")
                        .hint("For the length of the days and the sun.")
                        .needed(),
                    Field.number("longitudeDeg", "Longitude", "°, west negative")
                        .hint("Left empty: hours are told by the sun, not by the clock."),
                    Field.number("elevationM", "Height above sea level", Measure.DISTANCE)
                        .hint("Left empty: sea level. It changes evaporation by a few per cent."),
                    Field.text("timeZone", "Time zone")
                        .hint("It says when a day begins there. An IANA name: Europe/Paris.")
                        .needed(),
                    Field.oneOf("station", "Daily weather", setting.stations())
                        .hint("Without a record no advice can be given."),
                    Field.text("address", "Short name in addresses")
                        .hint("Lower-case letters, digits and hyphens. Old links stop with it.")
                        .needed(),
                    note()))));
  }

  @Override
  public String title(Property content, Setting setting) {
    return content.name();
  }
}
