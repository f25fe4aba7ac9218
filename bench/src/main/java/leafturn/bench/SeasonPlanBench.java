package leafturn.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import leafturn.advice.call.CallRules;
import leafturn.advice.season.PlanProgress;
import leafturn.advice.season.PlanRequest;
import leafturn.advice.season.SeasonPlan;
import leafturn.advice.season.SeasonPlanner;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.Keeper;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.LawnParameters;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.ProgrammeKeeper;
import leafturn.model.lawn.SiteClimate;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.CompilerControl;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A plan of 300 programmes over 100 possible seasons of a year, on one thread, against the daily
 * step of one lawn for as many days, in the same run. The plan's time holds all that it does:
 * weather, spin-up, settling, thatch over five years and the search of the feed for equal growth.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
public class SeasonPlanBench {
  private static final int SEASONS = 100;
  private static final int DAYS = 1461;

  /** Days lived by all lawns of a plan. */
  @AuxCounters(AuxCounters.Type.EVENTS)
  @State(Scope.Thread)
  public static class LawnDays {
    private long lived;

    /** Days of the last call. */
    public long lawnDays() {
      return lived;
    }
  }

  /** The lawn, its record and what is asked. */
  @State(Scope.Thread)
  public static class Asked {
    private final SiteClimate climate = new SiteClimate(BenchLawns.fourYears(), BenchLawns.SITE);
    private final Lawn lawn = BenchLawns.lawn(1);
    private final PlanRequest request =
        new PlanRequest(
            lawn,
            climate,
            List.of(),
            true,
            new PlanRequest.Draws(SEASONS, 1),
            CallRules.standard());
    private final DailyTerms terms = DailyTerms.asRecorded(climate, 0, DAYS, Double.NaN);
    private final LawnEquations equations = new LawnEquations(LawnParameters.of(lawn));
    private final Keeper keeper = new ProgrammeKeeper(lawn.programme(), equations);
    private long days;

    /** Makes the plan once, to see how many days it lives and that threads do not matter. */
    @Setup
    public void prepare() {
      SeasonPlan one = SeasonPlanner.plan(request, 1, PlanProgress.NONE);
      SeasonPlan two = SeasonPlanner.plan(request, 2, PlanProgress.NONE);
      if (one.programmes().size() < 300 || !one.equals(two)) {
        throw new IllegalStateException("a plan is too small, or depends on its threads");
      }
      days = one.basis().livedDays();
    }

    /** A fresh lawn: over 100,000 years old, its oldest carbon decays below the normal numbers. */
    LawnRun run() {
      return new LawnRun(equations, LawnModel.startState(lawn, equations), terms);
    }
  }

  /** The whole plan. */
  @Benchmark
  public SeasonPlan plan(Asked asked, LawnDays counter) {
    SeasonPlan plan = SeasonPlanner.plan(asked.request, 1, PlanProgress.NONE);
    counter.lived = plan.basis().livedDays();
    return plan;
  }

  /** As many days of one lawn. */
  @Benchmark
  public double dailyStep(Asked asked, LawnDays counter) {
    LawnRun run = asked.run();
    long lived = 0;
    while (lived < asked.days) {
      lived += fourYears(run, asked.keeper);
    }
    counter.lived = lived;
    return run.heightMm();
  }

  /** A method of its own, or the loop around it is compiled anew in mid run and slower by half. */
  @CompilerControl(CompilerControl.Mode.DONT_INLINE)
  int fourYears(LawnRun run, Keeper keeper) {
    run.live(0, DAYS, keeper, DayListener.NONE);
    return DAYS;
  }
}
