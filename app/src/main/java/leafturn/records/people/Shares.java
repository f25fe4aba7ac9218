package leafturn.records.people;

import java.util.Set;
import java.util.TreeSet;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;

/** Which properties are shared with whom; owners and advisers see all without. */
public final class Shares {
  private Shares() {}

  /** Ids of the properties shared with a person. */
  public static Set<String> of(BookReading reading, String person) {
    return ids(reading, "select property from share where person = ?", person);
  }

  /** Ids of the people a property is shared with. */
  public static Set<String> with(BookReading reading, String property) {
    return ids(reading, "select person from share where property = ?", property);
  }

  /** Shares these properties with a person, and no others. */
  public static void set(BookWriting writing, String person, Set<String> properties) {
    Set<String> before = of(writing, person);
    for (String property : before) {
      if (!properties.contains(property)) {
        writing
            .handle()
            .execute("delete from share where person = ? and property = ?", person, property);
      }
    }
    for (String property : new TreeSet<>(properties)) {
      if (!before.contains(property)) {
        writing
            .handle()
            .execute("insert into share (person, property) values (?, ?)", person, property);
      }
    }
  }

  private static Set<String> ids(BookReading reading, String query, String value) {
    return new TreeSet<>(
        reading.handle().createQuery(query).bind(0, value).mapTo(String.class).list());
  }
}
