package leafturn.web.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.reports.ClippingsFate;
import leafturn.reports.DayWords;
import leafturn.reports.QuantityWords;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/**
 * What a sheet says, field by field in the reader's units: the fields of its form in their order,
 * and after them whatever its document holds besides, so that nothing is passed over.
 */
public final class SheetLines {
  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  private static final Pattern MONTH_DAY = Pattern.compile("\\d{2}-\\d{2}");
  private static final int LEAP_YEAR = 2016;

  /** What was not ticked is worth a word only where it was changed. */
  private static final String NO = "not ticked";

  /** Where it belongs stands above it, what was done in its title; the rest is for machines. */
  private static final Set<String> NOT_SHOWN =
      Set.of("lawn", "property", "what", "sha256", "sizeBytes");

  private final SheetForm<?> form;
  private final Setting setting;

  /**
   * @param form the form of the sheet's kind
   */
  public SheetLines(SheetForm<?> form, Setting setting) {
    this.form = form;
    this.setting = setting;
  }

  /** What a document says. */
  public List<Line> of(String document) {
    return by(document).entrySet().stream()
        .filter(line -> !line.getValue().equals(NO))
        .map(line -> new Line(line.getKey(), line.getValue()))
        .toList();
  }

  /** The fields in which two documents of a kind differ. */
  public List<Change> between(String before, String after) {
    Map<String, String> old = by(before);
    Map<String, String> young = by(after);
    Set<String> labels = new LinkedHashSet<>(young.keySet());
    labels.addAll(old.keySet());
    List<Change> changes = new ArrayList<>();
    for (String label : labels) {
      String was = old.getOrDefault(label, "");
      String is = young.getOrDefault(label, "");
      if (!was.equals(is) && !(saysNothing(was) && saysNothing(is))) {
        changes.add(new Change(label, was, is));
      }
    }
    return changes;
  }

  private static boolean saysNothing(String words) {
    return words.isEmpty() || words.equals(NO);
  }

  private Map<String, String> by(String document) {
    FormShape shape = form.shape(setting, document);
    Form filled = Form.of(shape, setting.units(), document);
    Map<String, String> lines = new LinkedHashMap<>();
    for (Group group : shape.groups()) {
      if (group.row() && group.fields().get(0).path().contains("[")) {
        row(group, filled, lines);
      } else {
        group.fields().forEach(field -> put(lines, field.label(), words(field, filled)));
      }
    }
    others(shape, document, lines);
    return lines;
  }

  private void row(Group group, Form filled, Map<String, String> lines) {
    Map<String, String> words = new LinkedHashMap<>();
    Map<String, String> labels = new LinkedHashMap<>();
    for (Field field : group.fields()) {
      String name = field.path().substring(field.path().lastIndexOf('.') + 1);
      labels.put(name, field.label());
      put(words, name, words(field, filled));
    }
    if (!words.isEmpty()) {
      lines.put(group.legend(), form.row(words, labels));
    }
  }

  private static void put(Map<String, String> lines, String label, String words) {
    if (!words.isEmpty()) {
      lines.put(label, words);
    }
  }

  private String words(Field field, Form filled) {
    List<String> values = filled.values().getOrDefault(field.path(), List.of());
    if (values.isEmpty()) {
      return "";
    }
    String first = values.get(0);
    return switch (field.type()) {
      case NUMBER -> field.path().endsWith("returnedShare") ? fate(first) : withUnit(first, field);
      case NUMBERS -> withUnit(first.replace(" ", ", "), field);
      case FLAG -> first.equals("true") ? "yes" : NO;
      case ONE_OF, SOME_OF ->
          String.join(", ", values.stream().map(value -> choice(field, value)).toList());
      case DATE -> day(first);
      case OUTLINE -> corners(first);
      case PASSWORD, FILE, HIDDEN -> "";
      default -> MONTH_DAY.matcher(first).matches() ? monthDay(first) : first;
    };
  }

  private String corners(String list) {
    String unit = Measure.DISTANCE.unit(setting.units()).symbol();
    return list.strip().replaceAll("\n\n", " / ").replaceAll("\n", "; ") + " (" + unit + ")";
  }

  private String fate(String share) {
    try {
      return ClippingsFate.words(Double.parseDouble(share), setting.units());
    } catch (NumberFormatException e) {
      return share;
    }
  }

  private String withUnit(String number, Field field) {
    String unit = field.unit(setting.units());
    // What follows a comma tells how to enter the number.
    return unit.isEmpty() ? number : number + QuantityWords.THIN + unit.replaceFirst(",.*", "");
  }

  private static String choice(Field field, String value) {
    return field.choices().stream()
        .filter(choice -> choice.value().equals(value))
        .map(Field.Choice::words)
        .findFirst()
        .orElse(value);
  }

  private static String day(String date) {
    return DATE.matcher(date).matches() ? DayWords.dayAndYear(LocalDate.parse(date)) : date;
  }

  private static String monthDay(String words) {
    try {
      return DayWords.date(MonthDay.parse("--" + words).atYear(LEAP_YEAR));
    } catch (DateTimeParseException notADay) {
      return words;
    }
  }

  /** What the document holds beside the fields of the form. */
  private void others(FormShape shape, String document, Map<String, String> lines) {
    Set<String> shown = new TreeSet<>(shape.fields().stream().map(Field::path).toList());
    leaves("", Rows.parsed(document), shown, lines);
  }

  private void leaves(String path, JsonNode node, Set<String> shown, Map<String, String> lines) {
    if (shown.contains(path) || NOT_SHOWN.contains(path)) {
      return;
    }
    if (node.isObject()) {
      node.properties()
          .forEach(
              field -> {
                String at = path.isEmpty() ? field.getKey() : path + "." + field.getKey();
                leaves(at, field.getValue(), shown, lines);
              });
    } else if (node.isArray() && node.path(0).isContainerNode()) {
      for (int i = 0; i < node.size(); i++) {
        leaves(path + "[" + i + "]", node.get(i), shown, lines);
      }
    } else if (node.isArray()) {
      List<String> items = new ArrayList<>();
      node.forEach(item -> items.add(named(item.asText())));
      put(lines, label(path), String.join(", ", items));
    } else {
      put(lines, label(path), named(node.asText()));
    }
  }

  /** A label for a field that no form shows, made from its name: "media type". */
  private static String label(String path) {
    Matcher parameter = Pattern.compile("parameters\\.(.+)").matcher(path);
    if (parameter.matches()) {
      return "Model parameter " + parameter.group(1);
    }
    String words = path.replaceAll("([a-z])([A-Z])", "$1 $2").replace('.', ' ');
    return Words.capital(words.toLowerCase(Locale.ROOT));
  }

  private String named(String value) {
    return setting.names().getOrDefault(value, value);
  }
}
