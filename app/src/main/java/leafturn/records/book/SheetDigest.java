package leafturn.records.book;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A digest of all that a version of a sheet means, by which damage is told. */
final class SheetDigest {
  private SheetDigest() {}

  /** SHA-256 in hexadecimal over kind, id, version, standing, time, writer and document. */
  static String of(Sheet<?> sheet, String document) {
    String all =
        String.join(
            "\n",
            sheet.kind().name(),
            sheet.id(),
            Integer.toString(sheet.version()),
            sheet.withdrawn() ? "withdrawn" : "standing",
            sheet.writtenAt().toString(),
            sheet.writtenBy(),
            document);
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
