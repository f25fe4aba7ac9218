package leafturn.trials.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.trials.analysis.paired.PairedDifference.Interval;
import leafturn.trials.design.Outcome;
import org.junit.jupiter.api.Test;

/**
 * One yard split once: the interval is that of the summary it stands beside, a sum of the dates'
 * differences with weights; quantiles of t from tables (3.1824 at 3 df, 4.3027 at 2 df).
 */
class AreasDifferenceClosedFormTest {
  private static final double[] DAYS = {0, 5, 10, 200};
  private static final double[] APART = {4, 6, 1.5, 7};

  private static AreasDifference of(Outcome.Summary summary) {
    Yards yards = new Yards(3, 1, DAYS);
    List<PlotReading> readings = new ArrayList<>();
    for (Plot plot : yards.plots()) {
      for (int date = 0; date < DAYS.length; date++) {
        double value = 20 + (plot.arm().equals("returned") ? APART[date] : 0);
        readings.add(new PlotReading(plot.code(), "day " + DAYS[date], DAYS[date], value, false));
      }
    }
    Outcome outcome =
        new Outcome(
            "quality",
            Outcome.Kind.MEASUREMENT,
            "",
            null,
            null,
            Outcome.Scale.IDENTITY,
            summary,
            2.0,
            true);
    Findings found =
        Findings.of(
            yards.facts(), yards.plots(), List.of(outcome), Map.of(outcome.name(), readings));
    return Objects.requireNonNull(found.outcomes().get(0).areas());
  }

  private static void assertReach(AreasDifference areas, double reach) {
    Interval interval = Objects.requireNonNull(areas.interval());
    assertThat(interval.upper() - areas.difference()).isCloseTo(reach, within(1e-3));
    assertThat(areas.difference() - interval.lower()).isCloseTo(reach, within(1e-3));
  }

  @Test
  void ofUnevenDatesTheLongSpansCountMost() {
    AreasDifference areas = of(Outcome.Summary.SEASON_MEAN);
    double deviation = Math.sqrt((0.390625 + 1.890625 + 9.765625 + 5.640625) / 3);
    double weights = Math.sqrt(2.5 * 2.5 + 5 * 5 + 97.5 * 97.5 + 95 * 95) / 200;
    assertThat(areas.difference()).isCloseTo((10 + 30 + 146.25 + 665) / 200, within(1e-9));
    assertReach(areas, 3.18245 * deviation * weights);
  }

  @Test
  void aLastDateIsKnownAsOneDateIs() {
    AreasDifference areas = of(Outcome.Summary.LAST_DATE);
    assertThat(areas.difference()).isCloseTo(7, within(1e-9));
    assertReach(areas, 3.18245 * Math.sqrt((0.390625 + 1.890625 + 9.765625 + 5.640625) / 3));
  }

  @Test
  void aSlopeIsKnownByTheScatterAboutItsLine() {
    AreasDifference areas = of(Outcome.Summary.SLOPE);
    double meanDay = 53.75;
    double bottom = 0;
    double top = 0;
    double all = 0;
    for (int date = 0; date < DAYS.length; date++) {
      bottom += (DAYS[date] - meanDay) * (DAYS[date] - meanDay);
      top += (DAYS[date] - meanDay) * APART[date];
      all += (APART[date] - 4.625) * (APART[date] - 4.625);
    }
    double deviation = Math.sqrt((all - top * top / bottom) / 2);
    assertThat(areas.difference()).isCloseTo(top / bottom, within(1e-9));
    assertReach(areas, 4.30265 * deviation / Math.sqrt(bottom));
  }
}
