package leafturn.advice.call;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.advice.call.Place.AnnualBluegrass;
import leafturn.model.clippings.CutQuality.Stalks;
import leafturn.model.lawn.LogEntry;
import org.jspecify.annotations.Nullable;

/** What people know of a lawn, as it stands on the day of a call. */
final class Known {
  /** Hour of a look in the morning that nobody noted. */
  static final LocalTime MORNING = LocalTime.of(8, 0);

  /** So long wilting that was seen counts, days; our judgement. */
  static final int WILTING_DAYS = 3;

  private final Circumstances facts;
  private final CallRules rules;
  private final LawnToday today;
  private final List<LogEntry> done;
  private final SeedHeads seedHeads;
  private final boolean lookedToday;

  /**
   * @param done what was done up to the day of the call
   */
  Known(Asked asked, LawnToday today, List<LogEntry> done, SeedHeads seedHeads) {
    this.facts = asked.circumstances();
    this.rules = asked.rules();
    this.today = today;
    this.done = List.copyOf(done);
    this.seedHeads = seedHeads;
    this.lookedToday =
        Stream.of(Sight.RAIN, Sight.WET_LEAVES, Sight.DRY_LEAVES)
            .anyMatch(sight -> facts.last(sight, on(), 0).isPresent());
  }

  Circumstances facts() {
    return facts;
  }

  private LocalDate on() {
    return today.on();
  }

  private int days(CallRule rule) {
    return (int) Math.round(rules.threshold(rule));
  }

  /** The last look for a thing that still counts, whether it was there or not. */
  Optional<Sighting> look(Sight sight) {
    return facts.last(sight, on(), days(CallRule.SEEN_DAYS));
  }

  /** True when the last look that still counts found it. */
  boolean seen(Sight sight) {
    return look(sight).filter(Sighting::there).isPresent();
  }

  /** Something seen on the day itself and not gone since. */
  Optional<Sighting> seenToday(Sight sight) {
    return facts.last(sight, on(), 0).filter(Sighting::there);
  }

  /** True when the last look of this summer found the grass at rest and none found it green. */
  Optional<Sighting> dormant() {
    return facts
        .last(Sight.DORMANT, on(), days(CallRule.DORMANT))
        .filter(Sighting::there)
        .filter(rest -> !greenSince(rest));
  }

  /** The look of the last days that found the grass wilting, unless it is at rest. */
  Optional<Sighting> wilting() {
    return dormant().isPresent()
        ? Optional.empty()
        : facts.last(Sight.WILTING, on(), WILTING_DAYS).filter(Sighting::there);
  }

  private boolean greenSince(Sighting rest) {
    return facts
        .last(Sight.GREENING_UP, on(), days(CallRule.DORMANT))
        .filter(green -> green.there() && Sighting.BY_TIME.compare(green, rest) > 0)
        .isPresent();
  }

  /**
   * Hour at which frost was seen on the ground today; early where nobody noted it, empty where the
   * leaves were found dry since, with time to thaw.
   */
  Optional<LocalTime> frostAt() {
    return seenToday(Sight.GROUND_FROST)
        .map(frost -> orMorning(frost.at()))
        .filter(frost -> seenToday(Sight.DRY_LEAVES).filter(dry -> thawed(frost, dry)).isEmpty());
  }

  private boolean thawed(LocalTime frost, Sighting dry) {
    return dry.at() != null
        && ChronoUnit.MINUTES.between(frost, dry.at()) >= 60 * rules.threshold(CallRule.THAW_HOURS);
  }

  /** Hours of today at which what was seen leaves no room for frost; none before frost was seen. */
  Stream<LocalTime> frostFreeAt() {
    return facts.sightings().stream()
        .filter(seen -> seen.on().equals(on()) && seen.withoutFrost())
        .flatMap(seen -> Stream.ofNullable(seen.at()))
        .filter(at -> frostAt().isEmpty());
  }

  /** Hour from which the leaves were found dry today, unless they were found wet since. */
  Optional<LocalTime> dryFrom() {
    return seenToday(Sight.DRY_LEAVES)
        .filter(dry -> wetToday().filter(wet -> later(wet, dry)).isEmpty())
        .map(dry -> orMorning(dry.at()));
  }

  /** Rain or wet leaves of today, the later of both. */
  Optional<Sighting> wetToday() {
    Optional<Sighting> rain = seenToday(Sight.RAIN);
    Optional<Sighting> wet = seenToday(Sight.WET_LEAVES);
    return rain.isPresent() && wet.isPresent()
        ? (later(wet.get(), rain.get()) ? wet : rain)
        : rain.or(() -> wet);
  }

  /** True when somebody told today whether it rained or the leaves were wet. */
  boolean lookedToday() {
    return lookedToday;
  }

  private static boolean later(Sighting one, Sighting other) {
    return Sighting.BY_TIME.compare(one, other) > 0;
  }

  private static LocalTime orMorning(@Nullable LocalTime at) {
    return at == null ? MORNING : at;
  }

  /** What keeps clippings on the lawn on a day. */
  Holds holds(LocalDate day) {
    return new Holds(on(), day, Hold.on(day, facts.treatments(), mowings(), rules));
  }

  /** The treatment whose label forbids mowing on a day, the longest of several. */
  Optional<Treatment> labelWait(LocalDate day) {
    return facts.treatments().stream()
        .filter(treatment -> !treatment.on().isAfter(on()))
        .filter(treatment -> day.isBefore(mayBeMown(treatment)))
        .max(Comparator.comparing(Known::mayBeMown));
  }

  /** First day on which a treated lawn may be mown by the label. */
  static LocalDate mayBeMown(Treatment treatment) {
    Integer days = treatment.label().daysBeforeMowing();
    return treatment.on().plusDays(days == null ? 0 : days);
  }

  /** True when the log tells a mowing on a day; else one of that day is reckoned. */
  boolean mowingLogged(@Nullable LocalDate day) {
    return day != null && mowings().contains(day);
  }

  /** The last mowing, logged or as reckoned; null for a new lawn of which none is logged. */
  @Nullable LocalDate lastMown(@Nullable LocalDate reckoned) {
    return newlySeeded() && !mowingLogged(reckoned) ? null : reckoned;
  }

  private List<LocalDate> mowings() {
    return done.stream().filter(LogEntry.Mown.class::isInstance).map(LogEntry::day).toList();
  }

  /** Growth since the last mowing by a measured height, mm a day; NaN without. */
  double measuredGrowthMmPerDay(double cutHeightMm) {
    return MeasuredGrowth.mmPerDay(done, on(), cutHeightMm);
  }

  /** Whole days since the last mowing on record; empty when none is. */
  Optional<Long> daysUnmown() {
    return Optional.ofNullable(today.lastMown()).map(day -> ChronoUnit.DAYS.between(day, on()));
  }

  /** Granular feed that no rain or watering since has washed in. */
  Optional<DryFeed> dryFeed() {
    return facts
        .dryFeed()
        .filter(feed -> !feed.on().isAfter(on()))
        .filter(feed -> waterSinceMm(feed.on()) < washInMm(feed));
  }

  /** Water that washes a feed in, mm. */
  double washInMm(DryFeed feed) {
    return Double.isNaN(feed.waterMm()) ? rules.threshold(CallRule.FEED_WATER) : feed.waterMm();
  }

  private double waterSinceMm(LocalDate day) {
    double rainMm =
        today.past().stream()
            .filter(past -> past.day().isAfter(day))
            .mapToDouble(Outlook.PastDay::rainMm)
            .sum();
    return rainMm + wateredMm(each -> !each.isBefore(day));
  }

  /** Watering logged for days, mm. */
  double wateredMm(Predicate<LocalDate> days) {
    return done.stream()
        .filter(entry -> entry instanceof LogEntry.Watered && days.test(entry.day()))
        .mapToDouble(entry -> ((LogEntry.Watered) entry).waterMm())
        .sum();
  }

  /**
   * Share of the turf that fallen leaves hide, 0 when none lie. Where nobody said how much, the
   * turf counts as showing through: half of what is too much.
   */
  double leafCoverFraction() {
    return leaves()
        .flatMap(leaves -> Optional.ofNullable(leaves.coverFraction()))
        .orElseGet(() -> leaves().isPresent() ? rules.threshold(CallRule.LEAF_COVER) / 2 : 0.0);
  }

  /** True when leaves were seen and nobody said how much of the turf they hide. */
  boolean leafCoverUntold() {
    return leaves().filter(leaves -> leaves.coverFraction() == null).isPresent();
  }

  private Optional<Circumstances.FallenLeaves> leaves() {
    return facts
        .fallenLeaves()
        .filter(leaves -> !leaves.on().isAfter(on()))
        .filter(leaves -> !leaves.on().isBefore(on().minusDays(days(CallRule.SEEN_DAYS))));
  }

  /** Whether annual bluegrass stands in seed, by a look or by the year's warmth. */
  SeedHeads seedHeads() {
    return seedHeads;
  }

  /** True when annual bluegrass is in seed: seen, or unwanted and likely by the year's warmth. */
  boolean inSeed() {
    if (seedHeads.basis() == SeedHeads.Basis.SEEN) {
      return true;
    }
    return facts.place().annualBluegrass() == AnnualBluegrass.UNWANTED
        && seedHeads.likelihood() >= rules.threshold(CallRule.SEED_HEADS);
  }

  /** A disease seen lately, the one least known first. */
  Optional<Sight> disease() {
    return List.of(Sight.OTHER_DISEASE, Sight.BROWN_PATCH, Sight.DOLLAR_SPOT).stream()
        .filter(this::seen)
        .findFirst();
  }

  /** True on a slope steeper than the limit for wet grass. */
  boolean steep() {
    return facts.place().slopePercent() > rules.threshold(CallRule.WET_SLOPE);
  }

  /** Load where clippings lie thickest over their mean, by the deck. */
  double deckFactor() {
    Place.Deck deck = facts.place().deck();
    boolean rows = deck == Place.Deck.SIDE_DISCHARGE || deck == Place.Deck.REAR_DISCHARGE;
    return rules.threshold(rows ? CallRule.DECK_FACTOR_SIDE : CallRule.DECK_FACTOR);
  }

  boolean newlySeeded() {
    return facts.place().newlySeeded();
  }

  /** True when no mowing since the winter is logged: what is reckoned proves none. */
  boolean unmownThisYear() {
    LocalDate first = LocalDate.of(on().getYear(), 1, 1);
    LocalDate winter = Collections.max(List.of(first, on().minusDays(60)));
    return mowings().stream().allMatch(day -> day.isBefore(winter));
  }

  /** How long this lawn's clippings stay in sight against what is reckoned. */
  OwnSight ownSight() {
    return today.fallen().ownSight(facts, today.on(), rules);
  }

  /** Seed stalks in the grass that someone saw or missed of late, or null when nobody looked. */
  @Nullable Stalks stalks() {
    if (seen(Sight.OWN_STALKS) || seen(Sight.ANNUAL_BLUEGRASS_SEED_HEADS)) {
      return Stalks.SEEN;
    }
    return look(Sight.OWN_STALKS).isPresent() ? Stalks.NONE : null;
  }
}
