package leafturn.advice.season;

import java.util.Arrays;
import java.util.concurrent.atomic.LongAdder;
import leafturn.advice.call.Spread;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.Programme;

/** Runs programmes on the same weather from the same lawn. Safe for several threads. */
final class ProgrammeComparison {
  /** Possible seasons in which the feed for equal growth is searched. */
  static final int FEED_SEASONS = 10;

  private final PlanRequest request;
  private final PlanWeather weather;
  private final LawnState present;
  private final YearlyWork work;
  private final double[] presentGrowth;
  private final LongAdder livedDays = new LongAdder();

  ProgrammeComparison(PlanRequest request, PlanWeather weather, LawnState present) {
    this.request = request;
    this.weather = weather;
    this.present = present;
    this.work = new YearlyWork(request.lawn().ground(), request.rules());
    this.presentGrowth = runs(request.lawn().programme()).leafGrowth(FEED_SEASONS);
  }

  private ProgrammeRuns runs(Programme programme) {
    Lawn own = request.lawn();
    Lawn lawn = new Lawn(own.site(), own.ground(), programme, own.spinUpYears(), own.parameters());
    return new ProgrammeRuns(lawn, weather, present, request.rules(), livedDays);
  }

  /** Days that lawns have lived so far, all together. */
  long livedDays() {
    return livedDays.sum();
  }

  ProgrammeOutcome outcome(Programme programme) {
    ProgrammeRuns runs = runs(programme);
    double[][] years = runs.years(weather.years().size());
    double[][] thatch = runs.thatchMm(1, 3, PlanWeather.LONG_YEARS);
    double[] mowings = years[Yearly.MOWINGS.ordinal()];
    return new ProgrammeOutcome(
        Spread.of(mowings),
        spread(years, Yearly.LEAF_GROWTH_G),
        spread(years, Yearly.IRRIGATION_MM),
        work.of(mowings, years[Yearly.COLLECTED_G.ordinal()]),
        new ProgrammeOutcome.Kept(
            spread(years, Yearly.KEPT_N),
            spread(years, Yearly.KEPT_P),
            spread(years, Yearly.KEPT_K)),
        feed(programme, years[Yearly.LEAF_GROWTH_G.ordinal()]),
        spread(years, Yearly.LEACHED_N),
        new ProgrammeOutcome.Thatch(
            Spread.of(thatch[0]), Spread.of(thatch[1]), Spread.of(thatch[2])),
        new ProgrammeOutcome.Risks(
            spread(years, Yearly.CLUMP_MOWINGS),
            Spread.of(shares(years[Yearly.THIRD_RULE_BROKEN.ordinal()], mowings))));
  }

  private ProgrammeOutcome.Feed feed(Programme programme, double[] growth) {
    double given = YearlyNitrogen.gPerM2(programme.feedings());
    double[] first = Arrays.copyOf(growth, FEED_SEASONS);
    EqualGrowthFeed search =
        new EqualGrowthFeed(
            nGPerM2 -> runs(fed(programme, nGPerM2)).leafGrowth(FEED_SEASONS), presentGrowth);
    return new ProgrammeOutcome.Feed(given, search.from(given, first));
  }

  private Programme fed(Programme programme, double nGPerM2) {
    return YearlyNitrogen.set(
        programme,
        request.lawn().programme().feedings(),
        nGPerM2,
        request.lawn().site().latitudeDeg() < 0);
  }

  private static Spread spread(double[][] years, Yearly quantity) {
    return Spread.of(years[quantity.ordinal()]);
  }

  private static double[] shares(double[] broken, double[] mowings) {
    double[] shares = new double[broken.length];
    for (int season = 0; season < shares.length; season++) {
      shares[season] = mowings[season] == 0 ? 0 : broken[season] / mowings[season];
    }
    return shares;
  }
}
