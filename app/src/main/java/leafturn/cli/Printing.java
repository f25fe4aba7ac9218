package leafturn.cli;

import java.util.List;
import java.util.function.Supplier;
import leafturn.reports.JsonReport;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints what a command tells, as text or as JSON: mix it in. */
final class Printing {
  @Option(names = "--json", description = "Prints one JSON document.")
  private boolean json;

  @Spec(Spec.Target.MIXEE)
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec command;

  /** Prints the document where JSON was asked for, else the lines. */
  void print(Supplier<Object> document, Supplier<List<String>> lines) {
    List<String> told = json ? List.of(JsonReport.of(document.get())) : lines.get();
    told.forEach(command.commandLine().getOut()::println);
  }
}
