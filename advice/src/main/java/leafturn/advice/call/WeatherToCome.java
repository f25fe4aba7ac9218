package leafturn.advice.call;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;

/**
 * The possible seasons of a call: the days that follow its date in every other year of the record,
 * as far as they were measured. The days that followed the day itself are never used as a forecast,
 * unless the record holds no other year.
 *
 * @param seasons one per year used
 * @param years the years used, in order
 * @param ownYear true when the call's own year had to stand in
 */
record WeatherToCome(List<PossibleSeason> seasons, List<Integer> years, boolean ownYear) {
  /** Days after the day of the call over which choices are compared. */
  static final int DAYS = 42;

  /** Days over which the last clippings are followed until they have broken down. */
  static final int LONGEST_DAYS = 240;

  private static final int OWN_FUTURE_DAYS = 366;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  /**
   * @param first the first day that is not known
   * @param soilC soil temperature on its eve, °C
   * @throws NoCallException when no year of the record has the days needed
   */
  static WeatherToCome after(SiteClimate climate, LocalDate on, LocalDate first, double soilC) {
    WeatherSeries weather = climate.weather();
    LocalDate last = climate.dayAt(climate.measuredDays() - 1);
    List<Integer> years = new ArrayList<>();
    for (int year = weather.firstDay().getYear(); year <= last.getYear(); year++) {
      if (year != on.getYear() && reaches(climate, moved(first, year - on.getYear()))) {
        years.add(year);
      }
    }
    boolean ownYear = years.isEmpty() && reaches(climate, first);
    if (ownYear) {
      years.add(on.getYear());
    }
    if (years.isEmpty()) {
      throw new NoCallException(
          "the call for %s needs %d days of weather after %s from at least one year, but the record runs from %s to %s"
              .formatted(on, DAYS, DATE.format(on), weather.firstDay(), last));
    }
    List<PossibleSeason> seasons =
        years.stream().map(year -> season(climate, on, first, year - on.getYear(), soilC)).toList();
    return new WeatherToCome(seasons, years, ownYear);
  }

  private static LocalDate moved(LocalDate day, int years) {
    return day.plusYears(years);
  }

  private static boolean reaches(SiteClimate climate, LocalDate start) {
    WeatherSeries weather = climate.weather();
    int first = weather.indexOf(start);
    int last = first + DAYS;
    return first >= 0
        && last < climate.measuredDays()
        && start.getYear() >= weather.firstDay().getYear();
  }

  private static PossibleSeason season(
      SiteClimate climate, LocalDate on, LocalDate first, int years, double soilC) {
    int[] sources = new int[LONGEST_DAYS];
    LocalDate[] dates = new LocalDate[LONGEST_DAYS];
    int start = climate.weather().indexOf(moved(first, years));
    int known = 0;
    while (known < LONGEST_DAYS) {
      int source = source(climate, start + known, on, years == 0);
      if (source < 0) {
        break;
      }
      sources[known] = source;
      dates[known] = first.plusDays(known);
      known++;
    }
    return new PossibleSeason(
        climate,
        new DailyTerms(climate, Arrays.copyOf(dates, known), Arrays.copyOf(sources, known), soilC),
        Arrays.copyOf(sources, known));
  }

  /**
   * The measured day to use: the one asked for, or the same date in the latest year before it that
   * is on record and is not the call's own future; -1 when there is none.
   */
  private static int source(SiteClimate climate, int wanted, LocalDate on, boolean ownYear) {
    WeatherSeries weather = climate.weather();
    int today = weather.indexOf(on);
    int source = wanted;
    for (int back = 1; source >= 0; back++) {
      boolean ownFuture = source > today && source < today + OWN_FUTURE_DAYS;
      if (source < climate.measuredDays() && (!ownFuture || ownYear)) {
        return source;
      }
      source = weather.indexOf(weather.dayAt(wanted).minusYears(back));
    }
    return -1;
  }

  /** What a person should know of them. */
  PossibleSeasons described(LocalDate on) {
    return new PossibleSeasons(
        seasons.size(), DAYS, "the days after " + DATE.format(on) + " in " + yearsInWords());
  }

  private String yearsInWords() {
    int first = years.get(0);
    int last = years.get(years.size() - 1);
    if (years.size() > 2 && last - first == years.size() - 1) {
      return "each year from " + first + " to " + last;
    }
    if (years.size() > 5) {
      return "each year from " + first + " to " + last + without(first, last);
    }
    String all = years.stream().map(String::valueOf).collect(Collectors.joining(", "));
    int comma = all.lastIndexOf(", ");
    return comma < 0 ? all : all.substring(0, comma) + " and " + all.substring(comma + 2);
  }

  private String without(int first, int last) {
    List<String> missing = new ArrayList<>();
    for (int year = first; year <= last; year++) {
      if (!years.contains(year)) {
        missing.add(Integer.toString(year));
      }
    }
    return missing.isEmpty() ? "" : " but " + String.join(", ", missing);
  }
}
