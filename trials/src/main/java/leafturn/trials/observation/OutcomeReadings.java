package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import leafturn.quantity.SoilLayer;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * The readings of one outcome, each read and brought to the unit of the outcome.
 *
 * @param outcome as the plan has it
 * @param readings that could be read, in their order
 * @param faults what is wrong with the others, each naming plot and date
 * @param doubts what should be looked at once more
 */
public record OutcomeReadings(
    Outcome outcome, List<CleanReading> readings, List<String> faults, List<String> doubts) {
  private static final Pattern BELOW_NOTHING = Pattern.compile("<?\\s*-.*[1-9].*");

  /** What stands for no unit. */
  static final List<String> NO_UNIT = List.of("", "none", "-");

  public OutcomeReadings {
    readings = List.copyOf(readings);
    faults = List.copyOf(faults);
    doubts = List.copyOf(doubts);
  }

  /**
   * Reads the readings of an outcome among others.
   *
   * @param layer the soil the cores were taken from, or null where nobody told
   */
  public static OutcomeReadings of(Outcome outcome, List<Reading> all, @Nullable SoilLayer layer) {
    List<CleanReading> clean = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (Reading reading : all) {
      if (!reading.outcome().equals(outcome.name())) {
        continue;
      }
      try {
        CleanReading read = clean(outcome, reading, layer);
        clean.add(read);
      } catch (IllegalArgumentException e) {
        faults.add(place(reading) + e.getMessage() + ".");
      }
    }
    List<String> doubts = new ArrayList<>(new OutlyingValues(outcome, clean).sentences());
    for (CleanReading each : clean) {
      String below = ReadingValue.unwrittenLimit(each.given());
      if (below != null) {
        doubts.add(place(each.given()) + below + ".");
      }
    }
    return new OutcomeReadings(outcome, clean, faults, doubts);
  }

  /**
   * One reading in the unit of its outcome.
   *
   * @throws IllegalArgumentException naming what is wrong
   */
  public static CleanReading clean(Outcome outcome, Reading reading, @Nullable SoilLayer layer) {
    ReadingValue value = ReadingValue.of(reading.value(), reading.detectionLimit());
    String given = reading.unit() == null ? "" : reading.unit();
    if (outcome.kind() == Outcome.Kind.RATING) {
      checkRating(given, outcome);
      if (value.belowDetection()) {
        throw new IllegalArgumentException(
            "%s is no class of %s, a rating from a scale: it has no detection limit; give the class that was seen, or leave it out"
                .formatted(reading.value().strip(), outcome.name()));
      }
      return new CleanReading(reading, value.value(), value.belowDetection());
    }
    boolean amount = outcome.kind() == Outcome.Kind.SOIL || outcome.kind() == Outcome.Kind.TISSUE;
    if (amount && BELOW_NOTHING.matcher(reading.value().strip()).matches()) {
      throw new IllegalArgumentException(
          "%s lies below 0, and nothing in soil or tissue does; check it, or leave it out"
              .formatted(reading.value()));
    }
    if (NO_UNIT.contains(given) && !NO_UNIT.contains(outcome.unit())) {
      throw new UnitFault(
          "the unit of %s is missing; the plan has %s".formatted(outcome.name(), outcome.unit()));
    }
    try {
      ReadingUnit from = ReadingUnit.of(NO_UNIT.contains(given) ? outcome.unit() : given);
      double converted = from.to(ReadingUnit.of(outcome.unit()), value.value(), layer);
      return new CleanReading(reading, converted, value.belowDetection());
    } catch (IllegalArgumentException unit) {
      throw new UnitFault(unit.getMessage());
    }
  }

  /** What is wrong with the unit of a reading whose value can be read. */
  public static final class UnitFault extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    UnitFault(@Nullable String sentence) {
      super(sentence);
    }
  }

  /** A class of a scale has no parts of a hundred: 6 is not "20 % better" than 5. */
  private static void checkRating(String unit, Outcome outcome) {
    if (unit.contains("%")) {
      throw new UnitFault(
          "%s is a rating from a scale; it has no per cent, because the steps of a scale are no"
                  .formatted(outcome.name())
              + " amounts");
    }
    if (!NO_UNIT.contains(unit) && !unit.equalsIgnoreCase(outcome.unit())) {
      throw new UnitFault(
          "%s is rated on %s, not in %s".formatted(outcome.name(), outcome.unit(), unit));
    }
  }

  private static String place(Reading reading) {
    return "Plot %s on %s, %s: ".formatted(reading.plot(), reading.date(), reading.outcome());
  }

  /** Share of the readings that lie below their detection limit, 0 to 1. */
  public double belowDetectionFraction() {
    return readings.isEmpty()
        ? 0
        : (double) readings.stream().filter(CleanReading::belowDetection).count() / readings.size();
  }
}
