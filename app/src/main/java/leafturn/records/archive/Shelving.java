package leafturn.records.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Optional;
import leafturn.records.InputException;
import leafturn.records.book.ArchiveShelf;
import leafturn.records.book.Book;

/** Puts archives of a book onto its shelf and clears the shelf of what need not be kept. */
public final class Shelving {
  private static final Duration ABANDONED = Duration.ofHours(1);

  private Shelving() {}

  /**
   * Writes an archive and reads it back, unless the newest on the shelf says the same. Older ones
   * go only after that, so that a good one is never lost for a bad one.
   *
   * @param zone in which the days and months are told of which one archive each is kept
   * @return the archive when one was written
   * @throws InputException when the book is damaged or the shelf takes no files
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public static Optional<Path> write(
      Book book, ArchiveShelf shelf, InstantSource clock, ZoneId zone) {
    Instant now = clock.instant();
    makeFolder(shelf, now);
    Optional<ArchiveShelf.Kept> before = shelf.newest();
    Optional<Manifest> held = before.flatMap(Shelving::whole);
    Path file = shelf.folder().resolve(ArchiveShelf.name(now));
    Manifest written = BookExport.write(book, file, clock);
    if (held.isPresent() && held.get().sameBookAs(written)) {
      // Within one second the two have one name, and the new one has replaced its like.
      before.filter(kept -> !kept.file().equals(file)).ifPresent(kept -> delete(file));
      return Optional.empty();
    }
    BookImport.check(file);
    Retention.toDelete(shelf.archives(), zone).forEach(kept -> delete(kept.file()));
    return Optional.of(file);
  }

  /** What an archive holds; empty for one that is not whole. */
  private static Optional<Manifest> whole(ArchiveShelf.Kept kept) {
    try {
      return Optional.of(BookImport.check(kept.file()));
    } catch (InputException e) {
      return Optional.empty();
    }
  }

  /** Makes the folder, and removes what was begun by a process that was killed. */
  private static void makeFolder(ArchiveShelf shelf, Instant now) {
    try {
      Files.createDirectories(shelf.folder());
      try (DirectoryStream<Path> parts =
          Files.newDirectoryStream(shelf.folder(), ".leafturn-*.part")) {
        for (Path part : parts) {
          if (Files.getLastModifiedTime(part).toInstant().plus(ABANDONED).isBefore(now)) {
            Files.deleteIfExists(part);
          }
        }
      }
    } catch (IOException e) {
      throw new InputException(shelf.folder() + ": the folder cannot be made; choose another.");
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
