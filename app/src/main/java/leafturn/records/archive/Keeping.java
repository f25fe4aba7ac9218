package leafturn.records.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import leafturn.records.InputException;
import leafturn.records.OutputFile;
import leafturn.records.book.ArchiveShelf;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.book.BookUnavailableException.Reason;

/** Exports, imports, checks and backs up a book wherever it lies, whether it is in use or not. */
public final class Keeping {
  private Keeping() {}

  /**
   * A backup that was made and read back.
   *
   * @param file where it lies
   * @param manifest what it holds
   */
  public record Backup(Path file, Manifest manifest) {}

  /**
   * Writes a book's archive; of a damaged book what is whole, with the raw text of what is not.
   * What is there already is never replaced: it may be the only copy of another day.
   *
   * @throws InputException when there is no book, the file is there already or it cannot be written
   * @throws BookUnavailableException when the book cannot be opened
   */
  public static Manifest export(BookPlace place, Path file, InstantSource clock) {
    mustBeBegun(place);
    OutputFile.check(file);
    if (Files.exists(file)) {
      throw new InputException(
          file + ": it is there already, and an archive replaces nothing; give another name.");
    }
    try (Book book = Book.open(place, clock)) {
      return BookExport.writeWhatIsWhole(book, file, clock);
    } catch (BookUnavailableException e) {
      new HeldBook(folderOfHeld(place, e)).export(file);
      return BookImport.look(file);
    }
  }

  /**
   * Writes a book's archive under a name with the time, and reads it back whole.
   *
   * @param to a folder, or the file itself
   * @throws InputException when there is no book, or the file cannot be written
   * @throws BookUnavailableException when the book cannot be opened
   */
  public static Backup backUp(BookPlace place, Path to, InstantSource clock) {
    Path file = Files.isDirectory(to) ? to.resolve(ArchiveShelf.name(clock.instant())) : to;
    if (file.equals(to) && !to.toString().endsWith(".zip")) {
      throw new InputException(
          to + ": there is no such folder; make it first, or give the name of a .zip file.");
    }
    export(place, file, clock);
    return new Backup(file, BookImport.check(file));
  }

  /**
   * Reads an archive into a new book.
   *
   * @throws InputException with every fault of the archive, or when the book is not empty
   * @throws BookUnavailableException when the book cannot be opened
   */
  public static Manifest restore(BookPlace place, Path file, InstantSource clock) {
    try {
      return BookImport.read(() -> Book.open(place, clock), file);
    } catch (BookUnavailableException e) {
      if (e.reason() != Reason.HELD) {
        throw e;
      }
      throw new InputException(
          ("The book %s is open in another process, perhaps served; an archive is imported into a"
                  + " new book only, so give a new folder, or stop that process and move this one"
                  + " away.")
              .formatted(place.shown()));
    }
  }

  /**
   * Checks a book. A file that cannot be opened is a damage like others.
   *
   * @throws InputException when there is no book
   * @throws BookUnavailableException when the database does not answer
   */
  public static CheckResult check(BookPlace place, InstantSource clock) {
    mustBeBegun(place);
    try (Book book = Book.open(place, clock)) {
      return BookCheck.run(book);
    } catch (BookUnavailableException e) {
      if (e.reason() == Reason.DAMAGED) {
        return new CheckResult(0, 0, 0, 0, 0, List.of(String.valueOf(e.getMessage())));
      }
      return new HeldBook(folderOfHeld(place, e)).check();
    }
  }

  private static void mustBeBegun(BookPlace place) {
    if (!Book.begun(place)) {
      throw new InputException(
          place.shown() + ": there is no book; give the folder or database of one.");
    }
  }

  private static Path folderOfHeld(BookPlace place, BookUnavailableException e) {
    Path folder = place.folder();
    if (e.reason() != Reason.HELD || folder == null) {
      throw e;
    }
    return folder;
  }
}
