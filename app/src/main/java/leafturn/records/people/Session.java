package leafturn.records.people;

import java.time.Duration;
import java.time.Instant;

/**
 * A browser in which somebody has signed in.
 *
 * @param secretHash hash of the secret the browser holds
 * @param person id of the person
 * @param beganAt when they signed in
 * @param seenAt when they last asked for something, give or take a few minutes
 * @param address network address they signed in from
 * @param browser what the browser calls itself
 */
public record Session(
    String secretHash,
    String person,
    Instant beganAt,
    Instant seenAt,
    String address,
    String browser) {
  /** How long a session lasts with nobody asking for anything. */
  public static final Duration IDLE = Duration.ofDays(14);

  /** How long a session lasts at most. */
  public static final Duration LONGEST = Duration.ofDays(90);

  /** Being seen is written down no oftener than this. */
  private static final Duration FINENESS = Duration.ofMinutes(5);

  /** Whether it still counts. */
  public boolean holds(Instant now) {
    return now.isBefore(seenAt.plus(IDLE)) && now.isBefore(beganAt.plus(LONGEST));
  }

  /** Whether it is time to write down that it was used. */
  public boolean isToBeSeen(Instant now) {
    return now.isAfter(seenAt.plus(FINENESS));
  }
}
