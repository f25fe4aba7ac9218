package leafturn.records.archive;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4), in hexadecimal. */
public final class Sha256 {
  private Sha256() {}

  static MessageDigest begin() {
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
}
