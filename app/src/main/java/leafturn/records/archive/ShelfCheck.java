package leafturn.records.archive;

import java.util.ArrayList;
import java.util.List;
import leafturn.records.InputException;
import leafturn.records.book.ArchiveShelf;
import leafturn.records.book.BookPlace;

/**
 * Compares a book with the newest archive on its shelf. Nothing is ever taken out of a book, so one
 * that holds less than its archive has lost entries: a database that finds the end of its file
 * damaged may go back to an earlier state without a word.
 */
final class ShelfCheck {
  private ShelfCheck() {}

  /** What a check found, and what the shelf adds to it. */
  static CheckResult added(BookPlace place, CheckResult result) {
    List<String> damages = new ArrayList<>(result.damages());
    place.shelf().flatMap(ArchiveShelf::newest).ifPresent(kept -> compare(kept, result, damages));
    return new CheckResult(
        result.sheets(),
        result.versions(),
        result.weatherDays(),
        result.photographs(),
        result.people(),
        damages);
  }

  private static void compare(ArchiveShelf.Kept kept, CheckResult result, List<String> damages) {
    try {
      long archived = BookImport.look(kept.file()).count("versions");
      if (result.versions() < archived) {
        damages.add(
            "The book holds %d versions of sheets, but its archive %s has %d: entries were lost; import the archive into a new book and compare."
                .formatted(result.versions(), kept.file(), archived));
      }
    } catch (InputException e) {
      damages.add("The newest archive cannot be read: " + e.faults().get(0));
    }
  }
}
