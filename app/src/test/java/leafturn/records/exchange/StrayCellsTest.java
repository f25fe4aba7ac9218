package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A row with a cell too many or too few is one fault beside those of the other rows. */
class StrayCellsTest extends ImportingTest {
  private static void assertTold(Preview preview) {
    assertThat(preview.ready()).isFalse();
    assertThat(preview.faults().kept())
        .extracting(fault -> fault.place() + ": " + fault.sentence())
        .satisfiesExactly(
            each ->
                assertThat(each)
                    .matches("line 2: It has \\d cells, but the header names 3 columns."),
            each -> assertThat(each).startsWith("line 4: Its quotation marks are not in order"),
            each -> assertThat(each).startsWith("line 3, column A"),
            each -> assertThat(each).startsWith("line 5, column A"));
    assertThat(preview.arrivals().count()).isEqualTo(1);
  }

  @Test
  void inALog() {
    assertTold(
        book.log(
            "date,what,water_mm\n2015-05-01,watered,12,5\nMay,watered,12\n"
                + "2015-05-02,\"watered,12\nJune,watered,12\n2015-05-03,watered,12\n",
            ImportBook.FRONT));
  }

  @Test
  void inATableOfProperties() {
    assertTold(
        book.properties(
            "property,latitude,time_zone\nFern Row,40.5\n,40,UTC\n"
                + "Brook,\"40\" N,UTC\n,41,UTC\nHill,40.5,UTC\n"));
  }

  @Test
  void inWeather() {
    assertTold(
        book.weather(
            "date,tmin_c,tmax_c\n2015-05-01,1\nMay,1,9\n"
                + "2015-05-02,\"1,9\nJune,1,9\n2015-05-03,1,9\n",
            false));
  }

  @Test
  void aTableOfStrayCellsAloneIsNotCalledEmpty() {
    assertThat(book.weather("date,tmin_c,tmax_c\n2015-05-01,1\n", false).faults().kept())
        .singleElement()
        .satisfies(fault -> assertThat(fault.sentence()).contains("2 cells"));
  }
}
