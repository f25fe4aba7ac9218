package leafturn.model.soil;

import leafturn.quantity.Range;

/**
 * Factors by which temperature, water and nitrogen slow or speed decay. The published temperature
 * responses differ two- to threefold between 5 and 15 °C, so each carries its author's name; the
 * lawn model uses {@link #rothCTemperatureFraction} times {@link #neitschWaterFraction}.
 */
public final class DecayModifiers {
  private static final Range TEMPERATURE = new Range("temperature", -90, 60, "°C");
  private static final Range WATER = new Range("water as a share of field capacity", 0, 3, "");
  private static final Range VOLUMETRIC_WATER = new Range("volumetric water", 0, 0.64, "m3/m3");
  private static final double ROTHC_AT_20_C = 2.831;
  private static final double ROTHC_STANDSTILL_C = -18;

  private DecayModifiers() {}

  /**
   * Temperature response of soil carbon turnover, 1 at 20 °C: 47.9 / (1 + exp(106/(T + 18.3))) /
   * 2.831, and 0 at or below -18 °C.
   *
   * @param temperatureC T, °C, -90 to 60
   * @return 0 or more, rising with T, about 1.7 at 30 °C
   * @throws IllegalArgumentException outside the range or NaN
   * @source jenkinson1990, rate modifier for temperature, divided by its value at 20 °C
   */
  public static double rothCTemperatureFraction(double temperatureC) {
    if (TEMPERATURE.checked(temperatureC) <= ROTHC_STANDSTILL_C) {
      return 0;
    }
    return 47.9 / (1 + Math.exp(106 / (temperatureC + 18.3))) / ROTHC_AT_20_C;
  }

  /**
   * Temperature response that nearly stops below 15 °C: max(0.1, 0.1 + 0.9 T/(T + exp(9.93 - 0.312
   * T))), and 0 at or below 0 °C.
   *
   * @param temperatureC T, °C, -90 to 60
   * @return 0, or 0.1 to 1
   * @throws IllegalArgumentException outside the range or NaN
   * @source neitsch2011, nutrient cycling temperature factor
   */
  public static double neitschTemperatureFraction(double temperatureC) {
    double t = TEMPERATURE.checked(temperatureC);
    return t <= 0 ? 0 : Math.max(0.1, 0.1 + 0.9 * t / (t + Math.exp(9.93 - 0.312 * t)));
  }

  /**
   * Doubling for each 10 °C, 1 at 20 °C: 2^((T - 20)/10).
   *
   * @param temperatureC T, °C, -90 to 60
   * @throws IllegalArgumentException outside the range or NaN
   * @source common practice, no source
   */
  public static double doublingTemperatureFraction(double temperatureC) {
    return Math.pow(2, (TEMPERATURE.checked(temperatureC) - 20) / 10);
  }

  /**
   * Water response: max(0.05, 0.1 + 0.9 √(SW/FC)), held to 1. The source sets no upper limit; we
   * do, since wetter than field capacity does not speed decay.
   *
   * @param fieldCapacityFraction SW/FC, both above wilting point, 0 to 3
   * @return 0.1 to 1
   * @throws IllegalArgumentException outside the range or NaN
   * @source neitsch2011, nutrient cycling water factor
   */
  public static double neitschWaterFraction(double fieldCapacityFraction) {
    double share = WATER.checked(fieldCapacityFraction);
    return Math.min(1, Math.max(0.05, 0.1 + 0.9 * Math.sqrt(share)));
  }

  /**
   * Water response to rain against potential evapotranspiration: 1/(1 + 30 exp(-8.5 P/PET)).
   *
   * @param rainPerPotentialEvapotranspiration P/PET over the same time, 0 or more
   * @return 0.03 to 1
   * @throws IllegalArgumentException when negative or NaN
   * @source adair2008, water modifier
   */
  public static double adairWaterFraction(double rainPerPotentialEvapotranspiration) {
    if (!(rainPerPotentialEvapotranspiration >= 0)) {
      throw new IllegalArgumentException(
          "P/PET is %s, but must be 0 or more".formatted(rainPerPotentialEvapotranspiration));
    }
    return 1 / (1 + 30 * Math.exp(-8.5 * rainPerPotentialEvapotranspiration));
  }

  /**
   * Water response to volumetric water: 3.11 θ - 2.42 θ².
   *
   * @param waterM3PerM3 θ, m3/m3, 0 to 0.64 where the curve still rises
   * @return 0 to 1
   * @throws IllegalArgumentException outside the range or NaN
   * @source moyano2013, mean response
   */
  public static double moyanoWaterFraction(double waterM3PerM3) {
    double water = VOLUMETRIC_WATER.checked(waterM3PerM3);
    return water * (3.11 - 2.42 * water);
  }

  /**
   * Temperature and water joined as their geometric mean: √(fT fW).
   *
   * @param temperatureFraction fT, 0 or more
   * @param waterFraction fW, 0 or more
   * @throws IllegalArgumentException when either is negative or NaN
   * @source neitsch2011, combination of the factors
   */
  public static double neitschCombinedFraction(double temperatureFraction, double waterFraction) {
    if (!(temperatureFraction >= 0 && waterFraction >= 0)) {
      throw new IllegalArgumentException(
          "the factors are %s and %s, but must be 0 or more"
              .formatted(temperatureFraction, waterFraction));
    }
    return Math.sqrt(temperatureFraction * waterFraction);
  }

  /**
   * Slowing of decay by residue poor in nitrogen: min(1, exp(-0.693 (CN - 25)/25)).
   *
   * @param carbonPerNitrogen CN = 0.58 residue / (residue N + nitrate N), g/g, positive
   * @return 1 to CN 25, halved for each 25 more
   * @throws IllegalArgumentException when not positive
   * @source neitsch2011, residue C:N factor
   */
  public static double carbonNitrogenLimitFraction(double carbonPerNitrogen) {
    if (!(carbonPerNitrogen > 0)) {
      throw new IllegalArgumentException(
          "C:N is %s, but must be above 0".formatted(carbonPerNitrogen));
    }
    return Math.min(1, Math.exp(-0.693 * (carbonPerNitrogen - 25) / 25));
  }
}
