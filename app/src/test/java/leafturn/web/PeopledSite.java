package leafturn.web;

import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.people.Owners;
import leafturn.records.people.Passwords;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Shares;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.TrialSheet;

/**
 * The invented round with an account of each role. Helper and reader are clients with whom the
 * first property is shared; all other properties belong to other clients.
 */
final class PeopledSite implements AutoCloseable {
  static final String PASSWORD = "seven quiet meadows";
  private static final String HASH = Passwords.hash(PASSWORD);
  private static final Map<Role, String> NAMES =
      new EnumMap<>(
          Map.of(
              Role.OWNER, "Olga Ossian",
              Role.ADVISER, "Anna Adair",
              Role.HELPER, "Henk Hollis",
              Role.READER, "Rita Roswell"));

  final Book book;
  final LeafturnServer server;
  final String shared;

  PeopledSite(Path folder, Clock clock) {
    book = Book.open(BookPlace.of(folder.resolve("book")), clock);
    DemoBook.write(book);
    List<Sheet<Property>> properties = book.read(reading -> reading.all(Kind.PROPERTY));
    shared = properties.get(0).id();
    book.write("Olga Ossian", writing -> Owners.welcome(writing, "Olga Ossian", HASH));
    for (Role role : List.of(Role.ADVISER, Role.HELPER, Role.READER)) {
      book.write(
          "Olga Ossian",
          writing -> {
            Person person = People.add(writing, NAMES.getOrDefault(role, ""), role, Units.METRIC);
            People.setPasswordHash(writing, person.id(), HASH);
            if (role.needsShares()) {
              Shares.set(writing, person.id(), Set.of(shared));
            }
            return person;
          });
    }
    server = LeafturnServer.start(book, clock, 0);
  }

  /** A browser nobody has signed in with. */
  Browser stranger() {
    return new Browser(server.address());
  }

  /** A browser in which somebody of a role has signed in. */
  Browser signedIn(Role role) {
    Browser browser = stranger();
    int status = browser.signIn(name(role), PASSWORD).statusCode();
    if (status != 303) {
      throw new IllegalStateException("no way in for " + role + ": " + status);
    }
    return browser;
  }

  String name(Role role) {
    return NAMES.getOrDefault(role, "");
  }

  Person person(Role role) {
    return book.read(reading -> People.named(reading, name(role))).orElseThrow();
  }

  /** Ids, addresses and names that tell of other clients' properties. */
  Set<String> othersMarks() {
    return book.read(this::othersMarks);
  }

  private Set<String> othersMarks(BookReading reading) {
    Set<String> own = new HashSet<>();
    Set<String> marks = new TreeSet<>();
    for (Sheet<Property> property : reading.all(Kind.PROPERTY)) {
      Set<String> into = property.id().equals(shared) ? own : marks;
      into.add(property.id());
      into.add(property.content().address());
      into.add(property.content().name());
      for (Sheet<? extends Content> sheet : sheetsOf(reading, property.id())) {
        (sheet.kind() == Kind.TRIAL ? marks : into).add(sheet.id());
        if (sheet.content().address() != null) {
          into.add(sheet.content().address());
        }
      }
    }
    marks.removeAll(own);
    reading.all(Kind.TRIAL).forEach(trial -> marks.add(trial.content().name()));
    return marks;
  }

  /** Every sheet of a property, and of its lawns. */
  static List<Sheet<? extends Content>> sheetsOf(BookReading reading, String property) {
    return Kind.all().stream()
        .flatMap(kind -> reading.all(kind).stream())
        .filter(sheet -> belongs(reading, sheet, property))
        .<Sheet<? extends Content>>map(sheet -> sheet)
        .toList();
  }

  private static boolean belongs(BookReading reading, Sheet<?> sheet, String property) {
    if (sheet.content() instanceof TrialSheet trial) {
      return trial.lawns().stream()
          .map(id -> reading.find(Kind.LAWN, id).orElseThrow().content().property())
          .anyMatch(property::equals);
    }
    String lawn = sheet.content().lawn();
    return property.equals(sheet.content().property())
        || lawn != null
            && reading
                .find(Kind.LAWN, lawn)
                .filter(found -> property.equals(found.content().property()))
                .isPresent();
  }

  @Override
  public void close() {
    server.close();
    book.close();
  }
}
