package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.time.LocalDate;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.Examples;
import leafturn.records.LogFile;
import leafturn.records.SourceText;
import leafturn.records.exchange.Findings.Finding;
import leafturn.records.exchange.Reading.DateOrder;
import leafturn.records.exchange.Reading.Pick;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.records.table.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogImportTest extends ImportingTest {
  @Test
  void aLogOfTheCommandLineComesInOnce() {
    String csv = Examples.text("linden-house-front.log.csv").text();
    int entries = LogFile.read(new SourceText("log", csv)).lines().size();
    Preview first = book.log(csv, ImportBook.FRONT);
    assertThat(first.faults().kept()).isEmpty();
    assertThat(first.arrivals().count()).isEqualTo(entries);
    assertThatList(book.entries(ImportBook.FRONT)).isEmpty();
    book.write(first);
    Preview again = book.log(csv, ImportBook.FRONT);
    assertThat(again.alreadyThere()).isEqualTo(entries);
    assertThat(again.arrivals().count()).isZero();
    assertThat(again.ready()).isFalse();
    book.write(first);
    assertThatList(book.entries(ImportBook.FRONT)).hasSize(entries);
  }

  @Test
  void yearsWithoutAMowingAreToldBeforeAnythingIsAdded() {
    String old =
        "date,what,clippings\n2012-06-03,mown,returned\n2013-06-03,mown,returned\n"
            + "2015-05-28,mown,returned\n";
    assertThatList(book.log(old, ImportBook.FRONT).notes())
        .singleElement()
        .asString()
        .contains(
            "Between 3 June 2013 and 28 May 2015", "tells no mowing", "leave out what is older");
    String one = "date,what,clippings\n2013-07-01,mown,returned\n2014-07-01,mown,returned\n";
    assertThatList(book.log(one, ImportBook.FRONT).notes()).isEmpty();
  }

  @Test
  void noMowingUpToTodayIsTold() {
    String old = "date,what,clippings\n2013-06-03,mown,returned\n2014-05-30,mown,returned\n";
    Preview preview = book.log(old, ImportBook.FRONT);
    assertThatList(preview.notes())
        .singleElement()
        .asString()
        .startsWith("Since 30 May 2014 the log of Front tells no mowing");
    book.write(preview);
    String since = "date,what,clippings\n2015-05-28,mown,returned\n";
    assertThatList(book.log(since, ImportBook.FRONT).notes()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "2015-06-16,mown,returned,,,|line 2, column A / date|16 June 2015 has not come yet: at this lawn it is 15 June 2015",
        "2015-02-31,mown,returned,,,|line 2, column A / date|\"2015-02-31\" is not a date",
        ",mown,returned,,,|line 2, column A / date|It is missing; give a date such as 2015-05-28.",
        "28/5/2015,mown,returned,,,|line 2, column A / date|choose day first or month first",
        "2015-05-28,mowed,returned,,,|line 2, column B / what|did you mean mown?",
        "2015-05-28,,returned,,,|line 2, column B / what|It is missing; give one of mown, fed",
        "2015-05-28,mown,,,,|line 2, column C / clippings|It is missing; give returned, collected, or",
        "2015-05-28,mown,mulched,,,|line 2, column C / clippings|give returned, collected, or",
        "2015-05-28,mown,300%,,,|line 2, column C / clippings|\"300%\" is out of range; give returned",
        "2015-05-28,mown,returned,2,,|line 2, column D / height_before_mm|2 is out of range",
        "2015-05-28,mown,returned,x,,|line 2, column D / height_before_mm|\"x\" is not a number",
        "2015-05-28,mown,returned,\"9,5\",,|line 2, column D / height_before_mm|decimal comma",
        "2015-05-28,mown,returned,,,9|line 2, column F / water_mm|it belongs to watered",
        "2015-05-28,watered,,,,|line 2, column F / water_mm|It is missing; give a number from 0 to 200",
        "2015-05-28,fed,,,,|line 2, fast_n_g_m2|at least one of fast_n_g_m2, slow_n_g_m2",
        "2015-05-28,mown,returned,,perhaps,|line 2, column E / two_passes|give yes or no."
      })
  void everyFaultNamesItsCellAndWhatWouldBeRight(String row, String place, String sentence) {
    Preview preview =
        book.log(
            "date,what,clippings,height_before_mm,two_passes,water_mm\n" + row, ImportBook.FRONT);
    assertThat(preview.faults().kept())
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.place()).isEqualTo(place);
              assertThat(fault.sentence())
                  .containsIgnoringCase(sentence)
                  .matches("[\"\\d\\p{Lu}].*[.?]");
            });
    assertThat(preview.ready()).isFalse();
  }

  @Test
  void wrongCellsAreToldWhileNoColumnIsTakenForTheDate() {
    Preview preview =
        book.log(
            "Datum,what,clippings,height_before_mm\n"
                + "01.05.2015,moan,returned,90\n"
                + "2015-05-15,mown,maybe,1200\n",
            ImportBook.FRONT);
    assertThat(preview.faults().kept())
        .extracting(Findings.Finding::place)
        .contains(
            "line 2, column B / what",
            "line 3, column C / clippings",
            "line 3, column D / height_before_mm")
        .noneMatch(place -> place.contains("date"));
    assertThat(preview.faults().kept())
        .anyMatch(fault -> fault.sentence().startsWith("No column is taken for date"));
  }

  @Test
  void allFaultsAreToldAtOnce() {
    Preview preview =
        book.log("date,what\n2015-13-01,fed\n2015-05-28,mown\nx,y\n", ImportBook.FRONT);
    assertThat(preview.faults().count()).isEqualTo(5);
    assertThat(preview.faults().kept())
        .extracting(Finding::place)
        .startsWith("line 2, column A / date");
  }

  @Test
  void columnsThatAreMissingOrTakenTwiceAreTold() {
    assertThat(book.log("day,whatt\n2015-05-28,mown", ImportBook.FRONT).faults().kept())
        .extracting(Finding::sentence)
        .containsExactly(
            "No column is taken for what was done (column \"what\"); choose it below, or add it. It"
                + " is perhaps the one called \"whatt\".");
    Table table = ImportBook.csv("date,what,a,b\n2015-05-28,watered,1,2");
    Column water = column("water_mm");
    Map<Integer, Pick> picks =
        Map.of(0, pick(column("date")), 1, pick(column("what")), 2, pick(water), 3, pick(water));
    Reading twice = new Reading(LogColumns.ALL, picks);
    Preview preview =
        book.book()
            .read(
                reader ->
                    LogImport.look(
                        reader, table, twice, ImportBook.ask(ImportBook.FRONT, ImportBook.TODAY)));
    assertThat(preview.faults().kept())
        .extracting(Finding::sentence)
        .containsExactly(
            "Two columns are taken for water given (column \"water_mm\"); choose one of them below.");
  }

  @Test
  void aRowMayNameItsLawn() {
    Preview preview =
        book.log(
            """
            property,lawn,date,what,water_mm
            Linden House,front,2015-05-28,watered,5
            ,linden-house-back,2015-05-28,watered,6
            ,Front,2015-05-28,watered,7
            Mill Race,Bakc,2015-05-28,watered,8
            ,,2015-05-28,watered,9
            Lindn House,Front,2015-05-28,watered,10
            """,
            null);
    assertThat(preview.faults().kept())
        .containsExactly(
            new Finding(
                "line 4, column B / lawn",
                "2 lawns are called \"Front\"; name the property too, or give the lawn's address"
                    + " (linden-house-front, mill-race-front)."),
            new Finding(
                "line 5, column B / lawn",
                "\"Bakc\" is no lawn of \"Mill Race\" in this book; valid names are Front."),
            new Finding("line 6, column B / lawn", "The lawn is missing; give its name."),
            new Finding(
                "line 7, column A / property",
                "\"Lindn House\" is no property in this book; did you mean Linden House?"));
    assertThat(preview.arrivals().sheets())
        .extracting(sheet -> sheet.content().lawn())
        .containsExactly(ImportBook.FRONT, ImportBook.BACK);
    assertThat(preview.arrivals().sheets())
        .extracting(Arrivals.NewSheet::words)
        .containsExactly(
            "Front, Linden House: 28 May 2015 watered, 5 mm",
            "Back, Linden House: 28 May 2015 watered, 6 mm");
  }

  @Test
  void otherHeadingsUnitsAndDatesAreReadAsChosen() {
    Table table = ImportBook.csv("Tag;Arbeit;Höhe vorher;Rest\n28.5.2015;mown;4,5;30%\n");
    Map<Integer, Pick> picks =
        Map.of(
            0,
            new Pick(column("date"), Units.METRIC, DateOrder.DAY_FIRST),
            1,
            pick(column("what")),
            2,
            new Pick(column("height_before_mm"), Units.US, DateOrder.YEAR_FIRST),
            3,
            pick(column("clippings")));
    Reading chosen = new Reading(LogColumns.ALL, picks);
    Preview preview =
        book.book()
            .read(
                reader ->
                    LogImport.look(
                        reader, table, chosen, ImportBook.ask(ImportBook.FRONT, ImportBook.TODAY)));
    assertThat(preview.faults().kept()).isEmpty();
    assertThat(preview.arrivals().sheets())
        .singleElement()
        .satisfies(
            sheet -> {
              LogSheet entry = (LogSheet) sheet.content();
              assertThat(entry.day()).isEqualTo(LocalDate.of(2015, 5, 28));
              assertThat(entry.done())
                  .isEqualTo(new Done.Mown(114.3, null, 0.3, null, null, null, null, false));
            });
  }

  @Test
  void headingsTellUnits() {
    Table table = ImportBook.csv("Date,What,Height before (in),fast N lb/1000 ft2\n");
    Reading reading = Reading.byHeadings(table, LogColumns.ALL);
    assertThat(reading.picks()).hasSize(4);
    assertThat(reading.picks().get(2))
        .isEqualTo(new Pick(column("height_before_mm"), Units.US, DateOrder.YEAR_FIRST));
    assertThat(reading.picks().get(3))
        .isEqualTo(new Pick(column("fast_n_g_m2"), Units.US, DateOrder.YEAR_FIRST));
  }

  private static Column column(String name) {
    return LogColumns.ALL.stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Pick pick(Column column) {
    return new Pick(column, Units.METRIC, DateOrder.YEAR_FIRST);
  }
}
