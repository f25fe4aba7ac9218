package leafturn.web.sheet;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.sheet.Kind;
import leafturn.reports.DayWords;
import leafturn.reports.QuantityWords;
import leafturn.web.form.Field;
import org.jspecify.annotations.Nullable;

/**
 * Notes of what the model filled in, as a page tells them. The notes name the fields of a document
 * and give what was filled in as it is kept; whoever reads a page knows the labels of the forms,
 * and units of their own.
 */
public final class NoteWords {
  private static final List<Kind<?>> KINDS = List.of(Kind.LAWN, Kind.PROGRAMME, Kind.STATION);

  /** The name of a field, perhaps of one within another, and the quantity that follows it. */
  private static final Pattern NAMED =
      Pattern.compile(
          "\\b(?:[a-z]+\\.)?([a-z]+[A-Z]\\w*)(?: (-?[\\d.]+\\d|\\d)(?: (mm|cm|m)\\b)?)?");

  private static final Pattern DAY =
      Pattern.compile("\\b(from|to) day ([1-9]|[1-9]\\d|[12]\\d\\d|3[0-5]\\d|36[0-5])\\b");

  private static final Pattern RUN = Pattern.compile("\\bspinUpYears (\\d+)\\b");
  private static final int COMMON_YEAR = 2015;

  private final Units units;
  private final Map<String, Field> fields = new LinkedHashMap<>();

  /**
   * @param units the reader's units
   */
  public NoteWords(Units units) {
    this.units = units;
    Setting setting =
        new Setting(
            units, LocalDate.EPOCH, List.of(), List.of(), List.of(), Map.of(), "a third", false);
    for (Kind<?> kind : KINDS) {
      for (Field field : SheetForms.of(kind).shape(setting, "{}").fields()) {
        fields.putIfAbsent(field.path().substring(field.path().lastIndexOf('.') + 1), field);
      }
    }
  }

  /** A note in the words of the forms. */
  public String of(String note) {
    String days = DAY.matcher(note).replaceAll(day -> day.group(1) + " " + date(day.group(2)));
    String run = RUN.matcher(days).replaceAll("$1 years run beforehand");
    return NAMED
        .matcher(run.replace("m3/m3", "m³/m³"))
        .replaceAll(named -> Matcher.quoteReplacement(told(named)));
  }

  private static String date(String dayOfYear) {
    return DayWords.date(LocalDate.ofYearDay(COMMON_YEAR, Integer.parseInt(dayOfYear)));
  }

  private String told(MatchResult named) {
    Field field = fields.get(named.group(1));
    if (field == null) {
      return named.group();
    }
    String label =
        field.label().substring(0, 1).toLowerCase(Locale.ROOT) + field.label().substring(1);
    String number = named.group(2);
    return number == null ? label : label + " " + quantity(number, named.group(3), field.measure());
  }

  private String quantity(String number, @Nullable String unit, @Nullable Measure measure) {
    if (unit == null || measure == null) {
      return unit == null ? number : number + " " + unit;
    }
    String symbol = measure.unit(units).symbol();
    double shown = measure.shown(Double.parseDouble(number), units);
    boolean ruler = symbol.equals("in");
    return (ruler ? DisplayNumber.decimals(shown, 1) : QuantityWords.plain(shown))
        + QuantityWords.THIN
        + symbol;
  }
}
