package leafturn.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.quantity.DisplayNumber;
import leafturn.records.InputException;
import leafturn.records.NearestName;
import leafturn.reports.JsonReport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells where the numbers come from. */
@Command(
    name = "sources",
    description = "Tells each parameter's value, range, source and status.",
    footer = {"", "Example: leafturn sources gmax"})
final class SourcesCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      description = "Short name of a parameter; all of them when it is left out.")
  private @Nullable String name;

  @Option(names = "--json", description = "Prints one JSON document.")
  private boolean json;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<Parameter> rows = rows();
    if (json) {
      out.println(JsonReport.of(Map.of("parameters", rows.stream().map(this::document).toList())));
      return ExitCode.DONE;
    }
    String previous = "";
    for (Parameter row : rows) {
      if (!row.name().equals(previous)) {
        out.println((previous.isEmpty() ? "" : "\n") + row.name() + ": " + row.meaning());
        previous = row.name();
      }
      out.println(line(row));
    }
    return ExitCode.DONE;
  }

  private List<Parameter> rows() {
    if (name == null) {
      return ParameterTable.rows();
    }
    List<Parameter> rows =
        ParameterTable.rows().stream().filter(row -> row.name().equals(name)).toList();
    if (rows.isEmpty()) {
      String near =
          NearestName.of(name, ParameterTable.names())
              .map(found -> "did you mean " + found + "?")
              .orElse("'leafturn sources' lists them all.");
      throw new InputException("There is no parameter '%s'; %s".formatted(name, near));
    }
    return rows;
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
