package leafturn.records;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), in hexadecimal. */
public final class Sha256 {
  private Sha256() {}

  /** A digest to be fed piece by piece. */
  public static MessageDigest begin() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }

  /** The digest of bytes. */
  public static String of(byte[] bytes) {
    return HexFormat.of().formatHex(begin().digest(bytes));
  }

  /** The digest of a text in UTF-8. */
  public static String of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }
}
