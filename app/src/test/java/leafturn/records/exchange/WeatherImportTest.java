package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.Examples;
import leafturn.records.SourceText;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.exchange.Findings.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeatherImportTest extends ImportingTest {
  private static final String HEADER = "date,tmin_c,tmax_c,rain_mm,humidity_min_percent\n";

  private List<StationDay> days() {
    return book.book().read(reader -> StationDays.of(reader, ImportBook.STATION));
  }

  @Test
  void theExampleWeatherComesInOnce() {
    String csv = Examples.text("new-york-2012-2015.csv").text();
    Preview first = book.weather(csv, false);
    assertThat(first.faults().kept()).isEmpty();
    assertThat(first.notes()).containsExactly("Not used: \"weather\".");
    book.write(first);
    assertThat(days()).hasSize((int) csv.lines().count() - 1);
    Preview again = book.weather(csv, false);
    assertThat(again.arrivals().count()).isZero();
    assertThat(again.alreadyThere()).isEqualTo(days().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "2015-05-28,10,9,0,|line 2, column C / tmax_c|9 lies below the lowest value of the day, 10",
        "2015-05-28,-100,9,0,|line 2, column B / tmin_c|-100 is out of range; give a number from -90",
        "2015-05-28,1,9,-9999,|line 2, column D / rain_mm|-9999 is out of range",
        "2015-05-28,1,9,trace,|line 2, column D / rain_mm|\"trace\" is not a number",
        "2015-05-28,1,9,1,50%|line 2, column E / humidity_min_percent|is not a number",
        "May,1,9,1,|line 2, column A / date|\"May\" is not a date",
        "2026-01-02,1,9,1,|line 2, column A / date|2 January 2026 has not come yet, so nothing was measured"
      })
  void everyFaultNamesItsCell(String row, String place, String sentence) {
    assertThat(book.weather(HEADER + row, false).faults().kept())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.place()).isEqualTo(place);
              assertThat(fault.sentence()).containsIgnoringCase(sentence);
            });
  }

  @Test
  void aDayThatStandsTwiceAndTwoPlacesAreTold() {
    assertThat(book.weather("date,rain_mm\n2015-05-28,1\n2015-05-28,2", false).faults().kept())
        .containsExactly(
            new Finding(
                "line 3, column A / date", "2015-05-28 stands in line 2 too; keep one of them."));
    assertThat(
            book.weather("location,date,rain_mm\nA,2015-05-28,1\nB,2015-05-29,2", false)
                .faults()
                .kept())
        .extracting(Finding::sentence)
        .containsExactly("It holds the weather of 2 places (\"A\", ...); keep the rows of one.");
  }

  @Test
  void aDayWithoutValuesSaysNothing() {
    Preview preview = book.weather(HEADER + "2015-05-28,,,,\n2015-05-29,1,2,,\n", false);
    assertThat(preview.faults().kept()).isEmpty();
    assertThat(preview.arrivals().days()).hasSize(1);
  }

  @Test
  void unitsOfTheUsAreTurnedIntoOurs() {
    Preview preview = book.weather("Date,Tmin F,Tmax F,Rain in\n2015-05-28,50,68,0.5", false);
    assertThat(preview.arrivals().days())
        .containsExactly(
            new StationDay(
                LocalDate.of(2015, 5, 28),
                Map.of(
                    Quantity.MINIMUM_C, 10.0, Quantity.MAXIMUM_C, 20.0, Quantity.RAIN_MM, 12.7)));
  }

  @Test
  void theBooksValueStandsUnlessItIsToBeReplaced() {
    book.write(book.weather("date,tmin_c,tmax_c\n2015-05-28,5,15", false));
    String other = "date,tmax_c,rain_mm\n2015-05-28,16,2";
    Preview kept = book.weather(other, false);
    assertThat(kept.conflicts().kept())
        .containsExactly(new Finding("line 2", "The book has 28 May 2015: from 5 °C, to 15 °C."));
    assertThat(kept.arrivals().days().get(0).values())
        .containsEntry(Quantity.MAXIMUM_C, 15.0)
        .containsEntry(Quantity.RAIN_MM, 2.0);
    Preview replaced = book.weather(other, true);
    assertThat(replaced.conflicts().kept()).isEmpty();
    assertThat(replaced.remarks().count()).isEqualTo(1);
    book.write(replaced);
    assertThat(days().get(0).values())
        .containsEntry(Quantity.MINIMUM_C, 5.0)
        .containsEntry(Quantity.MAXIMUM_C, 16.0)
        .containsEntry(Quantity.RAIN_MM, 2.0);
  }

  @Test
  void whatBookAndTableContradictIsTold() {
    book.write(book.weather("date,tmin_c\n2015-05-28,5", false));
    assertThat(book.weather("date,tmax_c\n2015-05-28,4", false).faults().kept())
        .singleElement()
        .extracting(Finding::sentence)
        .isEqualTo(
            "Line 2: the book and the table together have a minimum above the maximum; correct"
                + " one.");
  }

  @Test
  void daysOfTheArchiveComeInWithoutFilledGaps() {
    String lines =
        """
        XX000000001,20150528,TMAX,211,,,S,
        XX000000001,20150528,TMIN,100,,,S,
        XX000000001,20150528,PRCP,0,,,S,
        XX000000001,20150530,TMAX,222,,,S,
        XX000000001,20150530,TMIN,111,,,S,
        XX000000001,20150530,MDPR,50,,,S,
        XX000000001,20150530,DAPR,2,,,S,
        XX000000001,20150531,TMAX,222,,,S,
        XX000000001,20150531,TMIN,111,,,S,
        XX000000001,20150531,PRCP,10,,,S,
        """;
    SourceText file = new SourceText("x.csv", lines);
    Preview preview =
        book.book().read(reader -> WeatherImport.look(reader, file, ImportBook.weatherAsk(false)));
    assertThat(preview.arrivals().days())
        .extracting(day -> day.day().getDayOfMonth() + " " + day.values().get(Quantity.RAIN_MM))
        .containsExactly("28 0.0", "29 2.5", "30 2.5", "31 1.0");
    assertThat(preview.notes()).contains("Station of the file: XX000000001.");
    assertThat(preview.ready()).isTrue();
  }
}
