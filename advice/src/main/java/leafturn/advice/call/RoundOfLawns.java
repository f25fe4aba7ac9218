package leafturn.advice.call;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An adviser's round on one day: the lawns and the call for each.
 *
 * @param adviserName whose round it is
 * @param today the day the calls are for
 * @param weatherOrigin where the daily weather comes from, for instance "New York Central Park,
 *     NOAA"
 * @param standing what a reader must know about the round as a whole, for instance that it is an
 *     invented one; empty for a book of one's own
 * @param lawns the lawns, no two with the same slug
 */
public record RoundOfLawns(
    String adviserName,
    LocalDate today,
    String weatherOrigin,
    String standing,
    List<LawnOnRound> lawns) {
  public RoundOfLawns {
    lawns = List.copyOf(lawns);
    Set<String> slugs = new HashSet<>();
    for (LawnOnRound lawn : lawns) {
      if (!slugs.add(lawn.slug())) {
        throw new IllegalArgumentException(
            "two lawns of the round share the address \"" + lawn.slug() + "\"");
      }
      if (!lawn.call().on().equals(today)) {
        throw new IllegalArgumentException(
            "the call for "
                + lawn.slug()
                + " is for "
                + lawn.call().on()
                + ", but the round is on "
                + today);
      }
    }
  }

  /**
   * The lawns that need a decision first; among them the one on which a third of the height may
   * soonest be reached, then the one to be mown soonest.
   */
  public List<LawnOnRound> mostUrgentFirst() {
    return lawns.stream()
        .sorted(
            Comparator.comparing((LawnOnRound lawn) -> !lawn.needsDecision())
                .thenComparingDouble(RoundOfLawns::soonestThirdDays)
                .thenComparing(RoundOfLawns::mowingDay))
        .toList();
  }

  /** The lawn with this name in addresses, if the round has one. */
  public Optional<LawnOnRound> lawn(String slug) {
    return lawns.stream().filter(lawn -> lawn.slug().equals(slug)).findFirst();
  }

  private static double soonestThirdDays(LawnOnRound lawn) {
    Spread mowBy = lawn.call().mowBy();
    return mowBy == null ? Double.POSITIVE_INFINITY : mowBy.low();
  }

  private static LocalDate mowingDay(LawnOnRound lawn) {
    LocalDate mowOn = lawn.call().mowOn();
    return mowOn == null ? LocalDate.MAX : mowOn;
  }
}
