package leafturn.records.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.regex.Pattern;
import leafturn.records.Sha256;

/** Random texts that open a door for whoever holds them; the book keeps only their hashes. */
public final class Secret {
  private static final int BYTES = 32;
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final Pattern SHAPE = Pattern.compile("[A-Za-z0-9_-]{43}");

  private Secret() {}

  /** A new secret of 256 random bits, as 43 characters that may stand in an address. */
  public static String fresh() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** True when a text could be a secret at all. */
  public static boolean looksLikeOne(String text) {
    return SHAPE.matcher(text).matches();
  }

  /** What the book keeps of a secret: SHA-256, in hexadecimal. */
  public static String hash(String secret) {
    return Sha256.of(secret);
  }

  /** Another secret that follows from one and does not lead back to it. */
  public static String derived(String secret, String purpose) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(digest(purpose + ":" + secret));
  }

  /** Compares without telling by its time where two texts differ. */
  public static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] digest(String text) {
    return Sha256.begin().digest(text.getBytes(StandardCharsets.UTF_8));
  }
}
