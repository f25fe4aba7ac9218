package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.Arrays;
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
 * <p>Where all measurements of a sample lie below detection, their mean lies below the mean of
 * their limits. Where some do, those limits enter the mean at half, as single values do, and the
 * mean counts as below detection too. How well the laboratory measures is told by values it
 * measured.
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
      samples.add(mean(sample));
      double[] measured =
          sample.stream()
              .filter(each -> !each.belowDetection())
              .mapToDouble(CleanReading::value)
              .toArray();
      double mean = Arrays.stream(measured).average().orElse(Double.NaN);
      squares += Arrays.stream(measured).map(each -> (each - mean) * (each - mean)).sum();
      freedom += Math.max(0, measured.length - 1);
    }
    return new LaboratoryDuplicates(
        samples, freedom == 0 ? Double.NaN : squares / freedom, freedom);
  }

  private static CleanReading mean(List<CleanReading> sample) {
    return new CleanReading(
        sample.get(0).given(),
        sample.stream().mapToDouble(CleanReading::value).average().orElseThrow(),
        sample.stream().anyMatch(CleanReading::belowDetection),
        sample.stream().mapToDouble(CleanReading::limits).average().orElseThrow());
  }

  /**
   * What duplicates tell of the laboratory, in sentences.
   *
   * @param blind these samples after {@link #blind}
   * @param unit of the outcome
   */
  public List<Remark> remarks(LaboratoryDuplicates blind, String unit) {
    List<Remark> remarks = new ArrayList<>();
    long partly = blind.samples.stream().filter(CleanReading::isPartlyBelow).count();
    if (partly > 0) {
      remarks.add(
          Remark.note(
              "Of %d %s some measurements lie below their detection limit and some do not; those"
                  + " below stand at half their limit in the mean, which counts as below detection.",
              partly, partly == 1 ? "sample" : "samples"));
    }
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
    ReadingValue first = ReadingValue.of(one.value(), one.detectionLimit());
    ReadingValue second = ReadingValue.of(other.value(), other.detectionLimit());
    boolean mayBeTheSame =
        (first.belowDetection() && second.value() <= first.value())
            || (second.belowDetection() && first.value() <= second.value())
            || (first.belowDetection() && second.belowDetection());
    double apart = Math.abs(first.value() - second.value());
    return !mayBeTheSame && apart > FAR_APART * Math.abs(first.value() + second.value()) / 2;
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
