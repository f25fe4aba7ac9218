package leafturn.records.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.exchange.Column.Type;
import org.dhatim.fastexcel.Worksheet;

/** The document of a sheet as the source of the cells of a row. */
final class CellSource {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final int MOST_DIGITS = 15;

  private final JsonNode document;

  CellSource(String document) {
    try {
      this.document = JSON.readTree(document);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the document of a sheet is not JSON", e);
    }
  }

  /** The cell of a column as text; empty where the document says nothing. */
  String text(Column column) {
    JsonNode value = value(column);
    if (value.isMissingNode()) {
      return "";
    }
    return switch (column.type()) {
      case NUMBER, FRACTION -> plain(value);
      case CLIPPINGS -> clippings(value);
      case YES_NO -> value.asBoolean() ? "yes" : "no";
      case YES -> value.asBoolean() ? "yes" : "";
      case WORDS -> {
        List<String> words = new ArrayList<>();
        value.forEach(word -> words.add(word.asText()));
        yield String.join("; ", words);
      }
      default -> value.asText();
    };
  }

  /** Puts the cell of a column into a sheet: numbers as numbers, dates as dates, texts as texts. */
  void put(Column column, Worksheet sheet, int row, int place) {
    String text = text(column);
    if (text.isEmpty()) {
      return;
    }
    // Spreadsheets keep fifteen digits of a number; a longer one goes in as text, whole.
    boolean number =
        value(column).isNumber() && value(column).decimalValue().precision() <= MOST_DIGITS;
    if (column.type() == Type.DATE) {
      sheet.value(row, place, LocalDate.parse(text));
      sheet.style(row, place).format("yyyy-mm-dd").set();
    } else if (number && Character.isDigit(text.charAt(0))) {
      sheet.value(row, place, value(column).decimalValue());
    } else {
      sheet.value(row, place, text);
    }
  }

  private JsonNode value(Column column) {
    JsonNode node = document;
    for (String step : column.path().split("\\.")) {
      node = node.path(step);
    }
    return node;
  }

  private static String clippings(JsonNode returnedShare) {
    double share = returnedShare.asDouble();
    return share == 1 ? "returned" : share == 0 ? "collected" : plain(returnedShare);
  }

  private static String plain(JsonNode number) {
    return number.decimalValue().stripTrailingZeros().toPlainString();
  }
}
