package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;

import leafturn.quantity.Units;
import leafturn.trials.design.layout.TapedPlace;
import org.junit.jupiter.api.Test;

/** Places of a layout in the units of a reader. */
class TapeWordsTest {
  private static final TapedPlace PLACE = new TapedPlace(3, 4, 12.3, 8.45, true);

  @Test
  void aPlaceIsToldByTwoTapes() {
    assertThat(new TapeWords(Units.METRIC).place(PLACE))
        .isEqualTo("12.30 m from A, 8.45 m from B, on the left from A to B");
    assertThat(new TapeWords(Units.US).place(PLACE))
        .isEqualTo("40.35 ft from A, 27.72 ft from B, on the left from A to B");
  }

  @Test
  void sentencesOfALayoutAreToldInFeet() {
    String metric = "Room 2: 592 m² can be measured, plots 1.59 m wide, 36 mm deep.";
    assertThat(new TapeWords(Units.METRIC).sentence(metric)).isEqualTo(metric);
    assertThat(new TapeWords(Units.US).sentence(metric))
        .isEqualTo("Room 2: 6372.2 ft² can be measured, plots 5.22 ft wide, 36 mm deep.");
  }
}
