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
    remarks.addAll(withoutCode(readings));
    return remarks;
  }

  /** Values without the code of a bag beside others of their plot and day that have one. */
  private static List<Remark> withoutCode(List<Reading> readings) {
    Map<List<Object>, List<Reading>> days = new LinkedHashMap<>();
    readings.forEach(
        each ->
            days.computeIfAbsent(
                    List.of(each.plot(), each.date(), each.outcome()), day -> new ArrayList<>())
                .add(each));
    List<Remark> remarks = new ArrayList<>();
    for (List<Reading> day : days.values()) {
      long bare = day.stream().filter(each -> each.sample() == null).count();
      if (bare > 0 && bare < day.size()) {
        Reading first = day.get(0);
        remarks.add(
            Remark.warning(
                "%s of plot %s on %s has values both with the code of a bag (%d) and without one (%d); look whether"
                    + " a sample was written twice, for each counts as a sample of its own.",
                first.outcome(), first.plot(), first.date(), day.size() - bare, bare));
      }
    }
    return remarks;
  }
}
