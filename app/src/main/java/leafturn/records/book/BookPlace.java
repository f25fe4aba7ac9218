package leafturn.records.book;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import leafturn.records.Faults;
import leafturn.records.InputException;
import org.jspecify.annotations.Nullable;

/**
 * Where a book lies: a folder of its own, or a PostgreSQL database.
 *
 * @param given as the user gave it
 * @param folder the folder, or null for a database server
 * @param archives where its archives are kept, or null for a database server's without such a place
 */
public record BookPlace(String given, @Nullable Path folder, @Nullable Path archives) {
  private static final String JDBC = "jdbc:";
  private static final String POSTGRESQL = "jdbc:postgresql:";
  private static final String FILE = "book";
  private static final long LEAST_ROOM_BYTES = 16_000_000;
  private static final String ARCHIVES = "archives";

  /**
   * The place of a folder or JDBC URL.
   *
   * @throws InputException when it is neither
   */
  public static BookPlace of(String given) {
    if (given.isBlank()) {
      throw new InputException(
          "The place of the book is empty; give a folder of its own, or a jdbc:postgresql: URL.");
    }
    if (given.startsWith(POSTGRESQL)) {
      return new BookPlace(given, null, null);
    }
    if (given.startsWith(JDBC)) {
      throw new InputException(
          Faults.quoted(given)
              + " is no place for a book; give a folder or a jdbc:postgresql: URL.");
    }
    try {
      return of(Path.of(given));
    } catch (InvalidPathException e) {
      throw new InputException(Faults.quoted(given) + " is no usable path; give a folder.");
    }
  }

  /** The place of a folder. */
  public static BookPlace of(Path folder) {
    Path absolute = folder.toAbsolutePath().normalize();
    return new BookPlace(folder.toString(), absolute, absolute.resolve(ARCHIVES));
  }

  /** The same book, with its archives kept in a folder of the user's choice. */
  public BookPlace archivedIn(Path kept) {
    return new BookPlace(given, folder, kept.toAbsolutePath().normalize());
  }

  /** The shelf its archives stand on; empty where none are kept. */
  public Optional<ArchiveShelf> shelf() {
    return Optional.ofNullable(archives).map(ArchiveShelf::new);
  }

  /** What to call it in messages; never holds a password. */
  public String shown() {
    return folder == null ? given.replaceAll("\\?.*|//[^@/]*@", "") : given;
  }

  /** True when a folder's book has been begun there. */
  boolean begun() {
    return folder != null && Files.exists(folder.resolve(FILE + ".mv.db"));
  }

  /**
   * What tells the file of a folder's book from one put in its place; null where there is no file,
   * and for a database server.
   */
  @Nullable Object file() {
    if (folder == null) {
      return null;
    }
    try {
      Path file = folder.resolve(FILE + ".mv.db");
      Object key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
      // Not every file system tells its files apart.
      return key == null ? FILE : key;
    } catch (IOException e) {
      return null;
    }
  }

  /**
   * False when the disk of a folder's book has less room than a write of a large photograph may
   * take. The database closes its file when a write fails, so none is begun then.
   */
  boolean hasRoom() {
    if (folder == null) {
      return true;
    }
    try {
      FileStore disk = Files.getFileStore(folder);
      // A file system that tells nothing of its size is taken to have room.
      return disk.getTotalSpace() <= 0 || disk.getUsableSpace() >= LEAST_ROOM_BYTES;
    } catch (IOException e) {
      return true;
    }
  }

  /**
   * What is wrong with a folder that cannot be written to, and what to do.
   *
   * @param begun true when it holds a book
   */
  static String notWritable(boolean begun) {
    return begun
        ? "the folder cannot be written to, which its book needs even to be read. Copy the whole"
            + " folder to a place that can be written to, and check, export or serve the copy."
        : "the folder cannot be written to; choose another.";
  }

  /**
   * The JDBC URL, with the folder made if need be.
   *
   * @throws InputException when the folder cannot be made or written to
   */
  String url() {
    if (folder == null) {
      return given;
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new InputException(given + ": the folder cannot be made; choose another.");
    }
    if (!Files.isWritable(folder)) {
      throw new InputException(given + ": " + notWritable(begun()));
    }
    String file = folder.resolve(FILE).toString();
    if (file.contains(";")) {
      throw new InputException(given + ": a semicolon in the path is not usable; choose another.");
    }
    // WRITE_DELAY=0: what was acknowledged is with the operating system, whatever kills us then.
    return "jdbc:h2:file:"
        + file
        + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
        + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;LOCK_TIMEOUT=5000;TRACE_LEVEL_FILE=0";
  }
}
