package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.UUID;
import leafturn.records.InputException;
import leafturn.records.book.BookWriting;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;
import leafturn.records.sheet.PhotographSheet.MediaType;
import org.jspecify.annotations.Nullable;

/**
 * A photograph that came with an entry.
 *
 * @param id id of its sheet, which follows from its entry and its bytes
 * @param type what its bytes are, told from themselves
 * @param bytes the picture
 */
record SentPhotograph(String id, MediaType type, byte[] bytes) {
  static final String FIELD = "photograph";

  /** Most bytes that are taken; a phone sends a smaller copy of what its camera takes. */
  static final int MOST_BYTES = 8_000_000;

  /**
   * The photograph of a request, or null where none was chosen.
   *
   * @param entry id of the entry it comes with
   * @throws InputException when it is no picture, or too large
   */
  static @Nullable SentPhotograph of(Context context, String entry) {
    UploadedFile file = context.isMultipartFormData() ? context.uploadedFile(FIELD) : null;
    if (file == null || file.size() == 0) {
      return null;
    }
    if (file.size() > MOST_BYTES) {
      throw new InputException(
          "The photograph has %d MB; take one of at most %d MB."
              .formatted(file.size() / 1_000_000, MOST_BYTES / 1_000_000));
    }
    try (InputStream content = file.content()) {
      byte[] bytes = content.readAllBytes();
      return new SentPhotograph(idOf(entry, bytes), typeOf(bytes), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Keeps it with the lawn. */
  void write(BookWriting writing, String lawn, LocalDate day) {
    String digest = HexFormat.of().formatHex(sha256(bytes));
    PhotographSheet sheet = new PhotographSheet(null, lawn, day, null, type, bytes.length, digest);
    writing.add(Kind.PHOTOGRAPH, id, sheet);
    int there =
        writing
            .handle()
            .createQuery("select count(*) from photograph where id = ?")
            .bind(0, id)
            .mapTo(Integer.class)
            .one();
    if (there == 0) {
      writing.handle().execute("insert into photograph (id, bytes) values (?, ?)", id, bytes);
    }
  }

  private static MediaType typeOf(byte[] bytes) {
    if (startsWith(bytes, 0, 0xFF, 0xD8, 0xFF)) {
      return MediaType.JPEG;
    }
    if (startsWith(bytes, 0, 0x89, 'P', 'N', 'G')) {
      return MediaType.PNG;
    }
    if (startsWith(bytes, 0, 'R', 'I', 'F', 'F') && startsWith(bytes, 8, 'W', 'E', 'B', 'P')) {
      return MediaType.WEBP;
    }
    throw new InputException("The photograph is no JPEG, PNG or WebP picture; choose one that is.");
  }

  private static boolean startsWith(byte[] bytes, int from, int... expected) {
    for (int i = 0; i < expected.length; i++) {
      if (bytes.length <= from + i || (bytes[from + i] & 0xFF) != expected[i]) {
        return false;
      }
    }
    return true;
  }

  /** The same each time an entry is sent, and another one for another picture. */
  private static String idOf(String entry, byte[] bytes) {
    byte[] name =
        (entry + HexFormat.of().formatHex(sha256(bytes))).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name).toString();
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
