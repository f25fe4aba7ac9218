package leafturn.trials.observation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * Values of an outcome that lie outside what is allowed or usual, told in a sentence for each date
 * with a likely cause: a whole table in another unit is one mistake.
 */
final class OutlyingValues {
  /** Powers of ten between the units of laboratories, and decimal marks that went astray. */
  private static final List<Integer> POWERS = List.of(1, 2, 3, 4, -1, -2, -3, -4);

  /** As far as a level may lie from the others after division: assumed. */
  private static final double NEAR = 3;

  private static final MathContext SHOWN = new MathContext(6);

  private final Outcome outcome;
  private final List<CleanReading> readings;

  /**
   * @param readings of the outcome, in its unit
   */
  OutlyingValues(Outcome outcome, List<CleanReading> readings) {
    this.outcome = outcome;
    this.readings = readings.stream().filter(reading -> !reading.belowDetection()).toList();
  }

  /** A sentence for each date on which values lie outside. */
  List<String> sentences() {
    Map<LocalDate, List<CleanReading>> byDate = new TreeMap<>();
    List<CleanReading> inside = new ArrayList<>();
    for (CleanReading reading : readings) {
      if (UsualRange.faults(outcome, reading.value()).isEmpty()) {
        inside.add(reading);
      } else {
        byDate.computeIfAbsent(reading.date(), date -> new ArrayList<>()).add(reading);
      }
    }
    List<String> sentences = new ArrayList<>();
    byDate.forEach((date, outside) -> sentences.add(sentence(date, outside, inside)));
    return sentences;
  }

  private String sentence(LocalDate date, List<CleanReading> outside, List<CleanReading> inside) {
    CleanReading first = outside.get(0);
    String fault = UsualRange.faults(outcome, first.value()).get(0);
    String cause = cause(outside, inside);
    if (outside.size() == 1) {
      return "Plot %s on %s, %s: %s.%s".formatted(first.plot(), date, outcome.name(), fault, cause);
    }
    String values =
        outside.stream()
            .sorted(Comparator.comparingDouble(CleanReading::value))
            .map(reading -> number(reading.value()))
            .distinct()
            .collect(Collectors.collectingAndThen(Collectors.toList(), OutlyingValues::ends));
    return "%s on %s: %d of %d values are outside (%s %s). The first: plot %s, %s.%s"
        .formatted(
            outcome.name(),
            date,
            outside.size(),
            readings.stream().filter(each -> each.date().equals(date)).count(),
            values,
            outcome.unit(),
            first.plot(),
            fault,
            cause);
  }

  private static String ends(List<String> ordered) {
    return ordered.size() == 1
        ? ordered.get(0)
        : ordered.get(0) + " to " + ordered.get(ordered.size() - 1);
  }

  /** The power of ten that brings the values near the others, or into the usual range. */
  private String cause(List<CleanReading> outside, List<CleanReading> inside) {
    Integer power = null;
    double nearest = Math.log(NEAR);
    for (int each : POWERS) {
      double factor = Math.pow(10, each);
      boolean fits =
          outside.stream()
              .allMatch(one -> UsualRange.faults(outcome, one.value() / factor).isEmpty());
      double apart =
          inside.isEmpty() ? 0 : Math.abs(level(outside) - each * Math.log(10) - level(inside));
      if (fits && apart < nearest) {
        power = each;
        nearest = apart;
      }
    }
    return words(power, outside.size(), inside.isEmpty());
  }

  private static String words(@Nullable Integer power, int count, boolean alone) {
    if (power == null) {
      return "";
    }
    String times = number(Math.pow(10, Math.abs(power)));
    return " %s %s they would lie %s: look for another unit or a decimal mark gone astray."
        .formatted(
            power > 0 ? "Divided by" : "Multiplied by", times, alone ? "inside" : "with the others")
        .replace("they would", count == 1 ? "it would" : "they would");
  }

  private static double level(List<CleanReading> some) {
    return some.stream()
        .filter(reading -> reading.value() > 0)
        .mapToDouble(reading -> Math.log(reading.value()))
        .average()
        .orElse(0);
  }

  /** A number as people write it, without the noise of its conversion. */
  static String number(double value) {
    BigDecimal rounded = new BigDecimal(value, SHOWN).stripTrailingZeros();
    return rounded.precision() - rounded.scale() > 15
        ? rounded.toString()
        : rounded.toPlainString();
  }
}
