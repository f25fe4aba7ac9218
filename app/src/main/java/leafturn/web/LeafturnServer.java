package leafturn.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.util.JavalinBindException;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import leafturn.records.book.Book;
import leafturn.records.book.BookUnavailableException;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Serves a book as pages on the loopback address. */
public final class LeafturnServer implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(LeafturnServer.class);
  private static final String LOOPBACK = "127.0.0.1";
  private static final int NOT_FOUND = 404;
  private static final int FAULT = 500;
  private static final int UNAVAILABLE = 503;

  private final Desk desk;
  private final Javalin javalin;

  private LeafturnServer(Book book, Clock clock) {
    desk = new Desk(book, clock);
    javalin = Javalin.create(this::configure);
  }

  /**
   * Starts serving and returns at once.
   *
   * @param book the book, which stays open as long as it is served
   * @param clock tells the time, and the time zone of a book without properties
   * @param port port on the loopback address, or 0 for any free one
   * @throws CannotListenException if the port is taken or not allowed; its message says what to do
   */
  public static LeafturnServer start(Book book, Clock clock, int port) {
    LeafturnServer server = new LeafturnServer(book, clock);
    try {
      server.javalin.start(LOOPBACK, port);
    } catch (JavalinBindException e) {
      throw new CannotListenException(
          "port "
              + port
              + " on "
              + LOOPBACK
              + " is taken or not allowed; choose another with --port, or --port 0 for any free"
              + " one",
          e);
    }
    return server;
  }

  /** Where the first page is. */
  public URI address() {
    return URI.create("http://" + LOOPBACK + ":" + javalin.port() + "/");
  }

  /** Stops serving; the book stays open. */
  @Override
  public void close() {
    javalin.stop();
    desk.rounds().close();
  }

  private void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    config.jetty.modifyServer(server -> server.setErrorHandler(quietErrors()));
    config.routes.before(RequestGuard::check);
    Routes routes = new Routes(config.routes);
    rooms().forEach(room -> room.open(routes));
    config.routes.error(NOT_FOUND, this::notFound);
    config.routes.exception(BookUnavailableException.class, this::unavailable);
    config.routes.exception(Exception.class, this::fault);
    config.router.javaLangErrorHandler(
        (response, error) -> {
          LOG.error("a page could not be made: {}", error, error);
          response.setStatus(FAULT);
        });
  }

  private List<Room> rooms() {
    return List.of(
        new RoundRoom(desk),
        new LawnRoom(desk),
        new SourcesRoom(desk),
        new AssetRoom(desk.assets()));
  }

  /** Jetty's own answers to requests it cannot read: the status, and nothing of the inside. */
  private static ErrorHandler quietErrors() {
    ErrorHandler handler = new ErrorHandler();
    handler.setShowStacks(false);
    handler.setShowCauses(false);
    handler.setShowOrigin(false);
    return handler;
  }

  private void notFound(Context context) {
    desk.tell(
        context,
        NOT_FOUND,
        "There is no page at this address.",
        "It may have been mistyped, or the lawn may have left the round.");
  }

  private void unavailable(BookUnavailableException fault, Context context) {
    LOG.warn("{} {} failed: {}", context.method(), context.path(), fault.getMessage());
    desk.tell(
        context, UNAVAILABLE, "The book does not answer.", String.valueOf(fault.getMessage()));
  }

  private void fault(Exception fault, Context context) {
    LOG.error("{} {} failed: {}", context.method(), context.path(), fault, fault);
    desk.tell(
        context,
        FAULT,
        "This page could not be made.",
        "The fault is ours and has been written to the log; nothing you entered is lost.");
  }
}
