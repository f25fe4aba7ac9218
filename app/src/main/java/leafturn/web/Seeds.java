package leafturn.web;

import java.security.SecureRandom;

/** Seeds of draws that nobody can guess, from the system's secure source. */
final class Seeds {
  private static final int LARGEST = 1_000_000_000;
  private static final SecureRandom SOURCE = new SecureRandom();

  private Seeds() {}

  /** A seed from 0 to below a thousand million, so that it can still be read out. */
  static long drawn() {
    return SOURCE.nextInt(LARGEST);
  }
}
