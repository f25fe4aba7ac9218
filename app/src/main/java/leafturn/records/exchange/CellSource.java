package leafturn.records.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.exchange.Column.Type;
import org.dhatim.fastexcel.Worksheet;

/** The document of a sheet as the source of the cells of a row. */
final class CellSource {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final int FEWEST_DIGITS = 3;
  private static final int MOST_DIGITS = 15;

  private final JsonNode document;

  CellSource(String document) {
    try {
      this.document = JSON.readTree(document);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the document of a sheet is not JSON", e);
    }
  }

  /** Whether the document says something in a column. */
  boolean tells(Column column) {
    return !text(column, Units.METRIC).isEmpty();
  }

  /**
   * Whether the number of a column can be written in other units so that it reads back as just what
   * it is; true where there is none.
   */
  boolean keeps(Column column, Units units) {
    return !value(column).isNumber() || written(column, units).isPresent();
  }

  /** The shortest number that a reader takes for the one that is kept. */
  private Optional<BigDecimal> written(Column column, Units units) {
    BigDecimal kept = value(column).decimalValue();
    Measure measure = column.measure();
    if (measure == null || units == Units.METRIC) {
      return Optional.of(kept);
    }
    BigDecimal shown = BigDecimal.valueOf(measure.shown(kept.doubleValue(), units));
    return IntStream.rangeClosed(FEWEST_DIGITS, MOST_DIGITS)
        .mapToObj(digits -> shown.round(new MathContext(digits)))
        .filter(number -> measure.kept(number, units).compareTo(kept) == 0)
        .findFirst();
  }

  /** The cell of a column as text; empty where the document says nothing. */
  String text(Column column, Units units) {
    JsonNode value = value(column);
    if (value.isMissingNode()) {
      return "";
    }
    return switch (column.type()) {
      case NUMBER -> plain(written(column, units).orElseThrow());
      case FRACTION -> plain(value.decimalValue());
      case CLIPPINGS -> clippings(value);
      case YES_NO -> value.asBoolean() ? "yes" : "no";
      case YES -> value.asBoolean() ? "yes" : "";
      case WORDS -> {
        List<String> words = new ArrayList<>();
        value.forEach(word -> words.add(word.asText()));
        yield String.join("; ", words);
      }
      case MIXTURE -> MixtureCell.text(value);
      default -> value.asText();
    };
  }

  /** Puts the cell of a column into a sheet: numbers as numbers, dates as dates, texts as texts. */
  void put(Column column, Units units, Worksheet sheet, int row, int place) {
    String text = text(column, units);
    if (text.isEmpty()) {
      return;
    }
    // Spreadsheets keep fifteen digits of a number; a longer one goes in as text, whole.
    boolean number =
        value(column).isNumber()
            && Character.isDigit(text.charAt(0))
            && new BigDecimal(text).precision() <= MOST_DIGITS;
    if (column.type() == Type.DATE) {
      sheet.value(row, place, LocalDate.parse(text));
      sheet.style(row, place).format("yyyy-mm-dd").set();
    } else if (number) {
      sheet.value(row, place, new BigDecimal(text));
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
    return share == 1 ? "returned" : share == 0 ? "collected" : plain(returnedShare.decimalValue());
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
