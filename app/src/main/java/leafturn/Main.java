package leafturn;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import leafturn.cli.DemoCommand;
import leafturn.cli.LeafturnCommand;
import leafturn.cli.ServeCommand;
import leafturn.records.InputException;
import leafturn.records.archive.Safekeeping;
import leafturn.records.book.Book;
import leafturn.web.CannotListenException;
import leafturn.web.LeafturnServer;

/** Builds the objects and runs one command. */
public final class Main {
  private static final Clock CLOCK = Clock.systemDefaultZone();

  private Main() {}

  public static void main(String[] arguments) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    DemoCommand demo = new DemoCommand(Main::serve, CLOCK);
    ServeCommand serve = new ServeCommand(Main::keepAndServe, CLOCK);
    int exitCode = new LeafturnCommand(out, err, demo, serve).run(arguments);
    if (exitCode != 0) {
      System.exit(exitCode);
    }
  }

  /** Serves until the process is stopped; the server's own threads keep it alive. */
  private static URI serve(Book book, int port, Runnable atTheEnd) {
    LeafturnServer server = start(book, port);
    atTheStop(
        () -> {
          server.close();
          book.close();
          atTheEnd.run();
        });
    return server.address();
  }

  /** As {@link #serve}, and keeps the book safe meanwhile. */
  private static URI keepAndServe(Book book, int port, Runnable atTheEnd) {
    LeafturnServer server = start(book, port);
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

  private static LeafturnServer start(Book book, int port) {
    try {
      return LeafturnServer.start(book, CLOCK, port);
    } catch (CannotListenException taken) {
      throw new InputException("The book cannot be served: " + taken.getMessage() + ".");
    }
  }

  private static void atTheStop(Runnable end) {
    Runtime.getRuntime().addShutdownHook(new Thread(end, "stop"));
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
