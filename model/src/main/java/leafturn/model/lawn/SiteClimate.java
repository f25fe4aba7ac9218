package leafturn.model.lawn;

import java.time.LocalDate;
import leafturn.model.soil.DecayModifiers;
import leafturn.model.weather.DailyEvapotranspiration;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * What every lawn of a site shares, computed once per day of the weather record: reference
 * evapotranspiration, radiation, mean temperature, decay at air temperature. Arrays are indexed by
 * the day of the series.
 */
public final class SiteClimate {
  private final WeatherSeries weather;
  private final Site site;
  private final int measuredDays;
  private final double[] referenceEtMm;
  private final double[] radiationMj;
  private final double[] meanC;
  private final double[] airDecay;

  /**
   * @param weather daily record
   * @param site where it was measured
   */
  public SiteClimate(WeatherSeries weather, Site site) {
    this(weather, site, weather.days());
  }

  /**
   * @param weather daily record, perhaps with days at its end that were not measured but stand in
   * @param site where it was measured
   * @param measuredDays number of days before those that stand in, 1 to the days of the record
   */
  public SiteClimate(WeatherSeries weather, Site site, int measuredDays) {
    if (measuredDays < 1 || measuredDays > weather.days()) {
      throw new IllegalArgumentException(
          "of %d days of weather %d are said to be measured"
              .formatted(weather.days(), measuredDays));
    }
    this.weather = weather;
    this.site = site;
    this.measuredDays = measuredDays;
    int days = weather.days();
    this.referenceEtMm = new double[days];
    this.radiationMj = new double[days];
    this.meanC = new double[days];
    this.airDecay = new double[days];
    for (int day = 0; day < days; day++) {
      DailyEvapotranspiration reference = DailyEvapotranspiration.of(weather, site, day);
      referenceEtMm[day] = reference.referenceMm();
      radiationMj[day] = reference.globalRadiationMjPerM2();
      meanC[day] =
          (weather.value(Quantity.MINIMUM_C, day) + weather.value(Quantity.MAXIMUM_C, day)) / 2;
      airDecay[day] = DecayModifiers.rothCTemperatureFraction(meanC[day]);
    }
  }

  /** The record. */
  public WeatherSeries weather() {
    return weather;
  }

  /** Where it was measured. */
  public Site site() {
    return site;
  }

  /** Days of the record before those at its end that stand in for days not measured yet. */
  public int measuredDays() {
    return measuredDays;
  }

  /** Date of a day of the series. */
  public LocalDate dayAt(int day) {
    return weather.dayAt(day);
  }

  /** Reference evapotranspiration, mm. */
  public double referenceEtMm(int day) {
    return referenceEtMm[day];
  }

  /** Global radiation, MJ/m2. */
  public double radiationMj(int day) {
    return radiationMj[day];
  }

  /** Mean of minimum and maximum temperature, °C. */
  public double meanC(int day) {
    return meanC[day];
  }

  /** Temperature factor of decay at air temperature, 1 at 20 °C. */
  public double airDecay(int day) {
    return airDecay[day];
  }

  /** Rain, mm. */
  public double rainMm(int day) {
    return weather.value(Quantity.RAIN_MM, day);
  }
}
