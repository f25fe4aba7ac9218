package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Duplicates of a laboratory averaged to one value a sample, with the variance between them kept: a
 * second measurement of a bag says how well it was measured and is no second plot.
 *
 * @param samples one value each, in the order of their first measurement
 * @param variance pooled variance of one measurement, in the unit squared; NaN without duplicates
 * @param degreesOfFreedom it rests on
 */
public record LaboratoryDuplicates(
    List<CleanReading> samples, double variance, int degreesOfFreedom) {
  public LaboratoryDuplicates {
    samples = List.copyOf(samples);
  }

  /** Averages what has the same plot, date, rater and sample. */
  public static LaboratoryDuplicates of(List<CleanReading> readings) {
    Map<List<Object>, List<CleanReading>> bySample = new LinkedHashMap<>();
    for (CleanReading reading : readings) {
      List<Object> key = ReadingKeys.of(reading.given());
      bySample
          .computeIfAbsent(key.subList(0, key.size() - 1), sample -> new ArrayList<>())
          .add(reading);
    }
    List<CleanReading> samples = new ArrayList<>();
    double squares = 0;
    int freedom = 0;
    for (List<CleanReading> sample : bySample.values()) {
      double mean = sample.stream().mapToDouble(CleanReading::value).average().orElseThrow();
      boolean below = sample.stream().allMatch(CleanReading::belowDetection);
      samples.add(new CleanReading(sample.get(0).given(), mean, below));
      for (CleanReading each : sample) {
        squares += (each.value() - mean) * (each.value() - mean);
      }
      freedom += sample.size() - 1;
    }
    return new LaboratoryDuplicates(
        samples, freedom == 0 ? Double.NaN : squares / freedom, freedom);
  }

  /** How well a sample was measured, in a sentence; empty without duplicates. */
  public String words(String unit) {
    return degreesOfFreedom == 0
        ? ""
        : "Duplicates were averaged; one measurement has a standard deviation of %.3g %s (%d degrees of freedom)."
            .formatted(Math.sqrt(variance), unit, degreesOfFreedom);
  }
}
