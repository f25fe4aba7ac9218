package leafturn.cli;

import java.io.PrintWriter;
import java.net.URI;
import java.util.concurrent.Callable;
import leafturn.advice.call.RoundOfLawns;
import leafturn.records.InputException;
import leafturn.records.RoundCalls;
import leafturn.reports.RoundText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows the invented round that comes with the program. */
@Command(
    name = "demo",
    description = {
      "Shows an adviser's round: invented lawns under weather that was measured.",
      "Serves it as pages to this machine alone, until you stop it with Ctrl-C.",
      ""
    },
    footer = {"", "Example: leafturn demo --print"})
public final class DemoCommand implements Callable<Integer> {
  private static final int HIGHEST_PORT = 65535;

  /** Serves a round as pages until the program is stopped. */
  @FunctionalInterface
  public interface Serving {
    /**
     * @param port port on the loopback address, 0 for any free one
     * @return where the first page is
     * @throws InputException when the port is taken or not allowed
     */
    URI start(RoundOfLawns round, int port);
  }

  private final Serving serving;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "8090",
      description = "Port to serve on (default: ${DEFAULT-VALUE}); 0 takes any free one.")
  private int port;

  @Option(names = "--print", description = "Prints the round's calls and exits.")
  private boolean print;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  /**
   * @param serving starts the server
   */
  public DemoCommand(Serving serving) {
    this.serving = serving;
  }

  @Override
  public Integer call() {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new InputException(
          "--port is %d, but must lie from 0 to %d.".formatted(port, HIGHEST_PORT));
    }
    RoundOfLawns round = RoundCalls.ofTheExamples();
    PrintWriter writer = spec.commandLine().getOut();
    if (print) {
      RoundText.of(round).forEach(writer::println);
      return ExitCode.DONE;
    }
    URI address = serving.start(round, port);
    writer.println("Open " + address + " in a browser; stop with Ctrl-C.");
    return ExitCode.DONE;
  }
}
