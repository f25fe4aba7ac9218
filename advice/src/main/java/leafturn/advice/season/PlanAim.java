package leafturn.advice.season;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import leafturn.advice.call.Spread;

/**
 * What a person may want of a programme. Each is measured so that less is better, by the median of
 * the possible seasons; differences below its step are not worth telling.
 */
public enum PlanAim {
  /** Hours, or mowings where the hours are not known. */
  WORK(0.5),
  /** Litres carried away, per m2. */
  CARRYING(0.5),
  /** N needed for the growth of now, g/m2. */
  FEED(0.5),
  /** N kept in returned clippings, g/m2, as what is missing to none. */
  KEEPING(0.5),
  /** Nitrate N lost, g/m2. */
  NITRATE(0.1),
  /** Thatch after five years, mm. */
  THATCH(0.2),
  /** Mowings with clumps likely. */
  CLUMPS(0.5),
  /** Share of the mowings that break the third rule. */
  THIRD_RULE(0.02),
  /** Growth missing to that of now, as a share of it. */
  GROWTH(0.02);

  private final double step;

  PlanAim(double step) {
    this.step = step;
  }

  /** The name in files, for instance {@code third-rule}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The aim of a name, if there is one. */
  public static Optional<PlanAim> named(String id) {
    return Arrays.stream(values()).filter(aim -> aim.id().equals(id)).findFirst();
  }

  /**
   * How far a programme is from this aim; less is better.
   *
   * @param present outcome of the programme of now
   */
  public double of(ProgrammeOutcome outcome, ProgrammeOutcome present) {
    return switch (this) {
      case WORK -> work(outcome, present);
      case CARRYING -> outcome.work().collectedLitresPerM2().middle();
      case FEED -> feed(outcome);
      case KEEPING -> -outcome.kept().nGPerM2().middle();
      case NITRATE -> outcome.leachedNGPerM2().middle();
      case THATCH -> outcome.thatch().after5YearsMm().middle();
      case CLUMPS -> outcome.risks().clumpMowings().middle();
      case THIRD_RULE -> outcome.risks().thirdRuleBrokenFraction().middle();
      case GROWTH ->
          Math.max(0, 1 - outcome.growthGPerM2().middle() / present.growthGPerM2().middle());
    };
  }

  /** In mowings of now, so that a step is half a mowing whatever the lawn's size. */
  private static double work(ProgrammeOutcome outcome, ProgrammeOutcome present) {
    Spread hours = outcome.work().hours();
    Spread presentHours = present.work().hours();
    return hours == null || presentHours == null || presentHours.middle() == 0
        ? outcome.mowings().middle()
        : hours.middle() / presentHours.middle() * present.mowings().middle();
  }

  private static double feed(ProgrammeOutcome outcome) {
    Spread needed = outcome.feed().equalGrowthNGPerM2();
    return needed == null ? EqualGrowthFeed.MOST_G_PER_M2 : needed.middle();
  }

  /**
   * Compares two programmes by this aim: below 0 where the first is better by a difference that
   * counts, above 0 where it is worse.
   */
  public int compare(ProgrammeOutcome one, ProgrammeOutcome other, ProgrammeOutcome present) {
    double difference = of(one, present) - of(other, present);
    return Math.abs(difference) < step ? 0 : (int) Math.signum(difference);
  }

  /** The value in steps, not rounded. */
  double inSteps(ProgrammeOutcome outcome, ProgrammeOutcome present) {
    return of(outcome, present) / step;
  }

  /** The value counted in steps, so that a programme is better only by a difference that counts. */
  static double whole(double inSteps) {
    return Math.round(inSteps);
  }
}
