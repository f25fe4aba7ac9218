package leafturn.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import leafturn.advice.call.CallRule;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.RuleEntry;
import leafturn.advice.evidence.Shortcoming;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.ShareWords;
import leafturn.records.InputException;
import leafturn.records.NearestName;
import leafturn.reports.Paragraph;
import leafturn.trials.power.Spread;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells where the numbers come from. */
@Command(
    name = "sources",
    description = {
      "Tells the value, range, source and status of each parameter and rule,",
      "how much outcomes of trials vary, and what the model gets wrong.",
      ""
    },
    footer = {"", "Example: leafturn sources gmax"})
final class SourcesCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      description =
          "Short name of a parameter, rule, spread or shortcoming; all of them when left out.")
  private @Nullable String name;

  @Mixin private final Printing printing = new Printing();

  @Mixin private final HelpOption help = new HelpOption();

  @Override
  public Integer call() {
    List<Parameter> parameters =
        ParameterTable.rows().stream().filter(row -> wanted(row.name())).toList();
    List<RuleEntry> rules =
        CallRules.standard().entries().stream().filter(row -> wanted(row.rule().id())).toList();
    List<Spread> spreads = Spread.rows().stream().filter(row -> wanted(row.name())).toList();
    List<Shortcoming> shortcomings =
        Shortcoming.all().stream().filter(row -> wanted(row.name())).toList();
    if (parameters.isEmpty() && rules.isEmpty() && spreads.isEmpty() && shortcomings.isEmpty()) {
      throw unknown(String.valueOf(name));
    }
    printing.print(
        () -> document(parameters, rules, spreads, shortcomings),
        () -> lines(parameters, rules, spreads, shortcomings));
    return ExitCode.DONE;
  }

  private Map<String, Object> document(
      List<Parameter> parameters,
      List<RuleEntry> rules,
      List<Spread> spreads,
      List<Shortcoming> shortcomings) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("parameters", parameters.stream().map(this::document).toList());
    document.put("rules", rules.stream().map(SourcesCommand::document).toList());
    document.put("spreads", spreads.stream().map(SourcesCommand::document).toList());
    document.put("shortcomings", shortcomings);
    return document;
  }

  private List<String> lines(
      List<Parameter> parameters,
      List<RuleEntry> rules,
      List<Spread> spreads,
      List<Shortcoming> shortcomings) {
    List<String> lines = lines(parameters, rules);
    if (name == null) {
      lines.add("\nHow much outcomes of trials vary: starting values for their size");
    }
    spreads.forEach(spread -> add(spread, lines));
    if (name == null) {
      lines.add("\nWhat the model gets wrong; 'leafturn validate' tells by how much");
    }
    shortcomings.forEach(shortcoming -> add(shortcoming, lines));
    return lines;
  }

  private boolean wanted(String candidate) {
    return name == null || name.equals(candidate);
  }

  private static InputException unknown(String name) {
    List<String> names = new ArrayList<>(ParameterTable.names());
    CallRules.standard().entries().forEach(entry -> names.add(entry.rule().id()));
    Spread.rows().forEach(spread -> names.add(spread.name()));
    Shortcoming.all().forEach(shortcoming -> names.add(shortcoming.name()));
    String near =
        NearestName.of(name, names)
            .map(found -> "did you mean " + found + "?")
            .orElse("'leafturn sources' lists them all.");
    return new InputException(
        "There is no parameter, rule, spread or shortcoming '%s'; %s".formatted(name, near));
  }

  private static List<String> lines(List<Parameter> parameters, List<RuleEntry> rules) {
    List<String> lines = new ArrayList<>();
    String previous = "";
    for (Parameter row : parameters) {
      if (!row.name().equals(previous)) {
        lines.add((previous.isEmpty() ? "" : "\n") + row.name() + ": " + row.meaning());
        previous = row.name();
      }
      lines.add(line(row));
    }
    for (RuleEntry rule : rules) {
      lines.add((lines.isEmpty() ? "" : "\n") + rule.rule().id() + ": " + rule.meaning());
      lines.add(line(rule));
    }
    return lines;
  }

  private static void add(Spread spread, List<String> lines) {
    lines.add("%s%s: %s".formatted(lines.isEmpty() ? "" : "\n", spread.name(), spread.meaning()));
    lines.add(
        "  %s %s (%s to %s); %s; used for the size of trials; %s"
            .formatted(
                DisplayNumber.plain(spread.value()),
                spread.unit(),
                DisplayNumber.plain(spread.low()),
                DisplayNumber.plain(spread.high()),
                spread.status(),
                spread.source()));
  }

  private static Map<String, Object> document(Spread spread) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("name", spread.name());
    document.put("outcome", spread.outcome());
    document.put("part", spread.part().word());
    document.put("value", spread.value());
    document.put("unit", spread.unit());
    document.put("low", spread.low());
    document.put("high", spread.high());
    document.put("meaning", spread.meaning());
    document.put("source", spread.source());
    document.put("status", spread.status());
    return document;
  }

  private static void add(Shortcoming shortcoming, List<String> lines) {
    lines.add(
        "%s%s: %s".formatted(lines.isEmpty() ? "" : "\n", shortcoming.name(), shortcoming.title()));
    lines.addAll(Paragraph.of("  ", shortcoming.reason()));
    lines.addAll(
        Paragraph.of("  ", "Held against " + String.join("; ", shortcoming.sources()) + "."));
  }

  private static String line(RuleEntry rule) {
    String value =
        Double.isNaN(rule.threshold())
            ? ""
            : "%s (%s to %s); "
                .formatted(
                    rule.rule() == CallRule.ONE_THIRD
                        ? ShareWords.of(rule.threshold())
                        : DisplayNumber.plain(rule.threshold()) + " " + rule.unit(),
                    DisplayNumber.plain(rule.low()),
                    DisplayNumber.plain(rule.high()));
    String used = rule.rank() > 0 ? "rule " + rule.rank() + " of the advice" : "the advice";
    return "  %s%s; used for %s; %s".formatted(value, rule.status(), used, rule.source());
  }

  private static Map<String, Object> document(RuleEntry rule) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("name", rule.rule().id());
    document.put("rank", rule.rank() > 0 ? rule.rank() : null);
    document.put("threshold", rule.threshold());
    document.put("unit", rule.unit());
    document.put("low", rule.low());
    document.put("high", rule.high());
    document.put("meaning", rule.meaning());
    document.put("source", rule.source());
    document.put("status", rule.status());
    return document;
  }

  private static String line(Parameter row) {
    return "  %s%s %s (%s to %s); %s; used for %s; %s"
        .formatted(
            row.species() == null ? "" : row.species().commonName() + ": ",
            DisplayNumber.plain(row.value()),
            row.unit(),
            DisplayNumber.plain(row.low()),
            DisplayNumber.plain(row.high()),
            row.status(),
            row.used(),
            row.source());
  }

  private Map<String, Object> document(Parameter row) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("name", row.name());
    if (row.species() != null) {
      document.put("grass", row.species().commonName());
    }
    document.put("value", row.value());
    document.put("unit", row.unit());
    document.put("low", row.low());
    document.put("high", row.high());
    document.put("meaning", row.meaning());
    document.put("usedFor", row.used());
    document.put("source", row.source());
    document.put("status", row.status());
    return document;
  }
}
