package leafturn.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import io.javalin.util.JavalinBindException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import leafturn.advice.call.RoundOfLawns;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Serves a round as pages on the loopback address. */
public final class LeafturnServer implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(LeafturnServer.class);
  private static final String LOOPBACK = "127.0.0.1";
  private static final String HTML = "text/html; charset=utf-8";
  private static final String KEEP_FOR_GOOD = "public, max-age=31536000, immutable";
  private static final String ASK_AGAIN = "no-cache";

  private final Pages pages;
  private final Assets assets;
  private final Javalin javalin;

  private LeafturnServer(RoundOfLawns round) {
    assets = new Assets();
    pages = new Pages(round, assets);
    javalin = Javalin.create(this::configure);
  }

  /**
   * Starts serving and returns at once.
   *
   * @param port port on the loopback address, or 0 for any free one
   * @throws CannotListenException if the port is taken or not allowed; its message says what to do
   */
  public static LeafturnServer start(RoundOfLawns round, int port) {
    LeafturnServer server = new LeafturnServer(round);
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

  /** Stops serving. */
  @Override
  public void close() {
    javalin.stop();
  }

  private void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    config.jetty.modifyServer(server -> server.setErrorHandler(quietErrors()));
    config.routes.before(RequestGuard::check);
    read(config, "/", context -> page(context, pages.round()));
    read(config, "/lawns", context -> page(context, pages.lawns()));
    read(config, "/lawns/{slug}", this::lawn);
    read(config, "/sources", context -> page(context, pages.sources()));
    read(config, "/assets/{version}/{name}", this::asset);
    config.routes.error(404, this::notFound);
    config.routes.exception(Exception.class, this::fault);
    config.router.javaLangErrorHandler(
        (response, error) -> {
          LOG.error("a page could not be made: {}", error, error);
          response.setStatus(500);
        });
  }

  /** Answers GET and HEAD alike; for HEAD the server leaves the content out. */
  private static void read(JavalinConfig config, String path, Handler handler) {
    config.routes.get(path, handler);
    config.routes.head(path, handler);
  }

  /** Jetty's own answers to requests it cannot read: the status, and nothing of the inside. */
  private static ErrorHandler quietErrors() {
    ErrorHandler handler = new ErrorHandler();
    handler.setShowStacks(false);
    handler.setShowCauses(false);
    handler.setShowOrigin(false);
    return handler;
  }

  private void lawn(Context context) {
    pages
        .lawn(context.pathParam("slug"))
        .ifPresentOrElse(html -> page(context, html), () -> context.status(404));
  }

  private void asset(Context context) {
    assets
        .find(context.pathParam("version"), context.pathParam("name"))
        .ifPresentOrElse(asset -> send(context, asset, KEEP_FOR_GOOD), () -> context.status(404));
  }

  private void page(Context context, String html) {
    send(context, new Assets.Asset(HTML, html.getBytes(StandardCharsets.UTF_8)), ASK_AGAIN);
  }

  /** Sends content with its tag, or only says that what the browser holds is still right. */
  private void send(Context context, Assets.Asset asset, String caching) {
    context.header(Header.CACHE_CONTROL, caching);
    context.header(Header.ETAG, asset.tag);
    if (asset.tag.equals(context.header(Header.IF_NONE_MATCH))) {
      context.status(304);
      return;
    }
    context.contentType(asset.type).result(asset.content);
  }

  private void notFound(Context context) {
    context.contentType(HTML).result(pages.notFound());
  }

  private void fault(Exception fault, Context context) {
    LOG.error("{} {} failed: {}", context.method(), context.path(), fault, fault);
    context.status(500).contentType(HTML).result(pages.fault());
  }
}
