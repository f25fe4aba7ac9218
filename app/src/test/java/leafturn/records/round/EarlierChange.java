package leafturn.records.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookTitle;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.sheet.Changed;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.RuleSheet;
import leafturn.records.sheet.VisitSheet;
import leafturn.records.sheet.WeatherStation;

/** Changes of something earlier that the call of a lawn rests on. */
record EarlierChange(String what, Consumer<BookWriting> writing) {
  private static final String LAWN = "linden-house-back";
  private static final LocalDate ON = LocalDate.of(2015, 5, 28);

  static Stream<EarlierChange> all() {
    return Stream.of(
        new EarlierChange("a log entry corrected", EarlierChange::correctEntry),
        new EarlierChange(
            "a log entry withdrawn",
            writing -> writing.withdraw(Kind.LOG, lastMowing(writing).id(), 1)),
        new EarlierChange("a log entry added", EarlierChange::addEntry),
        new EarlierChange("the heights of a visit", EarlierChange::addVisit),
        new EarlierChange("a day of weather measured anew", EarlierChange::changeWeather),
        new EarlierChange("the programme", EarlierChange::changeProgramme),
        new EarlierChange("the lawn", EarlierChange::changeLawn),
        new EarlierChange("the property", EarlierChange::changeProperty),
        new EarlierChange("the station", EarlierChange::changeStation),
        new EarlierChange("a rule", EarlierChange::setRule),
        new EarlierChange("the day of the book", EarlierChange::changeDay));
  }

  private static void addVisit(BookWriting writing) {
    VisitSheet visit =
        new VisitSheet(
            lawn(writing, LAWN).id(),
            ON.minusDays(1),
            List.of(101.0, 99.0),
            null,
            null,
            List.of(),
            List.of(),
            null);
    writing.add(Kind.VISIT, UUID.randomUUID().toString(), visit);
  }

  static Sheet<LawnSheet> lawn(BookReading reading, String address) {
    return reading.at(Kind.LAWN, address).orElseThrow();
  }

  static Sheet<LogSheet> lastMowing(BookReading reading) {
    List<Sheet<LogSheet>> log = reading.ofLawn(Kind.LOG, lawn(reading, LAWN).id());
    return log.stream()
        .filter(sheet -> sheet.content().done() instanceof Done.Mown)
        .reduce((earlier, later) -> later)
        .orElseThrow();
  }

  private static void correctEntry(BookWriting writing) {
    Sheet<LogSheet> sheet = lastMowing(writing);
    Done.Mown collected = new Done.Mown(null, 80.0, 0, null, null, null, null, false);
    LogSheet entry = sheet.content();
    LogSheet corrected =
        new LogSheet(entry.lawn(), entry.day(), null, collected, entry.note(), List.of());
    writing.revise(Kind.LOG, sheet.id(), sheet.version(), corrected);
  }

  private static void addEntry(BookWriting writing) {
    LogSheet fed =
        new LogSheet(
            lawn(writing, LAWN).id(),
            ON.minusDays(9),
            null,
            new Done.Fed(5.0, null, null, null, null, null, null, null),
            null,
            List.of());
    writing.add(Kind.LOG, id(1), fed);
  }

  private static void changeWeather(BookWriting writing) {
    Map<Quantity, Double> wet =
        Map.of(Quantity.MINIMUM_C, 9.0, Quantity.MAXIMUM_C, 15.0, Quantity.RAIN_MM, 44.0);
    String station = writing.all(Kind.STATION).get(0).id();
    StationDays.put(writing, station, List.of(new StationDay(ON.minusDays(20), wet)));
  }

  private static void changeProgramme(BookWriting writing) {
    Sheet<ProgrammeSheet> sheet = writing.ofLawn(Kind.PROGRAMME, lawn(writing, LAWN).id()).get(0);
    ProgrammeSheet old = sheet.content();
    ProgrammeSheet unfed =
        new ProgrammeSheet(
            old.lawn(),
            "Unfed",
            old.from(),
            old.mowing(),
            List.of(),
            old.irrigation(),
            null,
            List.of(),
            List.of(),
            null);
    writing.revise(Kind.PROGRAMME, sheet.id(), 1, unfed);
  }

  private static void changeLawn(BookWriting writing) {
    Changed.revised(writing, lawn(writing, LAWN), "/shadeFraction = 0.5");
  }

  private static void changeProperty(BookWriting writing) {
    Sheet<Property> sheet = writing.at(Kind.PROPERTY, "linden-house").orElseThrow();
    Property old = sheet.content();
    Property further =
        new Property(
            old.name(),
            old.address(),
            48,
            old.longitudeDeg(),
            old.elevationM(),
            old.timeZone(),
            old.station(),
            null);
    writing.revise(Kind.PROPERTY, sheet.id(), sheet.version(), further);
  }

  private static void changeStation(BookWriting writing) {
    Sheet<WeatherStation> sheet = writing.all(Kind.STATION).get(0);
    WeatherStation higher = new WeatherStation("Roof", "on a roof", 10, null, null, null, true);
    writing.revise(Kind.STATION, sheet.id(), 1, higher);
  }

  private static void setRule(BookWriting writing) {
    writing.add(Kind.RULE, id(2), new RuleSheet("one-third", 0.2, "dry ground"));
  }

  private static void changeDay(BookWriting writing) {
    BookTitle.put(writing, new BookTitle("Wren Ashdown", "", ON.plusDays(3)));
  }

  private static String id(int number) {
    return new UUID(0x4000, 0x8000000000000000L + number).toString();
  }

  @Override
  public String toString() {
    return what;
  }
}
