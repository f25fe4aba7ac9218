package leafturn.web.form;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.FaultUnits;
import leafturn.records.Faults;
import leafturn.records.Faults.Fault;

/**
 * Faults in the words of a form. A reader of documents names fields by their paths and tells limits
 * in the units that are kept; whoever fills in the form knows labels, and units of their own.
 */
final class FaultWords {
  private static final Pattern OUT_OF_RANGE = Pattern.compile("^\\S+(?= is out of range)");
  private static final Pattern CAPITAL_WITHIN = Pattern.compile("[a-z][A-Z]");

  /** A field of a row of a list: the row with its stop is its first group. */
  private static final Pattern ROW = Pattern.compile("(.*\\[\\d{1,3}]\\.)[^.\\[\\]]+");

  private final Form form;
  private final FormShape shape;
  private final Units units;

  FaultWords(Form form) {
    this.form = form;
    this.shape = form.shape();
    this.units = form.units();
  }

  Fault of(Fault fault) {
    String sentence = fault.sentence();
    for (Field field : shape.fields()) {
      sentence = labelled(sentence, field.path(), field);
      sentence = labelled(sentence, field.path().replaceFirst(".*\\.", ""), field);
    }
    String told = inUnits(asTyped(sentence, fault.field()), fault.field());
    return new Fault(shown(fault.field()), UsDates.told(told, units), fault.placed());
  }

  /** A share that was typed in per cent is told so, not as the number that it was taken for. */
  private String asTyped(String sentence, String path) {
    String typed = form.value(path);
    return typed.endsWith("%")
        ? OUT_OF_RANGE
            .matcher(sentence)
            .replaceFirst(Matcher.quoteReplacement(Faults.quoted(typed)))
        : sentence;
  }

  /** The first field of its row stands for what a row lacks and the form does not show. */
  private String shown(String path) {
    Matcher row = ROW.matcher(path);
    if (!row.matches() || shape.field(path).isPresent()) {
      return path;
    }
    return shape.fields().stream()
        .map(Field::path)
        .filter(each -> each.startsWith(row.group(1)))
        .findFirst()
        .orElse(path);
  }

  private static String labelled(String sentence, String name, Field field) {
    return CAPITAL_WITHIN.matcher(name).find()
        ? Pattern.compile("(?<![\\w.])" + Pattern.quote(name) + "\\b")
            .matcher(sentence)
            .replaceAll(Matcher.quoteReplacement("“" + field.label() + "”"))
        : sentence;
  }

  private String inUnits(String sentence, String path) {
    Optional<Measure> measure =
        shape
            .field(path.replaceAll("\\[\\d+]$", ""))
            .or(() -> shape.field(path))
            .flatMap(field -> Optional.ofNullable(field.measure()));
    return FaultUnits.told(sentence, measure.orElse(null), units);
  }
}
