package leafturn.web;

import java.util.List;
import leafturn.web.form.Form;

/**
 * The people of the book in words.
 *
 * @param rows one for each person
 * @param letters invitations nobody has taken up yet
 * @param invite the form of a new invitation
 * @param invited for whom an invitation was just made; may be empty
 * @param address where that invitation leads, shown only now; may be empty
 * @param entries the latest of who came in
 */
public record PeoplePage(
    List<Row> rows,
    List<Letter> letters,
    Form invite,
    String invited,
    String address,
    List<Happening> entries) {
  /** How many entries are shown. */
  static final int MOST = 500;

  /**
   * One person.
   *
   * @param sees which properties, in words
   * @param signsIn whether they can, in words
   */
  public record Row(String id, String name, String role, String sees, String signsIn) {}

  /** One invitation. */
  public record Letter(String id, String name, String words) {}

  /** One entry of who came in. */
  public record Happening(String when, String who, String what, String from) {}

  public PeoplePage {
    rows = List.copyOf(rows);
    letters = List.copyOf(letters);
    entries = List.copyOf(entries);
  }

  public int most() {
    return MOST;
  }
}
