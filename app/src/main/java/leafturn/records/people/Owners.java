package leafturn.records.people;

import java.util.Optional;
import leafturn.quantity.Units;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.book.BookWriting;
import leafturn.records.people.SignIns.Outcome;

/** How a book gets its first owner, and an owner who forgot the password another one. */
public final class Owners {
  private static final String THE_COMMAND_LINE = "command line";

  private Owners() {}

  /** Why a book is not served to others as long as nobody has an account in it. */
  public static InputException missing() {
    return new InputException(
        "Nobody can sign in to this book yet, and others are not served without that: make the"
            + " first owner with 'leafturn book owner --book PLACE --name NAME'.");
  }

  /**
   * Gives an owner a password. The one for whom the book was open until now takes the name, if
   * nobody has it; further names become further owners.
   *
   * @param name the name to sign in with
   * @param passwordHash what {@link Passwords#hash} made of the password
   * @throws InputException when the name is that of somebody who is no owner, or no name
   */
  public static Person welcome(BookWriting writing, String name, String passwordHash) {
    Person owner = owner(writing, name);
    People.setPasswordHash(writing, owner.id(), passwordHash);
    Sessions.endAll(writing, owner.id());
    SignIns.note(writing, owner.name(), owner, THE_COMMAND_LINE, Outcome.PASSWORD_RESET);
    return owner;
  }

  private static Person owner(BookWriting writing, String name) {
    Optional<Person> known = People.named(writing, name);
    if (known.isPresent()) {
      if (known.get().role() != Role.OWNER || known.get().withdrawn()) {
        throw new InputException(
            Faults.quoted(name)
                + " is in this book already, but not as an owner; give an owner's name or a new"
                + " one.");
      }
      return known.get();
    }
    Optional<Person> local =
        People.find(writing, Person.LOCAL_OWNER)
            .filter(person -> !person.hasPassword() && !person.withdrawn());
    return local.isPresent()
        ? People.revise(writing, local.get().named(name))
        : People.add(writing, name, Role.OWNER, Units.METRIC);
  }
}
