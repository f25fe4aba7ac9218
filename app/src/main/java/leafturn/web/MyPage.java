package leafturn.web;

import java.util.List;
import leafturn.records.people.Person;
import leafturn.web.form.Form;

/**
 * What a person sets for themselves.
 *
 * @param person who it is
 * @param units the form for units
 * @param password the form for a new password
 * @param places where they are signed in
 */
public record MyPage(Person person, Form units, Form password, List<Place> places) {
  /**
   * A browser they are signed in with.
   *
   * @param here true for the one that asks
   */
  public record Place(
      String browser, String since, String lastUsed, String address, boolean here) {}

  public MyPage {
    places = List.copyOf(places);
  }

  /** For instance "Ada Lind, adviser". */
  public String headline() {
    return !person.hasPassword()
        ? "You, at this machine"
        : person.name() + ", " + person.role().word();
  }
}
