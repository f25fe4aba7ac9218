package leafturn.trials.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import leafturn.quantity.DataTable;

/**
 * How much one part of an outcome varies where arms do not differ: a starting value for the size of
 * a trial.
 *
 * @param outcome as soil potassium
 * @param part what varies
 * @param value standard deviation, or standard deviation over mean where the unit is CV, or a
 *     correlation
 * @param unit CV, a unit of the outcome, or "-"
 * @param low low end of the plausible range
 * @param high high end of the plausible range
 * @param meaning what it is
 * @param source where the value comes from
 * @param references keys of the source in docs/references.md; may be empty
 * @param status published, derived, assumed or common practice
 */
public record Spread(
    String outcome,
    Part part,
    double value,
    String unit,
    double low,
    double high,
    String meaning,
    String source,
    List<String> references,
    String status) {
  private static final List<Spread> ROWS = read();

  /** What varies. */
  public enum Part {
    PLOT("plot"),
    PLOT_BY_DATE("plotByDate"),
    DATE_CORRELATION("dateCorrelation"),
    CORE("core"),
    LABORATORY("laboratory");

    private final String word;

    Part(String word) {
      this.word = word;
    }

    /** The word in files. */
    public String word() {
      return word;
    }
  }

  public Spread {
    references = List.copyOf(references);
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "%s of %s is %s, outside its range".formatted(part.word, outcome, value));
    }
  }

  /** Every starting value in the order of the file. */
  public static List<Spread> rows() {
    return ROWS;
  }

  /** The outcomes that have starting values. */
  public static Set<String> outcomes() {
    Set<String> outcomes = new LinkedHashSet<>();
    ROWS.forEach(row -> outcomes.add(row.outcome));
    return outcomes;
  }

  /** The starting values of an outcome; none where it is unknown. */
  public static List<Spread> of(String outcome) {
    return ROWS.stream().filter(row -> row.outcome.equals(outcome)).toList();
  }

  /** A name for lists: soil-potassium-core. */
  public String name() {
    return outcome.replace(' ', '-') + '-' + part.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether the outcome varies by a share of itself and is looked at as logarithm. */
  public boolean isRelative() {
    return unit.equals("CV");
  }

  /** The variance that a value of this part stands for; a correlation stands for itself. */
  public double asVariance(double ofValue) {
    if (part == Part.DATE_CORRELATION) {
      return ofValue;
    }
    return isRelative() ? LogScale.variance(ofValue) : ofValue * ofValue;
  }

  private static List<Spread> read() {
    List<Spread> rows = new ArrayList<>();
    for (DataTable.Row row : DataTable.ofResource(Spread.class, "spread.tsv").rows()) {
      String references = row.text("reference");
      rows.add(
          new Spread(
              row.requiredText("outcome"),
              row.constant("part", Part.class),
              row.requiredNumber("value"),
              row.requiredText("unit"),
              row.requiredNumber("low"),
              row.requiredNumber("high"),
              row.requiredText("meaning"),
              row.requiredText("source"),
              references.isEmpty() ? List.of() : List.of(references.split(" ", -1)),
              row.requiredText("status")));
    }
    return List.copyOf(rows);
  }
}
