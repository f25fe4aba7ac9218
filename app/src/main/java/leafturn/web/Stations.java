package leafturn.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.people.Visitor;
import leafturn.records.round.Forecasts;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import leafturn.web.form.Form;

/** The stations of the book as far as a visitor may see them, and the page of each. */
final class Stations {
  static final String HERE = "/weather";

  private final Desk desk;

  Stations(Desk desk) {
    this.desk = desk;
  }

  /** The pages of all stations that a visitor may see. */
  List<StationPage> all(Visitor visitor) {
    LocalDate today = desk.today();
    return desk.book()
        .read(
            reading ->
                reading.all(Kind.STATION).stream()
                    .filter(station -> maySee(reading, visitor, station.id()))
                    .map(station -> page(reading, visitor, station, today))
                    .toList());
  }

  /**
   * The station that a request names.
   *
   * @throws Refusal when there is none that its visitor may see
   */
  Sheet<WeatherStation> of(Context context, BookReading reading) {
    Visitor visitor = Guest.visitor(context);
    return reading
        .find(Kind.STATION, context.pathParam("station"))
        .filter(station -> maySee(reading, visitor, station.id()))
        .orElseThrow(Refusal::notFound);
  }

  /** Answers with the page of a station, whose form for a day begins after the record's last. */
  void show(Context context) {
    LocalDate today = desk.today();
    Form form =
        desk.book()
            .read(
                reading -> {
                  List<StationDay> days = StationDays.of(reading, of(context, reading).id());
                  LocalDate next =
                      days.isEmpty()
                          ? today.minusDays(1)
                          : days.get(days.size() - 1).day().plusDays(1);
                  return Form.blank(WeatherForms.DAY, units(context)).with("day", next.toString());
                });
    show(context, form);
  }

  /** Answers with the page of a station with what was typed into its form for a day. */
  void show(Context context, Form day) {
    LocalDate today = desk.today();
    StationPage page =
        desk.book()
            .read(reading -> page(reading, Guest.visitor(context), of(context, reading), today))
            .withDay(day);
    desk.show(context, "station.jte", page.name(), Map.of("page", page));
  }

  static Units units(Context context) {
    return Guest.visitor(context).person().units();
  }

  private static StationPage page(
      BookReading reading, Visitor visitor, Sheet<WeatherStation> station, LocalDate today) {
    Units units = visitor.person().units();
    List<String> properties =
        restingOn(reading, visitor, station.id()).stream()
            .map(property -> property.content().name())
            .toList();
    return new StationPage(
        station,
        new StationRecord(StationDays.of(reading, station.id())),
        properties,
        today,
        units,
        visitor.mayChangeAll(),
        Form.blank(WeatherForms.DAY, units),
        Forecasts.latest(reading, station.id(), today).orElse(null));
  }

  private static List<Sheet<Property>> restingOn(
      BookReading reading, Visitor visitor, String station) {
    return reading.all(Kind.PROPERTY).stream()
        .filter(property -> station.equals(property.content().station()))
        .filter(property -> visitor.mayRead(property.id()))
        .toList();
  }

  private static boolean maySee(BookReading reading, Visitor visitor, String station) {
    return visitor.mayReadAll() || !restingOn(reading, visitor, station).isEmpty();
  }
}
