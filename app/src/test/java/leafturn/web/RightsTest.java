package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import io.javalin.http.HandlerType;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import leafturn.records.people.People;
import leafturn.records.people.Role;
import leafturn.records.people.Visitor;
import leafturn.web.Routes.Route;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every route there is, asked for by everybody who should not see it or change anything by it. */
class RightsTest {
  private static final String NOBODYS_ID = "00000000-0000-4000-8000-0000000000ff";

  /** Names of query parameters and form fields by which pages are told of ids. */
  private static final List<String> ID_NAMES =
      List.of("id", "lawn", "property", "sheet", "station", "saved", "heap", "bed", "address");

  @TempDir static Path folder;
  private static PeopledSite site;

  @BeforeAll
  static void open() {
    site = new PeopledSite(folder, Clock.systemUTC());
  }

  @AfterAll
  static void close() {
    site.close();
  }

  @Test
  void nothingIsAnsweredThatDoesNotSayWhatItAsks() {
    List<String> declared = new ArrayList<>();
    for (Route route : site.server.routes()) {
      declared.add(route.method() + " " + route.path());
      if (route.method().equals(HandlerType.GET)) {
        declared.add("HEAD " + route.path());
      }
    }
    assertThatList(site.server.answered()).containsExactlyInAnyOrderElementsOf(declared);
    assertThatList(declared).contains("GET /people", "POST /me/password");
  }

  @Test
  void aStrangerGetsNowhereAndLearnsNothing() {
    Set<String> marks = new TreeSet<>(site.othersMarks());
    Stream.of(Role.values()).map(site::name).forEach(marks::add);
    Browser stranger = site.stranger();
    for (Route route : site.server.routes()) {
      HttpResponse<String> answer = ask(stranger, route, filled(route, NOBODYS_ID), NOBODYS_ID);
      if (!route.right().isForStrangers()) {
        int expected = route.method().equals(HandlerType.GET) ? 303 : 401;
        assertThat(answer.statusCode()).as("%s", route).isEqualTo(expected);
      }
      assertThat(marksIn(answer, marks)).as("%s", route).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void aRoleGetsWhatItHasARightToAndNothingElse(Role role) {
    Visitor visitor =
        site.book
            .read(reading -> People.visitor(reading, site.person(role).id(), false))
            .orElseThrow();
    Browser browser = site.signedIn(role);
    for (Route route : site.server.routes()) {
      if (route.path().equals("/sign-out") || route.path().startsWith("/me/sign-out")) {
        continue; // would end what the other routes need
      }
      HttpResponse<String> answer = ask(browser, route, filled(route, NOBODYS_ID), NOBODYS_ID);
      boolean has = route.right().isForStrangers() || route.right().has(visitor);
      if (has) {
        assertThat(answer.statusCode())
            .as("%s of %s", route, role)
            .isNotIn(401, 403)
            .isLessThan(500);
      } else {
        assertThat(answer.statusCode()).as("%s of %s", route, role).isEqualTo(403);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"HELPER", "READER"})
  void anotherClientsPropertiesAreNowhereToBeSeen(Role role) {
    Set<String> marks = site.othersMarks();
    Map<String, Long> before = versions();
    Browser browser = site.signedIn(role);
    assertThat(browser.get("/lawns").body()).contains("<a href=\"/lawns/");
    for (Route route : site.server.routes()) {
      if (route.path().contains("sign-out")) {
        continue;
      }
      for (String mark : route.path().contains("{") ? marks : Set.of(first(marks))) {
        HttpResponse<String> answer = ask(browser, route, filled(route, mark), mark);
        Set<String> others = new TreeSet<>(marks);
        others.remove(mark); // what was asked with may come back
        assertThat(marksIn(answer, others)).as("%s with %s", route, mark).isEmpty();
        boolean open = route.right().isForStrangers() || !route.path().contains("{");
        if (!open) {
          assertThat(answer.statusCode()).as("%s with %s", route, mark).isIn(403, 404, 422);
        }
      }
    }
    assertThat(versions()).isEqualTo(before);
  }

  @Test
  void nothingIsSentWithoutTheTokenOfThePageOrFromAnotherSite() {
    Map<String, Long> before = versions();
    String other = site.signedIn(Role.READER).token();
    Browser owner = site.signedIn(Role.OWNER);
    String token = owner.token();
    for (Route route : site.server.routes()) {
      if (!route.method().equals(HandlerType.POST)) {
        continue;
      }
      String path = filled(route, NOBODYS_ID);
      for (String wrong : List.of("", "x", other, token.substring(1))) {
        assertThat(send(owner, route, path, wrong, Map.of()).statusCode())
            .as("%s with the token %s", route, wrong)
            .isEqualTo(403);
      }
      for (Map<String, String> headers :
          List.of(
              Map.of("Sec-Fetch-Site", "cross-site"),
              Map.of("Sec-Fetch-Site", "same-site"),
              Map.of("Origin", "https://evil.example"),
              Map.of("Origin", "null"),
              Map.of("Origin", "http://127.0.0.1:1"))) {
        assertThat(send(owner, route, path, token, headers).statusCode())
            .as("%s with %s", route, headers)
            .isEqualTo(403);
      }
    }
    assertThat(versions()).isEqualTo(before);
    assertThat(owner.get("/").statusCode()).isEqualTo(200);
  }

  private static String first(Set<String> marks) {
    return marks.iterator().next();
  }

  private static Set<String> marksIn(HttpResponse<String> answer, Set<String> marks) {
    Set<String> found = new TreeSet<>();
    String text = answer.body() + answer.headers().map();
    marks.stream().filter(text::contains).forEach(found::add);
    return found;
  }

  /** A path with its variable parts filled, and ids in its query. */
  private static String filled(Route route, String value) {
    String path = route.path().replaceAll("\\{[^}]+}", Browser.encoded(value).replace("+", "%20"));
    Map<String, String> query = new LinkedHashMap<>();
    ID_NAMES.forEach(name -> query.put(name, value));
    return path + "?" + Browser.encoded(query);
  }

  private static HttpResponse<String> ask(Browser browser, Route route, String path, String value) {
    if (route.method().equals(HandlerType.GET)) {
      return browser.get(path);
    }
    return send(browser, route, path, browser.token(), Map.of(), value);
  }

  private static HttpResponse<String> send(
      Browser browser, Route route, String path, String token, Map<String, String> headers) {
    return send(browser, route, path, token, headers, NOBODYS_ID);
  }

  private static HttpResponse<String> send(
      Browser browser,
      Route route,
      String path,
      String token,
      Map<String, String> headers,
      String value) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("_token", token);
    ID_NAMES.forEach(name -> fields.put(name, value));
    var request = browser.request(path).header("Content-Type", type(route));
    headers.forEach(request::header);
    if (route.intake() == Intake.JSON) {
      request.header("Leafturn-Token", token.isEmpty() ? "-" : token);
    }
    return browser.send(request.POST(BodyPublishers.ofString(body(route, fields))));
  }

  private static String type(Route route) {
    return switch (route.intake()) {
      case JSON -> "application/json";
      case PHOTOGRAPH, IMPORT -> "multipart/form-data; boundary=xyz";
      default -> "application/x-www-form-urlencoded";
    };
  }

  private static String body(Route route, Map<String, String> fields) {
    return switch (route.intake()) {
      case JSON -> "{\"id\": \"" + fields.get("id") + "\"}";
      case PHOTOGRAPH, IMPORT -> {
        StringBuilder parts = new StringBuilder();
        fields.forEach(
            (name, field) ->
                parts
                    .append("--xyz\r\nContent-Disposition: form-data; name=\"")
                    .append(name)
                    .append("\"\r\n\r\n")
                    .append(field)
                    .append("\r\n"));
        yield parts + "--xyz--\r\n";
      }
      default -> Browser.encoded(fields);
    };
  }

  /** Every place's number of changes: equal as long as nobody changed anything. */
  private static Map<String, Long> versions() {
    return site.book.read(reading -> reading.revisions());
  }
}
