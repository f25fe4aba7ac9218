package leafturn.web.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Units;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.SourceText;

/**
 * A form with what was typed into it and what is wrong with that. Immutable.
 *
 * @param shape its fields
 * @param units the units its numbers are in
 * @param values what was typed, by path
 * @param faults what is wrong, each with the path it belongs to
 */
public record Form(
    FormShape shape, Units units, Map<String, List<String>> values, List<Fault> faults) {
  private static final Pattern ROW = Pattern.compile("(.+)\\[(\\d{1,3})]\\.(.+)");

  public Form {
    Map<String, List<String>> copy = new LinkedHashMap<>();
    values.forEach((path, typed) -> copy.put(path, List.copyOf(typed)));
    values = Map.copyOf(copy);
    faults = List.copyOf(faults);
  }

  /** An empty form. */
  public static Form blank(FormShape shape, Units units) {
    return new Form(shape, units, Map.of(), List.of());
  }

  /** A form filled with the document of a sheet. */
  public static Form of(FormShape shape, Units units, String document) {
    return new Form(shape, units, FormDocument.values(shape, units, document), List.of());
  }

  /**
   * A form as it was sent.
   *
   * @param sent the values of the request by name; names that are no fields are left out
   */
  public static Form sent(FormShape shape, Units units, Map<String, List<String>> sent) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (Field field : shape.fields()) {
      List<String> typed = sent.getOrDefault(field.path(), List.of());
      List<String> kept =
          typed.stream()
              // Browsers end lines as the web's forms do.
              .map(text -> text.strip().replace("\r\n", "\n"))
              .filter(text -> !text.isEmpty())
              .map(text -> field.type() == Field.Type.DATE ? UsDates.read(text, units) : text)
              .toList();
      if (!kept.isEmpty()) {
        values.put(field.path(), kept);
      }
    }
    return new Form(shape, units, values, List.of());
  }

  /** This form with a value in a field, for what a page fills in beforehand. */
  public Form with(String path, String value) {
    Map<String, List<String>> others = new LinkedHashMap<>(values);
    others.put(path, List.of(value));
    return new Form(shape, units, others, faults);
  }

  /** This form with some of its fields emptied. */
  public Form without(Predicate<String> paths) {
    Map<String, List<String>> others = new LinkedHashMap<>(values);
    others.keySet().removeIf(paths);
    return new Form(shape, units, others, faults);
  }

  /**
   * This form with whatever its writer left as it was taken from what the document has become
   * since, so that only what they changed themselves would change it.
   *
   * @param before the form as its writer got it
   * @param since the form of the document as it now stands
   */
  public Form rebased(Form before, Form since) {
    Map<String, List<String>> merged = new LinkedHashMap<>();
    for (Field field : shape.fields()) {
      String path = field.path();
      List<String> mine = told(path);
      List<String> kept = mine.equals(before.told(path)) ? since.told(path) : mine;
      if (!kept.isEmpty()) {
        merged.put(path, kept);
      }
    }
    return new Form(shape, units, merged, faults);
  }

  /** What stands in a field, where what is not ticked says the same as nothing. */
  private List<String> told(String path) {
    List<String> typed = values.getOrDefault(path, List.of());
    boolean flag = shape.field(path).filter(field -> field.type() == Field.Type.FLAG).isPresent();
    return flag && typed.equals(List.of("false")) ? List.of() : typed;
  }

  /**
   * This form with the rows of its lists moved up to where rows before them were left empty, so
   * that the faults of the document it makes stand beside the right rows.
   */
  public Form closedUp() {
    Map<String, TreeSet<Integer>> used = new HashMap<>();
    values.keySet().stream()
        .map(ROW::matcher)
        .filter(Matcher::matches)
        .forEach(
            row ->
                used.computeIfAbsent(row.group(1), list -> new TreeSet<>())
                    .add(Integer.valueOf(row.group(2))));
    Map<String, List<String>> moved = new LinkedHashMap<>();
    values.forEach(
        (path, typed) -> {
          Matcher row = ROW.matcher(path);
          if (!row.matches()) {
            moved.put(path, typed);
            return;
          }
          TreeSet<Integer> rows = used.getOrDefault(row.group(1), new TreeSet<>());
          int place = rows.headSet(Integer.valueOf(row.group(2))).size();
          moved.put("%s[%d].%s".formatted(row.group(1), place, row.group(3)), typed);
        });
    return new Form(shape, units, moved, faults);
  }

  /** This form with the faults a reader found; what it tells already is not told again. */
  public Form faulted(InputException found) {
    List<Fault> all = new ArrayList<>(faults);
    FaultWords words = new FaultWords(this);
    found.faultsByField().stream()
        .map(words::of)
        .filter(fault -> !all.contains(fault))
        .forEach(all::add);
    return new Form(shape, units, values, all);
  }

  /** This form with a fault of its own. */
  public Form faulted(String path, String sentence) {
    List<Fault> all = new ArrayList<>(faults);
    all.add(new Fault(path, sentence, sentence));
    return new Form(shape, units, values, all);
  }

  /** True when something is wrong. */
  public boolean faulty() {
    return !faults.isEmpty();
  }

  /** What stands in a field; empty where nothing does. */
  public String value(String path) {
    List<String> typed = values.getOrDefault(path, List.of());
    return typed.isEmpty() ? "" : typed.get(0);
  }

  /** True when a choice of a field is taken. */
  public boolean taken(String path, String choice) {
    return values.getOrDefault(path, List.of()).contains(choice);
  }

  /** Whether something stands in a part of the form, or is wrong there. */
  public boolean isUsed(FormShape.Part part) {
    return part.groups().stream()
        .flatMap(group -> group.fields().stream())
        .anyMatch(field -> values.containsKey(field.path()) || !faultsOf(field).isEmpty());
  }

  /** What is wrong with a field, a line for each fault; empty where nothing is. */
  public String fault(Field field) {
    return String.join("\n", faultsOf(field));
  }

  /** What is wrong with a field, one sentence each. */
  public List<String> faultsOf(Field field) {
    return faults.stream()
        .filter(fault -> belongs(fault, field))
        .map(fault -> capital(fault.sentence()))
        .toList();
  }

  /** What is wrong with the form as a whole, or with what it does not show. */
  public List<String> otherFaults() {
    return faults.stream()
        .filter(fault -> shape.fields().stream().noneMatch(field -> belongs(fault, field)))
        .map(
            fault ->
                fault.field().isEmpty() ? fault.placed() : fault.field() + ": " + fault.sentence())
        .map(Form::capital)
        .toList();
  }

  /** The fields that are wrong, in order. */
  public List<Field> faultyFields() {
    return shape.fields().stream().filter(field -> !fault(field).isEmpty()).toList();
  }

  /** The JSON document that the form makes, for the reader of its kind. */
  public SourceText document(String name) {
    return new SourceText(name, FormDocument.write(this, "{}"));
  }

  /**
   * The JSON document that the form makes of another: fields that it does not show stay, and a
   * number that was not touched stays exactly as it was whatever its unit.
   */
  public SourceText document(String name, String before) {
    return new SourceText(name, FormDocument.write(this, before));
  }

  /** A fault of a list's item stands beside the list's one field. */
  private static boolean belongs(Fault fault, Field field) {
    String path = fault.field();
    return field.type() != Field.Type.HIDDEN
        && (path.equals(field.path()) || path.startsWith(field.path() + "["));
  }

  /** The name of a file that begins a sentence stays as it is. */
  private static String capital(String sentence) {
    return sentence.isEmpty() || sentence.matches("(?s)[^ ]+\\.\\w+[:,] .*")
        ? sentence
        : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
