package leafturn.records.book;

import java.time.LocalDate;
import java.util.Optional;
import leafturn.records.InputException;
import leafturn.records.Sha256;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;
import leafturn.records.sheet.PhotographSheet.MediaType;
import org.jspecify.annotations.Nullable;

/** The photographs of a book: their sheets, and their bytes beside them. */
public final class Photographs {
  private Photographs() {}

  /**
   * A picture to be kept.
   *
   * @param type what its bytes are
   * @param bytes the picture, without what tells where it was taken
   */
  public record Picture(MediaType type, byte[] bytes) {
    /**
     * A picture as it was sent.
     *
     * @throws InputException when it is no JPEG, PNG or WebP picture, or a damaged one
     */
    public static Picture of(byte[] sent) {
      MediaType type = typeOf(sent);
      return new Picture(type, PictureMetadata.removed(type, sent));
    }

    /** SHA-256 of its bytes in hexadecimal. */
    public String sha256() {
      return Sha256.of(bytes);
    }
  }

  /**
   * Keeps a picture of a property or a lawn; keeping it again under its id changes nothing.
   *
   * @param owner a sheet of which only property, lawn, day and caption are taken
   */
  public static Sheet<PhotographSheet> add(
      BookWriting writing, String id, Owner owner, Picture picture) {
    PhotographSheet sheet =
        new PhotographSheet(
            owner.property(),
            owner.lawn(),
            owner.day(),
            owner.caption(),
            picture.type(),
            picture.bytes().length,
            picture.sha256());
    Sheet<PhotographSheet> kept = writing.add(Kind.PHOTOGRAPH, id, sheet);
    if (bytes(writing, id).isEmpty()) {
      writing
          .handle()
          .execute("insert into photograph (id, bytes) values (?, ?)", id, picture.bytes());
    }
    return kept;
  }

  /**
   * What a picture shows, and when.
   *
   * @param property id of the property, or null
   * @param lawn id of the lawn, or null
   * @param caption what it shows, or null
   */
  public record Owner(
      @Nullable String property, @Nullable String lawn, LocalDate day, @Nullable String caption) {}

  /** The bytes of a picture. */
  public static Optional<byte[]> bytes(BookReading reading, String id) {
    return reading
        .handle()
        .createQuery("select bytes from photograph where id = :id")
        .bind("id", id)
        .map((row, context) -> row.getBytes(1))
        .findOne();
  }

  private static MediaType typeOf(byte[] bytes) {
    if (startsWith(bytes, 0, 0xFF, 0xD8, 0xFF)) {
      return MediaType.JPEG;
    }
    if (startsWith(bytes, 0, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
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
}
