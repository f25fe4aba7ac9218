package leafturn.trials.findings;

import static org.assertj.core.api.Assertions.assertThat;

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
}
