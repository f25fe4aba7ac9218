package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Shares;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PeopleRoomTest {
  private static final Pattern LETTER = Pattern.compile("(/invitations/[A-Za-z0-9_-]{43})<");

  @TempDir Path folder;
  private PeopledSite site;

  @BeforeEach
  void open() {
    site = new PeopledSite(folder, new SetClock());
  }

  @AfterEach
  void close() {
    site.close();
  }

  @Test
  void aNewRoleCountsAtOnceAndEndsTheSessions() {
    Browser owner = site.signedIn(Role.OWNER);
    Browser adviser = site.signedIn(Role.ADVISER);
    Person anna = site.person(Role.ADVISER);
    Map<String, String> form =
        Map.of(
            "name",
            anna.name(),
            "role",
            "reader",
            "properties",
            site.shared,
            "version",
            Integer.toString(anna.version()));
    assertThat(owner.post("/people/" + anna.id(), form).statusCode()).isEqualTo(303);
    assertThat(owner.get("/people/sign-ins").body())
        .contains("role or shares were changed by " + site.person(Role.OWNER).name());
    assertThat(adviser.get("/").statusCode()).isEqualTo(303);
    assertThat(site.person(Role.ADVISER).role()).isEqualTo(Role.READER);
    assertThat(site.book.<Set<String>>read(r -> Shares.of(r, anna.id())))
        .containsExactly(site.shared);
    HttpResponse<String> stale = owner.post("/people/" + anna.id(), form);
    assertThat(stale.statusCode()).isEqualTo(409);
    assertThat(stale.body())
        .contains("Somebody else was quicker", "The book now says", anna.name());
  }

  @Test
  void theLastOwnerStays() {
    Browser owner = site.signedIn(Role.OWNER);
    Person olga = site.person(Role.OWNER);
    HttpResponse<String> answer =
        owner.post(
            "/people/" + olga.id(),
            Map.of(
                "name", olga.name(),
                "role", "reader",
                "version", Integer.toString(olga.version())));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("The book needs an owner who can sign in");
    assertThat(site.person(Role.OWNER).role()).isEqualTo(Role.OWNER);
  }

  @Test
  void anInvitationMakesAnAccountThatSeesWhatIsShared() {
    Browser owner = site.signedIn(Role.OWNER);
    String page =
        owner
            .post(
                "/people/invitations",
                Map.of("name", "Cleo Crane", "role", "helper", "properties", site.shared))
            .body();
    Matcher letter = LETTER.matcher(page);
    assertThat(letter.find()).isTrue();
    assertThat(owner.get("/people").body())
        .contains("Cleo Crane, helper, will see")
        .doesNotContain(letter.group(1));
    Browser guest = site.stranger();
    assertThat(guest.get(letter.group(1)).body()).contains("Olga Ossian invites you", "a helper");
    HttpResponse<String> weak =
        guest.post(letter.group(1), Map.of("name", "", "fresh", "short", "again", "short"));
    assertThat(weak.statusCode()).isEqualTo(422);
    assertThat(weak.body()).contains("at least 12 characters", "Give the name you want");
    String fresh = "a heron on the lawn";
    HttpResponse<String> made =
        guest.post(letter.group(1), Map.of("name", "Cleo", "fresh", fresh, "again", fresh));
    assertThat(made.statusCode()).isEqualTo(303);
    assertThat(guest.get("/lawns").statusCode()).isEqualTo(200);
    assertThat(guest.get("/people").statusCode()).isEqualTo(403);
    assertThat(site.stranger().get(letter.group(1)).statusCode()).isEqualTo(410);
    assertThat(owner.get("/people/sign-ins").body()).contains("took up an invitation", "Cleo");
  }
}
