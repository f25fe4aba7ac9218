package leafturn.records.people;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a person may do in a book. */
public enum Role {
  /** Everything, people and the book itself with it. */
  OWNER("owner", "Sees and changes everything, people and the book itself with it."),

  /** Everything but people and the book itself. */
  ADVISER("adviser", "Sees and changes every property, lawn and rule; not the people."),

  /** Reads and logs on the properties shared with them. */
  HELPER("helper", "Sees the properties shared with them and logs there; changes nothing else."),

  /** Reads the properties shared with them. */
  READER("reader", "Sees the properties shared with them; writes nothing.");

  private final String word;
  private final String meaning;

  Role(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** The role with this word. */
  public static Optional<Role> of(String word) {
    String wanted = word.toLowerCase(Locale.ROOT);
    return Stream.of(values()).filter(role -> role.word.equals(wanted)).findFirst();
  }

  /** What people call it. */
  public String word() {
    return word;
  }

  /** What people call one of them: "an owner". */
  public String article() {
    return (this == OWNER || this == ADVISER ? "an " : "a ") + word;
  }

  /** What it allows, in a sentence. */
  public String meaning() {
    return meaning;
  }

  /** True for those who see only the properties shared with them. */
  public boolean needsShares() {
    return this == HELPER || this == READER;
  }
}
