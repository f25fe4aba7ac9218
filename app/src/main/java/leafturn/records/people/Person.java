package leafturn.records.people;

import java.text.Normalizer;
import java.util.Locale;
import leafturn.quantity.Units;

/**
 * Somebody who may open the book.
 *
 * @param id UUID in lower case
 * @param name what they are called and sign in with, 1 to 80 characters, unique in the book
 * @param role what they may do
 * @param units in which they read and write
 * @param hasPassword whether they can sign in
 * @param withdrawn true when they may no longer open the book
 * @param version rises with each change
 */
public record Person(
    String id,
    String name,
    Role role,
    Units units,
    boolean hasPassword,
    boolean withdrawn,
    int version) {
  /** The person for whom a new book is open on this machine before anybody has a password. */
  public static final String LOCAL_OWNER = "00000000-0000-4000-8000-000000000001";

  /** Longest name, characters. */
  public static final int LONGEST_NAME = 80;

  public Person {
    if (name.isBlank() || name.length() > LONGEST_NAME || version < 1) {
      throw new IllegalArgumentException("a person has a name and a version of 1 or more");
    }
  }

  /** This person under another name. */
  public Person named(String other) {
    return new Person(id, other, role, units, hasPassword, withdrawn, version);
  }

  /** The form in which two names are compared: letters alike whatever their case and spacing. */
  public static String key(String name) {
    String key =
        Normalizer.normalize(name, Normalizer.Form.NFKC)
            .strip()
            .replaceAll("\\s+", " ")
            .toLowerCase(Locale.ROOT);
    return key.substring(0, Math.min(key.length(), LONGEST_NAME));
  }
}
