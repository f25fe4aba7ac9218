package leafturn.reports.trial;

import static leafturn.reports.paper.Paper.escaped;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leafturn.records.Dates;
import leafturn.reports.paper.Paper;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.layout.Bag;
import leafturn.trials.design.layout.TrialLayout;

/**
 * Labels of sample bags on sheets of three by eight: the code to read and to scan, and the date.
 */
public final class SampleLabels {
  private static final String STYLE =
      """
      table.labels { table-layout: fixed; page-break-inside: avoid; }
      table.labels td { width: 33.3%; height: 28mm; border: 0.3pt dashed #8f8a7b; padding: 2mm; }
      table.labels td.code { width: 24mm; border-right: 0; }
      .label-code { font-size: 14pt; font-weight: 700; margin: 2mm 0 1mm 0; }
      .label-words { font-size: 8pt; margin: 0; }
      """;

  private static final int ACROSS = 3;
  private static final int DOWN = 8;
  private static final int CODE_PX = 76;

  private SampleLabels() {}

  /** The labels of all bags, those of a date and kind together, in an order that tells nothing. */
  public static Paper of(TrialLayout layout) {
    Map<LocalDate, Map<Outcome.Kind, List<String>>> codes = new TreeMap<>();
    for (Bag bag : layout.bags()) {
      codes
          .computeIfAbsent(bag.date(), date -> new EnumMap<>(Outcome.Kind.class))
          .computeIfAbsent(bag.holds(), kind -> new ArrayList<>())
          .add(bag.code());
    }
    StringBuilder body = new StringBuilder();
    String trial = layout.plan().name();
    codes.forEach(
        (date, kinds) ->
            kinds.forEach(
                (kind, own) -> {
                  Collections.sort(own);
                  String what = kind == Outcome.Kind.SOIL ? "soil" : "leaves";
                  body.append(of(trial, date, what, own));
                }));
    return Paper.of(trial + ": labels", STYLE, body.toString());
  }

  /**
   * @param what the bags hold, in a word or two
   */
  private static String of(String trial, LocalDate date, String what, List<String> codes) {
    StringBuilder sheets = new StringBuilder();
    int onSheet = ACROSS * DOWN;
    for (int from = 0; from < codes.size(); from += onSheet) {
      List<String> sheet = codes.subList(from, Math.min(from + onSheet, codes.size()));
      sheets.append("<div class=\"new-sheet\"><h3>").append(Dates.words(date));
      sheets.append(", ").append(escaped(what)).append("</h3>");
      sheets.append("<table class=\"labels\"><tbody>");
      for (int first = 0; first < sheet.size(); first += ACROSS) {
        sheets.append("<tr>");
        for (int label = first; label < first + ACROSS; label++) {
          sheets.append(
              label < sheet.size()
                  ? label(trial, Dates.words(date) + ", " + what, sheet.get(label))
                  : "<td/>");
        }
        sheets.append("</tr>");
      }
      sheets.append("</tbody></table></div>");
    }
    return sheets.toString();
  }

  private static String label(String trial, String sample, String code) {
    return "<td><div style=\"float: left; margin-right: 3mm\">%s</div><p class=\"label-code\">%s</p><p class=\"label-words\">%s<br/>%s</p></td>"
        .formatted(LabelCode.svg(code, CODE_PX), code, escaped(sample), escaped(trial));
  }
}
