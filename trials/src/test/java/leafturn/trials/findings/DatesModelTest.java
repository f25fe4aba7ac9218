package leafturn.trials.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.trials.design.Outcome;
import org.junit.jupiter.api.Test;

/** What the model of all dates says of single readings. */
class DatesModelTest {
  @Test
  void aReadingThatLiesApartIsNamedByPlotAndDate() {
    Yards yards = new Yards(5, 8, 0, 20, 55, 90);
    List<PlotReading> readings = new ArrayList<>(yards.readings());
    PlotReading one = readings.get(9);
    readings.set(9, new PlotReading(one.plot(), one.date(), one.day(), one.value() + 30, false));
    Outcome outcome = Yards.outcome(1.0, true);
    Findings found =
        Findings.of(
            yards.facts(), yards.plots(), List.of(outcome), Map.of(outcome.name(), readings));
    DatesModel dates = Objects.requireNonNull(found.outcomes().get(0).support().dates());
    assertThat(dates.warnings())
        .filteredOn(warning -> warning.contains("lies apart"))
        .singleElement()
        .asString()
        .startsWith("Plot %s on %s lies apart".formatted(one.plot(), one.date()));
  }

  @Test
  void meansAndDifferencesOfADateAgreeWhereReadingsAreMissing() {
    Yards yards = new Yards(7, 8, 0, 20, 55);
    List<PlotReading> readings = new ArrayList<>(yards.readings());
    readings.removeIf(each -> each.plot().equals("yard 03 r") && each.day() == 55);
    Outcome outcome = Yards.outcome(1.0, true);
    Findings found =
        Findings.of(
            yards.facts(), yards.plots(), List.of(outcome), Map.of(outcome.name(), readings));
    DatesModel model = Objects.requireNonNull(found.outcomes().get(0).support().dates());
    List<Double> returned = Objects.requireNonNull(model.means().get("returned"));
    List<Double> collected = Objects.requireNonNull(model.means().get("collected"));
    for (int date = 0; date < 3; date++) {
      assertThat(returned.get(date) - collected.get(date))
          .isCloseTo(model.differences().get(0).dates().get(date).difference(), within(1e-10));
    }
  }

  @Test
  void oneYardWithTheSameDifferenceOnEveryDateHasNoError() {
    Yards yards = new Yards(3, 1, 0, 20, 55);
    List<PlotReading> readings = new ArrayList<>();
    for (Plot plot : yards.plots()) {
      for (int day : new int[] {0, 20, 55}) {
        double value = 5.3 + 0.1 * day + (plot.arm().equals("returned") ? 1 : 0);
        readings.add(new PlotReading(plot.code(), "day " + day, day, value, false));
      }
    }
    Outcome outcome = Yards.outcome(2.0, true);
    Findings found =
        Findings.of(
            yards.facts(), yards.plots(), List.of(outcome), Map.of(outcome.name(), readings));
    AreasDifference areas = Objects.requireNonNull(found.outcomes().get(0).areas());
    assertThat(areas.difference()).isCloseTo(1, within(1e-12));
    assertThat(areas.samplingError()).isNaN();
    assertThat(areas.interval()).isNull();
  }
}
