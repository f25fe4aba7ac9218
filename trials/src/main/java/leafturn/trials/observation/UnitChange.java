package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.trials.design.Outcome;

/**
 * Whether a laboratory gave an outcome in more than one unit. A laboratory keeps to one unit and
 * one form; another one on a part of its values is as often a slip of who filled in the table as it
 * is so, and a conversion then makes those values wrong.
 */
public final class UnitChange {
  private UnitChange() {}

  /**
   * What is to be said of the units of an outcome: a remark for each laboratory and method with two
   * units that differ by a factor. Other names of one unit, as ppm and mg/kg, are no change.
   *
   * @param readings of the outcome, in its unit
   */
  public static List<Remark> remarks(Outcome outcome, List<CleanReading> readings) {
    if (outcome.kind() == Outcome.Kind.RATING) {
      return List.of();
    }
    ReadingUnit planned = ReadingUnit.of(outcome.unit());
    Map<String, Map<Double, Counted>> sources = new LinkedHashMap<>();
    for (CleanReading reading : readings) {
      String unit = reading.given().unit();
      if (unit != null && !OutcomeReadings.NO_UNIT.contains(unit)) {
        double factor = ReadingUnit.of(unit).to(planned, 1, null);
        sources
            .computeIfAbsent(source(reading), name -> new LinkedHashMap<>())
            .computeIfAbsent(factor, key -> new Counted(unit))
            .count++;
      }
    }
    List<Remark> remarks = new ArrayList<>();
    sources.forEach(
        (source, units) -> {
          if (units.size() > 1) {
            remarks.add(remark(outcome, source, units));
          }
        });
    return remarks;
  }

  private static Remark remark(Outcome outcome, String source, Map<Double, Counted> units) {
    List<String> each =
        units.values().stream()
            .sorted(Comparator.comparingInt((Counted counted) -> counted.count).reversed())
            .map(counted -> "%d in %s".formatted(counted.count, counted.unit))
            .toList();
    return Remark.warning(
        "%s came in %d units from %s: %s. They were converted to %s; look whether the units are so,"
            + " since a laboratory usually keeps to one.",
        outcome.name(), units.size(), source, String.join(" and ", each), outcome.unit());
  }

  private static String source(CleanReading reading) {
    String laboratory = reading.given().laboratory();
    String method = reading.method();
    String where = laboratory == null ? "one source" : laboratory;
    return method == null ? where : "%s by %s".formatted(where, method);
  }

  private static final class Counted {
    private final String unit;
    private int count;

    Counted(String unit) {
      this.unit = unit;
    }
  }
}
