package leafturn.records.round;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leafturn.advice.call.Circumstances;
import leafturn.advice.call.Circumstances.HeapHeat;
import leafturn.advice.call.Circumstances.Wishes;
import leafturn.advice.call.Place;
import leafturn.advice.call.Visits;
import leafturn.advice.call.WateringLimits;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Aim;
import leafturn.records.sheet.AnnualBluegrass;
import leafturn.records.sheet.DeckType;
import leafturn.records.sheet.HeapSheet;
import leafturn.records.sheet.IntakeSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.WateringRules;
import org.jspecify.annotations.Nullable;

/** What a book knows of a lawn beside what its model takes, as a call asks for it. */
final class KnownOfLawn {
  /** A closed or insulated heap kills most seeds at this heat, °C, measured on so many days. */
  private static final double SEED_KILLING_C = 55;

  private static final int HOT_DAYS = 3;

  /** What a heap reached longer ago says nothing of the one that stands there now. */
  private static final int HEAT_HOLDS_DAYS = 60;

  private final LawnSheet lawn;
  private final @Nullable ProgrammeSheet programme;
  private final Optional<IntakeSheet> intake;
  private final List<HeapSheet> heaps;
  private final LoggedSights logged;
  private final LocalDate on;

  private KnownOfLawn(
      BookReading reading,
      PlacedLawn placed,
      @Nullable ProgrammeSheet programme,
      LoggedSights logged,
      LocalDate on) {
    String property = placed.property().id();
    this.lawn = placed.lawn().content();
    this.programme = programme;
    this.intake = latestIntake(reading.ofProperty(Kind.INTAKE, property), on);
    this.heaps = reading.ofProperty(Kind.HEAP, property).stream().map(Sheet::content).toList();
    this.logged = logged;
    this.on = on;
  }

  /**
   * What is known on a day.
   *
   * @param programme in force then, or null
   * @param log the lawn's log, by day and then as it was entered
   */
  static Circumstances of(
      BookReading reading,
      PlacedLawn placed,
      @Nullable ProgrammeSheet programme,
      List<LogSheet> log,
      LocalDate on) {
    LoggedSights logged = new LoggedSights(log, on);
    return new KnownOfLawn(reading, placed, programme, logged, on).circumstances();
  }

  private Circumstances circumstances() {
    return new Circumstances(
        logged.sightings(),
        logged.treatments(),
        logged.dryFeed(),
        logged.fallenLeaves(),
        place(),
        visits(),
        wateringLimits(),
        new Wishes(noClippings(), heapHeat()));
  }

  /** The latest talk up to the day; the first one where none was held yet. */
  private static Optional<IntakeSheet> latestIntake(List<Sheet<IntakeSheet>> byDay, LocalDate on) {
    IntakeSheet found = null;
    for (Sheet<IntakeSheet> sheet : byDay) {
      if (found == null || !sheet.content().day().isAfter(on)) {
        found = sheet.content();
      }
    }
    return Optional.ofNullable(found);
  }

  private Place place() {
    Double slope = lawn.slopePercent();
    Place place = new Place(slope == null ? Double.NaN : slope, deck(), annualBluegrass(), false);
    return logged.sown().map(place::sownOn).orElse(place);
  }

  private Place.Deck deck() {
    DeckType ofLawn = lawn.mower() == null ? null : lawn.mower().deckType();
    DeckType deck =
        ofLawn == null ? intake.map(told -> told.mowing().deckType()).orElse(null) : ofLawn;
    if (deck == null) {
      return Place.Deck.NOT_KNOWN;
    }
    return switch (deck) {
      case MULCHING -> Place.Deck.MULCHING;
      case SIDE_DISCHARGE -> Place.Deck.SIDE_DISCHARGE;
      case REAR_DISCHARGE -> Place.Deck.REAR_DISCHARGE;
      case REAR_BAG -> Place.Deck.REAR_BAG;
      case REEL -> Place.Deck.REEL;
      case ROBOT -> Place.Deck.ROBOT;
    };
  }

  private Place.AnnualBluegrass annualBluegrass() {
    AnnualBluegrass there = lawn.annualBluegrass();
    if (there == null) {
      return Place.AnnualBluegrass.NOT_KNOWN;
    }
    return switch (there) {
      case NONE -> Place.AnnualBluegrass.NONE;
      case THERE -> Place.AnnualBluegrass.THERE;
      case UNWANTED -> Place.AnnualBluegrass.UNWANTED;
    };
  }

  /** The days of the programme, else those of the intake. */
  private Visits visits() {
    List<DayOfWeek> ofLawn = programme == null ? List.of() : programme.mowingDays();
    List<DayOfWeek> days =
        ofLawn.isEmpty()
            ? intake.map(told -> told.mowing().mowingDays()).orElse(List.of())
            : ofLawn;
    return new Visits(Set.copyOf(days), Set.of());
  }

  private WateringLimits wateringLimits() {
    WateringRules rules = intake.map(IntakeSheet::wateringLimits).orElse(null);
    return rules == null
        ? WateringLimits.NONE
        : new WateringLimits(rules.banned(), Set.copyOf(rules.days()), rules.from(), rules.to());
  }

  private boolean noClippings() {
    return intake.map(told -> told.aims().contains(Aim.NO_CLIPPINGS_INDOORS)).orElse(false);
  }

  private HeapHeat heapHeat() {
    if (heaps.stream().anyMatch(this::killsSeeds)) {
      return HeapHeat.LOGGED;
    }
    boolean maybeHot = heaps.stream().anyMatch(heap -> heap.heapKind() == HeapSheet.HeapKind.HOT);
    return heaps.isEmpty() || maybeHot ? HeapHeat.NOT_KNOWN : HeapHeat.COLD;
  }

  private boolean killsSeeds(HeapSheet heap) {
    return heap.heat().stream()
            .filter(read -> read.temperatureC() >= SEED_KILLING_C)
            .map(HeapSheet.Heat::day)
            .filter(day -> !day.isAfter(on) && !day.isBefore(on.minusDays(HEAT_HOLDS_DAYS)))
            .distinct()
            .count()
        >= HOT_DAYS;
  }
}
