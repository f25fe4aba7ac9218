package leafturn.records.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.Examples;
import leafturn.records.InputException;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.Bag;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.observation.MeasuredReading;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How readings of the book come to one value for each plot and date. */
class BookFindingsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 12);

  private TrialSheet trial;
  private TrialLayout layout;

  @BeforeEach
  void plan() throws IOException {
    trial =
        TrialSheet.planned(
            new ObjectMapper().readTree(Files.readString(Examples.file("split-yards.trial.json"))),
            List.of());
    TrialPlan plan = BookPlan.of(trial);
    layout = TrialLayout.of(plan);
  }

  private static Reading soil(
      String plot, String value, @Nullable String unit, @Nullable String sample) {
    return MeasuredReading.of(plot, DAY, "soil_potassium", value, unit).sample(sample).reading();
  }

  private Findings findings(List<Reading> readings) {
    return BookFindings.of(
        new BookFindings.Basis(trial, List.of(), readings, true, ZoneOffset.UTC));
  }

  @Test
  void aBlindDuplicateCountsWithItsBagAndUnitsAreOne() {
    Bag half =
        layout.bags().stream()
            .filter(bag -> bag.duplicateOf() != null && bag.date().equals(DAY))
            .filter(bag -> bag.holds() == Outcome.Kind.SOIL)
            .findFirst()
            .orElseThrow();
    List<Reading> readings = new ArrayList<>();
    for (Bag bag : layout.bags().stream().filter(each -> each.holds() == half.holds()).toList()) {
      boolean own = bag.date().equals(DAY) && bag.plot().equals(half.plot());
      if (own) {
        String value =
            bag.code().equals(half.code())
                ? "140"
                : bag.code().equals(half.duplicateOf()) ? "100" : "120";
        readings.add(soil(bag.plot(), value, "mg/kg", bag.code()));
      } else if (bag.date().equals(DAY) && bag.duplicateOf() == null) {
        readings.add(soil(bag.plot(), "120.46", "ppm K2O", bag.code()));
      }
    }
    OutcomeFindings found = findings(readings).outcomes().get(0);
    double[][] values = found.table().values();
    for (int plot = 0; plot < values.length; plot++) {
      boolean own = found.table().plots().get(plot).code().equals(half.plot());
      assertThat(Math.exp(values[plot][0])).isCloseTo(own ? 120 : 100, within(own ? 1e-9 : 0.01));
    }
  }

  @Test
  void aReadingWithoutItsUnitIsRefusedByPlotAndDay() {
    assertThatExceptionOfType(InputException.class)
        .isThrownBy(() -> findings(List.of(soil("B1-1", "120", null, null))))
        .satisfies(
            wrong ->
                assertThat(wrong.faults())
                    .satisfiesExactly(
                        each ->
                            assertThat(each).contains("Plot B1-1 on 2026-10-12", "unit", "mg/kg")));
  }
}
