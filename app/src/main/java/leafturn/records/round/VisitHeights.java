package leafturn.records.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leafturn.model.lawn.LogEntry;
import leafturn.records.Dates;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.VisitSheet;

/**
 * Heights that visits measured, beside those of the log: the mean of a visit's points sets the
 * grass of the model right on its day. On a day with a mowing they count for nothing, since nobody
 * knows which came first; a height of the log's own goes before them.
 */
final class VisitHeights {
  /** So long a visit that does not count is told, days. */
  private static final int TOLD_DAYS = 14;

  private final List<VisitSheet> visits;
  private final Set<LocalDate> mown = new HashSet<>();
  private final Set<LocalDate> measured = new HashSet<>();
  private final Optional<LocalDate> firstEntry;

  /**
   * @param visits to the lawn
   * @param log of the lawn
   */
  VisitHeights(List<VisitSheet> visits, List<LogSheet> log) {
    this.visits = visits.stream().filter(visit -> visit.meanHeightMm().isPresent()).toList();
    for (LogSheet entry : log) {
      if (entry.done() instanceof Done.Mown) {
        mown.add(entry.day());
      } else if (entry.done() instanceof Done.Observed seen && seen.heightMm() != null) {
        measured.add(entry.day());
      }
    }
    this.firstEntry =
        log.stream()
            .filter(entry -> entry.forModel().isPresent())
            .map(LogSheet::day)
            .min(Comparator.naturalOrder());
  }

  /**
   * What the model takes of them. A visit before the log begins would begin it, without the mowings
   * that followed; where there is no log the last visit begins it.
   */
  List<LogEntry> entries() {
    List<LogEntry> entries = new ArrayList<>();
    Optional<LocalDate> from =
        firstEntry.isPresent()
            ? firstEntry
            : visits.stream().map(VisitSheet::day).max(Comparator.naturalOrder());
    for (VisitSheet visit : visits) {
      boolean counts = !mown.contains(visit.day()) && !measured.contains(visit.day());
      if (counts && from.isPresent() && !visit.day().isBefore(from.get())) {
        entries.add(new LogEntry.Measured(visit.day(), visit.meanHeightMm().orElseThrow(), true));
      }
    }
    return entries;
  }

  /** What is to be told of visits whose heights count for nothing. */
  List<String> notes(LocalDate on) {
    return visits.stream()
        .map(VisitSheet::day)
        .filter(day -> !day.isAfter(on) && day.isAfter(on.minusDays(TOLD_DAYS)))
        .distinct()
        .flatMap(day -> why(day).stream())
        .toList();
  }

  private Optional<String> why(LocalDate day) {
    if (firstEntry.filter(day::isBefore).isPresent()) {
      return Optional.of(
          "The heights of the visit on %s are left aside: the log begins later, and nobody knows what was mown before it. Log a mowing before that day, too."
              .formatted(Dates.words(day)));
    }
    return mown.contains(day) && !measured.contains(day)
        ? Optional.of(
            "The heights of the visit on %s are left aside: the grass was mown that day, and nobody knows which came first. Log the height before the cut with the mowing."
                .formatted(Dates.words(day)))
        : Optional.empty();
  }
}
