package leafturn.model.lawn;

import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import leafturn.model.soil.DecayModifiers;

/**
 * The days of a run in order, with all that depends on weather alone. Shared by every lawn that
 * runs through the same days; safe for use from several threads.
 */
public final class DailyTerms {
  /** Share of yesterday's soil temperature in today's (Neitsch et al. 2011). */
  private static final double SOIL_LAG = 0.8;

  final int[] year;
  final int[] dayOfYear;
  final double[] rainMm;
  final double[] referenceEtMm;
  final double[] radiationMj;
  final double[] meanC;
  final double[] soilC;
  final double[] airDecay;
  final double[] soilDecay;
  final boolean southern;
  private final Map<ThermalResponse, double[]> growth = new ConcurrentHashMap<>();

  /**
   * @param climate the site
   * @param dates calendar date of each day of the run
   * @param weatherDays for each day of the run, the day of the weather record it takes
   * @param soilBeforeC soil temperature on the eve, °C, or NaN to start at the air temperature
   */
  public DailyTerms(SiteClimate climate, LocalDate[] dates, int[] weatherDays, double soilBeforeC) {
    int days = dates.length;
    this.year = new int[days];
    this.dayOfYear = new int[days];
    this.rainMm = new double[days];
    this.referenceEtMm = new double[days];
    this.radiationMj = new double[days];
    this.meanC = new double[days];
    this.soilC = new double[days];
    this.airDecay = new double[days];
    this.soilDecay = new double[days];
    this.southern = climate.site().latitudeDeg() < 0;
    double soil = soilBeforeC;
    for (int day = 0; day < days; day++) {
      int source = weatherDays[day];
      year[day] = dates[day].getYear();
      dayOfYear[day] = dates[day].getDayOfYear();
      rainMm[day] = climate.rainMm(source);
      referenceEtMm[day] = climate.referenceEtMm(source);
      radiationMj[day] = climate.radiationMj(source);
      meanC[day] = climate.meanC(source);
      airDecay[day] = climate.airDecay(source);
      soil = Double.isNaN(soil) ? meanC[day] : SOIL_LAG * soil + (1 - SOIL_LAG) * meanC[day];
      soilC[day] = soil;
      soilDecay[day] = DecayModifiers.rothCTemperatureFraction(soil);
    }
  }

  /**
   * A stretch of the record as it was.
   *
   * @param fromDay first day of the weather series, inclusive
   * @param toDay last day, exclusive
   */
  public static DailyTerms asRecorded(
      SiteClimate climate, int fromDay, int toDay, double soilBeforeC) {
    int days = toDay - fromDay;
    LocalDate[] dates = new LocalDate[days];
    int[] sources = new int[days];
    for (int day = 0; day < days; day++) {
      dates[day] = climate.dayAt(fromDay + day);
      sources[day] = fromDay + day;
    }
    return new DailyTerms(climate, dates, sources, soilBeforeC);
  }

  /** Number of days. */
  public int days() {
    return year.length;
  }

  /** Calendar year of a day. */
  public int year(int day) {
    return year[day];
  }

  /** Day of the year, 1 to 366. */
  public int dayOfYear(int day) {
    return dayOfYear[day];
  }

  /** Date of a day. */
  public LocalDate date(int day) {
    return LocalDate.ofYearDay(year[day], dayOfYear[day]);
  }

  /** Rain, mm. */
  public double rainMm(int day) {
    return rainMm[day];
  }

  /** Mean air temperature, °C. */
  public double meanC(int day) {
    return meanC[day];
  }

  /** Soil temperature, °C. */
  public double soilC(int day) {
    return soilC[day];
  }

  /** Reference evapotranspiration, mm. */
  public double referenceEtMm(int day) {
    return referenceEtMm[day];
  }

  /** Temperature factor of decay at air temperature, 1 at 20 °C. */
  public double airDecay(int day) {
    return airDecay[day];
  }

  /** Growth factor of each day for a grass's response to temperature. */
  double[] growth(ThermalResponse response) {
    return growth.computeIfAbsent(
        response,
        key -> {
          double[] factors = new double[days()];
          for (int day = 0; day < factors.length; day++) {
            factors[day] = key.at(meanC[day]);
          }
          return factors;
        });
  }
}
