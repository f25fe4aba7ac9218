package leafturn.reports.trial;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Locale;
import leafturn.trials.findings.Effect;
import org.jspecify.annotations.Nullable;

/**
 * The season's difference of two arms in a JSON document, first less second.
 *
 * @param verdict of the primary outcome; left out for others
 * @param ratio and its limits, on the log scale alone
 * @param equivalence left out without a margin
 * @param newUnitLower limits of the prediction interval for a new unit, where the design gives it
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record EffectEntry(
    String first,
    String second,
    int units,
    @Nullable String verdict,
    double difference,
    double se,
    double df,
    double t,
    double p,
    double pAdjusted,
    double lower,
    double upper,
    @Nullable Double ratio,
    @Nullable Double ratioLower,
    @Nullable Double ratioUpper,
    @Nullable EquivalenceEntry equivalence,
    double leastDetectable,
    @Nullable Double newUnitLower,
    @Nullable Double newUnitUpper) {

  /** The two one-sided tests; {@code margin} on the scale of the analysis. */
  public record EquivalenceEntry(double margin, double p, double lower90, double upper90) {}

  static EffectEntry of(Effect effect, boolean log) {
    Effect.Estimated found = effect.estimated();
    Effect.Equivalence tests = effect.equivalence();
    var verdict = effect.verdict();
    var next = effect.newUnit();
    return new EffectEntry(
        effect.contrast().first(),
        effect.contrast().second(),
        effect.units(),
        verdict == null ? null : verdict.name().toLowerCase(Locale.ROOT).replace('_', ' '),
        found.difference(),
        found.se(),
        found.df(),
        found.t(),
        found.p(),
        effect.pAdjusted(),
        found.interval().lower(),
        found.interval().upper(),
        log ? Math.exp(found.difference()) : null,
        log ? Math.exp(found.interval().lower()) : null,
        log ? Math.exp(found.interval().upper()) : null,
        tests == null
            ? null
            : new EquivalenceEntry(
                tests.margin(), tests.p(), tests.interval().lower(), tests.interval().upper()),
        effect.leastDetectable(),
        next == null ? null : next.lower(),
        next == null ? null : next.upper());
  }
}
