package leafturn.records.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;

/** The invitations of a book. */
public final class Invitations {
  private static final String COLUMNS =
      "select id, name, role, made_by, ends_at from invitation"
          + " where used_at is null and not withdrawn and ends_at > :now";

  private Invitations() {}

  /**
   * Invites somebody. The secret of the letter's address is told only here.
   *
   * @throws InputException when the name is taken or no name
   */
  public static String make(BookWriting writing, String name, Role role, Set<String> properties) {
    String id = UUID.randomUUID().toString();
    String secret = Secret.fresh();
    writing
        .handle()
        .createUpdate(
            "insert into invitation (id, secret_hash, name, role, made_by, made_at, ends_at,"
                + " withdrawn) values (:id, :hash, :name, :role, :by, :now, :ends, false)")
        .bind("id", id)
        .bind("hash", Secret.hash(secret))
        .bind("name", People.checkedName(writing, name, id))
        .bind("role", role.word())
        .bind("by", writing.by())
        .bind("now", writing.now().atOffset(ZoneOffset.UTC))
        .bind("ends", writing.now().plus(Invitation.HOLDS).atOffset(ZoneOffset.UTC))
        .execute();
    for (String property : properties) {
      writing
          .handle()
          .execute(
              "insert into invitation_share (invitation, property) values (?, ?)", id, property);
    }
    return secret;
  }

  /** The invitation a secret opens; empty for one that was used, withdrawn or has ended. */
  public static Optional<Invitation> find(BookReading reading, String secret, Instant now) {
    return reading
        .handle()
        .createQuery(COLUMNS + " and secret_hash = :hash")
        .bind("now", now.atOffset(ZoneOffset.UTC))
        .bind("hash", Secret.hash(secret))
        .map((row, context) -> invitation(reading, row))
        .findOne();
  }

  /** The invitations nobody has taken up yet, the one that ends first at the top. */
  public static List<Invitation> open(BookReading reading, Instant now) {
    return reading
        .handle()
        .createQuery(COLUMNS + " order by ends_at")
        .bind("now", now.atOffset(ZoneOffset.UTC))
        .map((row, context) -> invitation(reading, row))
        .list();
  }

  /** Takes an invitation back. */
  public static void withdraw(BookWriting writing, String id) {
    writing.handle().execute("update invitation set withdrawn = true where id = ?", id);
  }

  /**
   * Makes the account of an invitation, which is then used up.
   *
   * @param name what the person wants to be called
   * @param passwordHash what {@link Passwords#hash} made of their password
   * @return the person; empty when the invitation no longer holds
   * @throws InputException when the name is taken or no name
   */
  public static Optional<Person> accept(
      BookWriting writing, String secret, String name, String passwordHash) {
    Optional<Invitation> invitation = find(writing, secret, writing.now());
    if (invitation.isEmpty()) {
      return Optional.empty();
    }
    Invitation letter = invitation.get();
    Person person = People.add(writing, name, letter.role(), unitsOf(writing, letter.madeBy()));
    int used =
        writing
            .handle()
            .createUpdate(
                "update invitation set used_at = :now, used_by = :person where id = :id and"
                    + " used_at is null")
            .bind("now", writing.now().atOffset(ZoneOffset.UTC))
            .bind("person", person.id())
            .bind("id", letter.id())
            .execute();
    if (used != 1) {
      throw new InputException("This invitation has just been taken up.");
    }
    People.setPasswordHash(writing, person.id(), passwordHash);
    Shares.set(writing, person.id(), letter.properties());
    return People.find(writing, person.id());
  }

  /** The units of whoever invited, as they are now; metric where nobody has that name any more. */
  private static Units unitsOf(BookReading reading, String name) {
    return People.named(reading, name).map(Person::units).orElse(Units.METRIC);
  }

  private static Invitation invitation(BookReading reading, ResultSet row) throws SQLException {
    String id = row.getString("id");
    String role = row.getString("role");
    return new Invitation(
        id,
        row.getString("name"),
        Role.of(role).orElseThrow(() -> new IllegalStateException("unknown role " + role)),
        Set.copyOf(
            reading
                .handle()
                .createQuery("select property from invitation_share where invitation = :id")
                .bind("id", id)
                .mapTo(String.class)
                .list()),
        row.getString("made_by"),
        row.getObject("ends_at", OffsetDateTime.class).toInstant());
  }
}
