package leafturn.advice.evidence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;

/**
 * The model run through the protocols of published field studies, each result beside the published
 * one. Several parameters were set on these same studies: a pass is a fit, not an independent
 * proof.
 *
 * @param findings one per target, in order
 * @param misses why targets are missed, for those that are
 */
public record Evidence(List<Finding> findings, List<Miss> misses) {
  /** What the result says of the target. */
  public enum Verdict {
    PASS,
    FAIL,
    /** Nothing to agree with. */
    INFORMATION
  }

  /**
   * One target and what the model gave.
   *
   * @param values the numbers that are judged
   * @param shown the same as text
   * @param detail what stands behind them
   */
  public record Finding(
      Target target, List<Double> values, String shown, String detail, Verdict verdict) {}

  /**
   * Why a group of targets is missed.
   *
   * @param ids targets of the group that failed
   */
  public record Miss(String name, List<String> ids, String reason) {}

  public Evidence {
    findings = List.copyOf(findings);
    misses = List.copyOf(misses);
  }

  /**
   * Runs every protocol.
   *
   * @param weather whole years beginning on a first of January
   * @param site where it was measured
   */
  public static Evidence of(WeatherSeries weather, Site site) {
    Map<String, Measured> measured =
        measure(weather, site).stream().collect(Collectors.toMap(Measured::id, m -> m));
    List<Finding> findings = new ArrayList<>();
    for (Target target : Target.all()) {
      Measured result = measured.remove(target.id());
      if (result == null) {
        throw new IllegalStateException("targets.tsv: nothing measures " + target.id());
      }
      findings.add(finding(target, result));
    }
    if (!measured.isEmpty()) {
      throw new IllegalStateException("targets.tsv: no target for " + measured.keySet());
    }
    return new Evidence(findings, misses(findings));
  }

  private static List<Measured> measure(WeatherSeries weather, Site site) {
    TrialGround ground = TrialGround.of(weather, site, 1);
    List<Measured> measured = new ArrayList<>();
    measured.addAll(YearlyYield.on(ground));
    measured.addAll(ReturnEffect.on(ground));
    measured.addAll(LabelledFertiliser.on(ground));
    measured.addAll(NitrogenSaving.on(ground));
    measured.addAll(YearlyMowings.on(ground));
    measured.addAll(IrrigationCut.on(weather, site));
    measured.addAll(LitterBag.on(ground));
    measured.addAll(Leaching.on(ground));
    measured.addAll(Thatch.on(ground));
    measured.addAll(SoilTests.on(ground));
    measured.addAll(SeasonalShape.on(ground));
    return measured;
  }

  private static Finding finding(Target target, Measured measured) {
    String shown =
        measured.values().stream()
            .map(value -> Measured.number(value, target.decimals()))
            .collect(Collectors.joining("/"));
    return new Finding(
        target, measured.values(), shown, measured.detail(), verdict(target, measured));
  }

  private static Verdict verdict(Target target, Measured measured) {
    if (!target.band().given()) {
      return Verdict.INFORMATION;
    }
    boolean all =
        measured.values().stream()
            .map(value -> Double.parseDouble(Measured.number(value, target.decimals())))
            .allMatch(target.band()::holds);
    return all ? Verdict.PASS : Verdict.FAIL;
  }

  private static List<Miss> misses(List<Finding> findings) {
    Map<String, List<String>> failed = new HashMap<>();
    for (Finding finding : findings) {
      if (finding.verdict() == Verdict.FAIL) {
        failed
            .computeIfAbsent(finding.target().miss(), name -> new ArrayList<>())
            .add(finding.target().id());
      }
    }
    return Shortcoming.all().stream()
        .filter(shortcoming -> failed.containsKey(shortcoming.name()))
        .map(
            shortcoming ->
                new Miss(
                    shortcoming.name(),
                    List.copyOf(failed.getOrDefault(shortcoming.name(), List.of())),
                    shortcoming.reason()))
        .toList();
  }

  /** Number of findings with a verdict. */
  public long count(Verdict verdict) {
    return findings.stream().filter(finding -> finding.verdict() == verdict).count();
  }
}
