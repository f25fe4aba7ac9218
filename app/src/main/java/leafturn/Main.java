package leafturn;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import leafturn.cli.DemoCommand;
import leafturn.cli.LeafturnCommand;
import leafturn.cli.ServeCommand;
import leafturn.cli.Serving;
import leafturn.records.InputException;
import leafturn.records.archive.Safekeeping;
import leafturn.records.book.Book;
import leafturn.web.CannotListenException;
import leafturn.web.LeafturnServer;
import leafturn.web.Listening;
import leafturn.web.ReadAhead;
import leafturn.web.TlsFiles;

/** Builds the objects and runs one command. */
public final class Main {
  private static final Clock CLOCK = Clock.systemDefaultZone();

  private Main() {}

  public static void main(String[] arguments) {
    // Words are English, so numbers have a point, whatever language the machine speaks.
    Locale.setDefault(Locale.UK);
    if (arguments.length > 0 && arguments[0].equals("serve")) {
      ReadAhead.begin(); // even reading the arguments takes long enough to be worth it
    }
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    DemoCommand demo = new DemoCommand(where -> place(listening(where)), CLOCK);
    ServeCommand serve = new ServeCommand(where -> safePlace(listening(where)), CLOCK);
    int exitCode = new LeafturnCommand(out, err, demo, serve).run(arguments);
    if (exitCode != 0) {
      System.exit(exitCode);
    }
  }

  /** Where a book is served until the process is stopped. */
  private static Serving.Place place(Listening listening) {
    ReadAhead.begin();
    return (book, atTheEnd) -> serve(book, listening, atTheEnd);
  }

  /** As {@link #place}, and keeps the book safe meanwhile. */
  private static Serving.Place safePlace(Listening listening) {
    return (book, atTheEnd) -> keepAndServe(book, listening, atTheEnd);
  }

  private static Listening listening(Serving.Where where) {
    TlsFiles tls =
        where.certificate() == null || where.key() == null
            ? null
            : TlsFiles.read(where.certificate(), where.key(), CLOCK.instant());
    InetAddress proxy =
        where.proxy() == null ? null : Listening.address("--behind-proxy", where.proxy());
    // The names that were asked for come before those of the certificate.
    Set<String> names = new LinkedHashSet<>(new TreeSet<>(where.hosts()));
    if (tls != null) {
      names.addAll(tls.names());
    }
    InetAddress address = Listening.address("--listen", where.listen());
    Listening listening = new Listening(address, where.port(), tls, proxy, names);
    try {
      listening.checkFree();
    } catch (CannotListenException taken) {
      throw notServed(taken);
    }
    return listening;
  }

  private static InputException notServed(CannotListenException taken) {
    return new InputException("The book cannot be served: " + taken.getMessage() + ".");
  }

  /** Serves until the process is stopped; the server's own threads keep it alive. */
  private static URI serve(Book book, Listening listening, Runnable atTheEnd) {
    LeafturnServer server = start(book, listening);
    atTheStop(
        () -> {
          server.close();
          book.close();
          atTheEnd.run();
        });
    return server.address();
  }

  private static URI keepAndServe(Book book, Listening listening, Runnable atTheEnd) {
    LeafturnServer server = start(book, listening);
    Safekeeping keeping = Safekeeping.begin(book, CLOCK);
    atTheStop(
        () -> {
          server.close();
          keeping.close();
          book.close();
          atTheEnd.run();
        });
    return server.address();
  }

  private static LeafturnServer start(Book book, Listening listening) {
    try {
      return LeafturnServer.start(book, CLOCK, listening);
    } catch (CannotListenException taken) {
      throw notServed(taken);
    }
  }

  private static void atTheStop(Runnable end) {
    Runtime.getRuntime().addShutdownHook(new Thread(end, "stop"));
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
