package leafturn.records.people;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Semaphore;

/**
 * Passwords, of which the book keeps only what Argon2id makes of them (RFC 9106): 19 MiB of memory,
 * two passes, one lane, a common recommendation for web sites given from memory.
 */
public final class Passwords {
  /** Fewest characters of a password. */
  public static final int SHORTEST = 12;

  private static final int LONGEST = 200;
  private static final int FEWEST_DIFFERENT = 5;

  private static final int MEMORY_KIB = 19456;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int BYTES = 32;
  private static final int SALT_BYTES = 16;
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final Argon2Function ARGON2ID =
      Argon2Function.getInstance(
          MEMORY_KIB, PASSES, LANES, BYTES, Argon2.ID, Argon2Function.ARGON2_VERSION_13);

  /** How many are worked out at once, so that many who sign in do not take all memory. */
  private static final Semaphore AT_ONCE = new Semaphore(2, true);

  /** The hash of a password that nobody has: a name the book does not know costs as much work. */
  private static final String NOBODYS = hash(Secret.fresh());

  private Passwords() {}

  /** What the book keeps of a password; another each time. */
  public static String hash(String password) {
    byte[] salt = new byte[SALT_BYTES];
    RANDOM.nextBytes(salt);
    AT_ONCE.acquireUninterruptibly();
    try {
      return ARGON2ID.hash(password.getBytes(StandardCharsets.UTF_8), salt).getResult();
    } finally {
      AT_ONCE.release();
    }
  }

  /**
   * Whether a password is the one that was kept; takes as long where none was.
   *
   * @param kept what {@link #hash} made of it, or empty
   */
  public static boolean match(String password, Optional<String> kept) {
    String against = kept.orElse(NOBODYS);
    String tried = password.length() > LONGEST ? "" : password;
    AT_ONCE.acquireUninterruptibly();
    try {
      return Argon2Function.getInstanceFromHash(against).check(tried, against) && kept.isPresent();
    } finally {
      AT_ONCE.release();
    }
  }

  /** What is wrong with a new password, in a sentence; empty for a good one. */
  public static Optional<String> fault(String password, String name) {
    if (password.codePointCount(0, password.length()) < SHORTEST) {
      return Optional.of(
          "a password needs at least %d characters; a few words will do.".formatted(SHORTEST));
    }
    if (password.length() > LONGEST) {
      return Optional.of("a password holds at most %d characters.".formatted(LONGEST));
    }
    if (password.codePoints().distinct().count() < FEWEST_DIFFERENT) {
      return Optional.of(
          "this password is too easily guessed; take at least %d different characters."
              .formatted(FEWEST_DIFFERENT));
    }
    String plain = password.toLowerCase(Locale.ROOT);
    String plainName = name.toLowerCase(Locale.ROOT).strip();
    if (plainName.length() > 2 && plain.replace(plainName, "").length() < SHORTEST / 2) {
      return Optional.of("a password that is little more than the name is too easily guessed.");
    }
    return Optional.empty();
  }
}
