package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.UUID;
import leafturn.records.InputException;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Photographs;
import leafturn.records.book.Photographs.Picture;
import org.jspecify.annotations.Nullable;

/**
 * A photograph that came with an entry.
 *
 * @param id id of its sheet, which follows from its entry and its bytes
 * @param picture the picture
 */
record SentPhotograph(String id, Picture picture) {
  static final String FIELD = "photograph";

  /** Most bytes that are taken; a phone sends a smaller copy of what its camera takes. */
  static final int MOST_BYTES = 8_000_000;

  /**
   * The photograph of a request, or null where none was chosen.
   *
   * @param entry id of the entry it comes with
   * @throws InputException when it is empty, no picture, or too large
   */
  static @Nullable SentPhotograph of(Context context, String entry) {
    UploadedFile file = context.isMultipartFormData() ? context.uploadedFile(FIELD) : null;
    // A field left blank is sent as a file without a name.
    if (file == null || (file.size() == 0 && file.filename().isEmpty())) {
      return null;
    }
    if (file.size() == 0) {
      throw new InputException("The photograph is empty; choose another file.");
    }
    if (file.size() > MOST_BYTES) {
      throw new InputException(
          "The photograph has %d MB; take one of at most %d MB."
              .formatted(file.size() / 1_000_000, MOST_BYTES / 1_000_000));
    }
    try (InputStream content = file.content()) {
      Picture picture = Picture.of(content.readAllBytes());
      return new SentPhotograph(idOf(entry, picture), picture);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Keeps it with the lawn. */
  void write(BookWriting writing, String lawn, LocalDate day, @Nullable String caption) {
    Photographs.add(writing, id, new Photographs.Owner(null, lawn, day, caption), picture);
  }

  /** The same each time an entry is sent, and another one for another picture. */
  private static String idOf(String entry, Picture picture) {
    byte[] name = (entry + picture.sha256()).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name).toString();
  }
}
