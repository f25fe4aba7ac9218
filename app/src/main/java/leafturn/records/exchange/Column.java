package leafturn.records.exchange;

import java.util.List;
import java.util.Locale;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * A column that a table of a certain kind may have, and the field of a document it fills.
 * Immutable; the methods that set something give a changed copy.
 *
 * @param name its name in our own tables
 * @param document which of the documents of a row its field belongs to
 * @param path where its value stands in that document; empty for a column that only tells what a
 *     row belongs to
 * @param type how its cells are written
 * @param meaning what it holds, in words
 * @param measure what its numbers measure, where a reader in the US has another unit; or null
 * @param otherNames other names it may have
 * @param usNames names it has when its numbers are in the units of the US
 */
public record Column(
    String name,
    String document,
    String path,
    Type type,
    String meaning,
    @Nullable Measure measure,
    List<String> otherNames,
    List<String> usNames) {

  /** How cells are written. */
  public enum Type {
    TEXT,
    NUMBER,
    /** A number from 0 to 1, or per cent. */
    FRACTION,
    /** "returned", "collected" or the fraction returned. */
    CLIPPINGS,
    DATE,
    TIME,
    /** A day that comes back every year, as MM-DD or as a date whose year does not count. */
    DAY_OF_YEAR,
    YES_NO,
    /** "yes", or empty for no. */
    YES,
    /** Several words with semicolons between them. */
    WORDS,
    /** Further grasses of a mixture, each with its per cent, with semicolons between them. */
    MIXTURE
  }

  public Column {
    otherNames = List.copyOf(otherNames);
    usNames = List.copyOf(usNames);
  }

  static Column of(String document, String name, String path, Type type, String meaning) {
    return new Column(name, document, path, type, meaning, null, List.of(), List.of());
  }

  /** A column that tells what a row belongs to. */
  static Column place(String name, String meaning) {
    return of("", name, "", Type.TEXT, meaning);
  }

  /** This column with numbers that are metric or, under another name, in the units of the US. */
  Column measuring(Measure what, String... namesInUsUnits) {
    return new Column(
        name, document, path, type, meaning, what, otherNames, List.of(namesInUsUnits));
  }

  /** This column, known under other names too. */
  Column orCalled(String... names) {
    return new Column(name, document, path, type, meaning, measure, List.of(names), usNames);
  }

  /** The units a heading tells: null when it is not the heading of this column. */
  @Nullable Units unitsOf(String heading) {
    String plain =
        heading
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "_")
            .replaceAll("^_|_$", "");
    if (plain.equals(name) || otherNames.contains(plain)) {
      return Units.METRIC;
    }
    return usNames.contains(plain) ? Units.US : null;
  }

  /** The unit of its numbers; empty where they have none or it is the same for everyone. */
  public String unit(Units units) {
    return measure == null ? "" : measure.unit(units).symbol();
  }
}
