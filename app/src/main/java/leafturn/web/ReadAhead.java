package leafturn.web;

import io.javalin.Javalin;
import org.eclipse.jetty.server.LocalConnector;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Has the server's classes read while the book is still being opened, which takes another
 * processor: a server that listens nowhere answers one request and is gone.
 */
public final class ReadAhead {
  private static final Logger LOG = LoggerFactory.getLogger(ReadAhead.class);

  private ReadAhead() {}

  /** Begins, and returns at once; nothing waits for it, and nothing depends on it. */
  public static void begin() {
    Thread thread =
        new Thread(
            () -> {
              try {
                answer();
              } catch (Exception e) { // the server proper meets the same fault and tells it
                LOG.debug("nothing was read ahead", e);
              }
            },
            "read-ahead");
    thread.setDaemon(true);
    thread.start();
  }

  /** The one answer, as it would go over the wire. */
  static String answer() throws Exception {
    Javalin server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.startup.showOldJavalinVersionWarning = false;
              config.jetty.addConnector((jetty, http) -> new LocalConnector(jetty));
              config.routes.get("/", context -> context.html("<p>"));
            });
    try {
      server.start();
      LocalConnector connector = (LocalConnector) server.jettyServer().server().getConnectors()[0];
      return connector.getResponse(
          "GET / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
    } finally {
      server.stop();
    }
  }
}
