package leafturn.records.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Faults;
import leafturn.records.Numbers;
import leafturn.records.exchange.Reading.DateOrder;
import leafturn.records.exchange.Reading.Pick;
import leafturn.records.table.Table;
import org.jspecify.annotations.Nullable;

/** Turns the text of a cell into the value of a field. */
final class CellReader {
  /** What is right in a column for clippings. */
  static final String CLIPPINGS = "give returned, collected, or the fraction returned from 0 to 1.";

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d{1,15}([.,]\\d{0,20})?|[.,]\\d{1,20})([eE][-+]?\\d{1,2})?");
  private static final Pattern TWO_READINGS = Pattern.compile("[-+]?\\d{1,3},\\d{3}");
  private static final Pattern DATE =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})([ T]\\d{2}:\\d{2}.*)?");
  private static final Pattern OTHER_DATE =
      Pattern.compile("(\\d{1,2})[./-](\\d{1,2})[./-](\\d{4})");
  private static final Pattern SHORT_TIME = Pattern.compile("\\d:\\d{2}");
  private static final Pattern TIME_WITH_SECONDS = Pattern.compile("(\\d{1,2}:\\d{2}):\\d{2}");
  private static final Set<String> YES = Set.of("yes", "true", "y", "x", "1");
  private static final Set<String> NO = Set.of("no", "false", "n", "0");
  private static final int DATE_LENGTH = "2015-05-28".length();

  private final Table table;

  /**
   * The value of a cell.
   *
   * @param value for the document; the text itself where the reader of the document is to say what
   *     is wrong
   * @param fault what is wrong and would not be clear from the document, or null
   */
  record Cell(JsonNode value, @Nullable String fault) {
    static Cell of(JsonNode value) {
      return new Cell(value, null);
    }

    static Cell of(String text) {
      return of(TextNode.valueOf(text));
    }

    static Cell wrong(String text, String right) {
      return new Cell(
          TextNode.valueOf(text), "%s is not usable; %s".formatted(Faults.quoted(text), right));
    }
  }

  CellReader(Table table) {
    this.table = table;
  }

  /** Reads a cell that is not empty. */
  Cell read(Pick pick, String text) {
    return switch (pick.column().type()) {
      case TEXT -> Cell.of(table.isSpreadsheet() ? text : Guarded.read(text));
      case NUMBER -> number(text, pick.column().measure(), pick.units());
      case FRACTION -> fraction(text);
      case CLIPPINGS -> clippings(text);
      case DATE -> date(text, pick.dates());
      case TIME -> Cell.of(time(text));
      case DAY_OF_YEAR -> dayOfYear(text, pick.dates());
      case YES_NO, YES -> yesOrNo(text);
      case WORDS -> words(text);
      case MIXTURE -> MixtureCell.read(text);
    };
  }

  private Cell number(String text, @Nullable Measure measure, Units units) {
    String fault = notANumber(text);
    if (fault != null) {
      return new Cell(TextNode.valueOf(text), fault);
    }
    BigDecimal number = decimal(text);
    return Cell.of(DecimalNode.valueOf(measure == null ? number : measure.kept(number, units)));
  }

  private static BigDecimal decimal(String text) {
    return new BigDecimal(text.replace(',', '.'));
  }

  private @Nullable String notANumber(String text) {
    if (!NUMBER.matcher(text).matches()) {
      return Faults.quoted(text) + " is not a number; give one such as 12.5, or empty the cell.";
    }
    return decimalMarkFault(text);
  }

  /** What is wrong with the decimal mark of a number, or null. */
  @Nullable String decimalMarkFault(String text) {
    String twoReadings = table.decimalCommas() ? null : Numbers.commaFault(text);
    if (twoReadings != null) {
      return twoReadings;
    }
    if (text.indexOf(',') >= 0 && !table.decimalCommas()) {
      return Faults.quoted(text)
          + " has a decimal comma; write a point, or separate the columns by semicolons.";
    }
    if (table.isSpreadsheet() && TWO_READINGS.matcher(text).matches()) {
      return Faults.quoted(text)
          + " can be read in two ways; write it without a mark between thousands.";
    }
    return null;
  }

  private Cell fraction(String text) {
    boolean perCent = text.endsWith("%");
    String digits = perCent ? text.substring(0, text.length() - 1).strip() : text;
    if (notANumber(digits) != null) {
      return Cell.wrong(text, "give a fraction such as 0.3, or 30%.");
    }
    BigDecimal number = decimal(digits);
    return Cell.of(DecimalNode.valueOf(perCent ? number.movePointLeft(2) : number));
  }

  private Cell clippings(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "returned", "left" -> Cell.of(DecimalNode.valueOf(BigDecimal.ONE));
      case "collected", "bagged" -> Cell.of(DecimalNode.valueOf(BigDecimal.ZERO));
      default -> {
        Cell cell = fraction(text);
        yield cell.fault() == null ? cell : Cell.wrong(text, CLIPPINGS);
      }
    };
  }

  private static Cell date(String text, DateOrder order) {
    Matcher iso = DATE.matcher(text);
    if (iso.matches()) {
      return Cell.of(iso.group(1));
    }
    Matcher other = OTHER_DATE.matcher(text);
    if (!other.matches()) {
      return Cell.of(text);
    }
    if (order == DateOrder.YEAR_FIRST) {
      return Cell.wrong(
          text,
          "write year, month and day as in 2015-05-28, or choose day first or month first for this"
              + " column.");
    }
    boolean dayFirst = order == DateOrder.DAY_FIRST;
    return Cell.of(
        "%s-%2s-%2s"
            .formatted(other.group(3), other.group(dayFirst ? 2 : 1), other.group(dayFirst ? 1 : 2))
            .replace(' ', '0'));
  }

  private static Cell dayOfYear(String text, DateOrder order) {
    JsonNode value = date(text, order).value();
    String day = value.asText();
    boolean whole = DATE.matcher(day).matches();
    return Cell.of(whole ? day.substring(day.indexOf('-') + 1, DATE_LENGTH) : day);
  }

  private static String time(String text) {
    Matcher seconds = TIME_WITH_SECONDS.matcher(text);
    String time = seconds.matches() ? seconds.group(1) : text;
    return SHORT_TIME.matcher(time).matches() ? "0" + time : time;
  }

  private static Cell yesOrNo(String text) {
    String word = text.toLowerCase(Locale.ROOT);
    if (YES.contains(word) || NO.contains(word)) {
      return Cell.of(BooleanNode.valueOf(YES.contains(word)));
    }
    return Cell.wrong(text, "give yes or no.");
  }

  private static Cell words(String text) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (String word : text.split("\\s*;\\s*")) {
      if (!word.isBlank()) {
        list.add(word.strip());
      }
    }
    return Cell.of(list);
  }
}
