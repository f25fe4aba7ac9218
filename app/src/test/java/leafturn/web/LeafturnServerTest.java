package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.advice.call.CallRules;
import leafturn.advice.evidence.Shortcoming;
import leafturn.model.ParameterTable;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.round.DemoBook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LeafturnServerTest {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static LeafturnServer server;

  @TempDir static Path folder;
  private static Book book;

  @BeforeAll
  static void start() throws Exception {
    book = Book.open(BookPlace.of(folder), Clock.systemUTC());
    DemoBook.write(book);
    server = LeafturnServer.start(book, Clock.systemUTC(), 0);
    waitForAllAdvice();
  }

  /**
   * A round is shown before all of its advice is worked out: on a busy machine it changes still.
   */
  private static void waitForAllAdvice() throws Exception {
    for (int tries = 0; get("/").body().contains("being worked out"); tries++) {
      assertThat(tries).as("rounds without all advice").isLessThan(300);
      Thread.sleep(100);
    }
  }

  @AfterAll
  static void stop() {
    server.close();
    book.close();
  }

  @Test
  void theRoundListsItsLawnsWithTheMostUrgentFirst() throws Exception {
    String page = get("/").body();
    assertThat(page)
        .contains("Four lawns need a decision today.", "Thursday 28 May 2015", "invented", "NOAA");
    assertThat(page.indexOf("Play lawn")).isLessThan(page.indexOf("Terrace"));
    assertThat(page.indexOf("Nothing to decide today")).isLessThan(page.indexOf("Verge"));
  }

  @Test
  void aLawnShowsItsCallReasonsAndChoices() throws Exception {
    String page = get("/lawns/linden-house-back").body();
    assertThat(page)
        .contains(
            "<h1>Mow today and return the clippings.</h1>",
            "limit a third · Crider 1955",
            "best choice",
            "27\u00a0% of the height",
            "Take care");
    assertThat(page).doesNotContain("style=", "<style", "onclick", "saved");
  }

  @Test
  void everyParameterStandsOnTheSourcesPageWithItsStatus() throws Exception {
    String page = get("/sources").body();
    assertThat(page)
        .contains("optimum of growing potential", "gp_to", "Woods 2014", "our judgement");
    assertThat(ParameterTable.names()).allMatch(name -> page.contains(">" + name + "<"));
  }

  @Test
  void everyRuleOfTheCallStandsOnTheSourcesPage() throws Exception {
    String page = get("/sources").body();
    assertThat(page)
        .contains("driving on ground softened by rain", "25\u202fmm", "(5 to 80)", "rule 5");
    assertThat(CallRules.standard().entries())
        .allMatch(entry -> page.contains(">" + entry.rule().id() + "<"));
  }

  @Test
  void whatTheModelGetsWrongStandsOnTheSourcesPage() throws Exception {
    String page = get("/sources").body();
    assertThat(page).contains("What the model gets wrong", "qian2003", "upper bound");
    assertThat(Shortcoming.all()).allMatch(wrong -> page.contains(wrong.title()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/lawns", "/sources", "/lawns/heron-bank-verge", "/no-such-page"})
  void everyAnswerCarriesTheProtectingHeaders(String path) throws Exception {
    HttpResponse<String> answer = get(path);
    assertThat(header(answer, "Content-Security-Policy"))
        .contains("default-src 'none'")
        .doesNotContain("unsafe");
    assertThat(header(answer, "X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(header(answer, "Referrer-Policy")).isEqualTo("same-origin");
    assertThat(answer.headers().firstValue("Server")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"/no-such-page", "/lawns/nowhere", "/assets/old/page.css"})
  void aMissingPageSaysSoInPlainWords(String path) throws Exception {
    HttpResponse<String> answer = get(path);
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(answer.body()).contains("There is no page at this address.", "To the round");
  }

  @Test
  void assetsMayBeKeptForGoodAndPagesAreAskedForAgain() throws Exception {
    HttpResponse<String> page = get("/");
    assertThat(header(page, "Cache-Control")).isEqualTo("private, no-cache");
    Matcher asset = Pattern.compile("href=\"(/assets/[0-9a-f]+/page.css)\"").matcher(page.body());
    assertThat(asset.find()).isTrue();
    HttpResponse<String> css = get(asset.group(1));
    assertThat(css.statusCode()).isEqualTo(200);
    assertThat(header(css, "Content-Type")).startsWith("text/css");
    assertThat(header(css, "Cache-Control")).contains("immutable");
  }

  @Test
  void anUnchangedPageIsNotSentTwice() throws Exception {
    String tag = header(get("/"), "ETag");
    HttpResponse<String> again = send(request("/").header("If-None-Match", tag));
    assertThat(again.statusCode()).isEqualTo(304);
    assertThat(again.body()).isEmpty();
  }

  @Test
  void headAnswersLikeGetWithoutTheContent() throws Exception {
    HttpResponse<String> head = send(request("/").method("HEAD", BodyPublishers.noBody()));
    assertThat(head.statusCode()).isEqualTo(200);
    assertThat(head.body()).isEmpty();
    assertThat(header(head, "ETag")).isEqualTo(header(get("/"), "ETag"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "DELETE", "PATCH", "OPTIONS"})
  void nothingButReadingIsAllowed(String method) throws Exception {
    HttpResponse<String> answer = send(request("/").method(method, BodyPublishers.noBody()));
    assertThat(answer.statusCode()).isEqualTo(405);
    assertThat(header(answer, "Allow")).startsWith("GET, HEAD");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"lawns.example", "127.0.0.1.lawns.example", "127.0.0.1:1", "localhost", ""})
  void aRequestThatNamesAnotherHostIsTurnedAway(String host) throws Exception {
    String answer = raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    assertThat(answer).matches("(?s)HTTP/1.1 4(00|21) .*").doesNotContain("decision today");
  }

  @ParameterizedTest
  @ValueSource(strings = {"localhost", "127.0.0.1", "[::1]"})
  void theLoopbackNamesAreServed(String host) throws Exception {
    String answer =
        raw("GET / HTTP/1.1\r\nHost: " + host + ":" + port() + "\r\nConnection: close\r\n\r\n");
    assertThat(answer).startsWith("HTTP/1.1 200 ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/%zz", "/lawns/..%2f..%2fetc", "//", "/%00", "/lawns/%F0%9F%8C%B1", "/;x=y"})
  void aStrangeAddressShowsNothingOfTheInside(String path) throws Exception {
    String answer =
        raw(
            "GET "
                + path
                + " HTTP/1.1\r\nHost: 127.0.0.1:"
                + port()
                + "\r\nConnection: close\r\n\r\n");
    assertThat(answer)
        .startsWith("HTTP/1.1 ")
        .doesNotContain("HTTP/1.1 500")
        .doesNotContainIgnoringCase("exception")
        .doesNotContainIgnoringCase("jetty")
        .doesNotContain("\tat ");
  }

  @Test
  void aTakenPortIsToldInOneSentence() {
    assertThatThrownBy(() -> LeafturnServer.start(book, Clock.systemUTC(), port()))
        .isInstanceOf(CannotListenException.class)
        .hasMessageContaining("port " + port())
        .hasMessageContaining("--port 0");
  }

  private static int port() {
    return server.address().getPort();
  }

  private static HttpResponse<String> get(String path) throws Exception {
    return send(request(path));
  }

  private static HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + path));
  }

  private static HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
    return CLIENT.send(request.build(), BodyHandlers.ofString());
  }

  private static String header(HttpResponse<String> answer, String name) {
    return answer.headers().firstValue(name).orElse("");
  }

  private static String raw(String request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port())) {
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
