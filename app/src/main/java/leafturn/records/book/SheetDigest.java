package leafturn.records.book;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A digest of all that a version of a sheet means, by which damage is told. */
public final class SheetDigest {
  private SheetDigest() {}

  /** SHA-256 in hexadecimal over kind, id, version, standing, time, writer and document. */
  static String of(Sheet<?> sheet, String document) {
    return of(
        new StoredVersion(
            sheet.kind().name(),
            sheet.id(),
            sheet.version(),
            sheet.withdrawn(),
            sheet.writtenAt(),
            sheet.writtenBy(),
            document));
  }

  /** The digest that belongs to a version as it stands in its row. */
  public static String of(StoredVersion version) {
    String all =
        String.join(
            "\n",
            version.kind(),
            version.id(),
            Integer.toString(version.version()),
            version.withdrawn() ? "withdrawn" : "standing",
            version.writtenAt().toString(),
            version.writtenBy(),
            version.document());
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
