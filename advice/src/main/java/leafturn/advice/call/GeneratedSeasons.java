package leafturn.advice.call;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.IntStream;
import leafturn.model.RandomStream;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.model.weather.generator.WeatherEve;
import leafturn.model.weather.generator.WeatherForecast;
import leafturn.model.weather.generator.WeatherGenerator;
import org.jspecify.annotations.Nullable;

/** Seasons generated like the record, from the last known day or along a forecast. */
final class GeneratedSeasons {
  private final WeatherToCome.Start start;
  private final WeatherGenerator generator;
  private final SeasonsAsked asked;
  private final WeatherEve eve;

  GeneratedSeasons(WeatherToCome.Start start, WeatherGenerator generator, SeasonsAsked asked) {
    this.start = start;
    this.generator = generator;
    this.asked = asked;
    SiteClimate climate = start.climate();
    int before = climate.weather().indexOf(start.first()) - 1;
    this.eve =
        before < climate.measuredDays()
            ? generator.eve(climate.weather(), before)
            : WeatherEve.unknown();
  }

  /** The season of a number. */
  SeasonWeather season(int number) {
    return of(generated(number, WeatherToCome.LONGEST_DAYS, asked.forecast()));
  }

  /**
   * The season that follows the forecast and goes on with a stretch of the record.
   *
   * @param stretch days of the record, the first one standing in for the first day to come
   */
  SeasonWeather spliced(int number, int[] stretch) {
    WeatherForecast forecast = asked.forecast();
    int told =
        forecast == null
            ? 0
            : (int) (forecast.last().toEpochDay() - start.first().toEpochDay()) + 1;
    WeatherSeries following = generated(number, Math.max(1, told), forecast);
    WeatherSeries record = start.climate().weather();
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      if (following.has(quantity) || record.has(quantity)) {
        double[] column = new double[stretch.length];
        for (int day = 0; day < column.length; day++) {
          column[day] =
              day < told ? following.value(quantity, day) : record.value(quantity, stretch[day]);
        }
        values.put(quantity, column);
      }
    }
    return of(new WeatherSeries(start.first(), values));
  }

  private WeatherSeries generated(int number, int days, @Nullable WeatherForecast forecast) {
    return generator.generate(
        new RandomStream(asked.seed(), number), eve, start.first(), days, forecast);
  }

  private SeasonWeather of(WeatherSeries days) {
    SiteClimate climate = new SiteClimate(days, start.climate().site());
    int[] inOrder = IntStream.range(0, days.days()).toArray();
    return SeasonWeather.of(climate, start.first(), inOrder, start.soilC());
  }
}
