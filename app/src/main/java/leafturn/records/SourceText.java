package leafturn.records;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * The text of a file and the name to call it by in messages.
 *
 * @param name as the user gave it
 * @param text without a byte order mark
 */
public record SourceText(String name, String text) {
  private static final long BYTES_PER_MEGABYTE = 1_000_000;

  /**
   * Reads a text file that must be UTF-8 and not larger than a limit; a larger one is refused
   * before it is read.
   *
   * @throws InputException saying why it cannot be read
   */
  public static SourceText read(Path file, int limitBytes) {
    return of(file.toString(), bytes(file, limitBytes), limitBytes);
  }

  /**
   * The bytes of a file that need be no text, under the same limit.
   *
   * @throws InputException saying why it cannot be read
   */
  public static byte[] bytes(Path file, int limitBytes) {
    String name = file.toString();
    try {
      if (Files.isDirectory(file)) {
        throw new InputException(name + ": this is a folder; give a file.");
      }
      if (Files.size(file) > limitBytes) {
        throw tooLarge(name, limitBytes);
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(limitBytes + 1);
        if (bytes.length > limitBytes) {
          throw tooLarge(name, limitBytes);
        }
        return bytes;
      }
    } catch (NoSuchFileException e) {
      throw new InputException(name + ": there is no such file; check the path.");
    } catch (IOException e) {
      throw new InputException(name + ": it cannot be read; check that it is a file you may read.");
    }
  }

  /**
   * Takes bytes that came another way, for instance with a form.
   *
   * @throws InputException when they are too many or not UTF-8
   */
  public static SourceText of(String name, byte[] bytes, int limitBytes) {
    if (bytes.length > limitBytes) {
      throw tooLarge(name, limitBytes);
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return new SourceText(name, text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      throw new InputException(name + ": it is not UTF-8 text; save it as UTF-8.");
    }
  }

  /** Reads a file that is part of the program, by its absolute name on the class path. */
  public static SourceText ofResource(String resource) {
    try (InputStream in = SourceText.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException(resource + " is not part of this program");
      }
      return of(resource.substring(resource.lastIndexOf('/') + 1), in.readAllBytes(), 100_000_000);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputException tooLarge(String name, int limitBytes) {
    return new InputException(
        "%s: it is too large; a file of this kind may have up to %d MB."
            .formatted(name, limitBytes / BYTES_PER_MEGABYTE));
  }
}
