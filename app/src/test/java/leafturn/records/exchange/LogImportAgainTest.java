package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.Findings.Finding;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.Test;

/** A past log whose entries were corrected or withdrawn since they came into the book. */
class LogImportAgainTest extends ImportingTest {
  @Test
  void whatWasCorrectedOrWithdrawnSinceIsAConflictAndStays() {
    String csv =
        "date,what,water_mm\n2015-05-28,watered,5\n2015-05-29,watered,6\n2015-05-30,watered,7\n";
    book.write(book.log(csv, ImportBook.FRONT));
    List<Sheet<LogSheet>> entries = book.entries(ImportBook.FRONT);
    LogSheet other =
        Kind.LOG.read(
            ImportBook.json(
                "{'lawn': '%s', 'day': '2015-05-28', 'what': 'watered', 'waterMm': 9}"
                    .formatted(ImportBook.FRONT)));
    book.book()
        .write(
            "Bo",
            writing -> {
              writing.revise(Kind.LOG, entries.get(0).id(), 1, other);
              return writing.withdraw(Kind.LOG, entries.get(1).id(), 1);
            });
    Preview again = book.log(csv, ImportBook.FRONT);
    assertThat(again.arrivals().count()).isZero();
    assertThat(again.alreadyThere()).isEqualTo(1);
    assertThat(again.conflicts().kept())
        .containsExactly(
            new Finding(
                "line 2",
                "This entry says something else in the book: 28 May 2015 watered, 9 mm. The book"
                    + " stays as it is."),
            new Finding("line 3", WITHDRAWN.formatted("29 May 2015 watered, 6 mm")));
  }

  private static final String WITHDRAWN =
      "This entry is in the book but withdrawn, so it does not count: %s. It stays so; to bring it"
          + " back, restore it on its own page.";

  @Test
  void aRowAlikeToAWithdrawnEntryIsToldSoUnlessItsIdSaysThatItIsAnother() {
    String watered = "2015-05-28,watered,5";
    book.write(book.log("date,what,water_mm\n" + watered + "\n", ImportBook.FRONT));
    String id = book.entries(ImportBook.FRONT).get(0).id();
    book.book().write("Bo", writing -> writing.withdraw(Kind.LOG, id, 1));
    String withId = "date,what,water_mm,id\n" + watered + ",";
    for (String table : List.of("date,what,water_mm\n" + watered, withId + id)) {
      Preview withdrawn = book.log(table + "\n", ImportBook.FRONT);
      assertThat(withdrawn.alreadyThere()).isZero();
      assertThat(withdrawn.ready()).isFalse();
      assertThat(withdrawn.conflicts().kept())
          .containsExactly(new Finding("line 2", WITHDRAWN.formatted("28 May 2015 watered, 5 mm")));
    }
    String other = withId + "00000000-0000-4000-8000-00000000abcd\n";
    Preview another = book.log(other, ImportBook.FRONT);
    assertThat(another.conflicts().kept()).isEmpty();
    assertThat(another.arrivals().count()).isEqualTo(1);
    book.write(another);
    Preview again = book.log(other, ImportBook.FRONT);
    assertThat(again.arrivals().count()).isZero();
    assertThat(again.alreadyThere()).isEqualTo(1);
  }
}
