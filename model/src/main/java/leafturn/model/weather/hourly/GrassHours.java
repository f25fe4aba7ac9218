package leafturn.model.weather.hourly;

import java.time.LocalDate;
import java.util.Arrays;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.hourly.GrassDay.WetFrom;

/**
 * Finds the hours in which the grass is dry enough, from the daily weather of yesterday, today and
 * tomorrow. Water on the leaves comes from rain, watering and dew and leaves by evaporation; leaves
 * are dry enough when little is left and the air is not near saturation. Each weather added is one
 * that may be; within it the hours of rain and the water that leaves hold are varied, since neither
 * is known. Not for several threads at once.
 */
public final class GrassHours {
  private static final int YESTERDAY = 0;
  private static final int TODAY = 1;
  private static final int TOMORROW = 2;
  private static final int WARMEST = 24 + 14;

  /** Water that leaves seen to be wet hold at least, mm: a heavy dew (our judgement). */
  private static final double SEEN_WET_MM = 0.2;

  private static final double WATERING_START = 4;
  private static final double WATERING_END = 6;

  private final GrassLimits limits;
  private final SeenToday seen;
  private final int seenDry;
  private final int seenWet;
  private final LocalDate today;
  private final SolarClock clock;
  private final AirHours air;
  private final double[] canopyMm;
  private final DayWeather[] days = new DayWeather[AirHours.DAYS];
  private final double[] rainMm = new double[AirHours.HOURS];
  private final double[] wateringMm = new double[AirHours.HOURS];
  private final double[] dry = new double[AirHours.HOURS];
  private final double[] fit = new double[AirHours.HOURS];
  private final double[] frost = new double[AirHours.HOURS];
  private final boolean[] frozen = new boolean[AirHours.HOURS];
  private final double[] temperatureC = new double[AirHours.HOURS];
  private final double[] humidityPercent = new double[AirHours.HOURS];
  private final double[] windMPerS = new double[AirHours.HOURS];
  private final double[] leafWaterMm = new double[AirHours.HOURS];
  private final double[][] wetFrom = new double[WetFrom.values().length][AirHours.HOURS];
  private double weathers;

  /**
   * @param site latitude and elevation, and longitude and time zone for hours on the clock
   * @param today the day of the question
   * @param limits when grass counts as dry enough
   * @param seen what someone saw today
   */
  public GrassHours(Site site, LocalDate today, GrassLimits limits, SeenToday seen) {
    this.limits = limits;
    this.seen = seen;
    this.seenDry = SeenToday.index(seen.dryAt());
    this.seenWet = SeenToday.index(seen.wetAt());
    this.today = today;
    this.clock = SolarClock.of(site, today);
    this.air = new AirHours(site, today, clock);
    this.canopyMm = limits.canopyMm().stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * A day of a record as {@link #today()}, its rain at an unknown hour.
   *
   * @param index day of the record, 0 for the first
   */
  public static GrassHours recorded(WeatherSeries weather, Site site, int index) {
    GrassHours hours =
        new GrassHours(site, weather.dayAt(index), GrassLimits.standard(), SeenToday.NOTHING);
    DayWeather eve = DayWeather.of(weather, site, Math.max(0, index - 1));
    DayWeather next = DayWeather.of(weather, site, Math.min(index + 1, weather.days() - 1));
    hours.add(eve, DayWeather.of(weather, site, index), next);
    return hours;
  }

  /** Adds one weather that may be. */
  public void add(DayWeather yesterday, DayWeather ofToday, DayWeather tomorrow) {
    days[YESTERDAY] = yesterday;
    days[TODAY] = ofToday;
    days[TOMORROW] = tomorrow;
    air.fill(days);
    weathers++;
    frost();
    for (int hour = 0; hour < AirHours.HOURS; hour++) {
      temperatureC[hour] += air.temperatureC[hour];
      humidityPercent[hour] += air.humidityPercent[hour];
      windMPerS[hour] += air.windMPerS[hour];
    }
    water();
    int times = itRains() ? Showers.TIMES : 1;
    double share = 1.0 / (times * canopyMm.length);
    for (int time = 0; time < times; time++) {
      rain(time);
      for (double heldMm : canopyMm) {
        follow(heldMm, share);
      }
    }
  }

  private boolean itRains() {
    return days[YESTERDAY].water().rainMm() > 0
        || days[TODAY].water().rainMm() > 0
        || days[TOMORROW].water().rainMm() > 0;
  }

  private void water() {
    Arrays.fill(wateringMm, 0);
    for (int day = 0; day < AirHours.DAYS; day++) {
      double mm = days[day].water().wateredMm();
      if (mm > 0) {
        Showers.spread(wateringMm, 24 * day, mm, WATERING_START, WATERING_END);
      }
    }
  }

  private void rain(int time) {
    Arrays.fill(rainMm, 0);
    for (int day = 0; day < AirHours.DAYS; day++) {
      DayWeather.Water water = days[day].water();
      int which = (time + 2 * day) % Showers.TIMES; // days do not rain at the same hour
      Showers.add(rainMm, 24 * day, water.rainMm(), water.rainTime(), which);
    }
  }

  /** Follows the water on the leaves through the hours. */
  private void follow(double heldMm, double share) {
    double waterMm = 0;
    int from = WetFrom.DEW.ordinal();
    for (int hour = 0; hour < AirHours.HOURS; hour++) {
      double beforeMm = asSeen(hour, waterMm, heldMm);
      double fallsMm = hour == seenDry ? 0 : rainMm[hour] + wateringMm[hour];
      if (fallsMm > 0) {
        from = (rainMm[hour] > 0 ? WetFrom.RAIN : WetFrom.WATERING).ordinal();
      } else if (beforeMm <= limits.dryEnoughMm()) {
        from = WetFrom.DEW.ordinal();
      }
      waterMm = Math.min(heldMm, Math.max(0, beforeMm + fallsMm - air.evaporationMm[hour]));
      leafWaterMm[hour] += share * waterMm;
      if (fallsMm > 0 || Math.max(beforeMm, waterMm) > limits.dryEnoughMm() || moist(hour)) {
        wetFrom[from][hour] += share;
      } else {
        dry[hour] += share;
        fit[hour] += frozen[hour] ? 0 : share;
      }
    }
  }

  private double asSeen(int hour, double waterMm, double heldMm) {
    if (hour == seenDry) {
      return 0;
    }
    return hour == seenWet ? Math.min(heldMm, Math.max(SEEN_WET_MM, waterMm)) : waterMm;
  }

  private boolean moist(int hour) {
    return hour != seenDry && air.humidityPercent[hour] >= limits.wetHumidityPercent();
  }

  /**
   * Blades count as frozen up to the limit and for the hour after, in which they thaw. Where frost
   * was seen in warmer air, it lies until the air is warmer still.
   */
  private void frost() {
    int seenFrost = SeenToday.index(seen.frostAt());
    double seenC = seenFrost < 0 ? limits.frostAirC() : air.temperatureC[seenFrost];
    boolean before = false;
    for (int hour = 0; hour < AirHours.HOURS; hour++) {
      boolean morning = hour >= 24 && hour < WARMEST;
      double limitC = morning ? Math.max(limits.frostAirC(), seenC) : limits.frostAirC();
      boolean now = air.temperatureC[hour] <= limitC;
      frozen[hour] = (now || before) && !thawed(hour);
      frost[hour] += frozen[hour] ? 1 : 0;
      before = now;
    }
  }

  private boolean thawed(int hour) {
    int seenThawed = SeenToday.index(seen.thawedAt());
    return seenThawed >= 0 && hour >= seenThawed && hour < 24 + air.daylight[TODAY].sunsetHour;
  }

  /**
   * The hours of today over all weathers added.
   *
   * @throws IllegalStateException when none was added
   */
  public GrassDay today() {
    return day(TODAY);
  }

  /**
   * The hours of tomorrow over all weathers added.
   *
   * @throws IllegalStateException when none was added
   */
  public GrassDay tomorrow() {
    return day(TOMORROW);
  }

  private GrassDay day(int day) {
    if (weathers == 0) {
      throw new IllegalStateException("no weather was added");
    }
    double[][] from = new double[wetFrom.length][];
    for (int cause = 0; cause < from.length; cause++) {
      from[cause] = mean(wetFrom[cause], day);
    }
    return new GrassDay(
        today.plusDays(day - TODAY),
        new GrassDay.Sun(
            clock.clock(), air.daylight[day].sunriseHour, air.daylight[day].sunsetHour),
        new GrassDay.Shares(mean(dry, day), mean(frost, day), mean(fit, day), from),
        new GrassDay.Course(
            mean(temperatureC, day),
            mean(humidityPercent, day),
            mean(windMPerS, day),
            mean(leafWaterMm, day)));
  }

  private double[] mean(double[] sum, int day) {
    double[] mean = Arrays.copyOfRange(sum, 24 * day, 24 * day + 24);
    for (int hour = 0; hour < mean.length; hour++) {
      mean[hour] /= weathers;
    }
    return mean;
  }
}
