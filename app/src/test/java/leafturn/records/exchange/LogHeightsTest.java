package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import leafturn.records.exchange.Findings.Finding;
import org.junit.jupiter.api.Test;

class LogHeightsTest extends ImportingTest {
  @Test
  void heightsThatLookLikeInchesOrFitNeitherLawnNorMowerAreToldBeforeAnythingIsAdded() {
    book.keep(ImportBook.FRONT, "'heightMm': 64", "[51, 89]");
    book.keep(ImportBook.BACK, "'heightMm': 64", "[]");
    String head = "date,what,clippings,height_after_mm\n2015-05-28,mown,returned,";
    Preview inches = book.log(head + "3.0", ImportBook.FRONT);
    assertThatList(inches.notes()).singleElement().asString().contains("looks like inches");
    assertThat(inches.remarks().kept())
        .singleElement()
        .extracting(Finding::sentence)
        .isEqualTo("3 mm looks like 3 in: this lawn is kept at 64 mm, which is 2.52 in.");
    assertThat(book.log(head + "25", ImportBook.FRONT).remarks().kept())
        .singleElement()
        .extracting(Finding::sentence)
        .asString()
        .contains("25 mm is no height of this mower, whose deck goes from 51 to 89 mm");
    assertThat(book.log(head + "140", ImportBook.BACK).remarks().kept())
        .singleElement()
        .extracting(Finding::sentence)
        .asString()
        .contains("140 mm is far from the 64 mm at which this lawn is kept");
    assertThat(book.log(head + "60", ImportBook.FRONT).remarks().count()).isZero();
  }

  @Test
  void aCutHigherThanAnyLawnIsCutIsAFaultInTheUnitOfItsColumn() {
    String row = "\n2015-05-28,mown,returned,";
    assertThat(
            book.log("date,what,clippings,height_after_mm" + row + "900", ImportBook.FRONT)
                .faults()
                .kept())
        .containsExactly(
            new Finding(
                "line 2, column D / height_after_mm",
                "900 is out of range; give a number from 3 to 500, mm."));
    assertThat(
            book.log("date,what,clippings,height_after_in" + row + "30", ImportBook.FRONT)
                .faults()
                .kept())
        .singleElement()
        .extracting(Finding::sentence)
        .asString()
        .startsWith("30 is out of range; give a number from 0.12 to 19.68, in.");
  }
}
