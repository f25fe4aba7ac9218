package leafturn.records.sheet;

import java.util.List;
import java.util.OptionalDouble;
import leafturn.records.Amounts;
import leafturn.records.JsonObject;

/** Repeated readings of one quantity, their mean and their spread. */
public final class Readings {
  /** Most readings of one visit. */
  public static final int MOST = 20;

  /** Thickest thatch that is measured, mm. */
  private static final double MOST_THATCH_MM = 150;

  private Readings() {}

  /** Up to twenty heights of the grass in {@code heightsMm}. */
  static List<Double> grassMm(JsonObject json) {
    return read(json, "heightsMm", Amounts.LOWEST_GRASS_MM, Amounts.HIGHEST_GRASS_MM);
  }

  /** The thatch of up to twenty plugs. */
  static List<Double> thatchMm(JsonObject json, String name) {
    return read(json, name, 0, MOST_THATCH_MM);
  }

  private static List<Double> read(JsonObject json, String name, double low, double high) {
    List<Double> readings = json.list(name).numbers(low, high, "mm");
    if (readings.size() > MOST) {
      json.fault(name, "it has %d readings; give up to %d.".formatted(readings.size(), MOST));
    }
    return readings;
  }

  /** Mean, in the readings' unit; none without readings. */
  public static OptionalDouble mean(List<Double> readings) {
    return readings.stream().mapToDouble(Double::doubleValue).average();
  }

  /** Standard deviation with n - 1, in the readings' unit; none below two readings. */
  public static OptionalDouble spread(List<Double> readings) {
    if (readings.size() < 2) {
      return OptionalDouble.empty();
    }
    double mean = mean(readings).orElseThrow();
    double squares = readings.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
    return OptionalDouble.of(Math.sqrt(squares / (readings.size() - 1)));
  }
}
