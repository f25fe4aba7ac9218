package leafturn.records;

import static leafturn.records.Examples.faultsOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.FilledValue.FillRule;
import leafturn.records.WeatherFile.Choice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeatherFileTest {
  private static final String HEADER = "date,temp_max,temp_min,precipitation,wind\n";
  private static final Choice FILL = new Choice(null, true);

  private static WeatherReading read(String csv) {
    return WeatherFile.read(new SourceText("days.csv", csv), Choice.ONLY_SITE);
  }

  private static List<String> faults(String csv) {
    return faultsOf(() -> read(csv));
  }

  /** Days of May 2015 from the first on; the days named are left out. */
  private static String may(int days, Integer... without) {
    List<Integer> missing = List.of(without);
    return HEADER
        + IntStream.rangeClosed(1, days)
            .filter(day -> !missing.contains(day))
            .mapToObj(day -> "2015-05-%02d,%d,%d,1.5,2\n".formatted(day, 15 + day, 5 + day))
            .collect(Collectors.joining());
  }

  @Test
  void readsColumnsInAnyOrderAndByTheirOtherNames() {
    WeatherReading reading =
        read(
            """
            rain_mm,tmin_c,sky,wind_m_s,date,tmax_c,humidity_max_percent,humidity_min_percent,dewpoint_c,radiation_mj_m2
            1.5,5,clear,3,2015-05-01,15,90,40,4,20
            """);
    WeatherSeries series = reading.series();
    assertThat(series.firstDay()).isEqualTo(LocalDate.of(2015, 5, 1));
    assertThat(series.value(Quantity.RAIN_MM, 0)).isEqualTo(1.5);
    assertThat(series.value(Quantity.MINIMUM_C, 0)).isEqualTo(5);
    assertThat(series.value(Quantity.MAXIMUM_C, 0)).isEqualTo(15);
    assertThat(series.value(Quantity.WIND_M_PER_S, 0)).isEqualTo(3);
    assertThat(series.value(Quantity.HUMIDITY_MAXIMUM_PERCENT, 0)).isEqualTo(90);
    assertThat(series.value(Quantity.HUMIDITY_MINIMUM_PERCENT, 0)).isEqualTo(40);
    assertThat(series.value(Quantity.DEW_POINT_C, 0)).isEqualTo(4);
    assertThat(series.value(Quantity.RADIATION_MJ_PER_M2, 0)).isEqualTo(20);
    assertThat(reading.notes()).containsExactly("Columns not used: \"sky\".");
  }

  @Test
  void readsDecimalCommasBetweenSemicolons() {
    WeatherReading reading =
        read(
            "\uFEFFdate;temp_max;temp_min;precipitation\r\n2015-05-01;15,5;5;0,3\r\n".substring(1));
    assertThat(reading.series().value(Quantity.MAXIMUM_C, 0)).isEqualTo(15.5);
    assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("decimal commas"));
  }

  @Test
  void fillsThreeMissingDaysAndListsEachValue() {
    WeatherReading reading = read(may(8, 4, 5, 6));
    assertThat(reading.series().days()).isEqualTo(8);
    assertThat(reading.filledDays()).hasSize(3).contains(LocalDate.of(2015, 5, 5));
    assertThat(reading.filled())
        .hasSize(9)
        .contains(
            new FilledValue(
                LocalDate.of(2015, 5, 5), Quantity.MAXIMUM_C, 20, FillRule.BETWEEN_NEIGHBOURS),
            new FilledValue(LocalDate.of(2015, 5, 5), Quantity.RAIN_MM, 0, FillRule.NO_RAIN));
    assertThat(reading.series().value(Quantity.MINIMUM_C, 4)).isCloseTo(10, within(1e-12));
    assertThat(reading.series().value(Quantity.WIND_M_PER_S, 4)).isNaN();
    assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("3 days were filled"));
  }

  @Test
  void refusesFourMissingDaysUnlessAskedToFill() {
    assertThat(faults(may(9, 4, 5, 6, 7)))
        .singleElement()
        .asString()
        .contains("2015-05-04 to 2015-05-07", "4 days", "--fill");
    WeatherReading filled = WeatherFile.read(new SourceText("days.csv", may(9, 4, 5, 6, 7)), FILL);
    assertThat(filled.filledDays()).hasSize(4);
  }

  @Test
  void fillsLongGapsFromTheSameDayOfOtherYears() {
    String full = Examples.text("new-york-2012-2015.csv").text();
    String gap =
        full.lines()
            .filter(line -> !line.matches("New York,2013-07-(0[1-9]|10).*"))
            .collect(Collectors.joining("\n"));
    WeatherSeries whole = read(full).series();
    WeatherReading filled = WeatherFile.read(new SourceText("days.csv", gap), FILL);
    LocalDate day = LocalDate.of(2013, 7, 4);
    double mean =
        IntStream.of(2012, 2014, 2015)
            .mapToDouble(year -> whole.value(Quantity.RAIN_MM, whole.indexOf(day.withYear(year))))
            .average()
            .orElseThrow();
    assertThat(filled.filledDays()).hasSize(10);
    assertThat(filled.series().value(Quantity.RAIN_MM, whole.indexOf(day)))
        .isCloseTo(mean, within(1e-12));
    assertThat(filled.filled())
        .allSatisfy(v -> assertThat(v.rule()).isEqualTo(FillRule.SAME_DAY_OF_OTHER_YEARS));
  }

  @Test
  void aFilledTemperatureNeverCrossesTheMeasuredOne() {
    WeatherReading reading =
        read(
            HEADER
                + """
                2015-05-01,30,20,0,2
                2015-05-02,12,,0,2
                2015-05-03,30,20,0,2
                """);
    assertThat(reading.series().value(Quantity.MINIMUM_C, 1)).isEqualTo(12);
    assertThat(reading.filled()).singleElement().extracting(FilledValue::value).isEqualTo(12.0);
  }

  @Test
  void picksTheSiteAskedForAndRefusesToGuess() {
    String two =
        """
        location,date,temp_max,temp_min,precipitation,wind
        Upper meadow,2015-05-01,15,5,0,2
        Lower meadow,2015-05-01,17,7,0,2
        """;
    assertThat(faults(two))
        .singleElement()
        .asString()
        .contains("2 locations", "\"Upper meadow\"", "\"Lower meadow\"", "--site");
    WeatherReading lower =
        WeatherFile.read(new SourceText("days.csv", two), new Choice("Lower meadow", false));
    assertThat(lower.place()).isEqualTo("Lower meadow");
    assertThat(lower.series().value(Quantity.MAXIMUM_C, 0)).isEqualTo(17);
    assertThat(
            faultsOf(
                () ->
                    WeatherFile.read(
                        new SourceText("days.csv", two), new Choice("Middle meadow", false))))
        .singleElement()
        .asString()
        .contains("no location \"Middle meadow\"");
    assertThat(
            faultsOf(
                () -> WeatherFile.read(new SourceText("days.csv", may(3)), new Choice("x", false))))
        .singleElement()
        .asString()
        .contains("no column location");
  }

  @Test
  void sortsDaysOutOfOrderAndSaysSo() {
    WeatherReading reading =
        read(HEADER + "2015-05-02,16,6,0,2\n2015-05-01,15,5,0,2\n2015-05-03,17,7,0,2\n");
    assertThat(reading.series().value(Quantity.MAXIMUM_C, 0)).isEqualTo(15);
    assertThat(reading.notes())
        .anySatisfy(note -> assertThat(note).contains("out of order", "line 3"));
  }

  /** One bad line after a good one: the line, and words the sentence must have. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2015-05-01,15,5,0,2     | stands here and on line 2
          2015-02-31,15,5,0,2     | a day that exists
          0000-05-02,15,5,0,2     | years 1700 to 2200
          02/05/2015,15,5,0,2     | write year, month and day
          ,15,5,0,2               | the date is missing
          2015-05-02,warm,5,0,2   | not a number
          2015-05-02,NaN,5,0,2    | not a number
          2015-05-02,-9999,5,0,2  | from -90 to 60
          2015-05-02,75.2,55,0,2  | from -90 to 60
          2015-05-02,15,-91,0,2   | from -90 to 60
          2015-05-02,5,15,0,2     | below the minimum
          2015-05-02,15,5,-0.1,2  | from 0 to 2000
          2015-05-02,15,5,2001,2  | from 0 to 2000
          2015-05-02,15,5,0,-1    | from 0 to 115
          2015-05-02,15,5,0,116   | from 0 to 115
          2015-05-02,15,5,"0,5",2 | decimal comma
          2015-05-02,15,5,0       | 4 cells
          2015-05-02,15,5,0,2,9   | 6 cells
          """)
  void refusesABadLine(String line, String words) {
    assertThat(faults(HEADER + "2015-05-01,15,5,0,2\n" + line + "\n"))
        .first()
        .asString()
        .contains("days.csv, line 3", words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''                                          | empty
          date,temp_max,temp_min,precipitation        | no days
          date,temp_mx,temp_min,precipitation         | perhaps the one called "temp_mx"
          temp_max,temp_min,precipitation             | no column date
          date,temp_max,tmax_c,temp_min,precipitation | mean the same
          date,temp_max,temp_max,temp_min,precipitation | two columns
          """)
  void refusesABadHeader(String text, String words) {
    assertThat(faults(text)).anySatisfy(fault -> assertThat(fault).contains("days.csv", words));
  }

  @ParameterizedTest
  @CsvSource({"101,40,from 1 to 100", "0,0,from 1 to 100", "50,-1,from 0 to 100", "40,60,below"})
  void refusesHumidityThatCannotBe(String maximum, String minimum, String words) {
    String header =
        "date,temp_max,temp_min,precipitation,humidity_max_percent,humidity_min_percent\n";
    assertThat(faults(header + "2015-05-01,15,5,0,%s,%s\n".formatted(maximum, minimum)))
        .first()
        .asString()
        .contains("line 2", words);
  }

  @Test
  void refusesTwoDecimalMarksInOneFile() {
    assertThat(faults("date;temp_max;temp_min;precipitation\n2015-05-01;15,5;5.5;0\n"))
        .singleElement()
        .asString()
        .contains("decimal commas (line 2)", "decimal points (line 2)");
  }

  @Test
  void reportsAllBadLinesAtOnceButNotAMillionOfThem() {
    String bad =
        IntStream.range(0, 1000).mapToObj(i -> "x,1,1,1,1\n").collect(Collectors.joining());
    assertThat(faults(HEADER + bad)).hasSize(101).last().asString().contains("900 more faults");
  }

  @Test
  void refusesAnUnclosedQuotationMark() {
    assertThat(faults(HEADER + "2015-05-01,15,5,0,2\n\"2015-05-02,15,5,0,2\n"))
        .singleElement()
        .asString()
        .contains("line 3", "quotation marks");
  }

  @Test
  void readsOnBelowARowWithBrokenQuotationMarks() {
    assertThat(faults(HEADER + "2015-05-01,\"15\"x,5,0,2\nMay,15,5,0,2\n"))
        .satisfiesExactly(
            each -> assertThat(each).contains("line 2", "quotation marks"),
            each -> assertThat(each).contains("line 3, date"));
  }
}
