package leafturn.web;

import java.util.List;

/**
 * What the page of the book as a whole shows.
 *
 * @param hasShelf false for a book on a database server, whose archives are kept elsewhere
 * @param archives the archives on the shelf, the newest first
 * @param told what came of what was asked last, one sentence each; often nothing
 * @param lastCheck when the book was checked last and what was found; empty when it was not yet
 * @param damages the damages that check found
 */
public record BookPage(
    boolean hasShelf,
    List<Archive> archives,
    List<String> told,
    String lastCheck,
    List<String> damages) {
  public BookPage {
    archives = List.copyOf(archives);
    told = List.copyOf(told);
    damages = List.copyOf(damages);
  }

  /**
   * An archive on the shelf.
   *
   * @param name its file name
   * @param when when it was made
   * @param size its size in words
   */
  public record Archive(String name, String when, String size) {}

  /** What matters first: how old the newest archive is. */
  public String headline() {
    if (!hasShelf) {
      return "The whole book, to take away";
    }
    return archives.isEmpty()
        ? "No archive has been written yet"
        : "The newest archive is of " + archives.get(0).when();
  }
}
