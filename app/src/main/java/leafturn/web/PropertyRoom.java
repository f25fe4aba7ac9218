package leafturn.web;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.quantity.Units;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookTitle;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.book.Today;
import leafturn.records.people.Visitor;
import leafturn.records.round.BookRules;
import leafturn.records.round.ExampleStation;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.NewProperty;
import leafturn.records.sheet.WeatherStation;
import leafturn.web.NewPropertyForm.Zone;
import leafturn.web.form.Form;
import org.jspecify.annotations.Nullable;

/** Where a property is begun. */
final class PropertyRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final String CHOOSE_AGAIN =
      "choose the file once more: it was right, but browsers do not keep it.";

  private static final String CHOOSE_RECORD =
      "choose the record of weather near this property, or none yet.";

  private final Desk desk;

  PropertyRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/properties/new", Right.CHANGE, this::blank);
    routes.write("/properties/new", Right.CHANGE, Intake.IMPORT, this::begin);
  }

  private void blank(Context context) {
    Units units = Guest.visitor(context).person().units();
    show(context, NewPropertyForm.begun(stations(), zone(), units, third()));
  }

  private void begin(Context context) {
    Visitor visitor = Guest.visitor(context);
    Units units = visitor.person().units();
    Form form =
        Form.sent(
            NewPropertyForm.shape(stations(), zone(), units, third()),
            units,
            context.formParamMap());
    List<Fault> faults = new ArrayList<>();
    String name = form.value(NewPropertyForm.NAME);
    desk.book()
        .read(reading -> NameCheck.taken(reading, name, ""))
        .ifPresent(taken -> faults.add(new Fault(NewPropertyForm.NAME, taken, taken)));
    WeatherUpload weather = weather(context, faults);
    if (!context.uploadedFiles(NewPropertyForm.FILE).stream().anyMatch(file -> file.size() > 0)
        && form.value(NewPropertyForm.STATION).isEmpty()
        && NewPropertyForm.hasOwn(stations())) {
      faults.add(new Fault(NewPropertyForm.STATION, CHOOSE_RECORD, CHOOSE_RECORD));
    }
    try {
      // What is wrong beside a faulty file is told at once with it.
      desk.book().read(reading -> read(reading, form, null));
      if (faults.isEmpty()) {
        NewProperty begun =
            desk.book().write(visitor.person().name(), writing -> begin(writing, form, weather));
        Answers.goTo(context, "/lawns/" + begun.lawn().address() + "?" + Desk.JUST_ADDED);
        return;
      }
    } catch (InputException others) {
      faults.addAll(others.faultsByField());
    }
    if (weather != null) {
      faults.add(new Fault(NewPropertyForm.FILE, CHOOSE_AGAIN, CHOOSE_AGAIN));
    }
    context.status(UNUSABLE);
    show(context, form.faulted(InputException.of(faults)));
  }

  private @Nullable WeatherUpload weather(Context context, List<Fault> faults) {
    try {
      return desk.book()
          .read(
              reading ->
                  Optional.ofNullable(
                      WeatherUpload.of(
                          reading,
                          context,
                          NewPropertyForm.FILE,
                          Today.begunAnywhere(desk.clock()))))
          .orElse(null);
    } catch (InputException unusable) {
      faults.addAll(unusable.faultsByField());
      return null;
    }
  }

  private NewProperty begin(BookWriting writing, Form form, @Nullable WeatherUpload weather) {
    @Nullable String station = station(writing, form, weather);
    NewProperty begun = read(writing, form, station);
    if (weather != null) {
      weather.write(writing, begun.property());
    }
    SheetCheck.together(writing, begun.propertyId(), begun.property());
    writing.add(Kind.PROPERTY, begun.propertyId(), begun.property());
    writing.add(Kind.LAWN, begun.lawnId(), begun.lawn());
    writing.add(Kind.PROGRAMME, begun.programmeId(), begun.programme());
    return begun;
  }

  private NewProperty read(BookReading reading, Form form, @Nullable String station) {
    return NewProperty.read(
        form.document("property"),
        station == null || station.isEmpty() ? null : station,
        Today.of(BookTitle.of(reading), desk.clock()).in(desk.clock().getZone()),
        address -> taken(reading, address));
  }

  private static @Nullable String station(
      BookWriting writing, Form form, @Nullable WeatherUpload weather) {
    if (weather != null) {
      return weather.station();
    }
    String chosen = form.value(NewPropertyForm.STATION);
    if (chosen.equals(NewPropertyForm.NONE)) {
      return null;
    }
    return chosen.equals(NewPropertyForm.EXAMPLE) ? ExampleStation.standIn(writing) : chosen;
  }

  private static boolean taken(BookReading reading, String address) {
    return reading.at(Kind.PROPERTY, address).isPresent()
        || reading.at(Kind.LAWN, address).isPresent();
  }

  private List<Sheet<WeatherStation>> stations() {
    return desk.book().read(reading -> reading.all(Kind.STATION));
  }

  private String third() {
    return desk.book().read(BookRules::of).third();
  }

  /** The time zone of the latest property, else that of this computer. */
  private Zone zone() {
    return desk.rounds().register().properties().stream()
        .reduce((earlier, later) -> later)
        .map(Sheet::content)
        .map(property -> new Zone(ZoneId.of(property.timeZone()), property.name()))
        .orElse(new Zone(desk.clock().getZone(), "this computer"));
  }

  private void show(Context context, Form form) {
    desk.show(context, "newproperty.jte", "A new property", Map.of("form", form));
  }
}
