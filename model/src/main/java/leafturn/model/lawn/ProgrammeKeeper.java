package leafturn.model.lawn;

import java.util.List;
import leafturn.model.lawn.Programme.Feeding;

/** Keeps a lawn by its programme: feeds on set days, mows by rule within the mowing season. */
public final class ProgrammeKeeper implements Keeper {
  private static final double ONE_THIRD_RULE = 1.5;

  private final Programme.Mowing mowing;
  private final List<Feeding> feedings;
  private final int[] feedingDays;
  private final double leastGrowthMm;
  private int year = Integer.MIN_VALUE;
  private int seasonFrom;
  private int seasonTo;

  /**
   * @param programme what is done year after year
   * @param equations of the lawn, for the least growth worth a mowing
   */
  public ProgrammeKeeper(Programme programme, LawnEquations equations) {
    this.mowing = programme.mowing();
    this.feedings = programme.feedings();
    this.feedingDays = new int[feedings.size()];
    this.leastGrowthMm = equations.leastGrowthToMowMm;
  }

  @Override
  public void morning(LawnRun run) {
    int today = run.terms().dayOfYear(run.day());
    turnTo(run.terms().year(run.day()));
    for (int entry = 0; entry < feedingDays.length; entry++) {
      if (feedingDays[entry] == today) {
        Feeding feeding = feedings.get(entry);
        run.feed(
            feeding.fastNGPerM2(), feeding.slowNGPerM2(), feeding.pGPerM2(), feeding.kGPerM2());
      }
    }
  }

  @Override
  public void evening(LawnRun run) {
    if (due(run)) {
      run.cut(mowing.heightMm(), mowing.returnedShare());
    }
  }

  /** True when the programme asks for a cut this evening. */
  public boolean due(LawnRun run) {
    turnTo(run.terms().year(run.day()));
    if (!inSeason(run.terms().dayOfYear(run.day()))) {
      return false;
    }
    if (mowing.byOneThirdRule()) {
      return run.heightMm() >= ONE_THIRD_RULE * mowing.heightMm();
    }
    return run.daysSinceMowing() >= mowing.everyDays()
        && run.heightMm() - mowing.heightMm() >= leastGrowthMm;
  }

  private boolean inSeason(int today) {
    return seasonFrom <= seasonTo
        ? today >= seasonFrom && today <= seasonTo
        : today >= seasonFrom || today <= seasonTo;
  }

  private void turnTo(int nextYear) {
    if (nextYear == year) {
      return;
    }
    year = nextYear;
    seasonFrom = mowing.from().in(year);
    seasonTo = mowing.to().in(year);
    for (int entry = 0; entry < feedingDays.length; entry++) {
      feedingDays[entry] = feedings.get(entry).on().in(year);
    }
  }
}
