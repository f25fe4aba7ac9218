package leafturn.browser;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.Clock;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.people.Passwords;
import leafturn.records.people.People;
import leafturn.records.people.Role;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;
import org.jspecify.annotations.Nullable;

/** A book of its own with the demo's lawns, served always at the same port by a real process. */
final class ServedBook implements AutoCloseable {
  /** A lawn of the demo whose clippings are usually all returned. */
  static final String LAWN = "linden-house-back";

  private static final String OF_THE_DEMO = "Wren Ashdown";

  private final Path folder;
  private final int port;
  private final @Nullable TestCertificate certificate;
  private @Nullable RunningLeafturn running;

  private ServedBook(Path folder, int port, @Nullable TestCertificate certificate) {
    this.folder = folder;
    this.port = port;
    this.certificate = certificate;
  }

  /** Serves this machine alone, without accounts. */
  static ServedBook start(Path folder) throws IOException {
    try (Book book = Book.open(BookPlace.of(folder), Clock.systemUTC())) {
      DemoBook.write(book);
    }
    return started(new ServedBook(folder, freePort(), null));
  }

  /** Serves over TLS, with an owner who can sign in. */
  static ServedBook startOverTls(
      Path folder, TestCertificate certificate, String name, String password) throws IOException {
    try (Book book = Book.open(BookPlace.of(folder), Clock.systemUTC())) {
      DemoBook.write(book);
      book.write(
          "Test",
          writing -> {
            String id = People.add(writing, name, Role.OWNER, Units.METRIC).id();
            People.setPasswordHash(writing, id, Passwords.hash(password));
            return id;
          });
    }
    return started(new ServedBook(folder, freePort(), certificate));
  }

  private static ServedBook started(ServedBook served) throws IOException {
    served.start();
    return served;
  }

  /** A free port of five digits. */
  static int freePort() throws IOException {
    int port = 0;
    while (port < 10_000) {
      try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
        port = socket.getLocalPort();
      }
    }
    return port;
  }

  void start() throws IOException {
    List<String> words =
        new ArrayList<>(
            List.of("serve", "--book", folder.toString(), "--port", String.valueOf(port)));
    if (certificate != null) {
      words.addAll(
          List.of("--tls", certificate.certificate().toString(), certificate.key().toString()));
    }
    running = RunningLeafturn.start(words.toArray(String[]::new));
  }

  /** Stops the process in good order. */
  void stop() throws InterruptedException {
    RunningLeafturn server = running;
    if (server != null) {
      server.close();
      running = null;
    }
  }

  /** Ends the process at once, as a power cut would. */
  void kill() throws InterruptedException {
    RunningLeafturn server = running;
    if (server != null) {
      server.process().descendants().forEach(ProcessHandle::destroyForcibly);
      server.process().destroyForcibly().waitFor(10, TimeUnit.SECONDS);
      running = null;
    }
  }

  int port() {
    return port;
  }

  String url(String path) {
    String root = certificate == null ? "http://127.0.0.1:" : "https://localhost:";
    return root + port + path;
  }

  /** What the book holds; for that the process is stopped. */
  <T> T read(Function<BookReading, T> reading) throws InterruptedException {
    stop();
    try (Book book = Book.open(BookPlace.of(folder), InstantSource.system())) {
      return book.read(reading);
    }
  }

  /** The entries of the lawn's log that were not there from the beginning, in order. */
  List<LogSheet> newEntries() throws InterruptedException {
    return read(
        reading -> {
          Sheet<LawnSheet> lawn = reading.at(Kind.LAWN, LAWN).orElseThrow();
          return reading.ofLawn(Kind.LOG, lawn.id()).stream()
              .filter(sheet -> !sheet.writtenBy().equals(OF_THE_DEMO))
              .map(Sheet::content)
              .toList();
        });
  }

  @Override
  public void close() throws InterruptedException {
    stop();
  }
}
