package leafturn.reports.trial;

import static leafturn.reports.paper.Paper.escaped;

import java.util.List;

/** A table of words on paper. */
final class PaperTable {
  /** A table of so few rows stands on one sheet. */
  private static final int SMALL = 10;

  /** The last rows of a longer one stay together, so that none stands on a sheet alone. */
  private static final int TOGETHER = 4;

  private PaperTable() {}

  /** The table as XHTML. */
  static String of(List<String> header, List<List<String>> rows) {
    StringBuilder table =
        new StringBuilder(rows.size() <= SMALL ? "<table class=\"whole\">" : "<table>");
    table.append("<thead><tr>");
    header.forEach(cell -> table.append("<th>").append(escaped(cell)).append("</th>"));
    table.append("</tr></thead><tbody>");
    for (int i = 0; i < rows.size(); i++) {
      List<String> row = rows.get(i);
      boolean last = rows.size() > SMALL && i == rows.size() - TOGETHER;
      table.append(last ? "</tbody><tbody class=\"whole\"><tr>" : "<tr>");
      row.forEach(cell -> table.append("<td>").append(escaped(cell)).append("</td>"));
      table.append("</tr>");
    }
    return table.append("</tbody></table>").toString();
  }
}
