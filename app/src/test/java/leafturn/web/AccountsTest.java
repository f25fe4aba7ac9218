package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.people.Owners;
import leafturn.records.people.Passwords;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Session;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AccountsTest {
  @TempDir Path folder;
  private final SetClock clock = new SetClock();
  private PeopledSite site;

  @BeforeEach
  void open() {
    site = new PeopledSite(folder, clock);
  }

  @AfterEach
  void close() {
    site.close();
  }

  @Test
  void aStrangerIsSentToSignInAndGoesOnFromThereToThePageAskedFor() {
    Browser browser = site.stranger();
    HttpResponse<String> asked = browser.get("/lawns?x=1");
    assertThat(asked.statusCode()).isEqualTo(303);
    assertThat(header(asked, "Location")).isEqualTo("/sign-in?to=%2Flawns%3Fx%3D1");
    String page = browser.get(header(asked, "Location")).body();
    assertThat(page).contains("value=\"/lawns?x=1\"").doesNotContain("aria-label=\"Rooms\"");
    HttpResponse<String> in =
        browser.post(
            "/sign-in",
            Map.of("name", "olga ossian", "password", PeopledSite.PASSWORD, "to", "/lawns?x=1"));
    assertThat(in.statusCode()).isEqualTo(303);
    assertThat(header(in, "Location")).isEqualTo("/lawns?x=1");
    assertThat(browser.get("/lawns").body()).contains("Olga Ossian", "/people");
  }

  @ParameterizedTest
  @CsvSource({
    "//evil.example",
    "https://evil.example/",
    "/\\evil.example",
    "javascript:x",
    "/sign-out"
  })
  void nobodyIsSentToAnotherSiteAfterSigningIn(String to) {
    Browser browser = site.stranger();
    browser.get("/sign-in");
    HttpResponse<String> in =
        browser.post(
            "/sign-in", Map.of("name", "Olga Ossian", "password", PeopledSite.PASSWORD, "to", to));
    assertThat(header(in, "Location")).isEqualTo("/");
  }

  @Test
  void signingInChangesWhatTheBrowserIsKnownBy() {
    Browser browser = site.stranger();
    browser.get("/sign-in");
    Map<String, String> before = Map.copyOf(browser.cookies());
    HttpResponse<String> in =
        browser.post("/sign-in", Map.of("name", "Olga Ossian", "password", PeopledSite.PASSWORD));
    assertThat(header(in, "Set-Cookie")).contains("HttpOnly", "SameSite=Lax", "Path=/");
    assertThat(browser.cookies().keySet()).isEqualTo(before.keySet());
    assertThat(browser.cookies()).isNotEqualTo(before);
    assertThat(browser.get("/").statusCode()).isEqualTo(200);
    browser.cookies().putAll(before);
    assertThat(browser.get("/").statusCode()).isEqualTo(303);
  }

  @Test
  void wrongNamesAndPasswordsAreToldAlikeAndPausedAlike() {
    Browser known = site.stranger();
    Browser unknown = site.stranger();
    for (int i = 0; i < 5; i++) {
      HttpResponse<String> one = known.signIn("Rita Roswell", "not this one, no");
      HttpResponse<String> other = unknown.signIn("Nobody Known", "not this one, no");
      assertThat(one.statusCode()).isEqualTo(other.statusCode()).isEqualTo(422);
      assertThat(one.body()).contains("Name and password do not go together.");
      assertThat(other.body()).contains("Name and password do not go together.");
    }
    HttpResponse<String> one = known.signIn("Rita Roswell", PeopledSite.PASSWORD);
    HttpResponse<String> other = unknown.signIn("Nobody Known", PeopledSite.PASSWORD);
    assertThat(one.statusCode()).isEqualTo(other.statusCode()).isEqualTo(429);
    assertThat(header(one, "Retry-After")).isEqualTo(header(other, "Retry-After")).isEqualTo("16");
    clock.forward(Duration.ofSeconds(15));
    assertThat(known.signIn("Rita Roswell", PeopledSite.PASSWORD).statusCode()).isEqualTo(303);
  }

  @Test
  void aSessionEndsAfterTwoIdleWeeksAndOnSigningOut() {
    Browser browser = site.signedIn(Role.READER);
    clock.forward(Session.IDLE.minusMinutes(1));
    assertThat(browser.get("/").statusCode()).isEqualTo(200);
    clock.forward(Session.IDLE.minusMinutes(1));
    assertThat(browser.get("/").statusCode()).isEqualTo(200);
    clock.forward(Session.IDLE);
    assertThat(browser.get("/").statusCode()).isEqualTo(303);
    Browser again = site.signedIn(Role.READER);
    Map<String, String> held = Map.copyOf(again.cookies());
    assertThat(again.post("/sign-out", Map.of()).statusCode()).isEqualTo(303);
    again.cookies().putAll(held);
    assertThat(again.get("/").statusCode()).isEqualTo(303);
  }

  @Test
  void aNewPasswordEndsEveryOtherSession() {
    Browser here = site.signedIn(Role.HELPER);
    Browser there = site.signedIn(Role.HELPER);
    String fresh = "another long password";
    HttpResponse<String> wrong = change(here, "not the old one", fresh, fresh);
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.body()).contains("This is not your password").doesNotContain(fresh);
    HttpResponse<String> twice = change(here, PeopledSite.PASSWORD, fresh, "another long passwort");
    assertThat(twice.body()).contains("not the same password");
    assertThat(change(here, PeopledSite.PASSWORD, fresh, fresh).statusCode()).isEqualTo(303);
    assertThat(here.get("/").statusCode()).isEqualTo(200);
    assertThat(there.get("/").statusCode()).isEqualTo(303);
    assertThat(site.stranger().signIn("Henk Hollis", PeopledSite.PASSWORD).statusCode())
        .isEqualTo(422);
    assertThat(site.stranger().signIn("Henk Hollis", fresh).statusCode()).isEqualTo(303);
  }

  private static HttpResponse<String> change(
      Browser browser, String current, String fresh, String again) {
    return browser.post("/me/password", Map.of("current", current, "fresh", fresh, "again", again));
  }

  @Test
  void unitsAreKeptPerPerson() {
    Browser helper = site.signedIn(Role.HELPER);
    assertThat(helper.post("/me/units", Map.of("units", "furlongs")).statusCode()).isEqualTo(422);
    assertThat(helper.post("/me/units", Map.of("units", "us")).statusCode()).isEqualTo(303);
    assertThat(site.person(Role.HELPER).units()).isEqualTo(leafturn.quantity.Units.US);
    assertThat(site.person(Role.READER).units()).isEqualTo(leafturn.quantity.Units.METRIC);
  }

  @Test
  void aBookWithoutPasswordsIsOpenHereUntilSomebodyHasOne() {
    try (Book book = Book.open(BookPlace.of(folder.resolve("open")), clock);
        LeafturnServer server = LeafturnServer.start(book, clock, 0)) {
      Browser browser = new Browser(server.address());
      assertThat(browser.get("/people").body()).contains("Owner", "no password yet");
      assertThat(browser.get("/sign-in").statusCode()).isEqualTo(303);
      HttpResponse<String> early =
          browser.post("/people/invitations", Map.of("name", "Cleo", "role", "reader"));
      assertThat(early.statusCode()).isEqualTo(422);
      assertThat(early.body()).contains("Give yourself a password first");
      String fresh = "a heron on the lawn";
      browser.post("/me/password", Map.of("name", "Ada Lind", "fresh", fresh, "again", fresh));
      assertThat(browser.get("/me").body()).contains("Ada Lind, owner", "this one");
      Browser other = new Browser(server.address());
      assertThat(other.get("/").statusCode()).isEqualTo(303);
      assertThat(other.signIn("Ada Lind", fresh).statusCode()).isEqualTo(303);
    }
  }

  @Test
  void theCommandLineMakesTheFirstOwnerAndFurtherOnes() {
    try (Book book = Book.open(BookPlace.of(folder.resolve("first")), clock)) {
      String hash = Passwords.hash(PeopledSite.PASSWORD);
      Person first = book.write("x", w -> Owners.welcome(w, "Ada Lind", hash));
      assertThat(first.id()).isEqualTo(Person.LOCAL_OWNER);
      Person again = book.write("x", w -> Owners.welcome(w, "ada lind", hash));
      assertThat(again.id()).isEqualTo(first.id());
      Person second = book.write("x", w -> Owners.welcome(w, "Bo Lind", hash));
      assertThat(second.id()).isNotEqualTo(first.id());
      assertThat(second.role()).isEqualTo(Role.OWNER);
      Person reader =
          book.write("x", w -> People.add(w, "Cy", Role.READER, leafturn.quantity.Units.METRIC));
      assertThatThrownBy(() -> book.write("x", w -> Owners.welcome(w, reader.name(), hash)))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("not as an owner");
    }
  }

  private static String header(HttpResponse<String> answer, String name) {
    return answer.headers().firstValue(name).orElse("");
  }
}
