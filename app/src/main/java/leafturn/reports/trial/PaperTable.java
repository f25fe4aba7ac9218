package leafturn.reports.trial;

import static leafturn.reports.paper.Paper.escaped;

import java.util.List;

/** A table of words on paper. */
final class PaperTable {
  private PaperTable() {}

  /** The table as XHTML. */
  static String of(List<String> header, List<List<String>> rows) {
    StringBuilder table = new StringBuilder("<table><thead><tr>");
    header.forEach(cell -> table.append("<th>").append(escaped(cell)).append("</th>"));
    table.append("</tr></thead><tbody>");
    for (List<String> row : rows) {
      table.append("<tr>");
      row.forEach(cell -> table.append("<td>").append(escaped(cell)).append("</td>"));
      table.append("</tr>");
    }
    return table.append("</tbody></table>").toString();
  }
}
