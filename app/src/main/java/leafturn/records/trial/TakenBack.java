package leafturn.records.trial;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import leafturn.records.sheet.TrialPast.Withdrawn;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.ReadingKeys;

/**
 * Readings that were taken back when results could be seen.
 *
 * @param withdrawn what was taken back then, the earliest first
 * @param readings that count
 * @param seen when results could be seen before a day, in words
 */
record TakenBack(
    List<Withdrawn> withdrawn, List<Reading> readings, Function<LocalDate, String> seen) {

  /** Whether anything of an outcome was. */
  boolean any(String outcome) {
    return all().anyMatch(each -> each.outcome().equals(outcome));
  }

  private Stream<Reading> all() {
    return withdrawn.stream().flatMap(each -> each.readings().stream());
  }

  /** All readings as they were before results could be seen. */
  List<Reading> putBack() {
    Map<List<Object>, Reading> all = new LinkedHashMap<>();
    readings.forEach(each -> all.put(ReadingKeys.of(each), each));
    Set<List<Object>> back = new HashSet<>();
    all()
        .filter(each -> back.add(ReadingKeys.of(each)))
        .forEach(each -> all.put(ReadingKeys.of(each), each));
    return List.copyOf(all.values());
  }

  /** What was taken back, a sentence each time. */
  List<String> cautions() {
    Set<List<Object>> now = new HashSet<>();
    readings.forEach(each -> now.add(ReadingKeys.of(each)));
    return withdrawn.stream().map(each -> caution(each, now)).toList();
  }

  private String caution(Withdrawn taken, Set<List<Object>> now) {
    int count = taken.readings().size();
    long again =
        taken.readings().stream().filter(each -> now.contains(ReadingKeys.of(each))).count();
    return "%d %s of %s on %s %s withdrawn on %s%s, %s%s."
        .formatted(
            count,
            count == 1 ? "reading" : "readings",
            TrialHindsight.named(
                taken.readings().stream().map(each -> each.outcome().replace('_', ' '))),
            TrialHindsight.named(taken.readings().stream().map(each -> each.date().toString())),
            count == 1 ? "was" : "were",
            taken.on(),
            taken.why() == null ? "" : " (" + taken.why() + ")",
            seen.apply(taken.on()),
            again == 0 ? "; nothing stands in their place" : "; %d stand anew".formatted(again));
  }
}
