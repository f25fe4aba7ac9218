package leafturn.cli;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.people.Owners;
import org.jspecify.annotations.Nullable;
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
      "Where there is no book yet an empty one is begun, for this machine alone.",
      "Others are served over TLS only, and sign in: 'leafturn book owner' makes the first owner.",
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

  @Option(
      names = "--listen",
      paramLabel = "ADDRESS",
      defaultValue = Serving.LOOPBACK,
      description = "Network address to listen on (default: ${DEFAULT-VALUE}, this machine).")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private String listen;

  @Option(
      names = "--tls",
      arity = "2",
      paramLabel = "FILE",
      description =
          "Serves over TLS: the PEM file of the certificate with those it rests on, then that of"
              + " its PKCS#8 key.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private List<Path> tls = List.of();

  @Option(
      names = "--behind-proxy",
      paramLabel = "ADDRESS",
      description = "Serves a proxy alone, at this network address, which ends TLS.")
  private @Nullable String proxy;

  @Option(
      names = "--host",
      paramLabel = "NAME",
      description =
          "A name the site is asked for by, beside those of the certificate; may be repeated.")
  private Set<String> hosts = Set.of();

  @Option(
      names = "--archives",
      paramLabel = "FOLDER",
      description =
          "Where an archive is kept every night; without it beside the book, and nowhere for a"
              + " book on a database server.")
  private @Nullable Path archives;

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
    if (tls.size() > 2) {
      throw new InputException("--tls is given twice; give one certificate and its key.");
    }
    Path certificate = tls.isEmpty() ? null : tls.get(0);
    Path key = tls.isEmpty() ? null : tls.get(1);
    Serving.Place site =
        serving.at(new Serving.Where(port, listen, certificate, key, proxy, hosts));
    if ((certificate != null || proxy != null) && !Book.begun(place.place())) {
      throw Owners.missing();
    }
    Book book = Book.open(bookPlace(), clock);
    boolean served = false;
    try {
      URI address = site.serve(book, () -> {});
      served = true;
      spec.commandLine().getOut().println("Open " + address + " in a browser; stop with Ctrl-C.");
    } finally {
      if (!served) {
        book.close();
      }
    }
    return ExitCode.DONE;
  }

  private BookPlace bookPlace() {
    if (archives == null) {
      return place.place();
    }
    try {
      Files.createDirectories(archives);
    } catch (IOException e) {
      throw new InputException(
          "--archives %s: the folder cannot be made; choose another.".formatted(archives));
    }
    if (!Files.isWritable(archives)) {
      throw new InputException(
          "--archives %s: the folder cannot be written to; choose another.".formatted(archives));
    }
    return place.place().archivedIn(archives);
  }
}
