package leafturn.bench;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.TimeUnit;
import leafturn.model.weather.Site;
import leafturn.model.weather.hourly.DayWeather;
import leafturn.model.weather.hourly.GrassDay;
import leafturn.model.weather.hourly.GrassHours;
import leafturn.model.weather.hourly.GrassLimits;
import leafturn.model.weather.hourly.SeenToday;
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
 * The hours of today and tomorrow over 200 possible weathers, a third of them with rain at six
 * possible hours, each with three amounts of water that leaves may hold.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
public class HoursBench {
  private static final int WEATHERS = 200;
  private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
  private static final Site SITE = new Site(40.8, 40, 10, -74.0, ZoneId.of("America/New_York"));

  private final DayWeather[] weathers = new DayWeather[WEATHERS];

  /** Makes the weathers and checks that noon is drier than the end of the night. */
  @Setup
  public void prepare() {
    for (int each = 0; each < WEATHERS; each++) {
      double rainMm = each % 3 == 0 ? each * 0.05 : 0;
      weathers[each] =
          new DayWeather(
              new DayWeather.Air(8 + each % 5, 18 + each % 7, 1.1, 20, 3),
              DayWeather.Water.rain(rainMm));
    }
    GrassDay day = hours();
    if (day.dryFraction(13) <= day.dryFraction(4)) {
      throw new IllegalStateException("noon is not drier than the end of the night");
    }
  }

  /** Today and tomorrow of one lawn. */
  @Benchmark
  public GrassDay hours() {
    GrassHours hours = new GrassHours(SITE, DAY, GrassLimits.standard(), SeenToday.NOTHING);
    for (DayWeather weather : weathers) {
      hours.add(weather, weather, weather);
    }
    return hours.tomorrow();
  }
}
