package leafturn.model.weather.hourly;

import java.util.List;

/**
 * When grass counts as dry enough and as free of frost. All but the humidity are our judgement.
 *
 * @param dryEnoughMm water on the leaves up to which they are dry enough to mow, mm, 0 to 1
 * @param wetHumidityPercent relative humidity from which leaves count as wet, %, 70 to 100
 * @param frostAirC air temperature at or below which blades may be frozen, °C, -2 to 5; on clear
 *     nights they are often 2-4 °C colder than the air of a station (from memory)
 * @param canopyMm water that leaves can hold, mm: several equally likely amounts, since no lawn's
 *     is known; 0.2 to 1 mm, about 0.2 per unit of leaf area (from memory)
 */
public record GrassLimits(
    double dryEnoughMm, double wetHumidityPercent, double frostAirC, List<Double> canopyMm) {
  private static final GrassLimits STANDARD =
      new GrassLimits(0.05, LeafWetness.WET_HUMIDITY_PERCENT, 2, List.of(0.3, 0.6, 1.0));

  public GrassLimits {
    canopyMm = List.copyOf(canopyMm);
    if (!(dryEnoughMm >= 0 && dryEnoughMm <= 1)
        || !(wetHumidityPercent >= 70 && wetHumidityPercent <= 100)
        || !(frostAirC >= -2 && frostAirC <= 5)
        || canopyMm.isEmpty()
        || canopyMm.stream().anyMatch(mm -> !(mm > dryEnoughMm && mm <= 5))) {
      throw new IllegalArgumentException(
          "dry enough at %s mm (0 to 1), wet from %s %% (70 to 100), frost up to %s °C (-2 to 5) and leaves that hold %s mm (above the first, at most 5) do not go together"
              .formatted(dryEnoughMm, wetHumidityPercent, frostAirC, canopyMm));
    }
  }

  /** 0.05 mm, 90 %, 2 °C, leaves that hold 0.3, 0.6 or 1 mm. */
  public static GrassLimits standard() {
    return STANDARD;
  }

  /** These limits with another frost temperature. */
  public GrassLimits withFrostAirC(double otherC) {
    return new GrassLimits(dryEnoughMm, wetHumidityPercent, otherC, canopyMm);
  }

  /** These limits with another amount of water that still counts as dry enough. */
  public GrassLimits withDryEnoughMm(double otherMm) {
    return new GrassLimits(otherMm, wetHumidityPercent, frostAirC, canopyMm);
  }
}
