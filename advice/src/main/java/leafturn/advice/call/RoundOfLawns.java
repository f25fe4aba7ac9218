package leafturn.advice.call;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * An adviser's round: the lawns and the call for each.
 *
 * @param adviserName whose round it is; may be empty
 * @param today the day it is for; a lawn in another time zone may be called for the day before or
 *     after
 * @param weatherOrigin where the daily weather comes from, for instance "New York Central Park,
 *     NOAA"
 * @param standing what a reader must know about the round as a whole, for instance that it is an
 *     invented one; empty for a book of one's own
 * @param lawns the lawns, no two with the same slug
 * @param withoutCall lawns for which no call could be made
 */
public record RoundOfLawns(
    String adviserName,
    LocalDate today,
    String weatherOrigin,
    String standing,
    List<LawnOnRound> lawns,
    List<LawnWithoutCall> withoutCall) {
  public RoundOfLawns {
    lawns = List.copyOf(lawns);
    withoutCall = List.copyOf(withoutCall);
    Set<String> slugs = new HashSet<>();
    Stream.concat(
            lawns.stream().map(LawnOnRound::slug), withoutCall.stream().map(LawnWithoutCall::slug))
        .filter(slug -> !slugs.add(slug))
        .findFirst()
        .ifPresent(RoundOfLawns::refuseTwice);
  }

  private static void refuseTwice(String slug) {
    throw new IllegalArgumentException("two lawns of the round share the address \"" + slug + "\"");
  }

  /** True when the round has no lawn at all. */
  public boolean isEmpty() {
    return lawns.isEmpty() && withoutCall.isEmpty();
  }

  /**
   * The lawns that need a decision first; among them the one on which a third of the height may
   * soonest be reached, of those that are past it the one furthest past, then the one to be mown
   * soonest.
   */
  public List<LawnOnRound> mostUrgentFirst() {
    return lawns.stream()
        .sorted(
            Comparator.comparing((LawnOnRound lawn) -> !lawn.needsDecision())
                .thenComparingDouble(RoundOfLawns::soonestThirdDays)
                .thenComparing(Comparator.comparingDouble(RoundOfLawns::takenOverLimit).reversed())
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

  /** Share of the height that a cut today would take over the limit it is held against. */
  private static double takenOverLimit(LawnOnRound lawn) {
    Call.Today today = lawn.call().today();
    return Prospect.takenFraction(today.heightMm(), today.cutHeightMm())
        / lawn.call().limits().heightTakenFraction();
  }

  private static LocalDate mowingDay(LawnOnRound lawn) {
    LocalDate mowOn = lawn.call().mowOn();
    return mowOn == null ? LocalDate.MAX : mowOn;
  }
}
