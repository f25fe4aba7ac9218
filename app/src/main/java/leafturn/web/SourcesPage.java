package leafturn.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.quantity.DisplayNumber;
import leafturn.reports.QuantityWords;

/** Every number the model rests on, with its range, where it comes from and how far to trust it. */
public final class SourcesPage {
  private static final Map<String, String> STATUS_MEANINGS =
      Map.of(
          "published", "printed in the source named",
          "derived", "worked out from what the source prints",
          "tuned", "set so that the model meets the studies named",
          "assumed", "our judgement, to be changed where you know better",
          "management", "what is done on a lawn unless its description says otherwise");

  private final List<Parameter> parameters;

  private SourcesPage(List<Parameter> parameters) {
    this.parameters = parameters;
  }

  static SourcesPage ofTheModel() {
    return new SourcesPage(ParameterTable.rows());
  }

  /**
   * One line of the table: the values of a parameter that share their source.
   *
   * @param first the parameter as it stands for the first of the grasses
   * @param values value, range and grass, one entry each
   */
  public record Line(Parameter first, List<Value> values) {}

  /**
   * A value with what it holds for.
   *
   * @param grass the grass, or empty where the value holds for all
   */
  public record Value(String words, String range, String grass) {}

  /** How many values have which standing, in words. */
  public List<String> standings() {
    Map<String, Long> counts =
        parameters.stream()
            .collect(Collectors.groupingBy(Parameter::status, TreeMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
        .map(entry -> entry.getValue() + " " + entry.getKey() + meaning(entry.getKey()))
        .toList();
  }

  public List<Line> lines() {
    Map<List<String>, Line> lines = new LinkedHashMap<>();
    for (Parameter row : parameters) {
      lines
          .computeIfAbsent(
              List.of(row.name(), row.source(), row.status()),
              key -> new Line(row, new ArrayList<>()))
          .values()
          .add(value(row));
    }
    return List.copyOf(lines.values());
  }

  private static String meaning(String status) {
    String meaning = STATUS_MEANINGS.get(status);
    return meaning == null ? "" : ": " + meaning;
  }

  private static Value value(Parameter row) {
    String unit = unit(row.unit());
    String words = DisplayNumber.plain(row.value());
    String range = DisplayNumber.plain(row.low()) + " to " + DisplayNumber.plain(row.high());
    return new Value(
        unit.isEmpty() ? words : words + QuantityWords.THIN + unit,
        range,
        row.species() == null ? "" : row.species().commonName());
  }

  private static String unit(String unit) {
    return unit.equals("-") ? "" : unit.replace("degC", "°C").replace("m2", "m²");
  }
}
