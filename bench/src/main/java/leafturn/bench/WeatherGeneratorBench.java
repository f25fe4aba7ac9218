package leafturn.bench;

import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import leafturn.model.RandomStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.generator.WeatherEve;
import leafturn.model.weather.generator.WeatherGenerator;
import leafturn.records.ExampleWeather;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Generated weather, in site-days per minute over two threads, each with streams of its own; and
 * the fit that comes before.
 */
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WeatherGeneratorBench {
  private static final int DAYS = 3652;

  private final WeatherSeries record = ExampleWeather.newYork();
  private final WeatherGenerator generator = WeatherGenerator.fitted(record);

  /** The stream that a thread draws from next. */
  @State(Scope.Thread)
  public static class Streams {
    private long next;
  }

  /** Ten years of a site at a time. */
  @Benchmark
  @Threads(2)
  @BenchmarkMode(Mode.Throughput)
  @OutputTimeUnit(TimeUnit.MINUTES)
  @OperationsPerInvocation(DAYS)
  public WeatherSeries siteDays(Streams streams) {
    RandomStream random = new RandomStream(1, streams.next++);
    return generator.generate(random, WeatherEve.unknown(), LocalDate.of(2016, 1, 1), DAYS);
  }

  /** Fits a generator to four years. */
  @Benchmark
  @BenchmarkMode(Mode.AverageTime)
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public WeatherGenerator fit() {
    return WeatherGenerator.fitted(record);
  }
}
