package leafturn.records;

import java.io.BufferedOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.jspecify.annotations.Nullable;

/** Writes result files whole or not at all. */
public final class OutputFile {
  private OutputFile() {}

  /**
   * Says what would prevent a file from being written, before any long work is done for it.
   *
   * @throws InputException when the path is a folder or a device, which a file would replace, or
   *     its folder cannot be written to
   */
  public static void check(Path file) {
    Path folder = folderOf(file);
    if (Files.isDirectory(file)) {
      throw new InputException(file + ": this is a folder; give the name of a file to write.");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new InputException(
          file + ": this is a device and no file; give the name of a file to write.");
    }
    if (!Files.isDirectory(folder)) {
      throw new InputException(file + ": there is no folder %s; make it first.".formatted(folder));
    }
    if (!Files.isWritable(folder)) {
      throw new InputException(file + ": the folder %s cannot be written to.".formatted(folder));
    }
  }

  /**
   * Writes text to a file beside the one wanted and then puts it in its place in one step, so that
   * a reader finds the old file or the new one and never half of it.
   *
   * @throws InputException when it cannot be written; nothing is left behind
   */
  public static void write(Path file, String text) {
    write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** Writes the bytes of a file. */
  @FunctionalInterface
  public interface Content {
    /** Writes all of them; need not close what it writes to. */
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * As {@link #write(Path, String)}, for files too large for the memory. The bytes are on the disk
   * when this returns.
   *
   * @throws InputException when it cannot be written; nothing is left behind
   */
  public static void write(Path file, Content content) {
    check(file);
    Path beside = null;
    boolean moved = false;
    try {
      beside = Files.createTempFile(folderOf(file), ".leafturn-", ".part");
      try (FileOutputStream out = new FileOutputStream(beside.toFile());
          BufferedOutputStream buffered = new BufferedOutputStream(out)) {
        content.writeTo(buffered);
        buffered.flush();
        out.getFD().sync();
      }
      move(beside, file);
      moved = true;
    } catch (IOException | UncheckedIOException e) {
      throw new InputException(
          file + ": it cannot be written; check the free space and who may write there.");
    } finally {
      if (!moved) {
        discard(beside);
      }
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void discard(@Nullable Path part) {
    if (part != null && !part.toFile().delete()) {
      part.toFile().deleteOnExit();
    }
  }

  private static Path folderOf(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }
}
