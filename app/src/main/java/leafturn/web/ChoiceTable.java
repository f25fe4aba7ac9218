package leafturn.web;

import java.util.List;
import leafturn.advice.call.Option;
import leafturn.reports.SpreadWords;

/**
 * Choices side by side: one row for each, the best first.
 *
 * @param columns headings of the cells
 * @param rows one for each choice
 */
public record ChoiceTable(List<String> columns, List<Row> rows) {
  /**
   * One choice.
   *
   * @param cells as many as the table has columns
   */
  public record Row(Option option, List<Cell> cells) {}

  /**
   * One value of a choice.
   *
   * @param words the value with its unit
   * @param range its range over the possible seasons; may be empty
   * @param details shorter lines under it; may be empty
   * @param mark the range drawn, as SVG; may be empty
   */
  public record Cell(String words, String range, List<String> details, String mark) {
    static Cell of(String words, String... details) {
      return new Cell(words, "", List.of(details), "");
    }

    static Cell of(SpreadWords spread, String... details) {
      return new Cell(spread.middle(), spread.range(), List.of(details), "");
    }

    Cell drawn(String svg) {
      return new Cell(words, range, details, svg);
    }
  }
}
