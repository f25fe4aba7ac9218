package leafturn.reports.trial;

import java.util.List;
import leafturn.quantity.DisplayNumber;
import leafturn.records.trial.SizeDocument;
import leafturn.trials.power.SizeAnswer;
import leafturn.trials.power.SizeAnswer.AtUnits;

/**
 * What numbers of units can show, in words.
 *
 * @param headings of the columns
 * @param rows cells of each row, the number of units first
 */
public record SizeTable(List<String> headings, List<List<String>> rows) {
  public SizeTable {
    headings = List.copyOf(headings);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** The table of an answer. */
  public static SizeTable of(SizeDocument document, SizeAnswer answer) {
    boolean log = document.log();
    String wanted = SizeNumbers.chosen(document.size().power());
    List<String> headings =
        List.of(
            document.size().design().layout().units(),
            "chance to find it",
            (log ? "smallest ratio found at " : "smallest difference found at ") + wanted,
            "chance to show equivalence",
            (log ? "narrowest ratio shown at " : "narrowest margin shown at ") + wanted);
    return new SizeTable(
        headings, answer.table().stream().map(row -> cells(row, document)).toList());
  }

  private static List<String> cells(AtUnits row, SizeDocument document) {
    boolean log = document.log();
    double wanted = document.size().power();
    return List.of(
        Integer.toString(row.units()),
        share(row.power(), wanted),
        effect(row.detectable(), log),
        share(row.equivalencePower(), wanted),
        effect(row.smallestMargin(), log));
  }

  private static String share(double power, double wanted) {
    return Double.isNaN(power) ? "-" : SizeNumbers.power(power, wanted);
  }

  private static String effect(double difference, boolean log) {
    return DisplayNumber.significant(log ? Math.exp(difference) : difference, 3);
  }
}
