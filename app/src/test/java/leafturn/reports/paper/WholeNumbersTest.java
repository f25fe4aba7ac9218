package leafturn.reports.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stands on one line of paper. */
class WholeNumbersTest {
  private static List<String> parts(String text) {
    WholeNumbers breaks = new WholeNumbers();
    breaks.setText(text);
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int at = breaks.next(); at != BreakIterator.DONE; at = breaks.next()) {
      parts.add(text.substring(from, at));
      from = at;
    }
    return parts;
  }

  @Test
  void codesOfPlotsAndNumbersStayWholeAndWordsMayBeParted() {
    assertThat(parts("B10-1, B10-12 −0.35 split-plot"))
        .containsExactly("B10-1, ", "B10-12 ", "−0.35 ", "split-", "plot");
  }
}
