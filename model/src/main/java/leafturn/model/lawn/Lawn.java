package leafturn.model.lawn;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import leafturn.model.grass.Species;
import leafturn.model.soil.Soil;
import leafturn.model.weather.Site;
import org.jspecify.annotations.Nullable;

/**
 * A lawn as described by the people who keep it.
 *
 * @param site where it lies
 * @param ground what grows there, and on what
 * @param programme what is done to it year after year
 * @param earlier how it was kept before, in the order of days; empty where it was always kept so
 * @param spinUpYears years run with the same programme before the first reported day, 0 to 200
 * @param parameters model parameters by short name that win over everything else
 */
public record Lawn(
    Site site,
    Ground ground,
    Programme programme,
    List<Earlier> earlier,
    int spinUpYears,
    Map<String, Double> parameters) {
  public Lawn {
    earlier = List.copyOf(earlier);
    parameters = Map.copyOf(parameters);
    if (spinUpYears < 0 || spinUpYears > 200) {
      throw new IllegalArgumentException(
          "spinUpYears is " + spinUpYears + ", but must lie from 0 to 200");
    }
  }

  /** A lawn that was always kept by one programme. */
  public Lawn(
      Site site,
      Ground ground,
      Programme programme,
      int spinUpYears,
      Map<String, Double> parameters) {
    this(site, ground, programme, List.of(), spinUpYears, parameters);
  }

  /**
   * A programme by which a lawn was kept.
   *
   * @param until the first day on which it no longer held
   */
  public record Earlier(Programme programme, LocalDate until) {}

  /** The same lawn, kept otherwise before. */
  public Lawn keptBefore(List<Earlier> otherwise) {
    return new Lawn(site, ground, programme, otherwise, spinUpYears, parameters);
  }

  /** The same lawn, always kept by a programme. */
  public Lawn keptBy(Programme always) {
    return new Lawn(site, ground, always, spinUpYears, parameters);
  }

  /** The programme that held on a day; the first one where that is before all of them. */
  public Programme programmeOn(LocalDate day) {
    return earlier.stream()
        .filter(one -> one.until().isAfter(day))
        .findFirst()
        .map(Earlier::programme)
        .orElse(programme);
  }

  /**
   * @param shadeFraction share of the light taken by shade, 0 (full sun) to 0.9
   * @param areaM2 m2, 1 to 1,000,000, or null when not measured
   * @param mower the mower, or null when not described
   */
  public record Ground(
      Species grass,
      Soil soil,
      double shadeFraction,
      @Nullable Double areaM2,
      @Nullable Mower mower) {
    public Ground {
      if (!(shadeFraction >= 0 && shadeFraction <= 0.9)) {
        throw new IllegalArgumentException(
            "shadeFraction is " + shadeFraction + ", but must lie from 0 to 0.9");
      }
      if (areaM2 != null && !(areaM2 >= 1 && areaM2 <= 1e6)) {
        throw new IllegalArgumentException(
            "areaM2 is " + areaM2 + ", but must lie from 1 to 1000000");
      }
    }
  }

  /**
   * @param deckWidthMm cutting width, mm, 200 to 4000, or null
   * @param bagLitres volume of the bag, litres, 5 to 5000, or null
   * @param speedKmPerH mowing speed, km/h, 0.5 to 20, or null
   * @param doubleCut true when each mowing goes over the lawn twice
   */
  public record Mower(
      @Nullable Double deckWidthMm,
      @Nullable Double bagLitres,
      @Nullable Double speedKmPerH,
      boolean doubleCut) {
    public Mower {
      within("mower.deckWidthMm", deckWidthMm, 200, 4000);
      within("mower.bagLitres", bagLitres, 5, 5000);
      within("mower.speedKmPerH", speedKmPerH, 0.5, 20);
    }

    private static void within(String name, @Nullable Double value, double low, double high) {
      if (value != null && !(value >= low && value <= high)) {
        throw new IllegalArgumentException(
            "%s is %s, but must lie from %s to %s".formatted(name, value, low, high));
      }
    }
  }
}
