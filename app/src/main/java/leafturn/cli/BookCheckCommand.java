package leafturn.cli;

import java.io.PrintWriter;
import java.time.InstantSource;
import java.util.concurrent.Callable;
import leafturn.records.archive.CheckResult;
import leafturn.records.archive.Keeping;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Looks for damage in a book. */
@Command(
    name = "check",
    description = {
      "Goes through all that a book holds and tells every damage, one line each.",
      "The exit code is 1 when there is any.",
      ""
    },
    footer = {"", "Example: leafturn book check --book garden-book"})
final class BookCheckCommand implements Callable<Integer> {
  @Mixin private final BookOption book = new BookOption();

  @Option(names = "--json", description = "Prints one JSON document.")
  private boolean json;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    CheckResult result = Keeping.check(book.place(), InstantSource.system());
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(result.write());
    } else {
      result.damages().forEach(out::println);
      out.println(book.place().shown() + ": " + result.summary() + ".");
    }
    return result.sound() ? ExitCode.DONE : ExitCode.NO;
  }
}
