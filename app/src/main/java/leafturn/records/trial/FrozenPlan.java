package leafturn.records.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialPast.PlanVersion;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;

/** The plan of a trial as it was frozen, beside the plan as it stands now. */
final class FrozenPlan {
  private final List<PlanVersion> plans;
  private final TrialPlan now;

  /**
   * @param past of the trial
   * @param now the plan as it stands
   */
  FrozenPlan(TrialPast past, TrialPlan now) {
    this.plans = past.plans();
    this.now = now;
  }

  /**
   * The plans of a trial since it was frozen, those of the book it came from before those of this
   * one; none where it was not changed since, or where the frozen one is not known.
   *
   * @param history of its sheet, the latest first
   * @param written the day of what was written in the book
   * @param zone in which the book counts its days
   */
  static List<PlanVersion> since(
      List<Sheet<TrialSheet>> history, Function<Sheet<?>, LocalDate> written, ZoneId zone) {
    List<PlanVersion> versions = new ArrayList<>();
    for (int i = history.size() - 1; i >= 0; i--) {
      TrialSheet trial = history.get(i).content();
      TrialPast brought = trial.past();
      if (versions.isEmpty() && brought != null) {
        versions.addAll(brought.plans());
      }
      JsonNode plan = trial.plan();
      boolean same = !versions.isEmpty() && versions.get(versions.size() - 1).plan().equals(plan);
      TrialSheet.Frozen frozen = trial.frozen();
      if (frozen != null && !same) {
        LocalDate on =
            versions.isEmpty()
                ? LocalDate.ofInstant(frozen.moment(), zone)
                : written.apply(history.get(i));
        versions.add(new PlanVersion(plan, on, trial.note()));
      }
    }
    return isKnownToBeOther(versions, history.get(0).content()) ? versions : List.of();
  }

  private static boolean isKnownToBeOther(List<PlanVersion> versions, TrialSheet trial) {
    TrialSheet.Frozen frozen = trial.frozen();
    return frozen != null
        && versions.size() > 1
        && frozen.hash().equals(TrialPlanText.sha256(read(versions.get(0))));
  }

  /** A plan of the past. */
  static TrialPlan read(PlanVersion version) {
    return TrialPlanFile.read(new SourceText("plan of " + version.on(), version.plan().toString()));
  }

  /** Whether it is known and was changed since. */
  boolean isOther() {
    return plans.size() > 1;
  }

  /** The outcomes as they were frozen; one that came later is exploratory. */
  List<Outcome> outcomes() {
    if (!isOther()) {
      return now.observing().outcomes();
    }
    List<Outcome> before = read(plans.get(0)).observing().outcomes();
    return now.observing().outcomes().stream()
        .map(
            own ->
                before.stream()
                    .filter(each -> each.name().equals(own.name()))
                    .filter(each -> each.unit().equals(own.unit()) && each.kind() == own.kind())
                    .findFirst()
                    .orElseGet(own::exploratory))
        .toList();
  }

  /** The rules for leaving out as they were frozen. */
  List<String> exclusions() {
    return (isOther() ? read(plans.get(0)) : now).observing().exclusions();
  }

  /** The planned comparisons as they were frozen. */
  List<Contrast> contrasts() {
    return (isOther() ? read(plans.get(0)) : now).treatments().contrasts();
  }
}
