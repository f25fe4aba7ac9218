package leafturn.bench;

import java.util.concurrent.TimeUnit;
import leafturn.model.Flows;
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
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of one lawn-day, weather terms and constants hoisted, balances closed, against 22 chained
 * exponentials on the same machine in the same run; with {@code -prof gc} also what a day
 * allocates.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
public class DailyStepBench {
  private static final int DAYS = 1461;
  private static final int CHAINED = 22;

  private final double[] seeds = new double[DAYS];
  private final DailyTerms terms =
      DailyTerms.asRecorded(
          new SiteClimate(BenchLawns.fourYears(), BenchLawns.SITE), 0, DAYS, Double.NaN);
  private final Lawn lawn = BenchLawns.lawn(1);
  private final LawnEquations equations = new LawnEquations(LawnParameters.of(lawn));
  private final Keeper keeper = new ProgrammeKeeper(lawn.programme(), equations);
  private final LawnRun run = new LawnRun(equations, LawnModel.startState(lawn, equations), terms);

  private final LawnEquations own = new LawnEquations(LawnParameters.withCutQuality(lawn));
  private final Keeper ownKeeper = new ProgrammeKeeper(lawn.programme(), own);
  private final LawnRun ownRun = new LawnRun(own, LawnModel.startState(lawn, own), terms);

  /** Fills the seeds and checks that both rivals answer rightly. */
  @Setup
  public void prepare() {
    for (int day = 0; day < DAYS; day++) {
      seeds[day] = day / (double) DAYS;
    }
    run.live(0, DAYS, keeper, DayListener.NONE);
    double mowings = run.total(Flows.MOWINGS);
    if (!(mowings > 60 && mowings < 140) || chain(0) <= 0 || chain(0) >= 1) {
      throw new IllegalStateException("a rival gives a wrong answer");
    }
  }

  /** One lawn-day. */
  @Benchmark
  @OperationsPerInvocation(DAYS)
  public double lawnDay() {
    run.live(0, DAYS, keeper, DayListener.NONE);
    return run.heightMm();
  }

  /** One lawn-day of a lawn whose cuts each have their own quality, as advice runs it. */
  @Benchmark
  @OperationsPerInvocation(DAYS)
  public double lawnDayEachCutItsOwn() {
    ownRun.live(0, DAYS, ownKeeper, DayListener.NONE);
    return ownRun.heightMm();
  }

  /** 22 exponentials, each of the last one's result. */
  @Benchmark
  @OperationsPerInvocation(DAYS)
  public double chainedExponentials() {
    double sum = 0;
    for (double seed : seeds) {
      sum += chain(seed);
    }
    return sum;
  }

  /** Each result is the next argument; the sign keeps it between 0 and 1. */
  private static double chain(double seed) {
    double value = seed;
    for (int i = 0; i < CHAINED; i++) {
      value = Math.exp(-value);
    }
    return value;
  }
}
