package leafturn.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.RuleEntry;
import leafturn.advice.evidence.Shortcoming;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.reports.TableUnit;
import leafturn.trials.power.Spread;

/**
 * Every number the model and the call rest on, with its range, where it comes from and how far to
 * trust it; and what the model gets wrong all the same.
 */
public final class SourcesPage {
  private static final Map<String, String> STATUS_MEANINGS =
      Map.of(
          "published", "printed in the source named",
          "derived", "worked out from what the source prints",
          "tuned", "set so that the model meets the studies named",
          "assumed", "our judgement, to be changed where you know better",
          "common practice", "done so in the trade, with no source to name",
          "management", "what is done on a lawn unless its description says otherwise");

  private final List<Parameter> parameters;
  private final List<RuleEntry> rules;

  private final Units units;

  private SourcesPage(List<Parameter> parameters, List<RuleEntry> rules, Units units) {
    this.parameters = parameters;
    this.rules = rules;
    this.units = units;
  }

  static SourcesPage ofTheModel(Units units) {
    return new SourcesPage(ParameterTable.rows(), CallRules.standard().entries(), units);
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
   * @param words the value as it is kept
   * @param grass the grass, or empty where the value holds for all
   * @param readers value and range in the reader's own unit where that is another one, else empty
   */
  public record Value(String words, String range, String grass, String readers) {}

  /**
   * One rule or figure of the call.
   *
   * @param limit its limit or value, empty where it has none
   * @param range what it may be set to, empty where it may not be set
   * @param readers both in the reader's own unit where that is another one, else empty
   * @param place where it stands in the ranking
   */
  public record RuleLine(
      RuleEntry entry, String limit, String range, String readers, String place) {}

  /** What a rule says, in the words of the reader. */
  public String meaning(RuleLine line) {
    return units.told(line.entry().meaning());
  }

  /** How many values have which standing, in words. */
  public List<String> standings() {
    Map<String, Long> counts =
        Stream.concat(
                Stream.concat(
                    parameters.stream().map(Parameter::status),
                    Spread.rows().stream().map(Spread::status)),
                rules.stream().map(RuleEntry::status))
            .collect(Collectors.groupingBy(status -> status, TreeMap::new, Collectors.counting()));
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

  /** The rules of the call, heaviest first, and the figures they reckon with. */
  public List<RuleLine> rules() {
    return rules.stream().map(this::rule).toList();
  }

  private RuleLine rule(RuleEntry entry) {
    TableUnit unit = new TableUnit(entry.unit());
    return new RuleLine(
        entry,
        RulesPage.threshold(entry, entry.threshold(), Units.METRIC),
        entry.editable() ? unit.range(entry.low(), entry.high(), Units.METRIC) : "",
        readers(unit, entry.threshold(), entry.low(), entry.high()),
        entry.rank() > 0 ? "rule " + entry.rank() : "a figure the rules use");
  }

  /** How much outcomes of trials vary. */
  public List<Spread> spreads() {
    return Spread.rows();
  }

  /** A number of the table of spreads. */
  public String number(double value) {
    return DisplayNumber.plain(value);
  }

  /** What the model is known to get wrong, its figures in the reader's units too. */
  public List<Shortcoming> shortcomings() {
    SourceFigures figures = new SourceFigures(units);
    return Shortcoming.all().stream()
        .map(
            wrong ->
                new Shortcoming(
                    wrong.name(),
                    figures.in(wrong.title()),
                    figures.in(wrong.reason()),
                    wrong.sources()))
        .toList();
  }

  private static String meaning(String status) {
    String meaning = STATUS_MEANINGS.get(status);
    return meaning == null ? "" : ": " + meaning;
  }

  private Value value(Parameter row) {
    TableUnit unit = new TableUnit(row.unit());
    return new Value(
        unit.quantity(row.value(), Units.METRIC),
        unit.range(row.low(), row.high(), Units.METRIC),
        row.species() == null ? "" : row.species().commonName(),
        readers(unit, row.value(), row.low(), row.high()));
  }

  private String readers(TableUnit unit, double value, double low, double high) {
    Measure measure = unit.measure();
    if (measure == null
        || measure.unit(units) == measure.unit(Units.METRIC)
        || Double.isNaN(value)) {
      return "";
    }
    String range = Double.isNaN(low) ? "" : " (" + unit.range(low, high, units) + ")";
    return unit.quantity(value, units) + range;
  }
}
