package leafturn.records.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.records.exchange.CellReader.Cell;

/**
 * The further grasses of a mixture in one cell: "fine fescue 20; perennial ryegrass 12.5 %", each
 * with its share in per cent.
 */
final class MixtureCell {
  private static final String RIGHT =
      "give each further grass with its per cent and semicolons between them, such as fine fescue"
          + " 20; perennial ryegrass 10.";

  private static final Pattern ONE =
      Pattern.compile("(?<grass>\\D*[^\\d\\s])\\s+(?<percent>\\d{1,3}([.,]\\d{1,20})?)\\s*%?");

  private MixtureCell() {}

  /** Reads a cell that is not empty; the grasses and shares themselves are the lawn's to check. */
  static Cell read(String text) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (String part : text.split("\\s*;\\s*")) {
      Matcher one = ONE.matcher(part.strip());
      if (!part.isBlank() && !one.matches()) {
        return Cell.wrong(text, RIGHT);
      }
      if (!part.isBlank()) {
        BigDecimal percent = new BigDecimal(one.group("percent").replace(',', '.'));
        list.addObject()
            .put("grass", one.group("grass"))
            .set("percent", DecimalNode.valueOf(percent));
      }
    }
    return list.isEmpty() ? Cell.wrong(text, RIGHT) : Cell.of(list);
  }

  /** The cell of a document's list; empty for an empty one. */
  static String text(JsonNode list) {
    List<String> grasses = new ArrayList<>();
    for (JsonNode one : list) {
      String percent = one.path("percent").decimalValue().stripTrailingZeros().toPlainString();
      grasses.add(one.path("grass").asText() + " " + percent);
    }
    return String.join("; ", grasses);
  }
}
