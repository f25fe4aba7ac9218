package leafturn.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.MowingCall;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.LawnParameters;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.LogKeeper;
import leafturn.model.lawn.ProgrammeKeeper;
import leafturn.model.lawn.SiteClimate;
import leafturn.records.ExampleWeather;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A lawn's state from its log: three years of entries replayed after four years of spin-up, and the
 * whole call for the day after.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
public class ReplayBench {
  private static final int SPIN_UP_DAYS = 1461;
  private static final int LOG_DAYS = 1096;
  private static final int EVERY_DAYS = 8;

  private final Lawn lawn = BenchLawns.lawn(1);
  private final SiteClimate climate = new SiteClimate(ExampleWeather.newYork(), lawn.site());
  private final List<LogEntry> log = new ArrayList<>();
  private LocalDate today = climate.dayAt(LOG_DAYS);

  /** Writes the log and checks that it is replayed. */
  @Setup
  public void write() {
    double heightMm = lawn.programme().mowing().heightMm();
    for (int day = 10; day < LOG_DAYS; day += EVERY_DAYS) {
      log.add(new LogEntry.Mown(climate.dayAt(day), Double.NaN, heightMm, day % 2));
      if (day % (EVERY_DAYS * EVERY_DAYS) == 10) {
        log.add(new LogEntry.Fed(climate.dayAt(day), 3, 1, 0.2, 1));
      }
    }
    today = climate.dayAt(LOG_DAYS);
    if (call().today().lastMown() == null) {
      throw new IllegalStateException("the log was not replayed");
    }
  }

  /** Spin-up and replay. */
  @Benchmark
  public double replay() {
    int days = SPIN_UP_DAYS + LOG_DAYS;
    LocalDate[] dates = new LocalDate[days];
    int[] sources = new int[days];
    for (int day = 0; day < days; day++) {
      sources[day] = day < SPIN_UP_DAYS ? day : day - SPIN_UP_DAYS;
      dates[day] = climate.dayAt(sources[day]);
    }
    LawnEquations equations = new LawnEquations(LawnParameters.of(lawn));
    DailyTerms terms = new DailyTerms(climate, dates, sources, Double.NaN);
    LawnRun run = new LawnRun(equations, LawnModel.startState(lawn, equations), terms);
    run.live(0, SPIN_UP_DAYS, new ProgrammeKeeper(lawn.programme(), equations), DayListener.NONE);
    run.live(SPIN_UP_DAYS, days, new LogKeeper(lawn, equations, log), DayListener.NONE);
    return run.heightMm();
  }

  /** The call: the replay, and every choice through every possible season. */
  @Benchmark
  public Call call() {
    return MowingCall.of(lawn, climate, log, today, CallRules.standard());
  }
}
