package leafturn.advice.call;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.advice.call.DaysAhead.Season;

/**
 * How granular feed that lies dry gets washed in: by rain of its own day that may have come after
 * it, by rain that is sure, or by water. A cut on a later day is weighed as if it were, for the
 * advice says so.
 */
final class WashingIn {
  /** So many times the water needed, fallen on the feed's own day, may well have washed it in. */
  private static final double WELL_OVER = 2; // our judgement

  private final Prospect prospect;
  private final Known known;
  private final Optional<DryFeed> feed;
  private final double neededMm;

  WashingIn(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.feed = known.dryFeed();
    this.neededMm = feed.map(known::washInMm).orElse(0.0);
  }

  /** Water that is needed, mm; 0 where no feed lies dry. */
  double neededMm() {
    return neededMm;
  }

  /** The feed's own day where its rain may have washed it in: only a look tells. */
  Optional<LocalDate> toBeLookedAt() {
    return feed.map(DryFeed::on).filter(on -> rainMm(on) >= WELL_OVER * neededMm);
  }

  /** Rain of a day that is known, mm. */
  double rainMm(LocalDate day) {
    return prospect.today().past().stream()
        .filter(past -> past.day().equals(day))
        .mapToDouble(Outlook.PastDay::rainMm)
        .sum();
  }

  /** The first day by which rain is sure to have washed it in, where that asks for no water. */
  OptionalInt rainDay() {
    OptionalInt sure =
        feed.isEmpty()
            ? OptionalInt.empty()
            : IntStream.rangeClosed(firstOfRain(), Plans.LONGEST_WAIT_DAYS)
                .filter(day -> rainFraction(day) >= sureFraction())
                .findFirst();
    OptionalInt water = allowedDay();
    return sure.isPresent()
            && (sure.getAsInt() <= 1 || water.isEmpty() || water.getAsInt() >= sure.getAsInt())
        ? sure
        : OptionalInt.empty();
  }

  private double sureFraction() {
    return prospect.rules().threshold(CallRule.SAFE_DAY_SHARE);
  }

  /** Today's rain is still to come only where no record has it, and the feed is older. */
  private int firstOfRain() {
    boolean today =
        !prospect.today().weatherKnown()
            && feed.filter(each -> each.on().isBefore(prospect.today().on())).isPresent();
    return today ? 0 : 1;
  }

  /** Share of the possible seasons in which rain up to a day washes it in, 0-1. */
  double rainFraction(int day) {
    return share(season -> rainMm(prospect.seasons().get(season), day) >= neededMm);
  }

  private double share(IntPredicate holds) {
    int seasons = prospect.seasons().size();
    return (double) IntStream.range(0, seasons).filter(holds).count() / seasons;
  }

  private double rainMm(Season season, int to) {
    return IntStream.rangeClosed(firstOfRain(), to).mapToDouble(day -> season.rainMm()[day]).sum();
  }

  /** The day on which it is to be watered in; empty where a look, rain or a ban comes before. */
  OptionalInt waterDay() {
    return feed.isEmpty() || toBeLookedAt().isPresent() || rainDay().isPresent()
        ? OptionalInt.empty()
        : allowedDay();
  }

  /** First day on which it may be watered: not on soil that is full. */
  private OptionalInt allowedDay() {
    int from = toBeLookedAt().isPresent() || prospect.saturated(0) ? 1 : 0;
    return known
        .facts()
        .wateringLimits()
        .firstAllowed(prospect.date(from), Plans.LONGEST_WAIT_DAYS)
        .map(days -> OptionalInt.of(from + days))
        .orElse(OptionalInt.empty());
  }

  /** True when feed may still lie dry on a day, even if the advice is followed. */
  boolean dryOn(int day) {
    OptionalInt washed = rainDay().isPresent() ? rainDay() : allowedDay();
    return feed.isPresent() && !(washed.isPresent() && washed.getAsInt() < day);
  }
}
