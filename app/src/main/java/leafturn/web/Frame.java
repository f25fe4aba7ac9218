package leafturn.web;

import leafturn.advice.call.RoundOfLawns;

/**
 * What every page needs around its content.
 *
 * @param title the page's title for the window
 */
public record Frame(String title, RoundOfLawns round, Assets assets) {
  /** The address of a file that pages need. */
  public String asset(String name) {
    return assets.address(name);
  }
}
