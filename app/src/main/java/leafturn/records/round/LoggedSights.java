package leafturn.records.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.advice.call.Circumstances.FallenLeaves;
import leafturn.advice.call.Sighting;
import leafturn.advice.call.Treatment;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.FeedForm;
import leafturn.records.sheet.IngredientGroup;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.ProductKind;
import leafturn.records.sheet.Sight;
import leafturn.records.sheet.What;
import org.jspecify.annotations.Nullable;

/** What a lawn's log tells up to a day beside mowing, feed and water for the model. */
final class LoggedSights {
  /** Feed that is longer ago was washed in, eaten by the mower or blown away. */
  private static final int FEED_LIES_DAYS = 21;

  /** Seed that is not cut within these days failed, or was sown into a lawn that is not mown. */
  private static final int FIRST_CUT_DAYS = 120;

  private final List<LogSheet> log;
  private final LocalDate on;

  LoggedSights(List<LogSheet> log, LocalDate on) {
    this.log = log.stream().filter(entry -> !entry.day().isAfter(on)).toList();
    this.on = on;
  }

  List<Sighting> sightings() {
    List<Sighting> sightings = new ArrayList<>();
    for (LogSheet entry : log) {
      if (entry.done() instanceof Done.Observed seen) {
        seen.things().forEach(sight -> add(sightings, entry, sight, true));
        seen.notThere().forEach(sight -> add(sightings, entry, sight, false));
      }
    }
    return sightings;
  }

  private static void add(List<Sighting> sightings, LogSheet entry, Sight sight, boolean there) {
    named(sight, there)
        .map(known -> new Sighting(entry.day(), entry.time(), known, there))
        .forEach(sightings::add);
  }

  /** No disease at all is none of each; what a call does not ask for is nothing. */
  private static Stream<leafturn.advice.call.Sight> named(Sight sight, boolean there) {
    return switch (sight) {
      case SEED_HEADS -> Stream.of(leafturn.advice.call.Sight.ANNUAL_BLUEGRASS_SEED_HEADS);
      case OWN_STALKS -> Stream.of(leafturn.advice.call.Sight.OWN_STALKS);
      case CLUMPS -> Stream.of(leafturn.advice.call.Sight.CLUMPS);
      case CLIPPINGS_STILL_SEEN -> Stream.of(leafturn.advice.call.Sight.CLIPPINGS_STILL_SEEN);
      case WET -> Stream.of(leafturn.advice.call.Sight.WET_LEAVES);
      case DRY_LEAVES -> Stream.of(leafturn.advice.call.Sight.DRY_LEAVES);
      case RAIN -> Stream.of(leafturn.advice.call.Sight.RAIN);
      case GROUND_FROST -> Stream.of(leafturn.advice.call.Sight.GROUND_FROST);
      case DORMANT -> Stream.of(leafturn.advice.call.Sight.DORMANT);
      case GREENING_UP -> Stream.of(leafturn.advice.call.Sight.GREENING_UP);
      case BROWN_PATCH -> Stream.of(leafturn.advice.call.Sight.BROWN_PATCH);
      case DOLLAR_SPOT -> Stream.of(leafturn.advice.call.Sight.DOLLAR_SPOT);
      case DISEASE ->
          there
              ? Stream.of(leafturn.advice.call.Sight.OTHER_DISEASE)
              : Stream.of(
                  leafturn.advice.call.Sight.OTHER_DISEASE,
                  leafturn.advice.call.Sight.BROWN_PATCH,
                  leafturn.advice.call.Sight.DOLLAR_SPOT);
      case DROUGHT -> Stream.of(leafturn.advice.call.Sight.WILTING);
      case LEAF_FALL, MOSS, WEEDS -> Stream.of();
    };
  }

  List<Treatment> treatments() {
    List<Treatment> treatments = new ArrayList<>();
    for (LogSheet entry : log) {
      if (entry.done() instanceof Done.Treated treated) {
        treatments.add(
            new Treatment(
                entry.day(),
                treated.product(),
                kind(treated.productKind()),
                group(treated.ingredientGroup()),
                new Treatment.Label(
                    treated.mowingsBeforeUse(),
                    treated.clippingsIntervalDays(),
                    treated.neverUse(),
                    treated.waitBeforeMowingDays(),
                    true)));
      }
    }
    return treatments;
  }

  private static Treatment.Kind kind(ProductKind kind) {
    return switch (kind) {
      case HERBICIDE -> Treatment.Kind.HERBICIDE;
      case FUNGICIDE -> Treatment.Kind.FUNGICIDE;
      case INSECTICIDE -> Treatment.Kind.INSECTICIDE;
      case GROWTH_REGULATOR -> Treatment.Kind.GROWTH_REGULATOR;
      case OTHER -> Treatment.Kind.OTHER;
    };
  }

  private static Treatment.Group group(@Nullable IngredientGroup group) {
    if (group == null) {
      return Treatment.Group.NOT_KNOWN;
    }
    return group == IngredientGroup.PYRIDINE_ACID
        ? Treatment.Group.PYRIDINE_ACID
        : Treatment.Group.OTHER;
  }

  /**
   * The latest feed where it is said not to be watered in, or granules of which nobody told; the
   * rules say how much water washes it in.
   */
  Optional<DryFeed> dryFeed() {
    for (int i = log.size() - 1; i >= 0; i--) {
      LogSheet entry = log.get(i);
      if (entry.done() instanceof Done.Fed fed) {
        double labelMm = fed.waterInMm() == null ? Double.NaN : fed.waterInMm();
        boolean old = entry.day().isBefore(on.minusDays(FEED_LIES_DAYS));
        return old || !liesDry(fed)
            ? Optional.empty()
            : Optional.of(new DryFeed(entry.day(), labelMm));
      }
    }
    return Optional.empty();
  }

  private static boolean liesDry(Done.Fed fed) {
    return fed.wateredIn() == null
        ? fed.feedForm() == FeedForm.GRANULAR
        : !fed.wateredIn() && fed.feedForm() != FeedForm.LIQUID;
  }

  /** Leaves of trees on the turf, and how much they hide, by the latest entry that tells. */
  Optional<FallenLeaves> fallenLeaves() {
    for (int i = log.size() - 1; i >= 0; i--) {
      LogSheet entry = log.get(i);
      if (entry.done() instanceof Done.Observed seen) {
        Double cover =
            seen.notThere().contains(Sight.LEAF_FALL)
                ? Double.valueOf(0)
                : seen.leafCoverFraction();
        if (cover != null || seen.things().contains(Sight.LEAF_FALL)) {
          return Optional.of(new FallenLeaves(entry.day(), cover));
        }
      }
    }
    return Optional.empty();
  }

  /** The day on which the lawn was sown, if that was lately and it was not mown since. */
  Optional<LocalDate> sown() {
    for (int i = log.size() - 1; i >= 0; i--) {
      LogSheet entry = log.get(i);
      if (entry.what() == What.MOWN || entry.day().isBefore(on.minusDays(FIRST_CUT_DAYS))) {
        return Optional.empty();
      }
      if (entry.what() == What.SEEDED) {
        return Optional.of(entry.day());
      }
    }
    return Optional.empty();
  }
}
