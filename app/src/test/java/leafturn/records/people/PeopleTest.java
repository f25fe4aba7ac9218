package leafturn.records.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.Engine;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PeopleTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void aNewBookIsOpenForTheOneAtTheMachine(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      assertThat(book.<Boolean>read(People::haveAccounts)).isFalse();
      Visitor local = book.read(r -> People.visitor(r, Person.LOCAL_OWNER, true)).orElseThrow();
      assertThat(local.person().role()).isEqualTo(Role.OWNER);
      assertThat(local.mayManagePeople()).isTrue();
      book.write(
          "Owner",
          w -> {
            People.setUnits(w, Person.LOCAL_OWNER, Units.US);
            return true;
          });
      assertThat(book.read(r -> People.find(r, Person.LOCAL_OWNER)).orElseThrow().units())
          .isEqualTo(Units.US);
    }
  }

  @ParameterizedTest
  @EnumSource
  void namesAreTakenOnceWhateverTheirCaseAndSpacing(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      Person ada = add(book, " Ada  Lind ", Role.HELPER);
      assertThat(ada.name()).isEqualTo("Ada Lind");
      assertThat(book.read(r -> People.named(r, "ADA LIND")).orElseThrow()).isEqualTo(ada);
      assertThatThrownBy(() -> add(book, "ada lind", Role.READER))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("\"ada lind\" is taken");
      assertThatThrownBy(() -> add(book, " ", Role.READER))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("1 to 80");
      assertThatThrownBy(() -> add(book, "A\u0007da", Role.READER))
          .hasMessageContaining("control characters");
    }
  }

  @ParameterizedTest
  @EnumSource
  void whoIsSecondToChangeAPersonIsTold(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      Person ada = add(book, "Ada", Role.HELPER);
      Person first = book.write("Owner", w -> People.revise(w, with(ada, Role.READER, false)));
      assertThat(first.version()).isEqualTo(2);
      assertThatThrownBy(
              () -> book.write("Owner", w -> People.revise(w, with(ada, Role.ADVISER, false))))
          .isInstanceOfSatisfying(
              StalePersonException.class, stale -> assertThat(stale.current()).isEqualTo(first));
    }
  }

  @ParameterizedTest
  @EnumSource
  void theLastOwnerCanNeitherStepDownNorLeave(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      Person owner = book.read(r -> People.find(r, Person.LOCAL_OWNER)).orElseThrow();
      for (Person without :
          Set.of(with(owner, Role.ADVISER, false), with(owner, Role.OWNER, true))) {
        assertThatThrownBy(() -> book.write("Owner", w -> People.revise(w, without)))
            .isInstanceOf(InputException.class)
            .hasMessageContaining("needs an owner");
      }
      assertThat(book.read(r -> People.find(r, Person.LOCAL_OWNER)).orElseThrow()).isEqualTo(owner);
    }
  }

  @ParameterizedTest
  @EnumSource
  void helpersAndReadersSeeOnlyWhatIsSharedWithThem(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      String one = property(book, "one");
      String two = property(book, "two");
      Person ada = add(book, "Ada", Role.HELPER);
      share(book, ada, Set.of(one, two));
      share(book, ada, Set.of(two));
      Visitor visitor = visitor(book, ada);
      assertThat(visitor.mayRead(one)).isFalse();
      assertThat(visitor.mayRead(two)).isTrue();
      assertThat(visitor.mayLog(one)).isFalse();
      assertThat(visitor.mayLog(two)).isTrue();
      assertThat(visitor.mayChange(two)).isFalse();
      assertThat(book.<Set<String>>read(r -> Shares.with(r, two))).containsExactly(ada.id());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "OWNER,   true,  true,  true,  true,  true",
    "ADVISER, true,  true,  true,  true,  false",
    "HELPER,  false, true,  false, false, false",
    "READER,  false, false, false, false, false"
  })
  void whatARoleMay(
      Role role, boolean all, boolean log, boolean change, boolean rules, boolean people) {
    Visitor visitor =
        new Visitor(
            new Person(id(1), "Ada", role, Units.METRIC, true, false, 1), false, Set.of("shared"));
    assertThat(visitor.mayRead("shared")).isTrue();
    assertThat(visitor.mayRead("other")).isEqualTo(all);
    assertThat(visitor.mayLog("shared")).isEqualTo(log);
    assertThat(visitor.mayChange("shared")).isEqualTo(change);
    assertThat(visitor.mayChangeRules()).isEqualTo(rules);
    assertThat(visitor.mayManagePeople()).isEqualTo(people);
  }

  @ParameterizedTest
  @EnumSource
  void whoWasWithdrawnIsNoVisitor(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      Person ada = add(book, "Ada", Role.ADVISER);
      book.write("Owner", w -> People.revise(w, with(ada, Role.ADVISER, true)));
      assertThat(book.<Optional<Visitor>>read(r -> People.visitor(r, ada.id(), false))).isEmpty();
      assertThatList(book.read(People::all)).hasSize(2);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aCalendarsSecretOpensItUntilItIsRenewedOrWithdrawn(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      Person ada = add(book, "Ada", Role.READER);
      String first = book.write("Ada", w -> Calendars.renew(w, ada.id()));
      assertThat(book.read(r -> Calendars.visitor(r, first)).orElseThrow().person()).isEqualTo(ada);
      String second = book.write("Ada", w -> Calendars.renew(w, ada.id()));
      assertThat(book.<Optional<Visitor>>read(r -> Calendars.visitor(r, first))).isEmpty();
      assertThat(book.<Optional<Visitor>>read(r -> Calendars.visitor(r, second))).isPresent();
      book.write(
          "Ada",
          w -> {
            Calendars.withdraw(w, ada.id());
            return true;
          });
      assertThat(book.<Optional<Visitor>>read(r -> Calendars.visitor(r, second))).isEmpty();
      assertThat(book.<Boolean>read(r -> Calendars.has(r, ada.id()))).isFalse();
    }
  }

  private static Person with(Person person, Role role, boolean withdrawn) {
    return new Person(
        person.id(),
        person.name(),
        role,
        person.units(),
        person.hasPassword(),
        withdrawn,
        person.version());
  }

  private static Person add(Book book, String name, Role role) {
    return book.write("Owner", w -> People.add(w, name, role, Units.METRIC));
  }

  private static Visitor visitor(Book book, Person person) {
    return book.read(r -> People.visitor(r, person.id(), false)).orElseThrow();
  }

  private static void share(Book book, Person person, Set<String> properties) {
    book.write(
        "Owner",
        w -> {
          Shares.set(w, person.id(), properties);
          return true;
        });
  }

  private static String property(Book book, String address) {
    String id = UUID.randomUUID().toString();
    Property property =
        new Property("Linden House", address, 51.5, null, null, "Europe/London", null, null);
    book.write("Owner", w -> w.add(Kind.PROPERTY, id, property));
    return id;
  }

  private static String id(int number) {
    return new UUID(0x1234567812344567L, 0x8000000000000000L + number).toString();
  }
}
