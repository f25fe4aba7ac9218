package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.Weighing.Weighed;
import leafturn.quantity.ShareWords;

/** Where rules of thumb disagree on a plan, and which of them decides. */
final class Conflicts {
  private final Prospect prospect;
  private final Known known;
  private final CallRules rules;
  private final Reader reader;

  Conflicts(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.rules = prospect.rules();
    this.reader = prospect.reader();
  }

  /** One sentence for each conflict. */
  List<String> of(Weighed best, Weighed returnToday) {
    List<String> conflicts = new ArrayList<>();
    if (best.plan().returned()) {
      pieces(best.plan(), conflicts);
    }
    held(best.plan(), returnToday, conflicts);
    if (best.plan().choice() == Choice.LOWER_ONCE_AND_COLLECT) {
      double taken =
          Prospect.takenFraction(prospect.heightMm(best.plan().day()), best.plan().last().toMm());
      conflicts.add(
          say(
              "The rule of %s would stop at %s; lowering straw at green-up takes %s, once a year.",
              prospect.rules().third(),
              reader.height(prospect.heightMm(best.plan().day()) * (1 - third())),
              Words.percent(taken)));
    }
    if (best.plan().day() == 0 && byProgrammeTooSoon()) {
      conflicts.add(
          say(
              "Less than %1$s would come off today, but the next day of mowing comes after %1$s is passed: the day decides.",
              prospect.rules().third()));
    }
    return conflicts;
  }

  private double third() {
    return rules.threshold(CallRule.ONE_THIRD);
  }

  private boolean byProgrammeTooSoon() {
    int next = prospect.nextVisit(1);
    double now = Prospect.takenFraction(prospect.heightMm(0), prospect.cutHeightMm());
    return next > 1
        && now < rules.threshold(CallRule.DUE)
        && Prospect.takenFraction(prospect.heightMm(next), prospect.cutHeightMm()) > third();
  }

  /** At 76 mm a third is 38 mm, longer than the pieces that a rule of thumb lets lie. */
  private void pieces(Plan plan, List<String> conflicts) {
    double cutMm = prospect.lengthMm(plan.day(), plan.cuts().get(0).toMm());
    double lengthMm = prospect.passes().pieceMm(cutMm, false);
    double thirdMm = prospect.cutHeightMm() * third() / (1 - third());
    double shortMm = rules.threshold(CallRule.SHORT_PIECES);
    if (lengthMm > shortMm && thirdMm > shortMm) {
      conflicts.add(
          say(
              "%s of the height at a cut of %s is %s, longer than the %s of the rule for short pieces: the share, the load and dry leaves decide here.",
              ShareWords.beginning(third()),
              reader.height(prospect.cutHeightMm()),
              reader.height(thirdMm),
              reader.height(shortMm)));
    }
  }

  private void held(Plan plan, Weighed returnToday, List<String> conflicts) {
    Holds holds = known.holds(prospect.date(plan.day()));
    if (holds.any() && wouldCollect(returnToday)) {
      conflicts.add(
          say(
              "The height, length or state of the grass asks to %s, %s it: the label wins, and nothing leaves the lawn.",
              reader.take(), holds.that("forbids", "forbid")));
    }
  }

  private static boolean wouldCollect(Weighed returnToday) {
    return returnToday.breaks(CallRule.ONE_THIRD)
        || returnToday.breaks(CallRule.CLUMPS)
        || returnToday.breaks(CallRule.SEED_HEADS)
        || returnToday.breaks(CallRule.WET_RETURN);
  }
}
