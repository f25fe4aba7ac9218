package leafturn.web.form;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.FaultUnits;
import leafturn.records.Faults.Fault;

/**
 * Faults in the words of a form. A reader of documents names fields by their paths and tells limits
 * in the units that are kept; whoever fills in the form knows labels, and units of their own.
 */
final class FaultWords {
  private static final Pattern CAPITAL_WITHIN = Pattern.compile("[a-z][A-Z]");

  /** A field of a row of a list: the row with its stop is its first group. */
  private static final Pattern ROW = Pattern.compile("(.*\\[\\d{1,3}]\\.)[^.\\[\\]]+");

  private final FormShape shape;
  private final Units units;

  FaultWords(FormShape shape, Units units) {
    this.shape = shape;
    this.units = units;
  }

  Fault of(Fault fault) {
    String sentence = fault.sentence();
    for (Field field : shape.fields()) {
      sentence = labelled(sentence, field.path(), field);
      sentence = labelled(sentence, field.path().replaceFirst(".*\\.", ""), field);
    }
    return new Fault(shown(fault.field()), inUnits(sentence, fault.field()), fault.placed());
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
