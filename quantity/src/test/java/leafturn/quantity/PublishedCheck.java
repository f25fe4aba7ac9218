package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;

/**
 * One row of a check file: a function, its inputs, and the value it must give, with the source of
 * that value. Files lie in {@code src/test/resources/checks}; columns are {@code function}, one per
 * input with its unit in the name, {@code expected}, {@code tolerance}, {@code source}, {@code
 * status}.
 */
public final class PublishedCheck {
  private static final Set<String> STATUSES =
      Set.of("seen", "memory", "computed", "derived", "tuned", "assumed");

  private final String file;
  private final NamedCsvRecord row;

  private PublishedCheck(String file, NamedCsvRecord row) {
    this.file = file;
    this.row = row;
    if (text("source").isBlank() || !STATUSES.contains(text("status"))) {
      throw new IllegalArgumentException(
          "%s line %d needs a source, and a status out of %s"
              .formatted(file, row.getStartingLineNumber(), STATUSES));
    }
  }

  /** The rows of a check file on the class path of a test. */
  public static List<PublishedCheck> of(Class<?> test, String file) {
    try (InputStream stream = test.getResourceAsStream("/checks/" + file)) {
      if (stream == null) {
        throw new IllegalArgumentException("there is no check file " + file);
      }
      try (CsvReader<NamedCsvRecord> reader =
          CsvReader.builder()
              .ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
        return reader.stream().map(row -> new PublishedCheck(file, row)).toList();
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** Name of the function to check. */
  public String function() {
    return text("function");
  }

  /** Text of an input. */
  public String text(String column) {
    return row.getField(column);
  }

  /** True when the row has a value of this input. */
  public boolean has(String column) {
    return row.findField(column).filter(text -> !text.isEmpty()).isPresent();
  }

  /** Number of an input; fails when the row leaves it out. */
  public double in(String column) {
    if (!has(column)) {
      throw new IllegalArgumentException(this + " has no value of " + column);
    }
    return Double.parseDouble(text(column));
  }

  /** Whole number of an input. */
  public int wholeIn(String column) {
    return Integer.parseInt(text(column));
  }

  /** The row names a function its test does not know. */
  public IllegalArgumentException unknownFunction() {
    return new IllegalArgumentException(this + ": the test does not know this function");
  }

  /** Fails, naming row and source, unless a computed value agrees within the row's tolerance. */
  public void agreesWith(double computed) {
    assertThat(computed).as(toString()).isCloseTo(in("expected"), within(in("tolerance")));
  }

  @Override
  public String toString() {
    return "%s line %d, %s, source: %s (%s)"
        .formatted(file, row.getStartingLineNumber(), function(), text("source"), text("status"));
  }
}
