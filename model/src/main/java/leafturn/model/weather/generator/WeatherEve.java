package leafturn.model.weather.generator;

import org.jspecify.annotations.Nullable;

/** The day before the first generated one, which the weather carries on from. */
public final class WeatherEve {
  private static final WeatherEve UNKNOWN = new WeatherEve(false, null);

  private final boolean wet;
  private final double @Nullable [] residuals;

  private WeatherEve(boolean wet, double @Nullable [] residuals) {
    this.wet = wet;
    this.residuals = residuals;
  }

  static WeatherEve of(boolean wet, double[] residuals) {
    return new WeatherEve(wet, residuals.clone());
  }

  /** Nothing is known of it: each series begins with a day drawn for its season. */
  public static WeatherEve unknown() {
    return UNKNOWN;
  }

  boolean wet() {
    return wet;
  }

  /** Deviations in the generator's order of quantities, or null when not known. */
  double @Nullable [] residuals() {
    return residuals;
  }
}
