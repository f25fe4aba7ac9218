package leafturn.model.weather.hourly;

import leafturn.model.weather.Humidity;

/**
 * Water that leaves take up or give off in an hour: the combination equation without the resistance
 * of the leaf. No heat goes into the ground: blades hang free of it.
 */
public final class WetCanopy {
  private static final double LATENT_HEAT_MJ_PER_KG = 2.45;
  private static final double AIR_HEAT_MJ_PER_M3_C = 1.2156e-3;
  private static final double RESISTANCE = 208;
  private static final double SECONDS = 3600;
  private static final double SLOPE_FACTOR = 4098;
  private static final double SLOPE_OFFSET_C = 237.3;

  private WetCanopy() {}

  /**
   * Evaporation from wet leaves, mm/h: E = (Δ Rn + 3600 ρ cp (es - ea)/ra) / (λ (Δ + γ)), ra = 208
   * / u2, ρ cp = 0.0012156 MJ/m3 and °C, λ = 2.45 MJ/kg.
   *
   * @param airTemperatureC T, °C, -90 to 60
   * @param vapourPressureKPa ea, kPa, 0 to 25; above saturation it counts as saturated
   * @param windAt2mMPerS u2, m/s, 0 to 115
   * @param netRadiationMjPerM2 Rn of the hour, MJ/m2, -1 to 5
   * @param psychrometricKPaPerC γ, kPa/°C, positive
   * @return mm/h, negative when dew falls
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 3 with rs = 0 and ra of the reference grass, from memory
   */
  public static double evaporationMmPerHour(
      double airTemperatureC,
      double vapourPressureKPa,
      double windAt2mMPerS,
      double netRadiationMjPerM2,
      double psychrometricKPaPerC) {
    HourBounds.VAPOUR_PRESSURE.checked(vapourPressureKPa);
    HourBounds.WIND.checked(windAt2mMPerS);
    HourBounds.NET_RADIATION.checked(netRadiationMjPerM2);
    if (!(psychrometricKPaPerC > 0)) {
      throw new IllegalArgumentException(
          "the psychrometric constant is %s kPa/°C, but must be positive"
              .formatted(psychrometricKPaPerC));
    }
    double saturationKPa = Humidity.saturationVapourPressureKPa(airTemperatureC);
    double deficitKPa = Math.max(0, saturationKPa - vapourPressureKPa);
    double slope = slopeKPaPerC(airTemperatureC, saturationKPa);
    return (slope * netRadiationMjPerM2 + airTermMj(deficitKPa, windAt2mMPerS))
        / (LATENT_HEAT_MJ_PER_KG * (slope + psychrometricKPaPerC));
  }

  /** The same from terms already at hand. */
  static double evaporationMm(
      double slopeKPaPerC, double deficitKPa, double windMPerS, double netMj, double gamma) {
    return (slopeKPaPerC * netMj + airTermMj(deficitKPa, windMPerS))
        / (LATENT_HEAT_MJ_PER_KG * (slopeKPaPerC + gamma));
  }

  static double slopeKPaPerC(double airTemperatureC, double saturationKPa) {
    double distanceC = airTemperatureC + SLOPE_OFFSET_C;
    return SLOPE_FACTOR * saturationKPa / (distanceC * distanceC);
  }

  private static double airTermMj(double deficitKPa, double windMPerS) {
    return SECONDS * AIR_HEAT_MJ_PER_M3_C * deficitKPa * windMPerS / RESISTANCE;
  }
}
