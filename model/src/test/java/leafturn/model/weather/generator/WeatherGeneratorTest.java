package leafturn.model.weather.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import leafturn.model.RandomStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.junit.jupiter.api.Test;

class WeatherGeneratorTest {
  private static final WeatherSeries RECORD = NewYork.record();
  private static final LocalDate FIRST = LocalDate.of(2016, 5, 20);

  @Test
  void aSeasonOfASeedIsTheSameWhoeverAsksInAnyOrderOnAnyThread() {
    WeatherGenerator generator = WeatherGenerator.fitted(RECORD);
    WeatherEve eve = generator.eve(RECORD, RECORD.days() - 1);
    double[][] inOrder =
        IntStream.range(0, 40).mapToObj(i -> season(generator, eve, i)).toArray(double[][]::new);
    WeatherGenerator again = WeatherGenerator.fitted(RECORD);
    double[][] together =
        IntStream.range(0, 40)
            .parallel()
            .mapToObj(i -> season(again, eve, i))
            .toArray(double[][]::new);
    assertThat(together).isDeepEqualTo(inOrder);
    assertThat(inOrder[3]).isNotEqualTo(inOrder[4]);
  }

  private static double[] season(WeatherGenerator generator, WeatherEve eve, int season) {
    WeatherSeries days = generator.generate(new RandomStream(7, season), eve, FIRST, 90);
    return column(days, Quantity.MAXIMUM_C);
  }

  @Test
  void theFirstDaysCarryOnFromTheEveAndTheEveIsForgottenAfterAMonth() {
    WeatherGenerator generator = WeatherGenerator.fitted(RECORD);
    WeatherEve hot = WeatherEve.of(false, new double[] {2.5, 2.5, 0});
    WeatherEve cold = WeatherEve.of(true, new double[] {-2.5, -2.5, 0});
    double[] difference = new double[40];
    int wetter = 0;
    for (int season = 0; season < 500; season++) {
      WeatherSeries afterHot = generator.generate(new RandomStream(1, season), hot, FIRST, 40);
      WeatherSeries afterCold = generator.generate(new RandomStream(1, season), cold, FIRST, 40);
      for (int day = 0; day < difference.length; day++) {
        difference[day] +=
            (afterHot.value(Quantity.MAXIMUM_C, day) - afterCold.value(Quantity.MAXIMUM_C, day))
                / 500;
      }
      wetter += afterCold.value(Quantity.RAIN_MM, 0) > 0 ? 1 : 0;
      wetter -= afterHot.value(Quantity.RAIN_MM, 0) > 0 ? 1 : 0;
    }
    assertThat(difference[0]).isGreaterThan(8);
    assertThat(difference[3]).isBetween(1.0, 5.0);
    assertThat(difference[39]).isCloseTo(0, within(0.05));
    assertThat(wetter / 500.0).isCloseTo(0.30, within(0.06));
  }

  @Test
  void aMonthWithoutRainKeepsASmallChanceAndARecordWithoutRainStaysDry() {
    WeatherSeries dryAugusts =
        changed(Quantity.RAIN_MM, d -> RECORD.dayAt(d).getMonthValue() == 8 ? 0 : rainMm(d));
    WeatherGenerator generator = WeatherGenerator.fitted(dryAugusts);
    assertThat(generator.occurrence(8).afterDryFraction()).isBetween(0.001, 0.01);
    assertThat(generator.notes()).singleElement().asString().contains("August", "neighbouring");

    WeatherGenerator dry = WeatherGenerator.fitted(changed(Quantity.RAIN_MM, d -> 0));
    WeatherSeries year = dry.generate(new RandomStream(1, 1), WeatherEve.unknown(), FIRST, 365);
    assertThat(column(year, Quantity.RAIN_MM)).containsOnly(0);
    assertThat(dry.notes()).contains("The record has no wet day, so none is generated.");
  }

  @Test
  void radiationAndHumidityAreGeneratedWhereTheRecordHasThem() {
    assertThat(WeatherGenerator.fitted(RECORD).quantities())
        .containsExactly(Quantity.MAXIMUM_C, Quantity.MINIMUM_C, Quantity.WIND_M_PER_S);
    WeatherSeries sunny =
        changed(Quantity.RADIATION_MJ_PER_M2, d -> 12 + 8 * Math.sin(d / 58.0) + d % 5);
    WeatherGenerator generator = WeatherGenerator.fitted(sunny);
    assertThat(generator.quantities()).contains(Quantity.RADIATION_MJ_PER_M2);
    WeatherSeries year =
        generator.generate(new RandomStream(1, 1), WeatherEve.unknown(), FIRST, 365);
    assertThat(year.has(Quantity.RADIATION_MJ_PER_M2)).isTrue();

    WeatherSeries rarely = changed(Quantity.RADIATION_MJ_PER_M2, d -> d % 3 == 0 ? 12 : Double.NaN);
    WeatherGenerator without = WeatherGenerator.fitted(rarely);
    assertThat(without.quantities()).doesNotContain(Quantity.RADIATION_MJ_PER_M2);
    assertThat(without.notes()).singleElement().asString().contains("Radiation", "487 of 1461");
  }

  @Test
  void aShortRecordTakesTheStandardCorrelationsAndATooShortOneIsRefused() {
    WeatherGenerator year =
        WeatherGenerator.fitted(RECORD, day -> day < 366, WeatherGenerator.Amounts.GAMMA);
    double[][] memory = year.residuals().memory();
    double[][] standard = Residuals.standard(2).memory();
    for (int row = 0; row < 2; row++) {
      assertThat(Arrays.copyOf(memory[row], 2)).containsExactly(standard[row], within(1e-9));
    }
    assertThat(year.notes()).anyMatch(note -> note.contains("Richardson's stand in"));
    assertThatThrownBy(
            () ->
                WeatherGenerator.fitted(
                    RECORD, day -> day < 300, WeatherGenerator.Amounts.MIXED_EXPONENTIAL))
        .hasMessageContaining("15 days or more of each month")
        .hasMessageContaining("0 usable days of November");
  }

  @Test
  void gammaAmountsKeepTheirMean() {
    GammaAmount amount = new GammaAmount(0.62, 22.06);
    RandomStream random = new RandomStream(5, 0);
    double mean =
        IntStream.range(0, 200_000)
            .mapToDouble(i -> amount.drawnMm(random))
            .average()
            .orElseThrow();
    assertThat(mean).isCloseTo(amount.meanMm(), within(0.15));
  }

  private static double rainMm(int day) {
    return RECORD.value(Quantity.RAIN_MM, day);
  }

  private static WeatherSeries changed(Quantity quantity, IntToDoubleFunction value) {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    for (Quantity each : Quantity.values()) {
      if (RECORD.has(each)) {
        values.put(each, column(RECORD, each));
      }
    }
    values.put(quantity, IntStream.range(0, RECORD.days()).mapToDouble(value).toArray());
    return new WeatherSeries(RECORD.firstDay(), values);
  }

  private static double[] column(WeatherSeries series, Quantity quantity) {
    return IntStream.range(0, series.days()).mapToDouble(d -> series.value(quantity, d)).toArray();
  }
}
