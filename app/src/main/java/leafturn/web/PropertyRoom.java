package leafturn.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.round.ExampleStation;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.NewProperty;
import leafturn.records.sheet.WeatherStation;
import leafturn.web.form.Form;

/** Where a property is begun. */
final class PropertyRoom implements Room {
  private static final int UNUSABLE = 422;

  private final Desk desk;

  PropertyRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/properties/new", Right.CHANGE, this::blank);
    routes.write("/properties/new", Right.CHANGE, Intake.FORM, this::begin);
  }

  private void blank(Context context) {
    Units units = Guest.visitor(context).person().units();
    show(context, NewPropertyForm.begun(stations(), zone(), units));
  }

  private void begin(Context context) {
    Visitor visitor = Guest.visitor(context);
    Units units = visitor.person().units();
    Form form = Form.sent(NewPropertyForm.shape(stations(), units), units, context.formParamMap());
    try {
      NewProperty begun =
          desk.book().write(visitor.person().name(), writing -> begin(writing, form));
      Answers.goTo(context, "/lawns/" + begun.lawn().address());
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, form.faulted(faults));
    }
  }

  private NewProperty begin(BookWriting writing, Form form) {
    String chosen = form.value(NewPropertyForm.STATION);
    String station =
        chosen.equals(NewPropertyForm.EXAMPLE) ? ExampleStation.standIn(writing) : chosen;
    SourceText document = form.document("property");
    NewProperty begun =
        NewProperty.read(
            document,
            station.isEmpty() ? null : station,
            LocalDate.now(desk.clock()),
            address -> taken(writing, address));
    writing.add(Kind.PROPERTY, begun.propertyId(), begun.property());
    writing.add(Kind.LAWN, begun.lawnId(), begun.lawn());
    writing.add(Kind.PROGRAMME, begun.programmeId(), begun.programme());
    return begun;
  }

  private static boolean taken(BookReading reading, String address) {
    return reading.at(Kind.PROPERTY, address).isPresent()
        || reading.at(Kind.LAWN, address).isPresent();
  }

  private List<Sheet<WeatherStation>> stations() {
    return desk.book().read(reading -> reading.all(Kind.STATION));
  }

  /** The time zone of the latest property, else that of this computer. */
  private ZoneId zone() {
    return desk.rounds().register().properties().stream()
        .reduce((earlier, later) -> later)
        .map(property -> ZoneId.of(property.content().timeZone()))
        .orElse(desk.clock().getZone());
  }

  private void show(Context context, Form form) {
    desk.show(context, "newproperty.jte", "A new property", Map.of("form", form));
  }
}
