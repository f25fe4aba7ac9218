package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** What makes two readings the same one: plot, date, outcome, rater, sample and duplicate. */
public final class ReadingKeys {
  private ReadingKeys() {}

  /** The key of a reading. */
  public static List<Object> of(Reading reading) {
    return List.of(
        reading.plot(),
        reading.date(),
        reading.outcome(),
        Objects.requireNonNullElse(reading.rater(), ""),
        Objects.requireNonNullElse(reading.sample(), ""),
        Objects.requireNonNullElse(reading.duplicate(), 1));
  }

  /** The code on a bag as it is compared: in capitals, without blanks. */
  public static String code(String sample) {
    return sample.strip().toUpperCase(Locale.ROOT);
  }

  /** A reading that stands twice, in a sentence each. */
  public static List<Remark> remarks(List<Reading> readings) {
    Map<List<Object>, Reading> seen = new LinkedHashMap<>();
    List<Remark> remarks = new ArrayList<>();
    for (Reading reading : readings) {
      Reading first = seen.putIfAbsent(of(reading), reading);
      if (first != null) {
        remarks.add(
            Remark.refused(
                "%s of plot %s on %s stands twice (%s and %s); withdraw one, or number it as a"
                    + " duplicate.",
                reading.outcome(), reading.plot(), reading.date(), first.value(), reading.value()));
      }
    }
    return remarks;
  }
}
