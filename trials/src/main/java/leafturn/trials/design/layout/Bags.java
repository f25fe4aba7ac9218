package leafturn.trials.design.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;

/** The bags of a trial with their codes, and those that are divided into two by chance. */
final class Bags {
  private final TrialPlan plan;
  private final List<LaidPlot> plots;
  private final List<Bag> bags = new ArrayList<>();

  private Bags(TrialPlan plan, List<LaidPlot> plots) {
    this.plan = plan;
    this.plots = plots;
  }

  /**
   * Bags of soil date by date and plot by plot, then their blind duplicates date by date; then the
   * same of tissue, one bag of each plot on each day of observation.
   */
  static List<Bag> of(TrialPlan plan, List<LaidLawn> lawns) {
    Bags bags = new Bags(plan, lawns.stream().flatMap(lawn -> lawn.plots().stream()).toList());
    CoreRule rule = plan.observing().cores();
    if (rule.perPlot() > 0) {
      bags.fill(Outcome.Kind.SOIL, rule.dates(), rule.composites(), Purpose.CODES);
      bags.divide(Outcome.Kind.SOIL, rule.dates(), Purpose.DUPLICATES);
    }
    if (plan.observing().has(Outcome.Kind.TISSUE)) {
      List<LocalDate> dates = plan.observing().dates();
      bags.fill(Outcome.Kind.TISSUE, dates, 1, Purpose.TISSUE_CODES);
      bags.divide(Outcome.Kind.TISSUE, dates, Purpose.TISSUE_DUPLICATES);
    }
    return bags.bags;
  }

  private void fill(Outcome.Kind holds, List<LocalDate> dates, int ofPlot, long purpose) {
    int number = dates.size() * plots.size() * ofPlot;
    List<String> codes = codes(Chance.of(plan.seed(), purpose), number);
    int next = 0;
    for (LocalDate date : dates) {
      for (LaidPlot plot : plots) {
        for (int bag = 1; bag <= ofPlot; bag++) {
          bags.add(new Bag(codes.get(next++), holds, plot.code(), date, bag, null));
        }
      }
    }
  }

  private List<String> codes(Chance chance, int number) {
    return BlindCodes.of(chance, number, bags.stream().map(Bag::code).toList());
  }

  /** Each date has its own, so that every delivery to the laboratory is checked. */
  private void divide(Outcome.Kind holds, List<LocalDate> dates, long purpose) {
    Chance chance = Chance.of(plan.seed(), purpose);
    List<Bag> divided = new ArrayList<>();
    for (LocalDate date : dates) {
      List<Bag> own =
          bags.stream().filter(bag -> bag.holds() == holds && bag.date().equals(date)).toList();
      divided.addAll(chance.shuffled(own).subList(0, number(own.size())));
    }
    List<String> codes = codes(chance, divided.size());
    for (int i = 0; i < divided.size(); i++) {
      Bag bag = divided.get(i);
      bags.add(new Bag(codes.get(i), holds, bag.plot(), bag.date(), bag.number(), bag.code()));
    }
  }

  private int number(int ofDate) {
    double share = plan.observing().cores().blindDuplicateFraction();
    return share == 0 || ofDate == 0 ? 0 : (int) Math.max(1, Math.round(share * ofDate));
  }
}
