package leafturn.cli;

import java.net.URI;
import java.time.Clock;
import java.util.concurrent.Callable;
import leafturn.records.book.Book;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Serves a book. */
@Command(
    name = "serve",
    description = {
      "Serves a book as pages to this machine, until you stop it with Ctrl-C.",
      "Where there is no book yet an empty one is begun.",
      ""
    },
    footer = {"", "Example: leafturn serve --book ~/lawns"})
public final class ServeCommand implements Callable<Integer> {
  private final Serving serving;
  private final Clock clock;

  @Mixin private final BookOption place = new BookOption();

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "8090",
      description = "Port to serve on (default: ${DEFAULT-VALUE}); 0 takes any free one.")
  private int port;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  /**
   * @param serving starts the server
   * @param clock tells the time
   */
  public ServeCommand(Serving serving, Clock clock) {
    this.serving = serving;
    this.clock = clock;
  }

  @Override
  public Integer call() {
    Serving.checkPort(port);
    Book book = Book.open(place.place(), clock);
    boolean served = false;
    try {
      URI address = serving.start(book, port, () -> {});
      served = true;
      spec.commandLine().getOut().println("Open " + address + " in a browser; stop with Ctrl-C.");
    } finally {
      if (!served) {
        book.close();
      }
    }
    return ExitCode.DONE;
  }
}
