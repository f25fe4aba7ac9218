package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets through only what asks for this site by one of its names, over TLS where that is due. A
 * request that names another host comes from a page that has pointed its own name at this machine.
 */
final class RequestGuard {
  private static final String CONTENT_SECURITY_POLICY =
      "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; script-src 'self';"
          + " connect-src 'self'; worker-src 'self'; manifest-src 'self';"
          + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";
  private static final String PERMISSIONS_POLICY =
      "camera=(), geolocation=(), microphone=(), payment=(), usb=()";
  private static final String ONE_YEAR = "max-age=31536000";

  private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
  private static final Set<HandlerType> WAYS =
      Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.POST);

  private final Listening listening;

  RequestGuard(Listening listening) {
    this.listening = listening;
  }

  /** Adds the headers that every answer carries and turns away what does not belong here. */
  void check(Context context) {
    secure(context);
    InetAddress proxy = listening.proxy();
    if (proxy != null && !isFrom(proxy, context)) {
      refuse(context, 403, "This site is asked through its proxy only.");
    } else if (proxy != null && !"https".equalsIgnoreCase(last(context, "X-Forwarded-Proto"))) {
      refuse(context, 403, "This site is read over TLS only; the proxy did not say https.");
    } else if (!isOurHost(host(context), context.req().getLocalPort())) {
      refuse(context, 421, "This site answers only to its own names, not to that one.");
    } else if (!WAYS.contains(context.method())) {
      context.header("Allow", "GET, HEAD, POST");
      throw Refusal.notAsked();
    } else if (!isReadable(context)) {
      throw Refusal.unreadable();
    }
  }

  /** Scheme, host and port as the visitor's browser sees them. */
  String origin(Context context) {
    return listening.scheme() + "://" + host(context).toLowerCase(Locale.ROOT);
  }

  /** Network address of the visitor; of an IPv6 address the part that stands for one place. */
  String visitorAddress(Context context) {
    String given = listening.proxy() == null ? "" : last(context, "X-Forwarded-For");
    String address = given.isEmpty() ? context.req().getRemoteAddr() : given;
    try {
      if (!address.matches("[0-9A-Fa-f.:\\[\\]]{2,45}")) {
        return "unknown";
      }
      byte[] bytes = InetAddress.getByName(address).getAddress();
      return bytes.length == 4 ? ofFour(bytes) : ofSixteen(bytes);
    } catch (UnknownHostException e) {
      return "unknown";
    }
  }

  private static String ofFour(byte[] bytes) {
    return "%d.%d.%d.%d"
        .formatted(bytes[0] & 0xff, bytes[1] & 0xff, bytes[2] & 0xff, bytes[3] & 0xff);
  }

  private static String ofSixteen(byte[] bytes) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 8; i += 2) {
      text.append("%x:".formatted((bytes[i] & 0xff) << 8 | (bytes[i + 1] & 0xff)));
    }
    return text + ":/64";
  }

  private void secure(Context context) {
    context.header("Content-Security-Policy", CONTENT_SECURITY_POLICY);
    context.header("X-Content-Type-Options", "nosniff");
    // Not "no-referrer": with it browsers withhold the Origin of our own forms.
    context.header("Referrer-Policy", "same-origin");
    context.header("Permissions-Policy", PERMISSIONS_POLICY);
    context.header("Cross-Origin-Resource-Policy", "same-origin");
    context.header("Cross-Origin-Opener-Policy", "same-origin");
    if (!listening.isForThisMachineAlone()) {
      context.header("Strict-Transport-Security", ONE_YEAR);
    }
  }

  private static void refuse(Context context, int status, String sentence) {
    context.status(status).contentType("text/plain; charset=utf-8").result(sentence + "\n");
    context.skipRemainingHandlers();
  }

  private static boolean isFrom(InetAddress proxy, Context context) {
    try {
      return InetAddress.getByName(context.req().getRemoteAddr()).equals(proxy);
    } catch (UnknownHostException e) {
      return false;
    }
  }

  /** The host asked for; a proxy's word counts where there is one. */
  private String host(Context context) {
    String forwarded = listening.proxy() == null ? "" : last(context, "X-Forwarded-Host");
    String named = context.header("Host");
    return forwarded.isEmpty() ? named == null ? "" : named : forwarded;
  }

  /** The last value of a header: what the nearest proxy says. */
  private static String last(Context context, String header) {
    List<String> lines = java.util.Collections.list(context.req().getHeaders(header));
    String line = lines.isEmpty() ? "" : lines.get(lines.size() - 1);
    return line.substring(line.lastIndexOf(',') + 1).strip();
  }

  private boolean isOurHost(@Nullable String host, int port) {
    if (host == null || host.isEmpty()) {
      return false;
    }
    String lower = host.toLowerCase(Locale.ROOT);
    return listening.isForThisMachineAlone() ? isLoopback(lower, port) : isNamed(lower);
  }

  private static boolean isLoopback(String host, int port) {
    String suffix = ":" + port;
    if (host.endsWith(suffix)) {
      return LOOPBACK_NAMES.contains(host.substring(0, host.length() - suffix.length()));
    }
    return port == 80 && LOOPBACK_NAMES.contains(host);
  }

  private boolean isNamed(String host) {
    String name = host.replaceFirst(":\\d{1,5}$", "");
    int dot = name.indexOf('.');
    return listening.names().contains(name)
        || dot > 0 && listening.names().contains("*" + name.substring(dot));
  }

  /** No address or field of ours holds a zero character, which databases do not take. */
  private static boolean isReadable(Context context) {
    try {
      return context.path().indexOf('\0') < 0
          && context.queryParamMap().entrySet().stream()
              .allMatch(
                  entry ->
                      entry.getKey().indexOf('\0') < 0
                          && entry.getValue().stream().allMatch(v -> v.indexOf('\0') < 0));
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
