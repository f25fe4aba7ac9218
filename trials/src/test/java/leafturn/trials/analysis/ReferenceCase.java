package leafturn.trials.analysis;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import leafturn.trials.analysis.data.TrialTable;

/** Data and expected results of one reference case; its README.md names where they are from. */
public final class ReferenceCase {
  private final String name;
  private final JsonNode expected;

  public ReferenceCase(String name) {
    this.name = name;
    try (InputStream stream = open("expected.json")) {
      expected = new ObjectMapper().readTree(stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A value by its path, parts parted by "/". */
  public JsonNode at(String path) {
    JsonNode found = expected.at("/" + path);
    if (found.isMissingNode()) {
      throw new IllegalArgumentException(name + " has no " + path);
    }
    return found;
  }

  public double number(String path) {
    return at(path).asDouble();
  }

  /** The numbers of one field of all objects of a list. */
  public double[] numbers(String path, String field) {
    List<Double> values = new ArrayList<>();
    at(path).forEach(node -> values.add(node.get(field).asDouble()));
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  public double[] numbers(String path) {
    List<Double> values = new ArrayList<>();
    at(path).forEach(node -> values.add(node.asDouble()));
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  public TrialTable table() {
    return tableWithout(Set.of());
  }

  /** The data without some rows, counted from 1. */
  public TrialTable tableWithout(Set<Integer> left) {
    try (InputStream stream = open("data.csv")) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return table(text, left);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A table from CSV text with a header. */
  public static TrialTable table(String csv) {
    return table(csv, Set.of());
  }

  private static TrialTable table(String csv, Set<Integer> left) {
    List<CsvRecord> records = CsvReader.builder().ofCsvRecord(csv).stream().toList();
    List<List<String>> rows = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    for (int i = 1; i < records.size(); i++) {
      if (!left.contains(i)) {
        rows.add(records.get(i).getFields());
        lines.add((int) records.get(i).getStartingLineNumber());
      }
    }
    return new TrialTable(records.get(0).getFields(), rows, lines);
  }

  private InputStream open(String file) {
    return Objects.requireNonNull(
        ReferenceCase.class.getResourceAsStream("/reference/" + name + "/" + file), name);
  }
}
