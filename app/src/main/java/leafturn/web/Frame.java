package leafturn.web;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What every page needs around its content.
 *
 * @param title the page's title for the window
 * @param standing what a reader must know about the book as a whole; may be empty
 * @param weatherOrigin where the weather of the page comes from; empty where it shows none
 * @param today the day the page is for, or null where it has none
 * @param guest who reads the page
 * @param assets addresses of the files that pages need
 */
public record Frame(
    String title,
    String standing,
    String weatherOrigin,
    @Nullable LocalDate today,
    Guest guest,
    Assets assets) {
  /** What a form of this page sends back, as {@code _token}, so that it is known for ours. */
  public String token() {
    return guest.token();
  }

  /** The addresses of the style sheets of a room's pages, in order. */
  public List<String> styles(String room) {
    return Styles.of(room).stream().map(assets::address).toList();
  }

  /** The address of a file that pages need. */
  public String asset(String name) {
    return assets.address(name);
  }
}
