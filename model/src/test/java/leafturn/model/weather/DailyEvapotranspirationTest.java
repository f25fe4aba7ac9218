package leafturn.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import leafturn.model.weather.DailyEvapotranspiration.HumidityRoute;
import leafturn.model.weather.DailyEvapotranspiration.RadiationRoute;
import leafturn.model.weather.DailyEvapotranspiration.WindRoute;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.junit.jupiter.api.Test;

/**
 * Which measurement a day's evapotranspiration rests on. Values: the ten-day trace of the model.
 */
class DailyEvapotranspirationTest {
  private static final Site SITE = Site.at(40.78, 40);

  /** One day, 10 May 2013 (day 130 of the year), with what the trace uses, and more if given. */
  private static DailyEvapotranspiration day(Site site, Map<Quantity, Double> more) {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    values.put(Quantity.MINIMUM_C, new double[] {8});
    values.put(Quantity.MAXIMUM_C, new double[] {19});
    values.put(Quantity.RAIN_MM, new double[] {0});
    values.put(Quantity.WIND_M_PER_S, new double[] {3.2});
    more.forEach((quantity, value) -> values.put(quantity, new double[] {value}));
    return DailyEvapotranspiration.of(
        new WeatherSeries(LocalDate.of(2013, 5, 10), values), site, 0);
  }

  @Test
  void reproducesTheFirstTwoDaysOfTheTrace() {
    assertThat(day(SITE, Map.of()).referenceMm()).isCloseTo(3.626770145, within(3e-8));
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    values.put(Quantity.MINIMUM_C, new double[] {8, 10});
    values.put(Quantity.MAXIMUM_C, new double[] {19, 24});
    values.put(Quantity.RAIN_MM, new double[] {0, 0});
    values.put(Quantity.WIND_M_PER_S, new double[] {3.2, 2.5});
    WeatherSeries series = new WeatherSeries(LocalDate.of(2013, 5, 10), values);
    assertThat(DailyEvapotranspiration.of(series, SITE, 1).referenceMm())
        .isCloseTo(4.560063119, within(4e-8));
  }

  @Test
  void saysThatTheDayRestsOnTemperatureAlone() {
    DailyEvapotranspiration day = day(SITE, Map.of());
    assertThat(day.radiationRoute()).isEqualTo(RadiationRoute.TEMPERATURE_RANGE);
    assertThat(day.humidityRoute()).isEqualTo(HumidityRoute.MINIMUM_TEMPERATURE);
    assertThat(day.windRoute()).isEqualTo(WindRoute.MEASURED_AT_2_M);
    assertThat(day.restsOnTemperatureAlone()).isTrue();
  }

  @Test
  void prefersDewPointToHumidityAndBothExtremesToOne() {
    Map<Quantity, Double> maximum = new EnumMap<>(Quantity.class);
    maximum.put(Quantity.HUMIDITY_MAXIMUM_PERCENT, 90.0);
    assertThat(day(SITE, maximum).humidityRoute()).isEqualTo(HumidityRoute.HUMIDITY_MAXIMUM);
    Map<Quantity, Double> both = new EnumMap<>(maximum);
    both.put(Quantity.HUMIDITY_MINIMUM_PERCENT, 40.0);
    assertThat(day(SITE, both).humidityRoute()).isEqualTo(HumidityRoute.HUMIDITY_EXTREMES);
    Map<Quantity, Double> all = new EnumMap<>(both);
    all.put(Quantity.DEW_POINT_C, 8.0);
    assertThat(day(SITE, all).humidityRoute()).isEqualTo(HumidityRoute.DEW_POINT);
    assertThat(day(SITE, all).referenceMm()).isCloseTo(3.626770145, within(3e-8));
  }

  @Test
  void usesMeasuredRadiation() {
    DailyEvapotranspiration day = day(SITE, Map.of(Quantity.RADIATION_MJ_PER_M2, 12.5));
    assertThat(day.radiationRoute()).isEqualTo(RadiationRoute.MEASURED);
    assertThat(day.globalRadiationMjPerM2()).isEqualTo(12.5);
    assertThat(day.referenceMm()).isLessThan(3.6);
  }

  @Test
  void assumesTwoMetresPerSecondWhereWindIsMissingAndHalfAtLeast() {
    DailyEvapotranspiration missing = day(SITE, Map.of(Quantity.WIND_M_PER_S, Double.NaN));
    DailyEvapotranspiration two = day(SITE, Map.of(Quantity.WIND_M_PER_S, 2.0));
    assertThat(missing.windRoute()).isEqualTo(WindRoute.ASSUMED);
    assertThat(missing.referenceMm()).isEqualTo(two.referenceMm());
    DailyEvapotranspiration calm = day(SITE, Map.of(Quantity.WIND_M_PER_S, 0.0));
    DailyEvapotranspiration half = day(SITE, Map.of(Quantity.WIND_M_PER_S, 0.5));
    assertThat(calm.referenceMm()).isEqualTo(half.referenceMm());
  }

  @Test
  void bringsWindFromTenMetresDownToTwo() {
    Site mast = new Site(40.78, 40, 10, null, null);
    DailyEvapotranspiration high = day(mast, Map.of());
    DailyEvapotranspiration low =
        day(SITE, Map.of(Quantity.WIND_M_PER_S, 3.2 * 4.87 / Math.log(678 - 5.42)));
    assertThat(high.windRoute()).isEqualTo(WindRoute.BROUGHT_TO_2_M);
    assertThat(high.referenceMm()).isCloseTo(low.referenceMm(), within(1e-12));
  }

  @Test
  void worksThroughPolarNightAndMidnightSun() {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    values.put(Quantity.MINIMUM_C, new double[366]);
    values.put(Quantity.MAXIMUM_C, new double[366]);
    values.put(Quantity.RAIN_MM, new double[366]);
    java.util.Arrays.fill(values.get(Quantity.MINIMUM_C), -20);
    java.util.Arrays.fill(values.get(Quantity.MAXIMUM_C), -8);
    WeatherSeries year = new WeatherSeries(LocalDate.of(2012, 1, 1), values);
    for (double latitude : new double[] {-90, -80, 66.6, 80, 90}) {
      for (int day = 0; day < year.days(); day++) {
        DailyEvapotranspiration answer =
            DailyEvapotranspiration.of(year, Site.at(latitude, 10), day);
        assertThat(answer.referenceMm()).isBetween(0.0, 6.0);
        assertThat(answer.globalRadiationMjPerM2()).isBetween(0.0, 45.0);
      }
    }
    assertThat(DailyEvapotranspiration.of(year, Site.at(80, 10), 354).globalRadiationMjPerM2())
        .isZero();
  }
}
