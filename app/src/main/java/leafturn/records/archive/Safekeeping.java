package leafturn.records.archive;

import java.nio.file.Path;
import java.time.Clock;
import leafturn.records.book.ArchiveShelf;
import leafturn.records.book.Book;
import org.jspecify.annotations.Nullable;

/**
 * What keeps a served book safe: a desk for other processes that want an archive, and an archive
 * every night and at a clean stop. A database server is open to all, so only the archives are of
 * use for its book, where the user gave a folder for them.
 */
public final class Safekeeping implements AutoCloseable {
  private final @Nullable BookDesk desk;
  private final @Nullable NightlyArchive nightly;

  private Safekeeping(@Nullable BookDesk desk, @Nullable NightlyArchive nightly) {
    this.desk = desk;
    this.nightly = nightly;
  }

  /**
   * Begins for a book that lies open.
   *
   * @param clock tells the time, and where it is night
   * @throws leafturn.records.InputException when the book's folder takes no files
   */
  public static Safekeeping begin(Book book, Clock clock) {
    Path folder = book.place().folder();
    return new Safekeeping(
        folder == null ? null : BookDesk.open(book, folder, clock),
        book.place().shelf().map(shelf -> nightly(book, shelf, clock)).orElse(null));
  }

  private static NightlyArchive nightly(Book book, ArchiveShelf shelf, Clock clock) {
    NightlyArchive nightly = new NightlyArchive(book, shelf, clock, clock.getZone());
    nightly.start();
    return nightly;
  }

  /** Ends, within some seconds; the book must still be open. */
  @Override
  public void close() {
    if (desk != null) {
      desk.close();
    }
    if (nightly != null) {
      nightly.close();
    }
  }
}
