package leafturn.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.sheet.What;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import org.jspecify.annotations.Nullable;

/**
 * Something that can be logged: one row of the log page with a form of its own.
 *
 * @param key its name in requests
 * @param heading what was done, in a few words
 * @param what what the entry says was done
 * @param returnedShare share of the clippings returned, where the choice itself says so, or null
 * @param caution what to mind; may be empty
 * @param shape the fields that may be filled in
 */
record LogChoice(
    String key,
    String heading,
    What what,
    @Nullable Double returnedShare,
    String caution,
    FormShape shape) {
  static final String RETURNED = "returned";
  static final String COLLECTED = "collected";
  static final String PART_RETURNED = "part-returned";

  private static final double ALL = 1;
  private static final double NONE = 0;
  private static final Map<Units, Map<String, LogChoice>> CHOICES = new EnumMap<>(Units.class);

  static {
    for (Units units : Units.values()) {
      Map<String, LogChoice> choices = new LinkedHashMap<>();
      new LogShapes(units).choices().forEach(choice -> choices.put(choice.key, choice));
      CHOICES.put(units, choices);
    }
  }

  /** The choice with this name, in the words of a reader. */
  static Optional<LogChoice> named(String key, Units units) {
    return Optional.ofNullable(of(units).get(key));
  }

  /** Every choice in the words of a reader, the usual mowing first. */
  static List<LogChoice> usualFirst(double usualShare, Units units) {
    List<LogChoice> choices = new ArrayList<>(of(units).values());
    LogChoice usual = of(units).getOrDefault(usual(usualShare), choices.get(0));
    choices.remove(usual);
    choices.add(0, usual);
    return choices;
  }

  private static Map<String, LogChoice> of(Units units) {
    return CHOICES.getOrDefault(units, Map.of());
  }

  /** The name of the choice that returns a share. */
  static String usual(double share) {
    return share >= ALL ? RETURNED : share <= NONE ? COLLECTED : PART_RETURNED;
  }

  boolean isMowing() {
    return what == What.MOWN;
  }

  /** What the choice itself says of an entry, for a lawn by its id. */
  ObjectNode document(String lawn) {
    ObjectNode document = JsonNodeFactory.instance.objectNode();
    document.put("lawn", lawn).put("what", Choice.word(what));
    if (returnedShare != null) {
      document.put("returnedShare", returnedShare);
    }
    return document;
  }

  /** The form as it stands before anything was typed. */
  Form blank(Units units, @Nullable LoggedLawn lawn) {
    Form form = Form.blank(shape, units);
    if (lawn == null) {
      return form;
    }
    form = form.with("day", lawn.today().toString());
    if (isMowing() && !lawn.cutHeight(units).isEmpty()) {
      form = form.with("heightAfterMm", lawn.cutHeight(units));
    }
    return key.equals(PART_RETURNED) && usual(lawn.returnedShare()).equals(key)
        ? form.with("returnedShare", plain(lawn.returnedShare()))
        : form;
  }

  /** What saving the untouched form of a mowing means, in words; empty for anything else. */
  String words(Units units, LoggedLawn lawn) {
    if (!isMowing()) {
      return "";
    }
    String height = lawn.cutHeight(units);
    String cut =
        height.isEmpty()
            ? "Cut as usual"
            : "Cut to " + height + "\u00a0" + Measure.HEIGHT.unit(units).symbol();
    return cut + ", " + units.told(share(lawn.returnedShare())) + ".";
  }

  private String share(double usualShare) {
    return switch (key) {
      case RETURNED -> "all clippings returned";
      case COLLECTED -> "all clippings collected";
      default ->
          usual(usualShare).equals(key)
              ? Math.round(usualShare * 100) + "\u00a0% of the clippings returned"
              : "part of the clippings returned";
    };
  }

  private static String plain(double share) {
    return Double.toString(Math.round(share * 100) / 100.0);
  }
}
