package leafturn.cli;

import java.io.PrintWriter;
import java.net.URI;
import java.time.Clock;
import java.util.concurrent.Callable;
import leafturn.records.round.BookRound;
import leafturn.records.round.DemoBook;
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
      "Writes it into a book among the temporary files and serves that as pages to this machine"
          + " alone, until you stop it with Ctrl-C; the book is removed then.",
      ""
    },
    footer = {"", "Example: leafturn demo --print"})
public final class DemoCommand implements Callable<Integer> {
  private final Serving serving;
  private final Clock clock;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "8090",
      description = "Port to serve on (default: ${DEFAULT-VALUE}); 0 takes any free one.")
  private int port;

  @Option(names = "--print", description = "Prints the round's advice and exits.")
  private boolean print;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  /**
   * @param serving starts the server
   * @param clock tells when the book was written
   */
  public DemoCommand(Serving serving, Clock clock) {
    this.serving = serving;
    this.clock = clock;
  }

  @Override
  public Integer call() {
    Serving.Where here = Serving.Where.hereOnly(port);
    if (print) {
      return print();
    }
    Serving.Place place = serving.at(here);
    TemporaryBook demo = TemporaryBook.open(clock);
    boolean served = false;
    try {
      DemoBook.write(demo.book());
      URI address = place.serve(demo.book(), demo::remove);
      served = true;
      out().println("Open " + address + " in a browser; stop with Ctrl-C.");
    } finally {
      if (!served) {
        demo.close();
      }
    }
    return ExitCode.DONE;
  }

  private int print() {
    try (TemporaryBook demo = TemporaryBook.open(clock)) {
      DemoBook.write(demo.book());
      try (BookRound round = new BookRound(demo.book(), clock)) {
        RoundText.of(round.today()).forEach(out()::println);
      }
    }
    return ExitCode.DONE;
  }

  private PrintWriter out() {
    return spec.commandLine().getOut();
  }
}
