package leafturn.trials.design.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.TrialPlan;

/** The bags of soil of a trial with their codes, and those that are divided into two by chance. */
final class Bags {
  private final TrialPlan plan;
  private final CoreRule rule;
  private final List<Bag> bags = new ArrayList<>();

  private Bags(TrialPlan plan) {
    this.plan = plan;
    this.rule = plan.observing().cores();
  }

  /** Bags date by date and plot by plot, then the blind duplicates date by date. */
  static List<Bag> of(TrialPlan plan, List<LaidLawn> lawns) {
    Bags bags = new Bags(plan);
    if (bags.rule.perPlot() > 0) {
      bags.fill(lawns.stream().flatMap(lawn -> lawn.plots().stream()).toList());
      bags.divide();
    }
    return bags.bags;
  }

  private void fill(List<LaidPlot> plots) {
    List<String> codes =
        BlindCodes.of(
            Chance.of(plan.seed(), Purpose.CODES),
            rule.dates().size() * plots.size() * rule.composites());
    for (LocalDate date : rule.dates()) {
      for (LaidPlot plot : plots) {
        for (int bag = 1; bag <= rule.composites(); bag++) {
          bags.add(new Bag(codes.get(bags.size()), plot.code(), date, bag, null));
        }
      }
    }
  }

  /** Each date has its own, so that every delivery to the laboratory is checked. */
  private void divide() {
    Chance chance = Chance.of(plan.seed(), Purpose.DUPLICATES);
    List<Bag> divided = new ArrayList<>();
    for (LocalDate date : rule.dates()) {
      List<Bag> own = bags.stream().filter(bag -> bag.date().equals(date)).toList();
      divided.addAll(chance.shuffled(own).subList(0, number(own.size())));
    }
    List<String> codes =
        BlindCodes.of(chance, divided.size(), bags.stream().map(Bag::code).toList());
    for (int i = 0; i < divided.size(); i++) {
      Bag bag = divided.get(i);
      bags.add(new Bag(codes.get(i), bag.plot(), bag.date(), bag.number(), bag.code()));
    }
  }

  private int number(int ofDate) {
    double share = rule.blindDuplicateFraction();
    return share == 0 || ofDate == 0 ? 0 : (int) Math.max(1, Math.round(share * ofDate));
  }
}
