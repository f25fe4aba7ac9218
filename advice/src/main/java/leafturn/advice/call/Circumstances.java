package leafturn.advice.call;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What people saw, own, did or know of a lawn that its model does not. What is left empty is not
 * known.
 *
 * @param sightings what was looked for on the lawn, there or not, in any order
 * @param treatments products applied, with what their labels say
 * @param dryFeed granular feed that lies dry on the leaves, or null for none
 * @param fallenLeaves how much of the turf fallen tree leaves cover, or null when nobody said
 * @param place slope, deck and what is special about the stand
 * @param visits the days on which whoever mows can come
 * @param wateringLimits when the local rules let it be watered
 * @param wishes what the client asks for and where clippings could go
 */
public record Circumstances(
    List<Sighting> sightings,
    List<Treatment> treatments,
    Optional<DryFeed> dryFeed,
    Optional<FallenLeaves> fallenLeaves,
    Place place,
    Visits visits,
    WateringLimits wateringLimits,
    Wishes wishes) {
  /** Nothing known beyond what model and log tell. */
  public static final Circumstances NONE =
      new Circumstances(
          List.of(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Place.UNKNOWN,
          Visits.ANY_DAY,
          WateringLimits.NONE,
          Wishes.NONE);

  public Circumstances {
    sightings = List.copyOf(sightings);
    treatments = List.copyOf(treatments);
  }

  /** The last look for a thing up to a day and not longer ago than so many days. */
  public Optional<Sighting> last(Sight sight, LocalDate on, int withinDays) {
    return sightings.stream()
        .filter(seen -> seen.sight() == sight)
        .filter(seen -> !seen.on().isAfter(on) && !seen.on().isBefore(on.minusDays(withinDays)))
        .max(Sighting.BY_TIME);
  }

  public Circumstances withSightings(List<Sighting> others) {
    return new Circumstances(
        others, treatments, dryFeed, fallenLeaves, place, visits, wateringLimits, wishes);
  }

  public Circumstances withTreatments(List<Treatment> others) {
    return new Circumstances(
        sightings, others, dryFeed, fallenLeaves, place, visits, wateringLimits, wishes);
  }

  public Circumstances withDryFeed(DryFeed other) {
    return new Circumstances(
        sightings,
        treatments,
        Optional.of(other),
        fallenLeaves,
        place,
        visits,
        wateringLimits,
        wishes);
  }

  public Circumstances withFallenLeaves(FallenLeaves other) {
    return new Circumstances(
        sightings, treatments, dryFeed, Optional.of(other), place, visits, wateringLimits, wishes);
  }

  public Circumstances withPlace(Place other) {
    return new Circumstances(
        sightings, treatments, dryFeed, fallenLeaves, other, visits, wateringLimits, wishes);
  }

  public Circumstances withVisits(Visits other) {
    return new Circumstances(
        sightings, treatments, dryFeed, fallenLeaves, place, other, wateringLimits, wishes);
  }

  public Circumstances withWateringLimits(WateringLimits other) {
    return new Circumstances(
        sightings, treatments, dryFeed, fallenLeaves, place, visits, other, wishes);
  }

  public Circumstances withWishes(Wishes other) {
    return new Circumstances(
        sightings, treatments, dryFeed, fallenLeaves, place, visits, wateringLimits, other);
  }

  /**
   * Granular feed spread and not yet watered in.
   *
   * @param on the day it was spread
   * @param waterMm water that its label asks for, mm, 0 to 50, NaN when it does not say
   */
  public record DryFeed(LocalDate on, double waterMm) {
    private static final double MOST_WATER_MM = 50;

    public DryFeed {
      if (waterMm < 0 || waterMm > MOST_WATER_MM) {
        throw new IllegalArgumentException(
            "the water to wash feed in must lie from 0 to 50 mm, but is " + waterMm);
      }
    }
  }

  /**
   * Leaves of trees lying on the turf.
   *
   * @param on the day it was looked at
   * @param coverFraction share of the turf they hide, 0-1, or null where nobody said
   */
  public record FallenLeaves(LocalDate on, @Nullable Double coverFraction) {
    public FallenLeaves {
      if (coverFraction != null && !(coverFraction >= 0 && coverFraction <= 1)) {
        throw new IllegalArgumentException(
            "the turf that leaves hide must be a fraction from 0 to 1, but is " + coverFraction);
      }
    }
  }

  /**
   * What the client asks for and where clippings could go.
   *
   * @param noClippings true when none may lie where they can be carried into the house
   * @param heapHeat whether a log proves the heat of a heap
   */
  public record Wishes(boolean noClippings, HeapHeat heapHeat) {
    public static final Wishes NONE = new Wishes(false, HeapHeat.NOT_KNOWN);
  }

  /** What is known of the heat of the heap that could take the clippings. */
  public enum HeapHeat {
    NOT_KNOWN,
    /** Temperatures were logged that kill seeds. */
    LOGGED,
    /** The heap is cold, or there is none. */
    COLD
  }
}
