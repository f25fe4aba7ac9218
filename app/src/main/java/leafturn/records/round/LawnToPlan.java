package leafturn.records.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import leafturn.advice.call.CallRules;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.SiteClimate;
import leafturn.records.Dates;
import leafturn.records.InputException;
import leafturn.records.LawnFile;
import leafturn.records.LawnReading;
import leafturn.records.ProgrammeFields;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.ProgrammeInForce;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnDocument;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * A lawn of a book, as a season plan needs it.
 *
 * @param lawn with the programme that holds on the day
 * @param climate the record of its station
 * @param rules of the book
 * @param notes what was assumed or filled in
 * @param sheet of the programme that holds on the day, or null
 */
public record LawnToPlan(
    Lawn lawn,
    SiteClimate climate,
    CallRules rules,
    List<String> notes,
    @Nullable ProgrammeSheet sheet) {
  /** So long a plan may wait until it holds, years; common practice, no source. */
  private static final int YEARS_AHEAD = 2;

  private static final String NAME = "From the season plan";

  /** Before any record: no day stands in. */
  private static final LocalDate MEASURED_ONLY = LocalDate.of(1, 1, 1);

  public LawnToPlan {
    notes = List.copyOf(notes);
  }

  /**
   * Reads it.
   *
   * @throws InputException when the lawn or its weather cannot be used, or there is no weather
   */
  public static LawnToPlan of(BookReading reading, PlacedLawn placed, LocalDate on) {
    Sheet<WeatherStation> station = placed.station();
    if (station == null) {
      throw new InputException(StationWeather.NONE);
    }
    ProgrammeSheet programme = programme(reading, placed.lawn().id(), on);
    StationWeather weather = StationWeather.upTo(reading, station, MEASURED_ONLY);
    SoilStart soil = SoilStart.of(reading, placed.lawn(), weather.firstDay(), on);
    LawnReading described =
        LawnFile.read(
            LawnDocument.compose(
                placed.property().content(),
                station.content(),
                placed.lawn().content(),
                programme,
                soil.soil()));
    List<String> notes = new ArrayList<>(described.notes());
    notes.addAll(soil.notes());
    notes.addAll(weather.notes());
    Lawn lawn = described.lawn();
    CallRules rules = CallRules.standard().with(LawnCalls.thresholds(reading));
    return new LawnToPlan(lawn, weather.at(lawn.site()), rules, notes, programme);
  }

  /** What must be given before a plan can be made, in sentences; empty where nothing is missing. */
  public static String missing(BookReading reading, PlacedLawn placed, LocalDate on) {
    try {
      of(reading, placed, on);
      return "";
    } catch (InputException missing) {
      return String.join(" ", missing.faults());
    }
  }

  /**
   * How the lawn has come to be kept otherwise since this was read: by another programme now, or by
   * one that is to hold later; empty where it has not.
   *
   * @param on today
   */
  public String since(BookReading reading, PlacedLawn placed, LocalDate on) {
    List<ProgrammeSheet> all =
        reading.ofLawn(Kind.PROGRAMME, placed.lawn().id()).stream().map(Sheet::content).toList();
    ProgrammeSheet now = programme(reading, placed.lawn().id(), on);
    if (!Objects.equals(now, sheet)) {
      return "This plan was made for the lawn as it was kept before; since then it is kept by another programme%s. What is said against now is said against the one before: make the plan again."
          .formatted(now == null ? "" : named(now));
    }
    return all.stream()
        .filter(later -> later.from().isAfter(on))
        .min(Comparator.comparing(ProgrammeSheet::from))
        .map(
            later ->
                "From %s on the lawn will be kept by another programme; now, as this plan says it, is the one until then."
                    .formatted(Dates.words(later.from())))
        .orElse("");
  }

  private static String named(ProgrammeSheet sheet) {
    String since = " (from %s on)".formatted(Dates.words(sheet.from()));
    return sheet.name() == null ? since : ", “%s”%s".formatted(sheet.name(), since);
  }

  private static @Nullable ProgrammeSheet programme(
      BookReading reading, String lawn, LocalDate on) {
    return ProgrammeInForce.on(on, reading.ofLawn(Kind.PROGRAMME, lawn));
  }

  /**
   * What is wrong with the day from which a programme is to hold; empty where nothing is. Before
   * the programme of now began it would change no day, for that one takes its place again.
   *
   * @param on today
   */
  public static String fault(BookReading reading, PlacedLawn placed, LocalDate from, LocalDate on) {
    ProgrammeSheet present = programme(reading, placed.lawn().id(), on);
    LocalDate begun = present == null ? on : present.from();
    if (from.isBefore(begun)) {
      return present == null
          ? "%s is past; give today, %s, or a later day."
              .formatted(Dates.words(from), Dates.words(on))
          : "%s is before the programme of now began to hold; give %s or a later day."
              .formatted(Dates.words(from), Dates.words(begun));
    }
    LocalDate last = on.plusYears(YEARS_AHEAD);
    return from.isAfter(last)
        ? "%s is too far ahead for a plan of one year; give %s at the latest."
            .formatted(Dates.words(from), Dates.words(last))
        : ProgrammeInForce.taken(from, reading.ofLawn(Kind.PROGRAMME, placed.lawn().id()));
  }

  /**
   * Writes a programme as the one that holds for a lawn from a day on; who mows and on which days
   * stays as it was. One that somebody named keeps its name.
   *
   * @param lawn its id
   * @return the new sheet
   */
  public static Sheet<ProgrammeSheet> adopt(
      BookWriting writing, String lawn, LocalDate from, PlannedProgramme planned) {
    ProgrammeSheet before = programme(writing, lawn, from);
    ProgrammeFields fields = ProgrammeFields.told(planned.programme());
    ProgrammeSheet adopted =
        new ProgrammeSheet(
            lawn,
            planned.origin() == Origin.GIVEN ? planned.name() : NAME,
            from,
            fields.mowing(),
            fields.feeding(),
            fields.irrigation(),
            before == null ? null : before.mownBy(),
            before == null ? List.of() : before.mowingDays(),
            before == null ? List.of() : before.deckHeightsMm(),
            before == null ? null : before.note());
    return writing.add(Kind.PROGRAMME, UUID.randomUUID().toString(), adopted);
  }
}
