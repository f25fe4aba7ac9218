package leafturn.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.SeasonAccount;
import leafturn.model.lawn.SiteClimate;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of many lawns of one site over four years with one and two threads, in a heap of 1 GB: does
 * it grow in proportion, and is the answer the same.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 5)
@Measurement(iterations = 9)
public class LawnYearsBench {
  private static final int YEARS = 4;
  private static final int DIFFERENT = 50;

  @Param({"1000", "10000", "100000"})
  private int lawnYears;

  @Param({"1", "2"})
  private int threads;

  private final SiteClimate climate = new SiteClimate(BenchLawns.fourYears(), BenchLawns.SITE);
  private final DailyTerms terms =
      DailyTerms.asRecorded(climate, 0, climate.weather().days(), Double.NaN);
  private final List<Lawn> lawns = new ArrayList<>();

  /** Makes the lawns and checks that one and two threads agree. */
  @Setup
  public void prepare() {
    for (int number = 0; number < lawnYears / YEARS; number++) {
      lawns.add(BenchLawns.lawn(number % DIFFERENT / (DIFFERENT - 1.0)));
    }
    List<Lawn> some = lawns.subList(0, DIFFERENT);
    List<SeasonAccount> one = LawnModel.runAll(some, terms, 0, 1);
    List<SeasonAccount> two = LawnModel.runAll(some, terms, 0, 2);
    for (int number = 0; number < DIFFERENT; number++) {
      SeasonAccount first = one.get(number);
      SeasonAccount second = two.get(number);
      if (!first.years().equals(second.years())
          || !Arrays.equals(first.end().stores(), second.end().stores())) {
        throw new IllegalStateException("the number of threads changes the result");
      }
    }
  }

  /** All lawns. */
  @Benchmark
  public List<SeasonAccount> lawns() {
    return LawnModel.runAll(lawns, terms, 0, threads);
  }
}
