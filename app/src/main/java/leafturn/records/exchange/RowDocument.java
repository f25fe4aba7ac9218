package leafturn.records.exchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.records.FaultUnits;
import leafturn.records.Faults;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.table.Table;
import org.jspecify.annotations.Nullable;

/**
 * The JSON document that some cells of a row make, for the reader that checks documents of its
 * kind. What that reader finds wrong is told of the cells.
 */
final class RowDocument {
  private final Table.Row row;
  private final String name;
  private final Reading reading;
  private final Findings findings;
  private final ObjectNode json = JsonNodeFactory.instance.objectNode();
  private final Map<String, String> faultOfPath = new HashMap<>();
  private final Map<String, String> typed = new HashMap<>();

  private RowDocument(String name, Table.Row row, Reading reading, Findings findings) {
    this.name = name;
    this.row = row;
    this.reading = reading;
    this.findings = findings;
  }

  /** The document of a name that a row of a table makes. */
  static RowDocument of(String name, Table.Row row, Findings findings) {
    Reading reading = findings.reading();
    RowDocument document = new RowDocument(name, row, reading, findings);
    CellReader cells = new CellReader(findings.table());
    reading
        .picks()
        .forEach(
            (place, pick) -> {
              String text = row.cells().get(place);
              String broken = row.faults().get(place);
              boolean wanted = pick.column().document().equals(name);
              if (wanted && (broken != null || !text.isEmpty())) {
                document.take(pick, text, broken, cells);
              }
            });
    return document;
  }

  private void take(Reading.Pick pick, String text, @Nullable String broken, CellReader cells) {
    String path = pick.column().path();
    typed.put(path, text);
    CellReader.Cell cell = cells.read(pick, text);
    ObjectNode place = json;
    String[] steps = path.split("\\.");
    for (int i = 0; i < steps.length - 1; i++) {
      place = place.withObjectProperty(steps[i]);
    }
    place.set(steps[steps.length - 1], cell.value());
    String fault = broken == null ? cell.fault() : broken;
    if (fault != null) {
      faultOfPath.put(path, fault);
      findings.add(row, pick.column(), fault);
    }
  }

  boolean isEmpty() {
    return json.isEmpty();
  }

  /** Fills a field that does not come from a cell. */
  void put(String field, String value) {
    json.put(field, value);
  }

  boolean has(String field) {
    return json.has(field);
  }

  ObjectNode json() {
    return json;
  }

  /** What the reader makes of the document; null after faults, which are told of the cells. */
  <C> @Nullable C read(Function<SourceText, C> reader) {
    try {
      C content = reader.apply(new SourceText(name, json.toString()));
      return faultOfPath.isEmpty() ? content : null;
    } catch (InputException e) {
      e.faultsByField().forEach(this::tell);
      return null;
    }
  }

  /** Tells what a reader finds wrong with the cells there are, not what is missing. */
  void check(Consumer<SourceText> reader) {
    try {
      reader.accept(new SourceText(name, json.toString()));
    } catch (InputException e) {
      e.faultsByField().stream().filter(this::isOfACell).forEach(this::tell);
    }
  }

  private boolean isOfACell(Fault fault) {
    String path = fault.field().replaceFirst("\\[.*", "");
    return !path.isEmpty() && !json.at("/" + path.replace('.', '/')).isMissingNode();
  }

  private void tell(Fault fault) {
    String path = fault.field().replaceFirst("\\[.*", "");
    if (faultOfPath.containsKey(path)) {
      return;
    }
    Column column = column(path);
    if (column == null) {
      findings.add(
          row, inColumnNames(path.isEmpty() ? fault.sentence() : path + ": " + fault.sentence()));
    } else if (column.type() == Column.Type.CLIPPINGS) {
      String sentence = fault.sentence().replaceFirst("give a number.*", CellReader.CLIPPINGS);
      findings.add(row, column, asTyped(path, sentence));
    } else {
      String sentence =
          FaultUnits.told(fault.sentence(), column.measure(), reading.unitsOf(column.name()));
      findings.add(row, column, inColumnNames(asTyped(path, sentence)));
    }
  }

  /** A per cent is read as a fraction, but whoever typed it looks for what they typed. */
  private String asTyped(String path, String sentence) {
    String text = typed.getOrDefault(path, "");
    return text.endsWith("%")
        ? sentence.replaceFirst(
            "^\\S+(?= is out of range)", Matcher.quoteReplacement(Faults.quoted(text)))
        : sentence;
  }

  private @Nullable Column column(String path) {
    return columns().stream().filter(column -> column.path().equals(path)).findFirst().orElse(null);
  }

  /** Readers speak of the fields of documents; whoever wrote the table knows its columns. */
  private String inColumnNames(String sentence) {
    String words = sentence;
    for (Column column : columns()) {
      String field = column.path().substring(column.path().lastIndexOf('.') + 1);
      // Fields of one plain word are words of the sentence as well.
      if (!field.equals(field.toLowerCase(Locale.ROOT))) {
        words =
            words.replaceAll("(?<![\\w\"])" + Pattern.quote(field) + "(?![\\w\"])", column.name());
      }
    }
    return words.replace("leave it out", "empty it").replace("leave the field out", "empty it");
  }

  private List<Column> columns() {
    return reading.columns().stream()
        .filter(column -> column.document().equals(name) && !column.path().isEmpty())
        .toList();
  }
}
