package leafturn.advice.call;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import org.jspecify.annotations.Nullable;

/**
 * Stretches of the record as possible seasons: what followed the call's date, and dates near it, in
 * every other year, as far as it was measured. The days that followed the day itself are never
 * used, unless the record holds no other year and nothing can be generated from it.
 */
final class ResampledSeasons {
  /** Days from the call's date at which a stretch may begin, in the order they are taken. */
  private static final int[] SHIFTS = {0, -3, 3, -6, 6};

  private static final int OWN_FUTURE_DAYS = 366;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private final SiteClimate climate;
  private final WeatherSeries weather;
  private final LocalDate on;
  private final LocalDate first;
  private final List<Integer> years = new ArrayList<>();

  /**
   * @param on the day of the call
   * @param first the first day that is not known
   */
  ResampledSeasons(SiteClimate climate, LocalDate on, LocalDate first) {
    this.climate = climate;
    this.weather = climate.weather();
    this.on = on;
    this.first = first;
    int lastYear = climate.dayAt(climate.measuredDays() - 1).getYear();
    for (int year = weather.firstDay().getYear(); year <= lastYear; year++) {
      if (year != on.getYear() && reaches(start(year, 0))) {
        years.add(year);
      }
    }
  }

  /** True when nothing of a day may be used: it follows the call's own. */
  static boolean ownFuture(WeatherSeries weather, LocalDate on, int day) {
    int today = weather.indexOf(on);
    return day > today && day < today + OWN_FUTURE_DAYS;
  }

  boolean none() {
    return years.isEmpty();
  }

  /**
   * Stretches of the record, each by the days it takes.
   *
   * @param most how many are wanted; fewer come where the record is short
   */
  List<int[]> stretches(int most) {
    List<int[]> stretches = new ArrayList<>();
    for (int shift : SHIFTS) {
      for (int year : years) {
        int start = start(year, shift);
        boolean allowed = reaches(start) && !ownFuture(weather, on, start);
        if (stretches.size() < most && allowed) {
          stretches.add(days(start, false));
        }
      }
    }
    return stretches;
  }

  /** The days that really followed, for want of anything else; null where they end too soon. */
  int @Nullable [] ownYear() {
    int start = weather.indexOf(first);
    return reaches(start) ? days(start, true) : null;
  }

  private int start(int year, int shift) {
    return weather.indexOf(first.plusYears(year - on.getYear())) + shift;
  }

  private boolean reaches(int start) {
    return start >= 0 && start + WeatherToCome.DAYS < climate.measuredDays();
  }

  private int[] days(int start, boolean ownYear) {
    int[] days = new int[WeatherToCome.LONGEST_DAYS];
    int known = 0;
    while (known < days.length) {
      int source = source(start + known, ownYear);
      if (source < 0) {
        break;
      }
      days[known++] = source;
    }
    return Arrays.copyOf(days, known);
  }

  /**
   * The measured day to use: the one asked for, or the same date in the latest year before it that
   * is on record and is not the call's own future; -1 when there is none.
   */
  private int source(int wanted, boolean ownYear) {
    int source = wanted;
    for (int back = 1; source >= 0; back++) {
      if (source < climate.measuredDays() && (ownYear || !ownFuture(weather, on, source))) {
        return source;
      }
      source = weather.indexOf(weather.dayAt(wanted).minusYears(back));
    }
    return -1;
  }

  /** "the days after 20 May in 2012, 2013 and 2015", for some stretches. */
  String inWords(int count) {
    String around = count > years.size() ? "the days from around " : "the days after ";
    return around + DATE.format(on) + " in " + yearsInWords();
  }

  private String yearsInWords() {
    int firstYear = years.get(0);
    int lastYear = years.get(years.size() - 1);
    if (years.size() > 2 && lastYear - firstYear == years.size() - 1) {
      return "each year from " + firstYear + " to " + lastYear;
    }
    if (years.size() > 5) {
      return "each year from " + firstYear + " to " + lastYear + without(firstYear, lastYear);
    }
    String all = years.stream().map(String::valueOf).collect(Collectors.joining(", "));
    int comma = all.lastIndexOf(", ");
    return comma < 0 ? all : all.substring(0, comma) + " and " + all.substring(comma + 2);
  }

  private String without(int firstYear, int lastYear) {
    List<String> missing = new ArrayList<>();
    for (int year = firstYear; year <= lastYear; year++) {
      if (!years.contains(year)) {
        missing.add(Integer.toString(year));
      }
    }
    return missing.isEmpty() ? "" : " but " + String.join(", ", missing);
  }
}
