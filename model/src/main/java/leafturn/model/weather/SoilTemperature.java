package leafturn.model.weather;

/** Soil temperature from air temperature or a surface wave. Expect errors of about 2 °C. */
public final class SoilTemperature {
  /** Share of yesterday's soil temperature that stays. */
  public static final double LAG = 0.8;

  private SoilTemperature() {}

  /**
   * Damping depth of a temperature wave, m, where its swing has fallen to 1/e: d = √(2κ/ω), ω =
   * 2π/period.
   *
   * @param diffusivityM2PerS κ, m2/s, positive; moist loam about 0.5e-6 (0.2e-6 to 0.8e-6)
   * @param periodS length of the wave, s, positive; 86400 for a day
   * @throws IllegalArgumentException when either is not positive
   * @source hillel1982, sinusoidal solution of the heat equation
   */
  public static double dampingDepthM(double diffusivityM2PerS, double periodS) {
    positive("diffusivity", diffusivityM2PerS, "m2/s");
    positive("period", periodS, "s");
    return Math.sqrt(diffusivityM2PerS * periodS / Math.PI);
  }

  /**
   * Share of the surface swing that is felt at a depth: exp(-z/d).
   *
   * @param depthM z, m, 0 or more
   * @param dampingDepthM d, m, positive
   * @throws IllegalArgumentException outside the ranges
   * @source hillel1982, sinusoidal solution of the heat equation
   */
  public static double swingFraction(double depthM, double dampingDepthM) {
    notNegative("depth", depthM, "m");
    return Math.exp(-depthM / positive("damping depth", dampingDepthM, "m"));
  }

  /**
   * Time by which a depth runs behind the surface, s: (z/d) period / 2π.
   *
   * @param depthM z, m, 0 or more
   * @param dampingDepthM d, m, positive
   * @param periodS length of the wave, s, positive
   * @throws IllegalArgumentException outside the ranges
   * @source hillel1982, sinusoidal solution of the heat equation
   */
  public static double lagS(double depthM, double dampingDepthM, double periodS) {
    notNegative("depth", depthM, "m");
    positive("period", periodS, "s");
    return depthM / positive("damping depth", dampingDepthM, "m") * periodS / (2 * Math.PI);
  }

  /**
   * Temperature of a wave at a depth, °C: T = Tm + A exp(-z/d) sin(ωt + φ - z/d).
   *
   * @param meanC Tm, °C, -90 to 60
   * @param surfaceSwingC A, half the range at the surface, °C, 0 or more
   * @param depthM z, m, 0 or more
   * @param dampingDepthM d, m, positive
   * @param surfacePhaseRad ωt + φ, rad
   * @throws IllegalArgumentException outside the ranges
   * @source hillel1982, sinusoidal solution of the heat equation
   */
  public static double waveC(
      double meanC,
      double surfaceSwingC,
      double depthM,
      double dampingDepthM,
      double surfacePhaseRad) {
    WeatherBounds.AIR_TEMPERATURE.checked(meanC);
    notNegative("surface swing", surfaceSwingC, "°C");
    return meanC
        + surfaceSwingC
            * swingFraction(depthM, dampingDepthM)
            * Math.sin(surfacePhaseRad - depthM / dampingDepthM);
  }

  /**
   * Soil temperature of the lawn model, °C, a running mean of air temperature: Ts = 0.8
   * Ts(yesterday) + 0.2 T. This is the depth form below with lag 0.8 and no pull to the year's
   * mean.
   *
   * @param yesterdayC soil temperature of the day before, °C, -90 to 60
   * @param meanAirC T = (Tmin + Tmax)/2, °C, -90 to 60
   * @throws IllegalArgumentException outside the ranges
   * @source neitsch2011, lag of the soil temperature equation
   */
  public static double runningMeanC(double yesterdayC, double meanAirC) {
    WeatherBounds.AIR_TEMPERATURE.checked(yesterdayC);
    return LAG * yesterdayC + (1 - LAG) * WeatherBounds.AIR_TEMPERATURE.checked(meanAirC);
  }

  /**
   * Greatest damping depth of a soil, mm: ddmax = 1000 + 2500 ρ / (ρ + 686 exp(-5.63 ρ)).
   *
   * @param bulkDensityGPerCm3 ρ, g/cm3, 0.05 to 2.2
   * @throws IllegalArgumentException outside the range
   * @source neitsch2011, soil temperature, from memory
   */
  public static double greatestDampingDepthMm(double bulkDensityGPerCm3) {
    double density = WeatherBounds.BULK_DENSITY.checked(bulkDensityGPerCm3);
    return 1000 + 2500 * density / (density + 686 * Math.exp(-5.63 * density));
  }

  /**
   * Damping depth at today's soil water, mm: dd = ddmax exp(ln(500/ddmax) ((1-φ)/(1+φ))²), φ = SW /
   * ((0.356 - 0.144 ρ) ztot).
   *
   * @param soilWaterMm SW, water in the profile, mm, 0 or more
   * @param profileMm ztot, depth of the profile, mm, positive
   * @param bulkDensityGPerCm3 ρ, g/cm3, 0.05 to 2.2
   * @throws IllegalArgumentException outside the ranges
   * @source neitsch2011, soil temperature, from memory
   */
  public static double dampingDepthMm(
      double soilWaterMm, double profileMm, double bulkDensityGPerCm3) {
    double scaling =
        notNegative("soil water", soilWaterMm, "mm")
            / ((0.356 - 0.144 * WeatherBounds.BULK_DENSITY.checked(bulkDensityGPerCm3))
                * positive("profile depth", profileMm, "mm"));
    double greatest = greatestDampingDepthMm(bulkDensityGPerCm3);
    double ratio = (1 - scaling) / (1 + scaling);
    return greatest * Math.exp(Math.log(500 / greatest) * ratio * ratio);
  }

  /**
   * Pull of the year's mean temperature at a depth: df = zd / (zd + exp(-0.867 - 2.078 zd)), zd =
   * z/dd.
   *
   * @param depthMm z, mm, 0 or more
   * @param dampingDepthMm dd, mm, positive
   * @return 0 at the surface, rising to 1
   * @throws IllegalArgumentException outside the ranges
   * @source neitsch2011, soil temperature, from memory
   */
  public static double depthFraction(double depthMm, double dampingDepthMm) {
    double relativeDepth =
        notNegative("depth", depthMm, "mm") / positive("damping depth", dampingDepthMm, "mm");
    return relativeDepth / (relativeDepth + Math.exp(-0.867 - 2.078 * relativeDepth));
  }

  /**
   * Soil temperature at a depth, °C: T = l T(yesterday) + (1 - l) (df (Tannual - Tsurface) +
   * Tsurface), l = 0.8.
   *
   * @param yesterdayC temperature at this depth the day before, °C, -90 to 60
   * @param annualMeanC mean air temperature of the year, °C, -90 to 60
   * @param surfaceC temperature of the soil surface today, °C, -90 to 60
   * @param depthFraction df of {@link #depthFraction}, 0 to 1
   * @throws IllegalArgumentException outside the ranges
   * @source neitsch2011, soil temperature, lag read, the rest from memory
   */
  public static double atDepthC(
      double yesterdayC, double annualMeanC, double surfaceC, double depthFraction) {
    WeatherBounds.AIR_TEMPERATURE.checked(yesterdayC);
    WeatherBounds.AIR_TEMPERATURE.checked(annualMeanC);
    WeatherBounds.AIR_TEMPERATURE.checked(surfaceC);
    WeatherBounds.FRACTION.checked(depthFraction);
    return LAG * yesterdayC + (1 - LAG) * (depthFraction * (annualMeanC - surfaceC) + surfaceC);
  }

  private static double positive(String name, double value, String unit) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          "%s is %s %s, but must be above 0".formatted(name, value, unit));
    }
    return value;
  }

  private static double notNegative(String name, double value, String unit) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          "%s is %s %s, but must be 0 or more".formatted(name, value, unit));
    }
    return value;
  }
}
