package leafturn.records.exchange;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.book.Today;
import leafturn.records.exchange.Findings.Finding;
import leafturn.records.table.Table;
import org.junit.jupiter.api.Test;

/** Entries of one day, the day that is today, and the units in which an import is told. */
class LogImportDaysTest extends ImportingTest {
  @Test
  void whatIsSaidTwiceCountsTwiceAndIsRemarked() {
    String csv = "date,what,water_mm\n2015-05-28,watered,5\n2015-05-28,watered,5\n";
    Preview preview = book.log(csv, ImportBook.FRONT);
    assertThat(preview.arrivals().count()).isEqualTo(2);
    assertThat(preview.remarks().kept())
        .containsExactly(
            new Finding("line 3", "It says the same as line 2; both count unless you remove one."));
    book.write(preview);
    assertThat(book.log(csv, ImportBook.FRONT).alreadyThere()).isEqualTo(2);
    Preview third = book.log(csv + "2015-05-28,watered,5\n", ImportBook.FRONT);
    assertThat(third.arrivals().count()).isEqualTo(1);
  }

  @Test
  void aMowingIsToldWithItsTimeBagsWeightAndMinutes() {
    String csv =
        "date,what,clippings,time,bags,weight_kg,minutes\n"
            + "2015-05-28,mown,collected,14:05,3,20,45\n2015-05-29,mown,collected,,1,,1\n";
    assertThat(words(csv, Units.METRIC))
        .containsExactly(
            "28 May 2015 at 14:05 mown, collected, 3 bags, 20 kg, 45 minutes",
            "29 May 2015 mown, collected, 1 bag, 1 minute");
    assertThat(words(csv, Units.US))
        .first()
        .isEqualTo("28 May 2015 at 14:05 mown, bagged, 3 bags, 44.09 lb, 45 minutes");
  }

  private List<String> words(String csv, Units units) {
    Today today = new Today(ImportBook.TODAY, Instant.EPOCH);
    LogImport.Ask ask = new LogImport.Ask(ImportBook.FRONT, today, units);
    return look(ImportBook.csv(csv), ask).arrivals().sheets().stream()
        .map(Arrivals.NewSheet::words)
        .toList();
  }

  @Test
  void aMowingThatIsSaidTwiceIsDoubled() {
    String csv = "date,what,clippings\n2015-05-28,mown,returned\n2015-05-28,mown,returned\n";
    Preview preview = book.log(csv, ImportBook.FRONT);
    assertThat(preview.ready()).isFalse();
    assertThat(onlyFault(preview).place()).isEqualTo("line 3");
    assertThat(onlyFault(preview).sentence())
        .startsWith("It says the same as line 2; remove one of them.")
        .contains("differs in its time or heights", "two_passes");
    String withIds =
        "id,date,what,clippings\n%s,2015-05-28,mown,returned\n%s,2015-05-28,mown,returned\n"
            .formatted(UUID.randomUUID(), UUID.randomUUID());
    Preview told = book.log(withIds, ImportBook.FRONT);
    assertThat(told.faults().kept()).isEmpty();
    assertThat(told.arrivals().count()).isEqualTo(2);
    assertThat(told.remarks().count()).isEqualTo(1);
    book.write(told);
    assertThat(book.log(csv, ImportBook.FRONT).alreadyThere()).isEqualTo(2);
  }

  @Test
  void aSecondMowingOfADayIsRemarkedAndLetThrough() {
    String csv =
        """
        date,time,what,clippings,height_before_mm,height_after_mm
        2015-05-28,09:00,mown,returned,110,90
        2015-05-28,15:00,mown,collected,90,76
        """;
    Preview preview = book.log(csv, ImportBook.FRONT);
    assertThat(preview.faults().kept()).isEmpty();
    assertThat(preview.arrivals().count()).isEqualTo(2);
    assertThat(preview.remarks().kept())
        .containsExactly(
            new Finding(
                "line 3",
                "That day line 2 has mown too: 28 May 2015 at 09:00 mown, from 110 mm, to 90 mm, returned."
                    + " Both count unless you remove one."));
  }

  @Test
  void cutsOfOneDayThatCannotBothBeAreRefusedAsTheLogRefusesThem() {
    String csv =
        """
        date,what,clippings,height_before_mm,height_after_mm
        2015-05-28,mown,returned,110,76
        2015-05-28,mown,returned,108,76
        """;
    Preview preview = book.log(csv, ImportBook.FRONT);
    assertThat(preview.ready()).isFalse();
    assertThat(onlyFault(preview).place()).isEqualTo("line 3, column D / height_before_mm");
    assertThat(onlyFault(preview).sentence())
        .startsWith("That day line 2 has this: 28 May 2015 mown, from 110 mm, to 76 mm")
        .contains("Both cannot be");
    book.write(book.log(csv.lines().limit(2).collect(joining("\n")), ImportBook.FRONT));
    assertThat(onlyFault(book.log(csv, ImportBook.FRONT)).sentence())
        .startsWith("That day the book has this: 28 May 2015 mown, from 110 mm");
  }

  @Test
  void todayIsThatOfTheTimeZoneOfEachLawn() {
    // In New York, where the lawns lie, it is still the evening of 15 June.
    Today now = new Today(null, Instant.parse("2015-06-16T02:30:00Z"));
    LogImport.Ask ask = new LogImport.Ask(ImportBook.FRONT, now, Units.METRIC);
    assertThat(look("2015-06-15", ask).faults().kept()).isEmpty();
    assertThat(onlyFault(look("2015-06-16", ask)).sentence())
        .contains("16 June 2015 has not come yet: at this lawn it is 15 June 2015");
  }

  @Test
  void linesAreToldInTheUnitsOfWhoeverReadsThem() {
    LogImport.Ask ask =
        new LogImport.Ask(ImportBook.FRONT, new Today(ImportBook.TODAY, Instant.EPOCH), Units.US);
    Table table =
        ImportBook.csv(
            "date,what,clippings,height_after_in,fast_n_lb_1000_ft2\n"
                + "2015-05-28,mown,bagged,3,\n2015-05-29,fed,,,1\n2015-05-30,mown,left,40,\n"
                + "2015-05-27,mown,bagged,2.0157,\n");
    Preview preview = look(table, ask);
    assertThat(preview.arrivals().sheets())
        .extracting(Arrivals.NewSheet::words)
        .containsExactly(
            "28 May 2015 mown, to 3 in, bagged",
            "29 May 2015 fed, fast N 1 lb/1000 ft²",
            "27 May 2015 mown, to 2.02 in, bagged");
    assertThat(onlyFault(preview).sentence())
        .startsWith("40 is out of range; give a number from 0.12 to 19.68, in.");
  }

  @Test
  void theSameWorkOnOneDayIsRemarked() {
    book.write(book.log("date,what,water_mm\n2015-05-28,watered,5", ImportBook.FRONT));
    Preview preview = book.log("date,what,water_mm\n2015-05-28,watered,6", ImportBook.FRONT);
    assertThat(preview.ready()).isTrue();
    assertThat(preview.remarks().kept())
        .containsExactly(
            new Finding(
                "line 2",
                "That day the book has watered too: 28 May 2015 watered, 5 mm. Both count unless you"
                    + " remove one."));
  }

  private static Finding onlyFault(Preview preview) {
    assertThat(preview.faults().kept()).hasSize(1);
    return preview.faults().kept().get(0);
  }

  private Preview look(String day, LogImport.Ask ask) {
    return look(ImportBook.csv("date,what,clippings\n" + day + ",mown,returned\n"), ask);
  }

  private Preview look(Table table, LogImport.Ask ask) {
    Reading reading = Reading.byHeadings(table, LogColumns.ALL);
    return book.book().read(reader -> LogImport.look(reader, table, reading, ask));
  }

  @Test
  void theLineOfAnEntryTellsLeavesThatHideTheTurfAndWhatWasNotThere() {
    Preview preview =
        book.log(
            "date,what,seen,not_there,leaf_cover_fraction\n2015-05-28,observed,,wet,40%\n",
            ImportBook.FRONT);
    assertThat(preview.faults().kept()).isEmpty();
    assertThat(preview.arrivals().sheets())
        .extracting(Arrivals.NewSheet::words)
        .containsExactly("28 May 2015 observed, not there: wet, leaves on 40 % of the turf");
  }
}
