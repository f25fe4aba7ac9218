package leafturn.model.weather;

/** Response of turf growth to temperature: 1 at the best temperature, 0 where nothing grows. */
public final class GrowingPotential {
  private GrowingPotential() {}

  /**
   * Growing potential with a heat penalty: exp(-½ ((t - to)/var)²).
   *
   * @param airTemperatureC t, mean of the day, °C, -90 to 60
   * @param optimumC to, °C; cool-season grasses 20, warm-season 31
   * @param spreadC var, °C, positive; cool-season grasses 5.5, warm-season 7
   * @return 0 to 1
   * @throws IllegalArgumentException outside the ranges
   * @source woods2014, after gelernter2005
   */
  public static double gaussianFraction(double airTemperatureC, double optimumC, double spreadC) {
    WeatherBounds.AIR_TEMPERATURE.checked(airTemperatureC);
    WeatherBounds.AIR_TEMPERATURE.checked(optimumC);
    if (!(spreadC > 0)) {
      throw new IllegalArgumentException("spreadC is " + spreadC + " °C, but must be above 0");
    }
    double distance = (airTemperatureC - optimumC) / spreadC;
    return Math.exp(-0.5 * distance * distance);
  }

  /**
   * Growing potential that stays at 1 above the optimum, as its authors later gave it for
   * warm-season grasses.
   *
   * @param airTemperatureC t, mean of the day, °C, -90 to 60
   * @param optimumC to, °C
   * @param spreadC var, °C, positive
   * @return 0 to 1, never falling with t
   * @throws IllegalArgumentException outside the ranges
   * @source woods2014, note on the changed warm-season form
   */
  public static double gaussianHeldAboveOptimumFraction(
      double airTemperatureC, double optimumC, double spreadC) {
    return gaussianFraction(Math.min(airTemperatureC, optimumC), optimumC, spreadC);
  }

  /**
   * Beta response between cardinal temperatures: ((Tm - T)/(Tm - To)) ((T - Tb)/(To - Tb))^((To -
   * Tb)/(Tm - To)), 0 outside Tb to Tm.
   *
   * @param airTemperatureC T, mean of the day, °C, -90 to 60
   * @param baseC Tb, growth starts, °C; tall fescue 3
   * @param optimumC To, above Tb, °C; tall fescue 21.25
   * @param maximumC Tm, growth ends, above To, °C; tall fescue 35
   * @return 0 to 1
   * @throws IllegalArgumentException when the three are not in rising order
   * @source yanhunt1999, widened by a base temperature, from memory
   */
  public static double betaFraction(
      double airTemperatureC, double baseC, double optimumC, double maximumC) {
    WeatherBounds.AIR_TEMPERATURE.checked(airTemperatureC);
    if (!(baseC < optimumC && optimumC < maximumC)) {
      throw new IllegalArgumentException(
          "base, optimum and maximum must rise, but are %s, %s and %s °C"
              .formatted(baseC, optimumC, maximumC));
    }
    if (airTemperatureC <= baseC || airTemperatureC >= maximumC) {
      return 0;
    }
    double falling = (maximumC - airTemperatureC) / (maximumC - optimumC);
    double rising = (airTemperatureC - baseC) / (optimumC - baseC);
    return falling * Math.pow(rising, (optimumC - baseC) / (maximumC - optimumC));
  }

  /**
   * Relative growth of tall fescue: (-26.05 + 8.68 T + 0.021 T² - 0.0071 T³)/100, 0 below its lower
   * and above its upper root. The printed, rounded coefficients peak at 0.9975.
   *
   * @param airTemperatureC T, mean of the day, °C, -90 to 60
   * @return 0 to 0.9975
   * @throws IllegalArgumentException outside the range
   * @source osutallfescue, Fig. 3-3
   */
  public static double tallFescueCubicFraction(double airTemperatureC) {
    double t = WeatherBounds.AIR_TEMPERATURE.checked(airTemperatureC);
    if (t < 0) {
      return 0; // far below 0 the cubic turns positive again
    }
    return Math.max(0, -26.05 + t * (8.68 + t * (0.021 - 0.0071 * t))) / 100;
  }
}
