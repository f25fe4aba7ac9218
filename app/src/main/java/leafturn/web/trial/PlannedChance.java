package leafturn.web.trial;

import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.SizeDocument;
import leafturn.records.trial.SizeFile;
import leafturn.reports.trial.SizeWords;
import leafturn.trials.design.Design;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.power.SizeAnswer;
import leafturn.trials.power.TrialSize;
import org.jspecify.annotations.Nullable;

/**
 * With how much chance a trial of the planned size finds the margin, by the question that "How many
 * yards" starts from.
 *
 * @param words a sentence
 * @param weak whether that is less than usual, or cannot be judged at all
 */
public record PlannedChance(String words, boolean weak) {
  private static final String ONE_YARD =
      "One yard split once can tell the two areas apart and never the practices: with it alone there"
          + " is no test, whatever it shows. Take more yards before you freeze.";

  /** The chance; null where the plan has faults or no margin that the starting values can judge. */
  public static @Nullable PlannedChance of(TrialSheet trial, Units units) {
    try {
      TrialPlan plan = BookPlan.of(trial);
      if (plan.arrangement().design() == Design.SPLIT_YARD && plan.lawns().size() == 1) {
        return new PlannedChance(ONE_YARD, true);
      }
      SizeForm form = new SizeForm(plan, SizeForm.outcomeOf(plan));
      if (!form.asksForMargin()) {
        return null;
      }
      SizeDocument question =
          SizeFile.read(form.changed(form.filled(units)).document("size", form.base()));
      SizeAnswer answer = TrialSize.of(question.size());
      SizeAnswer.AtUnits at = answer.at();
      return at == null ? null : of(question, answer, at);
    } catch (InputException unfinished) {
      return null;
    }
  }

  private static PlannedChance of(SizeDocument question, SizeAnswer answer, SizeAnswer.AtUnits at) {
    SizeWords wording = new SizeWords(question);
    String words = wording.chance(at);
    if (wording.cannotConfirm(at.units())) {
      return new PlannedChance(words + " " + wording.warnings(answer).get(0), true);
    }
    return new PlannedChance(words, at.power() < question.size().power());
  }
}
