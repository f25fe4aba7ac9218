package leafturn.records;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Dates as people read them. */
class DatesTest {
  @Test
  void theDatesOfASentenceAreWrittenOut() {
    assertThat(Dates.inWords("Left out from 2026-05-04 on (2026-10-12, late)."))
        .isEqualTo("Left out from 4 May 2026 on (12 October 2026, late).");
    assertThat(Dates.inWords("It ended on 2026-10-12.")).isEqualTo("It ended on 12 October 2026.");
  }

  @Test
  void namesOfFilesAndWhatIsNoDayStayAsTheyAre() {
    String sentence = "Read from plots-2026-05-04.csv, 2026-05-04.csv and 2026-13-01.";
    assertThat(Dates.inWords(sentence)).isEqualTo(sentence);
  }
}
