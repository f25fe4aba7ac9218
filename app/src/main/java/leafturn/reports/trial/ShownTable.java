package leafturn.reports.trial;

import java.util.List;

/**
 * A table as it is shown: the first cell of a row is its heading.
 *
 * @param caption what it holds
 * @param header one for each column
 * @param rows each as long as the header
 */
public record ShownTable(String caption, List<String> header, List<List<String>> rows) {
  public ShownTable {
    header = List.copyOf(header);
    rows = rows.stream().map(List::copyOf).toList();
  }
}
