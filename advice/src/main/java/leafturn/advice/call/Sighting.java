package leafturn.advice.call;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * A look for one thing on the lawn.
 *
 * @param on the day
 * @param at the hour, or null when nobody noted it
 * @param sight what was looked for
 * @param there true when it was there, false when it was looked for and not there
 */
public record Sighting(LocalDate on, @Nullable LocalTime at, Sight sight, boolean there) {
  /** By day, then by hour; a look without an hour counts as the day's first. */
  static final Comparator<Sighting> BY_TIME =
      Comparator.comparing(Sighting::on)
          .thenComparing(seen -> seen.at() == null ? LocalTime.MIN : seen.at());

  /** Something seen on a day. */
  public static Sighting of(Sight sight, LocalDate on) {
    return new Sighting(on, null, sight, true);
  }

  /** Something looked for on a day and not there. */
  public static Sighting none(Sight sight, LocalDate on) {
    return new Sighting(on, null, sight, false);
  }

  /** True for a look that leaves no room for frozen grass at its hour. */
  boolean withoutFrost() {
    return switch (sight) {
      case GROUND_FROST -> !there;
      case DRY_LEAVES, GREENING_UP -> there;
      default -> false;
    };
  }
}
