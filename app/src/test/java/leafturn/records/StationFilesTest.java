package leafturn.records;

import static leafturn.records.Examples.faultsOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.FilledValue.FillRule;
import leafturn.records.WeatherFile.Choice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Both forms of the station archive, on invented stations. */
class StationFilesTest {
  private static final String STATION = "XX000000001";
  private static final String MISSING = "-9999   ";

  /** A line of 31 days, all of the same value but for one. */
  private static String month(String element, String value, int day, String other) {
    StringBuilder line = new StringBuilder(STATION + "201505" + element);
    for (int d = 1; d <= 31; d++) {
      line.append(d == day ? other : value);
    }
    return line.append('\n').toString();
  }

  private static String fixed(String rainOfDay10) {
    return month("TMAX", "  215  S", 31, "  123  S")
        + month("TMIN", "   52  S", 1, "  -17  S")
        + month("PRCP", "    0  S", 10, rainOfDay10);
  }

  private static WeatherReading read(String text) {
    return WeatherFile.read(new SourceText("station.dly", text), Choice.ONLY_SITE);
  }

  private static List<String> faults(String text) {
    return faultsOf(() -> read(text));
  }

  @Test
  void readsTheLastDayOfAMonthFromColumns262To266InTenths() {
    String text = fixed("   25  S");
    assertThat(text.lines().findFirst().orElseThrow().substring(261, 266)).isEqualTo("  123");
    WeatherReading reading = read(text);
    assertThat(reading.place()).isEqualTo(STATION);
    assertThat(reading.series().days()).isEqualTo(31);
    assertThat(reading.series().value(Quantity.MAXIMUM_C, 30)).isCloseTo(12.3, within(1e-12));
    assertThat(reading.series().value(Quantity.MINIMUM_C, 0)).isCloseTo(-1.7, within(1e-12));
    assertThat(reading.series().value(Quantity.RAIN_MM, 9)).isCloseTo(2.5, within(1e-12));
    assertThat(reading.filled()).isEmpty();
  }

  @Test
  void dropsAndCountsAValueThatFailedAQualityCheck() {
    WeatherReading reading = read(fixed(" 9000 XS"));
    assertThat(reading.counts().flaggedDropped()).isEqualTo(1);
    assertThat(reading.series().value(Quantity.RAIN_MM, 9)).isZero();
    assertThat(reading.filled())
        .containsExactly(
            new FilledValue(LocalDate.of(2015, 5, 10), Quantity.RAIN_MM, 0, FillRule.NO_RAIN));
    assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("quality checks"));
  }

  @Test
  void aTraceIsNoRainAndCounted() {
    WeatherReading reading = read(fixed("    0T S"));
    assertThat(reading.counts().traceDays()).isEqualTo(1);
    assertThat(reading.filled()).isEmpty();
  }

  @Test
  void countsRainPresumedZero() {
    assertThat(read(fixed("    0P S")).counts().presumedZeroDays()).isEqualTo(1);
  }

  /**
   * Rain missing on 8 to 10 May, a total on the 10th, and the number of days it is said to hold.
   */
  private static String withTotal(String days) {
    StringBuilder rain = new StringBuilder(STATION + "201505PRCP");
    StringBuilder total = new StringBuilder(STATION + "201505MDPR");
    StringBuilder length = new StringBuilder(STATION + "201505DAPR");
    for (int day = 1; day <= 31; day++) {
      rain.append(day >= 8 && day <= 10 ? MISSING : "    0  S");
      total.append(day == 10 ? "  300  S" : MISSING);
      length.append(day == 10 ? days : MISSING);
    }
    return month("TMAX", "  215  S", 0, "")
        + month("TMIN", "   52  S", 0, "")
        + String.join("\n", rain, total, length);
  }

  @ParameterizedTest
  @CsvSource({"'    3  S',10,10,10", "'    2  S',0,15,15", "'-9999   ',10,10,10"})
  void sharesATotalOfSeveralDaysAmongThemAndNeverReadsItAsOneDay(
      String days, double may8Mm, double may9Mm, double may10Mm) {
    WeatherReading reading = read(withTotal(days));
    assertThat(reading.series().value(Quantity.RAIN_MM, 7)).isCloseTo(may8Mm, within(1e-12));
    assertThat(reading.series().value(Quantity.RAIN_MM, 8)).isCloseTo(may9Mm, within(1e-12));
    assertThat(reading.series().value(Quantity.RAIN_MM, 9)).isCloseTo(may10Mm, within(1e-12));
    assertThat(reading.filled()).hasSize(3).anyMatch(v -> v.rule() == FillRule.SHARE_OF_TOTAL);
    assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("several days"));
  }

  @Test
  void refusesATotalThatOverlapsDaysWithRainOfTheirOwn() {
    assertThat(faults(withTotal("    4  S")))
        .singleElement()
        .asString()
        .contains("2015-05-10 for 4 days overlaps");
  }

  @Test
  void refusesATotalLongerThanAShortGap() {
    StringBuilder rain = new StringBuilder(STATION + "201505PRCP");
    StringBuilder total = new StringBuilder(STATION + "201505MDPR");
    for (int day = 1; day <= 31; day++) {
      rain.append(day >= 5 && day <= 10 ? MISSING : "    0  S");
      total.append(day == 10 ? "  300  S" : MISSING);
    }
    String text =
        month("TMAX", "  215  S", 0, "") + month("TMIN", "   52  S", 0, "") + rain + "\n" + total;
    assertThat(faults(text))
        .singleElement()
        .asString()
        .contains("2015-05-05 to 2015-05-10", "the rain", "--fill");
  }

  @Test
  void leavesOutDaysBeforeTemperaturesBegin() {
    String april =
        STATION + "201504PRCP" + "    0  S".repeat(30) + MISSING + "\n" + fixed("    0  S");
    WeatherReading reading = read(april);
    assertThat(reading.series().firstDay()).isEqualTo(LocalDate.of(2015, 5, 1));
    assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("30 days before"));
  }

  @Test
  void readsOneValueALineAndNotesMorningReadings() {
    String text =
        """
        XX000000001,20150501,TMAX,215,,,S,
        XX000000001,20150501,TMIN,52,,,S,
        XX000000001,20150501,PRCP,25,,,S,0700
        XX000000001,20150501,SNOW,0,,,S,
        XX000000001,20150502,TMAX,225,,,S,
        XX000000001,20150502,TMIN,999,,G,S,
        XX000000001,20150502,PRCP,0,T,,S,0700
        XX000000001,20150503,TMAX,225,,,S,
        XX000000001,20150503,TMIN,62,,,S,
        XX000000001,20150503,PRCP,-9999,,,S,0700
        XX000000001,20150504,TMAX,225,,,S,
        XX000000001,20150504,TMIN,62,,,S,
        XX000000001,20150504,PRCP,0,,,S,0700
        XX000000001,20150504,AWND,36,,,S
        """;
    WeatherReading reading = read(text);
    assertThat(reading.series().days()).isEqualTo(4);
    assertThat(reading.series().value(Quantity.MINIMUM_C, 1)).isCloseTo(5.7, within(1e-12));
    assertThat(reading.series().value(Quantity.WIND_M_PER_S, 3)).isCloseTo(3.6, within(1e-12));
    assertThat(reading.counts()).isEqualTo(new WeatherReading.Counts(1, 1, 0));
    assertThat(String.join("\n", reading.notes())).contains("morning", "SNOW", "3 days lack wind");
  }

  @Test
  void picksOneOfSeveralStations() {
    String other = fixed("    0  S").replace(STATION, "XX000000002");
    String both = fixed("   25  S") + other;
    assertThat(faults(both))
        .anySatisfy(f -> assertThat(f).contains("2 stations", "XX000000002", "--site"));
    WeatherReading second =
        WeatherFile.read(new SourceText("both.dly", both), new Choice("XX000000002", false));
    assertThat(second.series().value(Quantity.RAIN_MM, 9)).isZero();
    assertThat(
            faultsOf(
                () -> WeatherFile.read(new SourceText("b.dly", both), new Choice("XX9", false))))
        .anySatisfy(f -> assertThat(f).contains("no station \"XX9\""));
  }

  @ParameterizedTest
  @CsvSource({
    "'XX0000000012015130PRCP',month 13",
    "'XX0000000010000050PRCP',year 0000",
    "'nonsense',does not start with a station"
  })
  void refusesABadStartOfALine(String start, String words) {
    String line = start.replace("130PRCP", "13PRCP").replace("050PRCP", "05PRCP");
    assertThat(faults(fixed("    0  S") + line + "    0  S".repeat(31) + "\n"))
        .anySatisfy(f -> assertThat(f).contains("station.dly, line 4", words));
  }

  @Test
  void refusesBadCellsWithTheirColumns() {
    assertThat(faults(fixed("  2x5  S")))
        .singleElement()
        .asString()
        .contains("line 3", "columns 94-98", "not a whole number");
    assertThat(faults(fixed("99999  S"))).singleElement().asString().contains("PRCP", "2000");
    assertThat(faults(fixed("    0  S") + STATION + "201502PRCP" + "    0  S".repeat(31)))
        .anySatisfy(f -> assertThat(f).contains("2015-02 has no day 29"));
    assertThat(faults(fixed("    0  S") + STATION + "201506PRCP    0  S"))
        .anySatisfy(f -> assertThat(f).contains("line ends before this day"));
    assertThat(faults(fixed("    0  S") + month("PRCP", "    0  S", 0, "")))
        .anySatisfy(f -> assertThat(f).contains("PRCP", "twice"));
    assertThat(faults(fixed("    0  S").replace("   52  S", "  300  S")))
        .anySatisfy(f -> assertThat(f).contains("2015-05-02", "below the minimum"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          XX000000001,20150231,TMAX,215,,,S, | no day in the years
          XX000000001,20150501,TMAX,warm,,,S,| whole number
          XX000000001,20150501,TM,215,,,S,   | four capitals
          XX000000001,2015-05-01,TMAX,5,,,S, | YYYYMMDD
          X,20150501,TMAX,5,,,S,             | eleven capitals
          XX000000001,20150501               | 2 fields
          XX000000001,20150501,TMAX,900,,,S, | from -90 to 60
          """)
  void refusesABadLineOfOneValue(String line, String words) {
    assertThat(faults("XX000000001,20150501,TMIN,52,,,S,\n" + line + "\n"))
        .anySatisfy(f -> assertThat(f).contains("line 2", words));
  }
}
