package leafturn.records.trial;

import java.util.List;
import leafturn.records.SourceText;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;

/**
 * What of a trial was changed and taken back.
 *
 * @param plans since it was frozen, the frozen one first; none where they are not known
 * @param withdrawn readings that were taken back, a sentence for each sheet, without a full stop
 */
public record TrialPast(List<PlanVersion> plans, List<String> withdrawn) {
  /** Nothing was kept. */
  public static final TrialPast UNKNOWN = new TrialPast(List.of(), List.of());

  public TrialPast {
    plans = List.copyOf(plans);
    withdrawn = List.copyOf(withdrawn);
  }

  /** The outcomes as they were frozen; one that came later is exploratory. */
  List<Outcome> outcomes(TrialPlan now) {
    if (plans.size() < 2) {
      return now.observing().outcomes();
    }
    List<Outcome> before = frozen().observing().outcomes();
    return now.observing().outcomes().stream()
        .map(
            own ->
                before.stream()
                    .filter(each -> each.name().equals(own.name()))
                    .filter(each -> each.unit().equals(own.unit()) && each.kind() == own.kind())
                    .findFirst()
                    .orElseGet(() -> exploratory(own)))
        .toList();
  }

  /** The planned comparisons as they were frozen. */
  List<Contrast> contrasts(TrialPlan now) {
    return (plans.size() < 2 ? now : frozen()).treatments().contrasts();
  }

  private TrialPlan frozen() {
    return TrialPlanFile.read(new SourceText("frozen plan", plans.get(0).plan().toString()));
  }

  private static Outcome exploratory(Outcome own) {
    return new Outcome(
        own.name(),
        own.kind(),
        own.unit(),
        own.low(),
        own.high(),
        own.scale(),
        own.summary(),
        own.margin(),
        false);
  }
}
