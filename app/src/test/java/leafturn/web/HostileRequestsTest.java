package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.http.HandlerType;
import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import leafturn.records.people.Role;
import leafturn.web.Routes.Route;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bodies that are too large or of the wrong kind, and addresses that try to climb out. */
class HostileRequestsTest {
  private static final List<String> CLIMBING =
      List.of(
          "../../../../../etc/passwd",
          "..%2f..%2f..%2f..%2f..%2fetc%2fpasswd",
          "%2e%2e/%2e%2e/%2e%2e/etc/passwd",
          "%252e%252e%252f%252e%252e%252fetc%252fpasswd",
          "..%5c..%5c..%5cetc%5cpasswd",
          "....//....//etc/passwd",
          "%2fetc%2fpasswd",
          "file:%2f%2f%2fetc%2fpasswd",
          "..;/..;/etc/passwd",
          "book.mv.db",
          "..%2fbook.mv.db",
          "%c0%ae%c0%ae%c0%afetc%c0%afpasswd");

  @TempDir static Path folder;
  private static PeopledSite site;
  private static Browser owner;

  @BeforeAll
  static void open() {
    site = new PeopledSite(folder, Clock.systemUTC());
    owner = site.signedIn(Role.OWNER);
  }

  @AfterAll
  static void close() {
    site.close();
  }

  @Test
  void noAddressClimbsOutOfTheSite() throws IOException {
    for (Route route : site.server.routes()) {
      if (!route.method().equals(HandlerType.GET) || !route.path().contains("{")) {
        continue;
      }
      for (String climbing : CLIMBING) {
        String path = route.path().replaceAll("\\{[^}]+}", climbing.replace("\\", ""));
        String answer = raw("GET " + path + " HTTP/1.1", "");
        assertThat(answer).as(path).startsWith("HTTP/1.1 ").doesNotStartWith("HTTP/1.1 5");
        assertThat(answer).as(path).doesNotContain("root:", "H:2,block:", "daemon:");
      }
    }
    for (String climbing : CLIMBING) {
      String answer = raw("GET /assets/" + climbing + " HTTP/1.1", "");
      assertThat(answer).as(climbing).startsWith("HTTP/1.1 4");
    }
  }

  @Test
  void whatIsTooLargeIsRefusedBeforeItIsRead() throws IOException {
    eachSent(
        route -> "Content-Length: " + (route.intake().mostBytes() + 1) + "\r\n",
        route -> kind(route),
        413,
        "This is too large.");
  }

  @Test
  void aBodyOfUnknownLengthIsRefused() throws IOException {
    eachSent(route -> "Transfer-Encoding: chunked\r\n", route -> kind(route), 411, "how long");
  }

  @Test
  void aBodyOfAnotherKindIsRefused() throws IOException {
    for (String kind : List.of("text/plain", "application/xml", "text/html", "", "x")) {
      eachSent(route -> "Content-Length: 3\r\n", route -> kind, 415, "not what the page takes");
    }
  }

  @Test
  void aFormThatIsNoFormIsToldSo() throws IOException {
    for (Route route : site.server.routes()) {
      if (route.intake() == Intake.FORM) {
        String body = "_token=%zz&name=%";
        String headers =
            "Content-Type: %s\r\nContent-Length: %d\r\n".formatted(kind(route), body.length());
        assertThat(raw("POST " + plain(route) + " HTTP/1.1", headers + "\r\n" + body))
            .as("%s", route)
            .startsWith("HTTP/1.1 4");
      }
    }
  }

  private static void eachSent(
      Function<Route, String> length, Function<Route, String> kind, int status, String words)
      throws IOException {
    for (Route route : site.server.routes()) {
      if (!route.method().equals(HandlerType.POST)) {
        continue;
      }
      String type = kind.apply(route);
      String headers = length.apply(route) + "Content-Type: " + type + "\r\n";
      String answer = raw("POST " + plain(route) + " HTTP/1.1", headers + "\r\nabc");
      assertThat(answer).as("%s, %s", route, headers).startsWith("HTTP/1.1 " + status);
      assertThat(answer).as("%s, %s", route, headers).contains(words);
    }
  }

  private static String kind(Route route) {
    return route.intake().mediaType().equals("multipart/form-data")
        ? "multipart/form-data; boundary=xyz"
        : route.intake().mediaType();
  }

  private static String plain(Route route) {
    return route.path().replaceAll("\\{[^}]+}", "x");
  }

  /** Sends a request of the owner's as it stands; the rest of its head begins the given text. */
  private static String raw(String firstLine, String rest) throws IOException {
    String cookies =
        owner.cookies().entrySet().stream()
            .map(cookie -> cookie.getKey() + "=" + cookie.getValue())
            .collect(Collectors.joining("; "));
    String head =
        "%s\r\nHost: 127.0.0.1:%d\r\nCookie: %s\r\nConnection: close\r\n"
            .formatted(firstLine, site.server.port(), cookies);
    String request = head + (rest.isEmpty() ? "\r\n" : rest);
    try (Socket socket = new Socket("127.0.0.1", site.server.port())) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.shutdownOutput();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
