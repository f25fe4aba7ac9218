package leafturn.records.book;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sheet with all its versions as the rows of the database have them, for archives and checks.
 *
 * @param entry its place in the order in which the book's sheets were entered, from 1
 * @param columns the columns of its row that repeat what its document says
 * @param versions its versions in the order of their numbers, at least one
 * @param digests the digest that each version's row bears
 */
public record StoredSheet(
    long entry, Columns columns, List<StoredVersion> versions, List<String> digests) {
  public StoredSheet {
    versions = List.copyOf(versions);
    digests = List.copyOf(digests);
  }

  /**
   * What the latest version's document says, as the database searches it.
   *
   * @param property id of the property, or null
   * @param lawn id of the lawn, or null
   * @param day the day it tells of, or null
   * @param address its name in addresses, or null
   */
  public record Columns(
      @Nullable String property,
      @Nullable String lawn,
      @Nullable LocalDate day,
      @Nullable String address) {}

  /** Its id. */
  public String id() {
    return versions.get(0).id();
  }

  /** The name of its kind. */
  public String kind() {
    return versions.get(0).kind();
  }

  /** The version that counts. */
  public StoredVersion latest() {
    return versions.get(versions.size() - 1);
  }
}
