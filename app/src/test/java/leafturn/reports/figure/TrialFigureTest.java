package leafturn.reports.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import leafturn.reports.figure.TrialDatesFigure.Mark;
import org.junit.jupiter.api.Test;

/** Words of the figures of a trial that must not be lost. */
class TrialFigureTest {
  private static List<Mark> marks(int dates) {
    return IntStream.range(0, dates)
        .mapToObj(i -> new Mark("%d November".formatted(10 + i), 30 * i, 0.1 * i, -1, 1))
        .toList();
  }

  @Test
  void firstAndLastDateAreNamedAndTheSeasonToo() {
    Mark season = new Mark("season", 0, 0.2, -0.5, 0.9);
    for (TrialFormat format : TrialFormat.values()) {
      for (int dates = 2; dates <= 12; dates++) {
        String svg =
            new TrialDatesFigure("a − b", "figure", marks(dates), season, 0.5, false).draw(format);
        assertThat(svg)
            .as("%s, %d dates", format, dates)
            .contains(">10 November<", ">%d November<".formatted(9 + dates), ">season<");
      }
    }
  }

  /** Read in one go, "10 November season" would be one label. */
  @Test
  void theSeasonStandsApartFromTheLastDate() {
    Mark season = new Mark("season", 0, 0.2, -0.5, 0.9);
    for (TrialFormat format : TrialFormat.values()) {
      String svg =
          new TrialDatesFigure("a − b", "figure", marks(4), season, 0.5, false).draw(format);
      double gapPx =
          middle(svg, "season")
              - TextWidth.ofPx("season", format.typePx) / 2
              - middle(svg, "13 November")
              - TextWidth.ofPx("13 November", format.typePx) / 2;
      assertThat(gapPx).as("%s", format).isGreaterThanOrEqualTo(15.9);
    }
  }

  private static double middle(String svg, String words) {
    int at = svg.lastIndexOf(" x=\"", svg.indexOf(">" + words + "<")) + " x=\"".length();
    return Double.parseDouble(svg.substring(at, svg.indexOf('"', at)));
  }

  @Test
  void bothCurvesOfPowerAreNamedOnWideAndNarrowPages() {
    List<Integer> units = List.of(2, 10, 40);
    List<PowerFigure.Line> lines =
        List.of(
            new PowerFigure.Line("to find the difference", units, List.of(0.1, 0.9, 1.0)),
            new PowerFigure.Line("to show equivalence", units, List.of(0.0, 0.88, 1.0)));
    for (boolean wide : new boolean[] {true, false}) {
      assertThat(new PowerFigure("yards", 0.8, lines).draw(wide))
          .contains(">to find the difference<", ">to show equivalence<", ">chance (power)<");
    }
  }
}
