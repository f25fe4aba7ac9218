package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.people.Owners;
import leafturn.records.people.Passwords;
import leafturn.records.people.SignIns;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ListeningTest {
  private static final String PASSWORD = "seven quiet meadows";
  private static final Clock CLOCK = Clock.systemUTC();

  @TempDir static Path files;
  private static TestCertificate certificate;

  @TempDir Path folder;
  private Book book;

  @BeforeAll
  static void makeCertificate() {
    certificate = TestCertificate.make(files, "EC");
  }

  @BeforeEach
  void open() {
    book = Book.open(BookPlace.of(folder), CLOCK);
  }

  @AfterEach
  void close() {
    book.close();
  }

  @Test
  void aPortThatIsTakenIsToldBeforeAnythingIsOpened() throws Exception {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
      Listening listening = Listening.onLoopback(taken.getLocalPort());
      assertThatThrownBy(listening::checkFree)
          .isInstanceOf(CannotListenException.class)
          .hasMessageContaining("port " + taken.getLocalPort() + " on 127.0.0.1 is taken");
    }
    Listening.onLoopback(0).checkFree();
  }

  @Test
  void beyondThisMachineThereIsNothingWithoutTls() {
    for (String address : Set.of("0.0.0.0", "192.0.2.10", "::")) {
      assertThatThrownBy(() -> listening(address, null, null, Set.of()))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("over TLS only")
          .hasMessageContaining("--behind-proxy");
    }
    assertThat(listening("127.0.0.1", null, null, Set.of()).isForThisMachineAlone()).isTrue();
    assertThatThrownBy(() -> listening("lawns.example", null, null, Set.of()))
        .hasMessageContaining("--listen: lawns.example is no network address");
    assertThatThrownBy(() -> listening("127.0.0.1", null, "127.0.0.1", Set.of()))
        .hasMessageContaining("add --host NAME");
    assertThatThrownBy(() -> listening("127.0.0.1", tls(), "127.0.0.1", Set.of("x.example")))
        .hasMessageContaining("not both");
  }

  @Test
  void othersAreNotServedBeforeSomebodyCanSignIn() {
    assertThatThrownBy(() -> serve(listening("127.0.0.1", tls(), null, Set.of("localhost"))))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("leafturn book owner");
  }

  @Test
  void theFirstPageIsToldUnderANameThatWasAskedForAndNotUnderANumber() {
    owner();
    Set<String> names = new LinkedHashSet<>(List.of("127.0.0.1", "localhost", "lawns.test"));
    try (LeafturnServer server = serve(listening("127.0.0.1", tls(), null, names))) {
      assertThat(server.address().getHost()).isEqualTo("localhost");
    }
  }

  @Test
  void overTlsTheCookieIsSecureAndTheSiteSaysToKeepToTls() {
    owner();
    Listening listening = listening("127.0.0.1", tls(), null, tls().names());
    try (LeafturnServer server = serve(listening)) {
      HttpClient client = HttpClient.newBuilder().sslContext(certificate.trust()).build();
      URI site = URI.create("https://localhost:" + server.address().getPort() + "/");
      Browser browser = new Browser(client, site);
      HttpResponse<String> page = browser.get("/sign-in");
      assertThat(page.statusCode()).isEqualTo(200);
      assertThat(page.headers().firstValue("Strict-Transport-Security")).isPresent();
      assertThat(page.headers().firstValue("Set-Cookie").orElse(""))
          .startsWith("__Host-leafturn=")
          .contains("; Secure", "; HttpOnly", "; SameSite=Lax", "Path=/")
          .doesNotContain("Domain");
      assertThat(browser.signIn("Ada Lind", PASSWORD).statusCode()).isEqualTo(303);
      assertThat(browser.get("/me").body()).contains("Ada Lind, owner");
    }
  }

  @Test
  void plainHttpIsNotAnsweredWhereTlsIsSpoken() throws IOException {
    owner();
    try (LeafturnServer server = serve(listening("127.0.0.1", tls(), null, tls().names()))) {
      assertThat(raw(server.address().getPort(), "GET / HTTP/1.1\r\nHost: localhost\r\n\r\n"))
          .doesNotContain("200", "Leafturn");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "https, garden.example, , 303",
    "https, garden.example:8443, , 303",
    "https, GARDEN.example, , 303",
    "https, evil.example, , 421",
    "https, , evil.example, 421",
    "http, garden.example, , 403",
    ", garden.example, , 403"
  })
  void onlyWhatTheProxySaysCountsBehindIt(
      @Nullable String proto, @Nullable String forwarded, @Nullable String host, int status)
      throws IOException {
    owner();
    Listening listening = listening("127.0.0.1", null, "127.0.0.1", Set.of("garden.example"));
    try (LeafturnServer server = serve(listening)) {
      String request =
          "GET / HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n%s%s\r\n"
              .formatted(
                  host == null ? "127.0.0.1" : host,
                  proto == null ? "" : "X-Forwarded-Proto: " + proto + "\r\n",
                  forwarded == null ? "" : "X-Forwarded-Host: " + forwarded + "\r\n");
      assertThat(raw(port(server), request)).startsWith("HTTP/1.1 " + status);
    }
  }

  @Test
  void anotherAddressThanTheProxysIsTurnedAway() throws IOException {
    owner();
    Listening listening = listening("127.0.0.1", null, "192.0.2.1", Set.of("garden.example"));
    try (LeafturnServer server = serve(listening)) {
      assertThat(
              raw(
                  port(server),
                  "GET / HTTP/1.1\r\nHost: garden.example\r\nX-Forwarded-Proto: https\r\n"
                      + "X-Forwarded-For: 192.0.2.1\r\nConnection: close\r\n\r\n"))
          .startsWith("HTTP/1.1 403");
    }
  }

  @Test
  void theRecordNamesTheVisitorsAddressAsTheProxyTellsIt() {
    owner();
    Listening listening = listening("127.0.0.1", null, "127.0.0.1", Set.of("garden.example"));
    try (LeafturnServer server = serve(listening)) {
      Browser browser = new Browser(URI.create("http://127.0.0.1:" + port(server) + "/"));
      Map<String, String> told =
          Map.of(
              "X-Forwarded-Proto", "https",
              "X-Forwarded-Host", "garden.example",
              "X-Forwarded-For", "198.51.100.9, 2001:db8:1:2:3:4:5:6");
      var page = browser.request("/sign-in");
      told.forEach(page::header);
      assertThat(browser.send(page.GET()).statusCode()).isEqualTo(200);
      var form = browser.request("/sign-in");
      told.forEach(form::header);
      form.header("Origin", "https://garden.example")
          .header("Content-Type", "application/x-www-form-urlencoded");
      String fields =
          Browser.encoded(
              Map.of("name", "Ada Lind", "password", PASSWORD, "_token", browser.token()));
      assertThat(
              browser
                  .send(form.POST(java.net.http.HttpRequest.BodyPublishers.ofString(fields)))
                  .statusCode())
          .isEqualTo(303);
      assertThat(book.read(reading -> SignIns.latest(reading, 1)).get(0).address())
          .isEqualTo("2001:db8:1:2::/64");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"RSA", "EC", "Ed25519"})
  void certificatesOfEveryUsualKindAreRead(String algorithm) {
    TestCertificate made = TestCertificate.make(files, algorithm);
    TlsFiles tls = TlsFiles.read(made.certificate(), made.key(), Instant.now());
    assertThat(tls.names()).containsExactlyInAnyOrder("localhost", "*.lawns.example", "127.0.0.1");
  }

  @Test
  void whatIsNoCertificateOrNoKeyIsTold() throws IOException {
    TestCertificate other = TestCertificate.make(folder, "EC");
    Path nothing = Files.writeString(folder.resolve("nothing.pem"), "nothing");
    Instant now = Instant.now();
    assertThatThrownBy(() -> TlsFiles.read(nothing, certificate.key(), now))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("certificate");
    assertThatThrownBy(() -> TlsFiles.read(certificate.certificate(), nothing, now))
        .hasMessageContaining("no PKCS#8 key");
    assertThatThrownBy(() -> TlsFiles.read(certificate.certificate(), other.key(), now))
        .hasMessageContaining("not that of the certificate");
    assertThatThrownBy(() -> TlsFiles.read(folder.resolve("gone"), certificate.key(), now))
        .hasMessageContaining("cannot be read");
    Instant late = now.plus(Duration.ofDays(3));
    assertThatThrownBy(() -> TlsFiles.read(certificate.certificate(), certificate.key(), late))
        .hasMessageContaining("ended");
    Instant early = now.minus(Duration.ofDays(3));
    assertThatThrownBy(() -> TlsFiles.read(certificate.certificate(), certificate.key(), early))
        .hasMessageContaining("holds only from");
  }

  private static TlsFiles tls() {
    return TlsFiles.read(certificate.certificate(), certificate.key(), Instant.now());
  }

  private static Listening listening(
      String address, @Nullable TlsFiles tls, @Nullable String proxy, Set<String> names) {
    InetAddress trusted = proxy == null ? null : Listening.address("--behind-proxy", proxy);
    return new Listening(Listening.address("--listen", address), 0, tls, trusted, names);
  }

  private LeafturnServer serve(Listening listening) {
    return LeafturnServer.start(book, CLOCK, listening);
  }

  private void owner() {
    String hash = Passwords.hash(PASSWORD);
    book.write("Ada Lind", writing -> Owners.welcome(writing, "Ada Lind", hash));
  }

  private static int port(LeafturnServer server) {
    return server.port();
  }

  private static String raw(int port, String request) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", port)) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      try (InputStream in = socket.getInputStream()) {
        return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
      }
    }
  }
}
