package leafturn.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leafturn.advice.call.Asked;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.MowingCall;
import leafturn.advice.call.SharedSeasons;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.quantity.Units;
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
 * One piece of advice over 200 possible seasons: for the first lawn of a site, which makes its
 * seasons, and for a further one, which finds them made.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 6, time = 2)
public class CallBench {
  private static final int SEASONS = 200;
  private static final LocalDate ON = LocalDate.of(2015, 5, 21);
  private static final double TALL_MM = 127;

  private final Lawn lawn = BenchLawns.lawn(1);
  private final SiteClimate climate = new SiteClimate(ExampleWeather.newYork(), lawn.site());
  private final SharedSeasons shared = SharedSeasons.keeping(1);
  private final Asked asked = new Asked(ON, CallRules.standard(), Units.METRIC);
  private final List<LogEntry> log = new ArrayList<>();

  /**
   * Logs three years of mowings, the last one twelve days ago, and grass so tall that collecting,
   * several cuts and a second pass are all compared.
   */
  @Setup
  public void write() {
    double heightMm = lawn.programme().mowing().heightMm();
    for (int ago = 12; ago < 1100; ago += 9) {
      log.add(new LogEntry.Mown(ON.minusDays(ago), Double.NaN, heightMm, ago % 2));
    }
    log.add(new LogEntry.Measured(ON, TALL_MM));
    Call call = furtherLawn();
    if (call.possibleSeasons().count() != SEASONS || call.options().size() < 5) {
      throw new IllegalStateException(
          "the call has %d options over %d seasons"
              .formatted(call.options().size(), call.possibleSeasons().count()));
    }
  }

  /** Advice for the first lawn of a site. */
  @Benchmark
  public Call firstLawn() {
    return MowingCall.of(lawn, climate, log, asked);
  }

  /** Advice for a lawn of a site whose possible seasons are made. */
  @Benchmark
  public Call furtherLawn() {
    return MowingCall.of(lawn, climate, log, asked, shared);
  }
}
