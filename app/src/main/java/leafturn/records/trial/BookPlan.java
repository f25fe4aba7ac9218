package leafturn.records.trial;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;

/** The plan of a trial in the book. */
public final class BookPlan {
  private BookPlan() {}

  /**
   * The plan as it stands.
   *
   * @throws leafturn.records.InputException with every fault it has
   */
  public static TrialPlan of(TrialSheet trial) {
    return TrialPlanFile.read(new SourceText("plan", trial.plan().toString()));
  }

  /**
   * The plan with the outcomes, and their margins, by which the trial is judged: those that were
   * frozen, where it was changed since.
   *
   * @param trial with its past, where that is known
   * @throws leafturn.records.InputException with every fault it has
   */
  public static TrialPlan judged(TrialSheet trial) {
    TrialPlan now = of(trial);
    TrialPast past = Objects.requireNonNullElse(trial.past(), TrialPast.UNKNOWN);
    List<Outcome> outcomes = new FrozenPlan(past, now).outcomes();
    return outcomes.stream().anyMatch(Outcome::primary) ? now.with(outcomes) : now;
  }

  /**
   * The rules for leaving out, as they were frozen.
   *
   * @param trial with its past, where that is known
   * @throws leafturn.records.InputException with every fault of its plan
   */
  public static List<String> rules(TrialSheet trial) {
    TrialPast past = Objects.requireNonNullElse(trial.past(), TrialPast.UNKNOWN);
    return new FrozenPlan(past, of(trial)).exclusions();
  }

  /**
   * SHA-256 of the plan as it stands, in its canonical form.
   *
   * @throws leafturn.records.InputException with every fault it has
   */
  public static String hash(TrialSheet trial) {
    return TrialPlanText.sha256(of(trial));
  }

  /** Whether the plan is still as it was frozen. */
  public static boolean isAsFrozen(TrialSheet trial) {
    TrialSheet.Frozen frozen = trial.frozen();
    return frozen != null && frozen.hash().equals(hash(trial));
  }

  /**
   * Whether the plan was frozen only after the last of its planned days.
   *
   * @param zone in which the book counts its days
   */
  public static boolean isFrozenLate(TrialSheet trial, ZoneId zone) {
    TrialSheet.Frozen frozen = trial.frozen();
    List<LocalDate> dates = of(trial).observing().dates();
    return frozen != null
        && !dates.isEmpty()
        && Collections.max(dates).isBefore(LocalDate.ofInstant(frozen.moment(), zone));
  }

  /**
   * How many layouts were drawn: how many seeds the plan has had one after the other, up to when it
   * was frozen.
   *
   * @param versions of the trial's sheet, the latest first
   */
  public static int draws(List<Sheet<TrialSheet>> versions) {
    int draws = 0;
    JsonNode before = MissingNode.getInstance();
    for (int i = versions.size() - 1; i >= 0; i--) {
      TrialSheet version = versions.get(i).content();
      JsonNode seed = version.plan().path("seed");
      draws += seed.equals(before) ? 0 : 1;
      before = seed;
      if (version.frozen() != null) {
        break;
      }
    }
    return draws;
  }

  /** Whether raters are not to know the arms, as a plan has it that does not say otherwise. */
  public static boolean ratersAreBlind(TrialSheet trial) {
    return trial.plan().path("protocol").path("ratersBlind").asBoolean(true);
  }
}
