package leafturn.records.people;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;

/**
 * A letter that lets one person make an account, once.
 *
 * @param id UUID in lower case
 * @param name whom it is for
 * @param role what they will be
 * @param properties ids of the properties that will be shared with them
 * @param madeBy who invites
 * @param endsAt when it ends
 */
public record Invitation(
    String id, String name, Role role, Set<String> properties, String madeBy, Instant endsAt) {
  /** How long an invitation holds. */
  public static final Duration HOLDS = Duration.ofDays(7);

  public Invitation {
    properties = Set.copyOf(properties);
  }
}
