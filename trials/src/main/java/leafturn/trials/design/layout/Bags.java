package leafturn.trials.design.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;

/**
 * The bags of a trial with their codes, and those that are divided into two by chance. Each bag has
 * a chance of its own, drawn from the seed and from what the bag is, so that labels that are
 * printed stay true when a plan gets another date or more bags of a plot.
 */
final class Bags {
  private static final int OWN = 0;
  private static final int HALF = 1;

  private final TrialPlan plan;
  private final List<String> plots;
  private final Set<String> given = new HashSet<>();
  private final List<Bag> bags = new ArrayList<>();

  private Bags(TrialPlan plan, List<LaidPlot> plots) {
    this.plan = plan;
    this.plots = plots.stream().map(LaidPlot::code).toList();
  }

  /**
   * Bags of soil date by date and plot by plot, then their blind duplicates date by date; then the
   * same of tissue, one bag of each plot on each day of observation.
   */
  static List<Bag> of(TrialPlan plan, List<LaidLawn> lawns) {
    Bags bags = new Bags(plan, lawns.stream().flatMap(lawn -> lawn.plots().stream()).toList());
    CoreRule rule = plan.observing().cores();
    if (rule.perPlot() > 0) {
      bags.fill(Outcome.Kind.SOIL, rule.dates(), rule.composites());
    }
    if (plan.observing().has(Outcome.Kind.TISSUE)) {
      bags.fill(Outcome.Kind.TISSUE, plan.observing().dates(), 1);
    }
    return bags.bags;
  }

  /** The first bags of all plots get their codes before the second ones, which may come later. */
  private void fill(Outcome.Kind holds, List<LocalDate> dates, int ofPlot) {
    List<Bag> own = new ArrayList<>();
    List<Bag> halves = new ArrayList<>();
    for (int number = 1; number <= ofPlot; number++) {
      int divided = divided(number) - divided(number - 1);
      for (LocalDate date : dates) {
        List<Bag> ofDate = new ArrayList<>();
        for (String plot : plots) {
          ofDate.add(
              new Bag(code(OWN, holds, plot, date, number), holds, plot, date, number, null));
        }
        own.addAll(ofDate);
        ofDate.sort(Comparator.comparingDouble(this::lot).thenComparing(Bag::code));
        ofDate.stream().limit(divided).map(this::half).forEach(halves::add);
      }
    }
    Comparator<Bag> byDate = Comparator.comparingInt(bag -> dates.indexOf(bag.date()));
    own.sort(byDate.thenComparingInt(bag -> plots.indexOf(bag.plot())));
    halves.sort(byDate);
    bags.addAll(own);
    bags.addAll(halves);
  }

  /**
   * How many of the bags of a date are divided, of those up to a number in their plot. Each date
   * has its own, so that every delivery to the laboratory is checked.
   */
  private int divided(int upTo) {
    double share = plan.observing().cores().blindDuplicateFraction();
    int bagsOfDate = plots.size() * upTo;
    return share == 0 || bagsOfDate == 0 ? 0 : (int) Math.max(1, Math.round(share * bagsOfDate));
  }

  private Bag half(Bag bag) {
    String code = code(HALF, bag.holds(), bag.plot(), bag.date(), bag.number());
    return new Bag(code, bag.holds(), bag.plot(), bag.date(), bag.number(), bag.code());
  }

  private String code(int half, Outcome.Kind holds, String plot, LocalDate date, int number) {
    String code = BlindCodes.of(chance(Purpose.CODES, half, holds, plot, date, number), given);
    given.add(code);
    return code;
  }

  /** The bags of a date with the lowest lots are divided. */
  private double lot(Bag bag) {
    return chance(Purpose.DUPLICATES, OWN, bag.holds(), bag.plot(), bag.date(), bag.number())
        .share();
  }

  private Chance chance(
      long purpose, int half, Outcome.Kind holds, String plot, LocalDate date, int number) {
    long kind = holds == Outcome.Kind.SOIL ? 0 : 1;
    LongStream bag = LongStream.of(purpose, half, kind, date.toEpochDay(), number);
    return Chance.of(plan.seed(), LongStream.concat(bag, plot.chars().asLongStream()).toArray());
  }
}
