package leafturn;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import leafturn.cli.DemoCommand;
import leafturn.cli.LeafturnCommand;
import leafturn.cli.ServeCommand;
import leafturn.records.InputException;
import leafturn.records.archive.BookDesk;
import leafturn.records.book.Book;
import leafturn.web.CannotListenException;
import leafturn.web.LeafturnServer;
import org.jspecify.annotations.Nullable;

/** Builds the objects and runs one command. */
public final class Main {
  private static final Clock CLOCK = Clock.systemDefaultZone();

  private Main() {}

  public static void main(String[] arguments) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    DemoCommand demo = new DemoCommand(Main::serve, CLOCK);
    ServeCommand serve = new ServeCommand(Main::serve, CLOCK);
    int exitCode = new LeafturnCommand(out, err, demo, serve).run(arguments);
    if (exitCode != 0) {
      System.exit(exitCode);
    }
  }

  /** Serves until the process is stopped; the server's own threads keep it alive. */
  private static URI serve(Book book, int port, Runnable atTheEnd) {
    try {
      LeafturnServer server = LeafturnServer.start(book, CLOCK, port);
      Path folder = book.place().folder();
      BookDesk desk = folder == null ? null : BookDesk.open(book, folder, CLOCK);
      Runtime.getRuntime().addShutdownHook(new Thread(() -> end(server, desk, book, atTheEnd)));
      return server.address();
    } catch (CannotListenException taken) {
      throw new InputException("The book cannot be served: " + taken.getMessage() + ".");
    }
  }

  private static void end(
      LeafturnServer server, @Nullable BookDesk desk, Book book, Runnable atTheEnd) {
    server.close();
    if (desk != null) {
      desk.close();
    }
    book.close();
    atTheEnd.run();
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
