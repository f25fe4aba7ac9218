package leafturn.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leafturn.advice.evidence.Evidence;
import leafturn.advice.evidence.Evidence.Finding;
import leafturn.advice.evidence.Evidence.Miss;
import leafturn.advice.evidence.Evidence.Verdict;
import leafturn.advice.evidence.Target;

/**
 * The model held against published studies, as people and programs read it; its components are the
 * fields of the JSON document.
 *
 * @param pass number of rows that agree
 * @param fail number of rows that do not
 * @param note what a pass is worth
 * @param rows every row in order
 * @param misses why rows fail, by group
 */
public record EvidenceReport(long pass, long fail, String note, List<Row> rows, List<Miss> misses) {
  private static final String FIT =
      "Several parameters were set on these same studies, so a pass is a fit and not an"
          + " independent proof; no row was tuned to pass.";
  private static final int TEXT_WIDTH = 96;
  private static final String ADDED = " (added)";

  /**
   * @param values the numbers judged
   * @param shown the same as text
   * @param verdict pass, FAIL, or empty where there is nothing to agree with
   * @param bandStatus published, derived, chosen or none
   */
  public record Row(
      String id,
      String topic,
      String quantity,
      boolean added,
      List<Double> values,
      String shown,
      String published,
      String verdict,
      String source,
      String bandStatus,
      String protocol,
      String detail) {}

  /** The report of a run. */
  public static EvidenceReport of(Evidence evidence) {
    return new EvidenceReport(
        evidence.count(Verdict.PASS),
        evidence.count(Verdict.FAIL),
        FIT,
        evidence.findings().stream().map(EvidenceReport::row).toList(),
        evidence.misses());
  }

  private static Row row(Finding finding) {
    Target target = finding.target();
    return new Row(
        target.id(),
        target.topic(),
        target.quantity(),
        target.added(),
        finding.values(),
        finding.shown(),
        target.band().text(),
        switch (finding.verdict()) {
          case PASS -> "pass";
          case FAIL -> "FAIL";
          case INFORMATION -> "";
        },
        target.band().source(),
        target.band().status(),
        target.protocol(),
        finding.detail());
  }

  /** The report for a terminal. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    String topic = "";
    for (Row row : rows) {
      if (!row.topic().equals(topic)) {
        topic = row.topic();
        lines.add("");
        lines.add(topic);
        lines.addAll(wrapped("  ", "How: " + row.protocol() + "."));
      }
      lines.addAll(lines(row));
    }
    lines.add("");
    lines.add("%d rows pass, %d fail.".formatted(pass, fail));
    lines.addAll(wrapped("", FIT + " A verdict is given on the number as shown."));
    for (Miss miss : misses) {
      lines.add("");
      lines.add("Missed: " + String.join(", ", miss.ids()));
      lines.addAll(wrapped("  ", miss.reason()));
    }
    return lines.subList(1, lines.size());
  }

  private static List<String> lines(Row row) {
    List<String> lines = new ArrayList<>();
    lines.add("  %s%s".formatted(row.quantity(), row.added() ? ADDED : ""));
    String published =
        row.published().isEmpty()
            ? ""
            : "published %s [%s; %s]".formatted(row.published(), row.source(), row.bandStatus());
    lines.add(
        String.format(Locale.ROOT, "    %-4s  model %s  %s", row.verdict(), row.shown(), published)
            .stripTrailing());
    if (!row.detail().isEmpty()) {
      lines.addAll(wrapped("          ", row.detail()));
    }
    return lines;
  }

  private static List<String> wrapped(String indent, String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(indent);
    for (String word : text.split(" ")) {
      if (line.length() > indent.length() && line.length() + 1 + word.length() > TEXT_WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
      }
      line.append(line.length() > indent.length() ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
