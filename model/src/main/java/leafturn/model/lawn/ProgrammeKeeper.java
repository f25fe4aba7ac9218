package leafturn.model.lawn;

import java.util.List;
import leafturn.model.Stores;
import leafturn.model.lawn.Programme.Feeding;

/** Keeps a lawn by its programme: feeds on set days, mows by rule within the mowing season. */
public final class ProgrammeKeeper implements Keeper {
  /** Share of the height that one cut takes under the one-third rule. */
  public static final double ONE_THIRD = 1.0 / 3;

  private final Programme.Mowing mowing;
  private final List<Feeding> feedings;
  private final int[] feedingDays;
  private final double leastGrowthMm;
  private final double dueOverCutHeight;
  private final ReturnRule returnRule;
  private final boolean heightsVary;
  private final boolean setsDeck;
  private double[] heightsMm = {};
  private int year = Integer.MIN_VALUE;
  private int seasonFrom;
  private int seasonTo;

  /**
   * @param programme what is done year after year
   * @param equations of the lawn, for the least growth worth a mowing
   */
  public ProgrammeKeeper(Programme programme, LawnEquations equations) {
    this(programme, equations, ONE_THIRD);
  }

  /**
   * @param thirdFraction share of the height, 0 to below 1, at which a programme of the one-third
   *     rule mows
   */
  public ProgrammeKeeper(Programme programme, LawnEquations equations, double thirdFraction) {
    this(
        programme,
        equations,
        (run, toHeightMm) -> programme.mowing().returnedShare(),
        false,
        thirdFraction);
  }

  /**
   * @param returnRule decides what becomes of the clippings of each mowing
   * @param takesOver true when the lawn was cut at another height before, so that the deck has to
   *     be set to the programme's
   * @param thirdFraction share of the height, 0 to below 1, at which a programme of the one-third
   *     rule mows
   * @throws IllegalArgumentException when that share is none
   */
  public ProgrammeKeeper(
      Programme programme,
      LawnEquations equations,
      ReturnRule returnRule,
      boolean takesOver,
      double thirdFraction) {
    if (!(thirdFraction >= 0 && thirdFraction < 1)) {
      throw new IllegalArgumentException(
          "a cut takes a share of the height from 0 to below 1, not " + thirdFraction);
    }
    this.dueOverCutHeight = 1 / (1 - thirdFraction);
    this.returnRule = returnRule;
    this.heightsVary = programme.mowing().heights().vary();
    this.setsDeck = heightsVary || takesOver;
    this.mowing = programme.mowing();
    this.feedings = programme.feedings();
    this.feedingDays = new int[feedings.size()];
    this.leastGrowthMm = equations.leastGrowthToMowMm;
  }

  @Override
  public void morning(LawnRun run) {
    turnHeight(run);
    int today = run.terms().dayOfYear(run.day());
    for (int entry = 0; entry < feedingDays.length; entry++) {
      if (feedingDays[entry] == today) {
        Feeding feeding = feedings.get(entry);
        run.feed(
            feeding.fastNGPerM2(), feeding.slowNGPerM2(), feeding.pGPerM2(), feeding.kGPerM2());
      }
    }
  }

  /**
   * Moves the lawn's cut height to that of the season, where the programme has several, or to the
   * programme's where it takes over. The grass keeps its height: where it stands lower than the new
   * cut height, that follows it up.
   */
  public void turnHeight(LawnRun run) {
    turnTo(run.terms().year(run.day()));
    if (!setsDeck) {
      return;
    }
    turnHeight(run, cutHeightMm(run));
  }

  /** Moves the lawn's cut height to another one, mm, as far as the grass stands so high. */
  public static void turnHeight(LawnRun run, double wantedMm) {
    double nowMm = run.store(Stores.CUT_HEIGHT_MM);
    if (wantedMm < nowMm) {
      run.setCutHeight(wantedMm);
    } else if (wantedMm > nowMm) {
      run.setCutHeight(Math.min(wantedMm, run.heightMm()));
    }
  }

  @Override
  public void evening(LawnRun run) {
    if (due(run)) {
      double toHeightMm = cutHeightMm(run);
      run.cut(toHeightMm, returnRule.returnedShare(run, toHeightMm));
    }
  }

  /** True when the programme asks for a cut this evening. */
  public boolean due(LawnRun run) {
    turnTo(run.terms().year(run.day()));
    if (!inSeason(run.terms().dayOfYear(run.day()))) {
      return false;
    }
    double toHeightMm = cutHeightMm(run);
    if (mowing.byOneThirdRule()) {
      return run.heightMm() >= dueOverCutHeight * toHeightMm;
    }
    return run.daysSinceMowing() >= mowing.everyDays()
        && run.heightMm() - toHeightMm >= leastGrowthMm;
  }

  private double cutHeightMm(LawnRun run) {
    return heightsVary ? heightsMm[run.terms().dayOfYear(run.day())] : mowing.heightMm();
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
    if (heightsVary) {
      heightsMm = mowing.heights().daysOf(year);
    }
    for (int entry = 0; entry < feedingDays.length; entry++) {
      feedingDays[entry] = feedings.get(entry).on().in(year);
    }
  }
}
