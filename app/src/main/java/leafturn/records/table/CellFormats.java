package leafturn.records.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;

/** What the numbers of a workbook mean by the formats of their cells (ECMA-376, part 1, 18.8). */
final class CellFormats {
  private static final DateTimeFormatter DATE_AND_TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");
  private static final int MOST_FORMATS = 100_000;
  private static final double LAST_DAY_NUMBER = 2_958_465;
  private static final int PHANTOM_LEAP_DAY = 60;
  private static final int MINUTES_A_DAY = 1440;

  /** Spreadsheets show and keep no more. */
  private static final MathContext DIGITS = new MathContext(15);

  private enum Meaning {
    NUMBER,
    PER_CENT,
    DATE,
    DATE_AND_TIME,
    TIME
  }

  private final List<Meaning> meanings = new ArrayList<>();
  private boolean from1904;

  /** Reads the part with the styles. */
  void read(PartXml xml) throws XMLStreamException {
    Map<Integer, String> codes = new HashMap<>();
    boolean inCells = false;
    while (xml.nextElement()) {
      if (xml.is("numFmt")) {
        String code = xml.attribute("formatCode");
        codes.put(number(xml.attribute("numFmtId")), code == null ? "" : code);
      } else if (xml.is("xf") && inCells) {
        int id = number(xml.attribute("numFmtId"));
        String code = codes.get(id);
        meanings.add(code == null ? builtIn(id) : ofCode(code));
      } else if (!xml.is("xf")) {
        inCells = xml.is("cellXfs") || (inCells && !xml.is("cellStyles") && !xml.is("dxfs"));
      }
      if (meanings.size() > MOST_FORMATS) {
        throw new XMLStreamException("it has too many formats");
      }
    }
  }

  /** Day numbers count from 1904 on, as some workbooks have it. */
  void countFrom1904() {
    from1904 = true;
  }

  /** A number as text by the format of its cell; the text itself where it is no number. */
  String shown(String raw, @Nullable String format) {
    BigDecimal value;
    try {
      value = new BigDecimal(raw.strip());
    } catch (NumberFormatException e) {
      return raw;
    }
    int place = number(format);
    Meaning meaning = place >= 0 && place < meanings.size() ? meanings.get(place) : Meaning.NUMBER;
    double number = value.doubleValue();
    if (meaning == Meaning.PER_CENT) {
      return plain(value.movePointRight(2)) + "%";
    }
    if (meaning == Meaning.NUMBER || !(number >= 0 && number < LAST_DAY_NUMBER)) {
      return plain(value);
    }
    return moment(number, meaning);
  }

  private String moment(double number, Meaning meaning) {
    LocalDateTime moment = day(number).atStartOfDay().plusMinutes(minutes(number));
    if (meaning == Meaning.TIME && number < 1) {
      return TIME.format(moment);
    }
    boolean midnight = minutes(number) == 0;
    return meaning == Meaning.DATE || midnight
        ? moment.toLocalDate().toString()
        : DATE_AND_TIME.format(moment);
  }

  private LocalDate day(double number) {
    int days = (int) number;
    if (from1904) {
      return LocalDate.of(1904, 1, 1).plusDays(days);
    }
    // Day 60 stands for 29 February 1900, which never was.
    return LocalDate.of(1899, 12, 30).plusDays(days < PHANTOM_LEAP_DAY ? days + 1 : days);
  }

  private static long minutes(double number) {
    return Math.min(Math.round((number - Math.floor(number)) * MINUTES_A_DAY), MINUTES_A_DAY - 1);
  }

  private static String plain(BigDecimal value) {
    if (value.precision() - value.scale() > DIGITS.getPrecision() || value.scale() > 400) {
      return value.round(DIGITS).stripTrailingZeros().toString();
    }
    BigDecimal rounded = value.round(DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static int number(@Nullable String text) {
    try {
      return text == null ? -1 : Integer.parseInt(text);
    } catch (NumberFormatException e) {
      return -1;
    }
  }

  private static Meaning builtIn(int id) {
    return switch (id) {
      case 9, 10 -> Meaning.PER_CENT;
      case 14, 15, 16, 17, 27, 28, 29, 30, 31, 36, 50, 51, 52, 53, 54, 57, 58 -> Meaning.DATE;
      case 18, 19, 20, 21, 32, 33, 34, 35, 45, 46, 47, 55, 56 -> Meaning.TIME;
      case 22 -> Meaning.DATE_AND_TIME;
      default -> Meaning.NUMBER;
    };
  }

  private static Meaning ofCode(String code) {
    String letters =
        code.toLowerCase(Locale.ROOT)
            .replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.|\\*.", "")
            .replace("general", "");
    boolean day = letters.contains("y") || letters.contains("d");
    boolean hour = letters.contains("h") || letters.contains("s");
    if (day || (letters.contains("m") && !hour)) {
      return hour ? Meaning.DATE_AND_TIME : Meaning.DATE;
    }
    return hour ? Meaning.TIME : letters.contains("%") ? Meaning.PER_CENT : Meaning.NUMBER;
  }
}
