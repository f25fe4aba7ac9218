package leafturn.records.book;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A folder with archives of a book, named by the moment they were made.
 *
 * @param folder the folder; it need not be there yet
 */
public record ArchiveShelf(Path folder) {
  private static final DateTimeFormatter NAME =
      DateTimeFormatter.ofPattern("'book-'uuuu-MM-dd'T'HH-mm-ss'Z.zip'");

  /**
   * An archive on the shelf.
   *
   * @param file where it lies
   * @param madeAt when it was made, as its name says
   * @param bytes its size
   */
  public record Kept(Path file, Instant madeAt, long bytes) {}

  /** The name of an archive that is made at a moment. */
  public static String name(Instant madeAt) {
    return NAME.format(madeAt.truncatedTo(ChronoUnit.SECONDS).atOffset(ZoneOffset.UTC));
  }

  /** What lies there, the newest first; files with other names are none of ours. */
  public List<Kept> archives() {
    List<Kept> found = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      return found;
    }
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Optional<Instant> madeAt = madeAt(file.getFileName().toString());
        if (madeAt.isPresent() && Files.isRegularFile(file)) {
          found.add(new Kept(file, madeAt.get(), Files.size(file)));
        }
      }
    } catch (IOException e) {
      return List.of();
    }
    found.sort(Comparator.comparing(Kept::madeAt).reversed());
    return found;
  }

  /** The newest archive; empty when there is none. */
  public Optional<Kept> newest() {
    return archives().stream().findFirst();
  }

  private static Optional<Instant> madeAt(String name) {
    try {
      return Optional.of(LocalDateTime.parse(name, NAME).toInstant(ZoneOffset.UTC));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
