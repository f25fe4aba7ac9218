package leafturn.web;

import java.util.List;

/**
 * The trials of the book.
 *
 * @param entries each of them, as they were entered
 * @param mayChange whether the reader may begin one
 */
public record TrialList(List<Entry> entries, boolean mayChange) {
  public TrialList {
    entries = List.copyOf(entries);
  }

  /**
   * A trial in the list.
   *
   * @param id its id
   * @param name what its people call it
   * @param question what it is to answer; may be empty
   * @param layout its layout in words
   * @param state how far it has come, in words
   */
  public record Entry(String id, String name, String question, String layout, String state) {}
}
