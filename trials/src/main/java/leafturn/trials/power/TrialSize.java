package leafturn.trials.power;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import leafturn.trials.power.DifferenceTest.Rejections;
import leafturn.trials.power.SizeAnswer.AtUnits;
import leafturn.trials.power.SizeAnswer.MoreSampling;
import leafturn.trials.power.SizeAnswer.Needed;
import org.jspecify.annotations.Nullable;

/** Size of a trial by formula: from variances and degrees of freedom to power and units. */
public final class TrialSize {
  private static final double MOST_UNITS = 1e6;

  /** Rounding of the search is no reason for one unit more. */
  private static final double SAME = 1e-7;

  private static final int[] TABLE = {4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40};

  private final SizeQuestion question;
  private final Design design;

  private TrialSize(SizeQuestion question) {
    this.question = question;
    this.design = question.design();
  }

  /**
   * Answers a question.
   *
   * @throws IllegalStateException for a design without formulas
   */
  public static SizeAnswer of(SizeQuestion question) {
    TrialSize size = new TrialSize(question);
    Needed difference = size.neededForDifference();
    Needed equivalence = size.neededForEquivalence();
    Integer units = question.units();
    return new SizeAnswer(
        question,
        difference,
        equivalence,
        units == null ? null : size.at(units),
        size.more(units == null ? difference : null),
        size.table());
  }

  private List<AtUnits> table() {
    return IntStream.of(TABLE)
        .filter(units -> units >= design.fewestUnits())
        .mapToObj(this::at)
        .toList();
  }

  private @Nullable Needed neededForDifference() {
    if (question.difference() == null) {
      return null;
    }
    Rejections counted = question.test().rejections();
    double exact = units(n -> power(design, n, counted));
    SizeQuestion.Range range = question.range();
    return new Needed(
        exact,
        units(n -> power(design, n, Rejections.NEAR_TAIL)),
        whole(exact),
        range == null ? 0 : whole(units(n -> power(range.low(), n, counted))),
        range == null ? 0 : whole(units(n -> power(range.high(), n, counted))));
  }

  private @Nullable Needed neededForEquivalence() {
    if (question.margin() == null) {
      return null;
    }
    double exact = units(n -> equivalencePower(design, n));
    SizeQuestion.Range range = question.range();
    return new Needed(
        exact,
        exact,
        whole(exact),
        range == null ? 0 : whole(units(n -> equivalencePower(range.low(), n))),
        range == null ? 0 : whole(units(n -> equivalencePower(range.high(), n))));
  }

  private double units(DoubleUnaryOperator powerOf) {
    return Search.rising(
        n -> powerOf.applyAsDouble(n) - question.power(), design.fewestUnits(), MOST_UNITS);
  }

  private static int whole(double exact) {
    return Double.isFinite(exact) ? (int) Math.ceil(exact - SAME) : 0;
  }

  private double power(Design own, double units, Rejections counted) {
    Double difference = question.difference();
    if (difference == null) {
      return Double.NaN;
    }
    double shift = difference / Math.sqrt(own.varianceOfDifference(units));
    double df = own.degreesOfFreedom(units);
    return question.any()
        ? question.test().powerOfAny(own.comparedArms(), shift, df)
        : question.test().counting(counted).power(shift, df);
  }

  private double equivalencePower(Design own, double units) {
    Double margin = question.margin();
    if (margin == null) {
      return Double.NaN;
    }
    double se = Math.sqrt(own.varianceOfDifference(units));
    return new EquivalenceTest(question.test().alpha())
        .power(margin / se, question.trueDifference() / se, own.degreesOfFreedom(units));
  }

  private double detectable(double df, double se, Rejections counted) {
    DifferenceTest test = question.test().counting(counted);
    return se
        * (question.any()
            ? test.detectableShiftOfAny(question.power(), design.comparedArms(), df)
            : test.detectableShift(question.power(), df));
  }

  private AtUnits at(int units) {
    double se = Math.sqrt(design.varianceOfDifference(units));
    double df = design.degreesOfFreedom(units);
    double margin =
        se
            * new EquivalenceTest(question.test().alpha())
                .smallestMargin(question.power(), question.trueDifference() / se, df);
    return new AtUnits(
        units,
        df,
        se,
        power(design, units, question.test().rejections()),
        power(design, units, Rejections.BOTH_TAILS),
        power(design, units, Rejections.NEAR_TAIL),
        detectable(df, se, question.test().rejections()),
        detectable(df, se, Rejections.NEAR_TAIL),
        equivalencePower(design, units),
        margin,
        question.smallestP(units),
        question.smallestPBalanced(units));
  }

  private @Nullable MoreSampling more(@Nullable Needed needed) {
    if (!design.variance().hasParts()) {
      return null;
    }
    Integer planned = question.units();
    int units = planned == null ? 10 : planned;
    if (planned == null && needed != null && needed.whole() > 0) {
      units = needed.whole();
    }
    Sampling sampling = design.sampling();
    Design cores = design.with(design.variance(), sampling.withCores(10 * sampling.cores()));
    Design dates = design.with(design.variance(), sampling.withDates(10 * sampling.dates()));
    Design floor = design.with(PlotVariance.whole(design.variance().plot()), Sampling.ONCE);
    Rejections counted = question.test().rejections();
    int moreUnits = units + (units + 3) / 4;
    return new MoreSampling(
        units,
        design.varianceOfDifference(1),
        floor.varianceOfDifference(1),
        power(design, units, counted),
        power(cores, units, counted),
        power(dates, units, counted),
        power(floor, units, counted),
        moreUnits,
        power(design, moreUnits, counted));
  }
}
