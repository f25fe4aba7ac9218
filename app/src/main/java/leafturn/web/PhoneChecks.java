package leafturn.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.sheet.Kind;
import leafturn.web.form.Field;
import leafturn.web.form.Form;

/**
 * What a page says of fields without asking the book, in the words the book itself would use: a
 * phone without a connection keeps no entry that the book is sure to refuse.
 *
 * @param missing sentences for fields that cannot be left empty, a JSON object by field
 * @param noNumber sentences for numbers that are none, a JSON object by field; {@value #TYPED} in
 *     quotation marks stands for what was typed
 */
public record PhoneChecks(String missing, String noNumber) {
  /** A text that is no number. */
  private static final String TYPED = "?";

  private static final String ANY_LAWN = "00000000-0000-0000-0000-000000000000";

  /** By key of the choice and units: every page of the log asks for all of them. */
  private static final Map<List<Object>, PhoneChecks> KNOWN = new ConcurrentHashMap<>();

  /** The sentences for the form of a choice. */
  static PhoneChecks of(LogChoice choice, Units units) {
    return KNOWN.computeIfAbsent(List.of(choice.key(), units), known -> reckoned(choice, units));
  }

  private static PhoneChecks reckoned(LogChoice choice, Units units) {
    Form blank = Form.blank(choice.shape(), units);
    Map<String, List<String>> typed = new HashMap<>();
    choice.shape().fields().stream()
        .filter(PhoneChecks::isNumber)
        .forEach(field -> typed.put(field.path(), List.of(TYPED)));
    Form wrong = Form.sent(choice.shape(), units, typed);
    return new PhoneChecks(
        sentences(refused(choice, blank), field -> field.required() || isDay(field), ""),
        sentences(refused(choice, wrong), PhoneChecks::isNumber, "\"" + TYPED + "\""));
  }

  private static boolean isNumber(Field field) {
    return field.type() == Field.Type.NUMBER;
  }

  private static boolean isDay(Field field) {
    return field.path().equals("day");
  }

  private static Form refused(LogChoice choice, Form form) {
    ObjectNode fixed = choice.document(ANY_LAWN);
    try {
      Kind.LOG.read(form.document("entry", fixed.toString()));
      return form;
    } catch (InputException faults) {
      return form.faulted(faults);
    }
  }

  private static String sentences(Form form, Predicate<Field> which, String beginning) {
    ObjectNode sentences = JsonNodeFactory.instance.objectNode();
    for (Field field : form.shape().fields()) {
      List<String> told = new ArrayList<>(form.faultsOf(field));
      told.removeIf(sentence -> !sentence.startsWith(beginning));
      if (which.test(field) && !told.isEmpty()) {
        sentences.put(field.path(), told.get(0));
      }
    }
    return sentences.toString();
  }
}
