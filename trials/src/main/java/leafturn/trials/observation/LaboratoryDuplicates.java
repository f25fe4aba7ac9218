package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import leafturn.trials.analysis.numeric.Tails;

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
  private static final double FAR_APART = 1 / 3.0;
  private static final double ALPHA = 0.05;

  public LaboratoryDuplicates {
    samples = List.copyOf(samples);
  }

  /** Averages what has the same plot, date, rater and sample. */
  public static LaboratoryDuplicates of(List<CleanReading> readings) {
    return averaged(
        readings,
        reading -> {
          List<Object> key = ReadingKeys.of(reading.given());
          return key.subList(0, key.size() - 1);
        });
  }

  /**
   * Averages blind duplicates with the bags they were divided from; the variance that comes with
   * them is that between the two halves of a bag, of which the laboratory did not know.
   *
   * @param bagOf code of the bag that another code is a blind duplicate of
   */
  public LaboratoryDuplicates blind(Map<String, String> bagOf) {
    return averaged(
        samples,
        reading -> {
          Reading given = reading.given();
          String code = given.sample() == null ? "" : ReadingKeys.code(given.sample());
          return List.of(
              given.plot(),
              given.date(),
              given.outcome(),
              Objects.requireNonNullElse(given.rater(), ""),
              bagOf.getOrDefault(code, code));
        });
  }

  private static LaboratoryDuplicates averaged(
      List<CleanReading> readings, Function<CleanReading, List<Object>> sampleOf) {
    Map<List<Object>, List<CleanReading>> bySample = new LinkedHashMap<>();
    for (CleanReading reading : readings) {
      bySample.computeIfAbsent(sampleOf.apply(reading), sample -> new ArrayList<>()).add(reading);
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

  /**
   * What duplicates tell of the laboratory, in sentences.
   *
   * @param blind these samples after {@link #blind}
   * @param unit of the outcome
   */
  public List<Remark> remarks(LaboratoryDuplicates blind, String unit) {
    List<Remark> remarks = new ArrayList<>();
    if (degreesOfFreedom > 0) {
      remarks.add(
          Remark.note(
              "Duplicates were averaged; one measurement has a standard deviation of %.3g %s (%s).",
              Math.sqrt(variance), unit, degrees(degreesOfFreedom)));
    }
    if (blind.degreesOfFreedom > 0) {
      remarks.add(
          Remark.note(
              "Blind duplicates were averaged with their bags; one measurement of which the"
                  + " laboratory does not know that it is a duplicate has a standard deviation of"
                  + " %.3g %s (%s).",
              Math.sqrt(blind.variance), unit, degrees(blind.degreesOfFreedom)));
    }
    if (degreesOfFreedom > 0 && blind.degreesOfFreedom > 0 && blind.isWider(this)) {
      remarks.add(
          Remark.warning(
              "Blind duplicates differ more than those that the laboratory knows to be duplicates"
                  + " (F test, p below %s); ask it how bags are mixed and divided, and how it"
                  + " measures duplicates.",
              ALPHA));
    }
    return remarks;
  }

  /**
   * Whether two readings are of one sample and differ by more than a third of their mean: far above
   * what laboratories allow between duplicates (assumed).
   */
  public static boolean areFarApart(Reading one, Reading other) {
    boolean sameSample =
        (one.duplicate() != null || other.duplicate() != null)
            && one.plot().equals(other.plot())
            && one.date().equals(other.date())
            && one.outcome().equals(other.outcome())
            && Objects.equals(one.sample(), other.sample())
            && Objects.equals(one.unit(), other.unit());
    if (!sameSample) {
      return false;
    }
    double first = ReadingValue.of(one.value(), one.detectionLimit()).value();
    double second = ReadingValue.of(other.value(), other.detectionLimit()).value();
    return Math.abs(first - second) > FAR_APART * Math.abs(first + second) / 2;
  }

  private static String degrees(int number) {
    return number == 1 ? "1 degree of freedom" : number + " degrees of freedom";
  }

  private boolean isWider(LaboratoryDuplicates other) {
    return variance > 0
        && (other.variance == 0
            || Tails.fAbove(variance / other.variance, degreesOfFreedom, other.degreesOfFreedom)
                < ALPHA);
  }
}
