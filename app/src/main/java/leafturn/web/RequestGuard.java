package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets through only what a page of ours asks: reading, by one of the loopback names. A request that
 * names another host comes from a page that has pointed its own name at this machine.
 */
final class RequestGuard {
  private static final String CONTENT_SECURITY_POLICY =
      "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; script-src 'self';"
          + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

  private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
  private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

  private RequestGuard() {}

  /** Adds the headers that every answer carries and turns away what does not belong here. */
  static void check(Context context) {
    secure(context);
    if (!isOurHost(context.header("Host"), context.req().getLocalPort())) {
      refuse(context, 421, "This address answers only to localhost and 127.0.0.1.");
    } else if (!READING.contains(context.method())) {
      context.header("Allow", "GET, HEAD");
      refuse(context, 405, "This page can only be read.");
    }
  }

  private static void secure(Context context) {
    context.header("Content-Security-Policy", CONTENT_SECURITY_POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "no-referrer");
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    context.header("Cross-Origin-Opener-Policy", "same-origin");
  }

  private static void refuse(Context context, int status, String sentence) {
    context.status(status).contentType("text/plain; charset=utf-8").result(sentence + "\n");
    context.skipRemainingHandlers();
  }

  static boolean isOurHost(@Nullable String host, int port) {
    if (host == null) {
      return false;
    }
    String suffix = ":" + port;
    if (host.endsWith(suffix)) {
      return LOOPBACK_NAMES.contains(host.substring(0, host.length() - suffix.length()));
    }
    return port == 80 && LOOPBACK_NAMES.contains(host);
  }
}
