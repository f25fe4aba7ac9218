package leafturn.advice.call;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.generator.WeatherForecast;
import leafturn.model.weather.generator.WeatherGenerator;
import org.jspecify.annotations.Nullable;

/**
 * The possible seasons of a site after a day: stretches of its record from other years, and seasons
 * generated like the record that carry on from the last known day. Nothing of the days that really
 * followed enters, unless the record allows neither.
 *
 * @param seasons stretches of the record first, then generated ones
 * @param described what a person should know of them
 * @param ownYear true when the call's own year had to stand in
 * @param notes what was missing
 */
record WeatherToCome(
    List<SeasonWeather> seasons, PossibleSeasons described, boolean ownYear, List<String> notes) {
  /** Days after the day of the call over which choices are compared. */
  static final int DAYS = 42;

  /** Days over which the last clippings are followed until they have broken down. */
  static final int LONGEST_DAYS = 240;

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  /**
   * What possible seasons carry on from.
   *
   * @param climate the record of the site
   * @param on the day of the call
   * @param first the first day that is not known
   * @param soilC soil temperature on its eve, °C
   */
  record Start(SiteClimate climate, LocalDate on, LocalDate first, double soilC) {}

  /**
   * @throws NoCallException when neither a year of the record has the days needed nor anything can
   *     be generated from it
   */
  static WeatherToCome after(Start start, SeasonsAsked asked) {
    SiteClimate climate = start.climate();
    ResampledSeasons record = new ResampledSeasons(climate, start.on(), start.first());
    Optional<WeatherGenerator> generator = generator(climate, start.on());
    WeatherForecast forecast = asked.forecast();
    if (forecast != null) {
      checkForecast(forecast, start, generator.isPresent());
    }
    int most = generator.isPresent() ? asked.count() / 2 : asked.count();
    List<int[]> stretches = record.stretches(most);
    if (stretches.isEmpty() && generator.isEmpty()) {
      return ownYear(start, record.ownYear());
    }
    List<SeasonWeather> seasons = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    int generated = generator.isPresent() ? asked.count() - stretches.size() : 0;
    if (generator.isPresent()) {
      notes.addAll(generator.get().notes());
      GeneratedSeasons following = new GeneratedSeasons(start, generator.get(), asked);
      for (int season = 0; season < stretches.size(); season++) {
        seasons.add(
            forecast == null
                ? recorded(start, stretches.get(season))
                : following.spliced(generated + season, stretches.get(season)));
      }
      IntStream.range(0, generated).mapToObj(following::season).forEach(seasons::add);
    } else {
      stretches.forEach(days -> seasons.add(recorded(start, days)));
      notes.add(
          "The record is too short to generate weather like it: the possible seasons are its own years.");
    }
    String madeFrom = madeFrom(record, stretches.size(), generated, climate) + followed(forecast);
    return new WeatherToCome(
        List.copyOf(seasons),
        new PossibleSeasons(
            seasons.size(), DAYS, madeFrom, forecast == null ? null : forecast.last()),
        false,
        List.copyOf(notes));
  }

  /** A generator fitted to what was measured and is not the call's own future. */
  private static Optional<WeatherGenerator> generator(SiteClimate climate, LocalDate on) {
    WeatherSeries weather = climate.weather();
    try {
      return Optional.of(
          WeatherGenerator.fitted(
              weather,
              day -> day < climate.measuredDays() && !ResampledSeasons.ownFuture(weather, on, day),
              WeatherGenerator.Amounts.MIXED_EXPONENTIAL));
    } catch (IllegalArgumentException tooShort) {
      return Optional.empty();
    }
  }

  private static SeasonWeather recorded(Start start, int[] days) {
    return SeasonWeather.of(start.climate(), start.first(), days, start.soilC());
  }

  private static void checkForecast(
      WeatherForecast forecast, Start start, boolean weatherCanBeGenerated) {
    Optional<String> fault = forecast.faultFrom(start.first(), start.on());
    if (fault.isPresent()) {
      throw new NoCallException(fault.get());
    }
    if (!weatherCanBeGenerated) {
      throw new NoCallException(
          "a forecast can be followed only where weather can be generated from the record, which needs 15 days or more of each month besides those that follow the day itself");
    }
  }

  private static String followed(@Nullable WeatherForecast forecast) {
    return forecast == null
        ? ""
        : ", all following a forecast until "
            + DATE.format(forecast.last())
            + " and trusting it less by the day";
  }

  private static WeatherToCome ownYear(Start start, int @Nullable [] days) {
    WeatherSeries weather = start.climate().weather();
    if (days == null) {
      throw new NoCallException(
          "advice for %s needs %d days of weather after %s from at least one year, but the record runs from %s to %s"
              .formatted(
                  start.on(),
                  DAYS,
                  DATE.format(start.on()),
                  weather.firstDay(),
                  start.climate().dayAt(start.climate().measuredDays() - 1)));
    }
    String madeFrom = "the days after " + DATE.format(start.on()) + " in " + start.on().getYear();
    return new WeatherToCome(
        List.of(SeasonWeather.of(start.climate(), start.first(), days, start.soilC())),
        new PossibleSeasons(1, DAYS, madeFrom),
        true,
        List.of());
  }

  private static String madeFrom(
      ResampledSeasons record, int resampled, int generated, SiteClimate climate) {
    if (generated == 0) {
      return record.inWords(resampled);
    }
    int from = climate.weather().firstDay().getYear();
    int to = climate.dayAt(climate.measuredDays() - 1).getYear();
    String years = from == to ? "of " + from : "of " + from + " to " + to;
    String like = "weather generated by the day like the record " + years;
    return resampled == 0
        ? like
        : record.inWords(resampled) + " (" + resampled + " of them) and " + like;
  }
}
