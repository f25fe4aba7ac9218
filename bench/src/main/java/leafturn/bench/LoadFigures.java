package leafturn.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import leafturn.bench.LoadVisitor.Answer;
import leafturn.bench.LoadVisitor.Page;

/** How long answers took, by page. Safe for use from several threads. */
final class LoadFigures {
  private static final double NANOS_PER_MS = 1e6;

  private final Map<Page, List<Double>> timesMs = new EnumMap<>(Page.class);
  private final Map<Page, Integer> errors = new EnumMap<>(Page.class);
  private final Map<Page, Integer> mostBytes = new EnumMap<>(Page.class);
  private final Map<Page, Integer> unfinished = new EnumMap<>(Page.class);
  private final Map<String, Integer> faults = new TreeMap<>();

  synchronized void add(Page page, long dueNanos, Answer answer) {
    double tookMs = (System.nanoTime() - dueNanos) / NANOS_PER_MS;
    timesMs.computeIfAbsent(page, key -> new ArrayList<>()).add(tookMs);
    mostBytes.merge(page, answer.bytes(), Math::max);
    unfinished.merge(page, answer.unfinished() ? 1 : 0, Integer::sum);
    if (answer.fault() != null) {
      errors.merge(page, 1, Integer::sum);
      faults.merge(answer.fault(), 1, Integer::sum);
    }
  }

  synchronized boolean failed() {
    return !errors.isEmpty();
  }

  /** A line of a table for each page. */
  synchronized List<String> lines() {
    List<String> lines = new ArrayList<>();
    timesMs.forEach(
        (page, times) -> {
          Collections.sort(times);
          lines.add(
              String.format(
                  Locale.ROOT,
                  "| %s | %d | %d | %d | %.0f | %.0f | %.0f | %.0f | %.0f |",
                  page.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                  times.size(),
                  errors.getOrDefault(page, 0),
                  unfinished.getOrDefault(page, 0),
                  percentile(times, 50),
                  percentile(times, 95),
                  percentile(times, 99),
                  times.get(times.size() - 1),
                  mostBytes.getOrDefault(page, 0) / 1000.0));
        });
    return lines;
  }

  /** What went wrong and how often. */
  synchronized List<String> errors() {
    return faults.entrySet().stream()
        .map(fault -> fault.getValue() + " x " + fault.getKey())
        .toList();
  }

  private static double percentile(List<Double> sorted, int percent) {
    int rank = (int) Math.ceil(percent / 100.0 * sorted.size());
    return sorted.get(Math.max(1, rank) - 1);
  }
}
