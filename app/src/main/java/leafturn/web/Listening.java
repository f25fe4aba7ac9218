package leafturn.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.UnknownHostException;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import leafturn.records.InputException;
import org.jspecify.annotations.Nullable;

/**
 * Where the site listens, and how its visitors come. Beyond this machine they come over TLS, ended
 * here or by a proxy that is trusted.
 *
 * @param address network address to listen on
 * @param port port, or 0 for any free one
 * @param tls certificate and key, or null where TLS does not end here
 * @param proxy network address of the proxy whose word counts, or null
 * @param names names by which the site may be asked for, in lower case; those of this machine's
 *     loopback are known anyway
 */
public record Listening(
    InetAddress address,
    int port,
    @Nullable TlsFiles tls,
    @Nullable InetAddress proxy,
    Set<String> names) {
  /**
   * @throws InputException when this would serve others without TLS, or under no name
   */
  public Listening {
    names =
        names.stream()
            .map(name -> name.toLowerCase(Locale.ROOT))
            .collect(
                Collectors.collectingAndThen(
                    Collectors.toCollection(LinkedHashSet::new), Collections::unmodifiableSet));
    if (tls != null && proxy != null) {
      throw new InputException(
          "TLS ends in one place: give either --tls or --behind-proxy, not both.");
    }
    if (tls == null && proxy == null && !address.isLoopbackAddress()) {
      throw new InputException(
          "Beyond this machine a book is served over TLS only: add --tls CERT KEY, or"
              + " --behind-proxy ADDRESS where a proxy ends TLS, or listen on 127.0.0.1.");
    }
    if ((tls != null || proxy != null) && names.isEmpty()) {
      throw new InputException(
          "The site needs a name to be asked for: add --host NAME, for instance --host"
              + " lawns.example.org.");
    }
  }

  /** On this machine's loopback address, for this machine alone. */
  public static Listening onLoopback(int port) {
    return new Listening(address("--listen", "127.0.0.1"), port, null, null, Set.of());
  }

  /**
   * A network address as the user gave it.
   *
   * @param option the option it was given with
   * @throws InputException when it is none
   */
  public static InetAddress address(String option, String given) {
    try {
      if (!given.matches("[0-9A-Fa-f.:%\\[\\]]+|localhost")) {
        throw new UnknownHostException(given);
      }
      return InetAddress.getByName(given);
    } catch (UnknownHostException e) {
      throw new InputException(
          option + ": " + given + " is no network address; give one such as 192.0.2.10.");
    }
  }

  /**
   * Looks whether the port can be had, before any book is begun.
   *
   * @throws CannotListenException if it is taken or not allowed; its message says what to do
   */
  public void checkFree() {
    try (ServerSocket probe = new ServerSocket()) {
      probe.setReuseAddress(true);
      probe.bind(new InetSocketAddress(address, port));
    } catch (IOException e) {
      throw taken(e);
    }
  }

  CannotListenException taken(Exception cause) {
    return new CannotListenException(
        "port %d on %s is taken or not allowed; choose another with --port, or --port 0 for any free one"
            .formatted(port, address.getHostAddress()),
        cause);
  }

  /** Whether only this machine is served, so that a book without passwords may be open. */
  boolean isForThisMachineAlone() {
    return tls == null && proxy == null;
  }

  /** The scheme visitors see. */
  String scheme() {
    return isForThisMachineAlone() ? "http" : "https";
  }
}
