package leafturn.records.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.Engine;
import leafturn.records.people.FrontDoor.Answer;
import leafturn.records.people.SignIns.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FrontDoorTest {
  private static final String GOOD = "seven quiet meadows";
  private static final String HERE = "192.0.2.7";

  @TempDir Path folder;
  private Instant now = Instant.parse("2026-05-03T10:00:00Z");
  private final InstantSource clock = () -> now;

  @ParameterizedTest
  @EnumSource
  void nameAndPasswordLetSomebodyInWhateverTheCaseOfTheName(Engine engine) {
    try (Book book = book(engine)) {
      Person ada = withPassword(book, "Ada Lind");
      Answer answer = new FrontDoor(book, clock).knock("ada  lind", GOOD, HERE, "A browser");
      assertThat(answer).isInstanceOf(Answer.In.class);
      String secret = ((Answer.In) answer).secret();
      Session session = book.read(r -> Sessions.find(r, secret, now)).orElseThrow();
      assertThat(session.person()).isEqualTo(ada.id());
      assertThat(session.secretHash()).isEqualTo(Secret.hash(secret)).doesNotContain(secret);
      assertThatList(book.read(r -> SignIns.latest(r, 10)))
          .containsExactly(new SignIns.Entry(now, "Ada Lind", HERE, Outcome.CAME_IN, ""));
    }
  }

  @ParameterizedTest
  @EnumSource
  void nobodyIsToldWhetherTheNameOrThePasswordIsWrong(Engine engine) {
    try (Book book = book(engine)) {
      withPassword(book, "Ada");
      book.write("Owner", w -> People.add(w, "Bo", Role.READER, Units.METRIC));
      FrontDoor door = new FrontDoor(book, clock);
      assertThat(door.knock("Ada", "something else!", HERE, "")).isEqualTo(new Answer.Wrong());
      assertThat(door.knock("Nobody", GOOD, HERE, "")).isEqualTo(new Answer.Wrong());
      assertThat(door.knock("Bo", GOOD, HERE, "")).isEqualTo(new Answer.Wrong());
      assertThatList(book.read(r -> SignIns.latest(r, 10)))
          .extracting(SignIns.Entry::name)
          .containsExactly("Bo", "", "Ada");
    }
  }

  @ParameterizedTest
  @EnumSource
  void thePauseGrowsAlikeForNamesTheBookKnowsAndOthers(Engine engine) {
    try (Book book = book(engine)) {
      withPassword(book, "Ada");
      FrontDoor door = new FrontDoor(book, clock);
      for (String name : List.of("Ada", "Nobody")) {
        String from = name.equals("Ada") ? HERE : "192.0.2.8";
        for (int i = 0; i < 5; i++) {
          assertThat(door.knock(name, "wrong words " + i, from, "")).isEqualTo(new Answer.Wrong());
        }
        assertThat(door.knock(name, GOOD, from, ""))
            .isEqualTo(new Answer.Paused(now.plusSeconds(15)));
        now = now.plusSeconds(15);
        assertThat(door.knock(name, "wrong words", from, "")).isEqualTo(new Answer.Wrong());
        assertThat(door.knock(name, GOOD, from, ""))
            .isEqualTo(new Answer.Paused(now.plusSeconds(30)));
      }
      now = now.plusSeconds(30);
      assertThat(door.knock("Ada", GOOD, HERE, "")).isInstanceOf(Answer.In.class);
      assertThat(door.knock("Ada", "wrong words", HERE, "")).isEqualTo(new Answer.Wrong());
      assertThat(door.knock("Ada", GOOD, HERE, "")).isInstanceOf(Answer.In.class);
    }
  }

  @ParameterizedTest
  @EnumSource
  void triesDuringAPauseAreWrittenDownOnceAMinute(Engine engine) {
    try (Book book = book(engine)) {
      withPassword(book, "Ada");
      FrontDoor door = new FrontDoor(book, clock);
      for (int i = 0; i < 8; i++) {
        door.knock("Ada", "wrong words", HERE, "");
      }
      assertThat(pausesNoted(book)).isEqualTo(1);
      assertThatList(book.read(r -> SignIns.latest(r, 1)))
          .extracting(SignIns.Entry::name)
          .containsExactly("Ada");
      for (int seconds : new int[] {15, 30, 60}) {
        now = now.plusSeconds(seconds);
        assertThat(door.knock("Ada", "wrong words", HERE, "")).isEqualTo(new Answer.Wrong());
      }
      for (int triedAfterS : new int[] {1, 59, 1}) { // within a pause of two minutes
        now = now.plusSeconds(triedAfterS);
        assertThat(door.knock("Ada", GOOD, HERE, "")).isInstanceOf(Answer.Paused.class);
      }
      assertThat(pausesNoted(book)).isEqualTo(3);
    }
  }

  private static long pausesNoted(Book book) {
    return book.read(r -> SignIns.latest(r, 20)).stream()
        .filter(entry -> entry.outcome() == Outcome.PAUSED)
        .count();
  }

  @ParameterizedTest
  @EnumSource
  void oneAddressCannotTryManyNames(Engine engine) {
    try (Book book = book(engine)) {
      withPassword(book, "Ada");
      FrontDoor door = new FrontDoor(book, clock);
      for (int i = 0; i < 20; i++) {
        assertThat(door.knock("name " + i, GOOD, HERE, "")).isEqualTo(new Answer.Wrong());
      }
      assertThat(door.knock("Ada", GOOD, HERE, "")).isInstanceOf(Answer.Paused.class);
      assertThat(door.knock("Ada", GOOD, "192.0.2.9", "")).isInstanceOf(Answer.In.class);
    }
  }

  @ParameterizedTest
  @CsvSource({"1, PT15S", "2, PT30S", "6, PT8M", "7, PT15M", "500, PT15M"})
  void thePauseDoublesUpToAQuarterOfAnHour(int failures, Duration pause) {
    assertThat(SignIns.pause(failures)).isEqualTo(pause);
  }

  @ParameterizedTest
  @EnumSource
  void aSessionEndsWhenIdleWhenOldAndWhenEnded(Engine engine) {
    try (Book book = book(engine)) {
      Person ada = withPassword(book, "Ada");
      String first = book.write("Ada", w -> Sessions.begin(w, ada.id(), HERE, "A\u0000browser"));
      now = now.plus(Session.IDLE).minusSeconds(1);
      Session session = book.read(r -> Sessions.find(r, first, now)).orElseThrow();
      assertThat(session.browser()).isEqualTo("A browser");
      assertThat(session.isToBeSeen(now)).isTrue();
      done(book, w -> Sessions.seen(w, session));
      now = now.plusSeconds(2);
      assertThatList(book.read(r -> Sessions.of(r, ada.id(), now))).hasSize(1);
      now = session.beganAt().plus(Session.LONGEST);
      assertThat(book.<Optional<Session>>read(r -> Sessions.find(r, first, now))).isEmpty();
      String second = book.write("Ada", w -> Sessions.begin(w, ada.id(), HERE, ""));
      assertThat(book.<Optional<Session>>read(r -> Sessions.find(r, second, now))).isPresent();
      done(book, w -> Sessions.endAll(w, ada.id()));
      assertThat(book.<Optional<Session>>read(r -> Sessions.find(r, second, now))).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void anInvitationMakesOneAccountOnce(Engine engine) {
    try (Book book = book(engine)) {
      String secret = book.write("Owner", w -> Invitations.make(w, "Cy", Role.READER, Set.of()));
      Invitation letter = book.read(r -> Invitations.find(r, secret, now)).orElseThrow();
      assertThat(letter.role()).isEqualTo(Role.READER);
      assertThat(letter.madeBy()).isEqualTo("Owner");
      String hash = Passwords.hash(GOOD);
      Person cy =
          book.write("Cy", w -> Invitations.accept(w, secret, "Cy Moor", hash)).orElseThrow();
      assertThat(cy.role()).isEqualTo(Role.READER);
      assertThat(cy.hasPassword()).isTrue();
      assertThat(book.<Optional<Person>>write("Di", w -> Invitations.accept(w, secret, "Di", hash)))
          .isEmpty();
      assertThatList(book.read(r -> Invitations.open(r, now))).isEmpty();
      String late = book.write("Owner", w -> Invitations.make(w, "Di", Role.READER, Set.of()));
      String withdrawn = book.write("Owner", w -> Invitations.make(w, "Di", Role.READER, Set.of()));
      done(
          book,
          w -> Invitations.withdraw(w, Invitations.find(w, withdrawn, now).orElseThrow().id()));
      assertThat(book.<Optional<Invitation>>read(r -> Invitations.find(r, withdrawn, now)))
          .isEmpty();
      now = now.plus(Invitation.HOLDS);
      assertThat(book.<Optional<Invitation>>read(r -> Invitations.find(r, late, now))).isEmpty();
      assertThatThrownBy(
              () -> book.write("Owner", w -> Invitations.make(w, "cy moor", Role.READER, Set.of())))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("is taken");
    }
  }

  @ParameterizedTest
  @EnumSource(Units.class)
  void whoeverIsInvitedBeginsWithTheUnitsOfTheInviter(Units units) {
    try (Book book = book(Engine.H2)) {
      book.write("Ann", w -> People.add(w, "Ann", Role.OWNER, units));
      String secret = book.write("Ann", w -> Invitations.make(w, "Cy", Role.READER, Set.of()));
      String hash = Passwords.hash(GOOD);
      Person cy = book.write("Cy", w -> Invitations.accept(w, secret, "Cy", hash)).orElseThrow();
      assertThat(cy.units()).isEqualTo(units);
    }
  }

  @Test
  void passwordsAreKeptAsArgon2idAndNeverTwiceTheSame() {
    String hash = Passwords.hash(GOOD);
    assertThat(hash)
        .startsWith("$argon2id$v=19$m=19456,t=2,p=1$")
        .isNotEqualTo(Passwords.hash(GOOD));
    assertThat(Passwords.match(GOOD, Optional.of(hash))).isTrue();
    assertThat(Passwords.match(GOOD + " ", Optional.of(hash))).isFalse();
    assertThat(Passwords.match(GOOD, Optional.empty())).isFalse();
  }

  /** The vector of the reference implementation's tests for t = 2, m = 64 MiB, p = 1. */
  @Test
  void argon2idMeetsTheReferenceImplementation() {
    String reference =
        "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";
    assertThat(Passwords.match("password", Optional.of(reference))).isTrue();
    assertThat(Passwords.match("passwore", Optional.of(reference))).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "eleven chr, at least 12",
    "aaaaaaaaaaaaaaaaaa, different characters",
    "Ada Lind 1234, little more than the name"
  })
  void weakPasswordsAreToldWhy(String password, String why) {
    assertThat(Passwords.fault(password, "ada lind").orElse("")).contains(why);
    assertThat(Passwords.fault(GOOD, "Ada Lind")).isEmpty();
  }

  private Book book(Engine engine) {
    return Book.open(engine.newPlace(folder), clock);
  }

  private static Person withPassword(Book book, String name) {
    return book.write(
        "Owner",
        w -> {
          Person person = People.add(w, name, Role.HELPER, Units.METRIC);
          People.setPasswordHash(w, person.id(), Passwords.hash(GOOD));
          return People.find(w, person.id()).orElseThrow();
        });
  }

  private static void done(
      Book book, java.util.function.Consumer<leafturn.records.book.BookWriting> writing) {
    book.write(
        "Owner",
        w -> {
          writing.accept(w);
          return true;
        });
  }
}
