package leafturn.records.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import leafturn.records.Examples;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.layout.Bag;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.observation.MeasuredReading;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.Remark;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Values beside codes of bags that hold something else, or that nobody filled. */
class BagCodesTest {
  private final TrialLayout layout =
      TrialLayout.of(TrialPlanFile.read(Examples.file("split-yards.trial.json")));
  private final List<Reading> readings = new ArrayList<>();

  @BeforeEach
  void soilUnderItsOwnCode() {
    readings.add(potassium(bag(Outcome.Kind.SOIL), bag(Outcome.Kind.SOIL).code()));
  }

  private Bag bag(Outcome.Kind holds) {
    return layout.bags().stream().filter(bag -> bag.holds() == holds).findFirst().orElseThrow();
  }

  private static Reading potassium(Bag bag, String code) {
    return MeasuredReading.of(bag.plot(), bag.date(), "soil_potassium", "120", "ppm")
        .sample(code)
        .reading();
  }

  private List<String> remarks() {
    return BagCodes.remarks(TrialGrounds.of(layout), readings).stream()
        .map(Remark::sentence)
        .toList();
  }

  @Test
  void aValueOfSoilUnderTheCodeOfLeavesIsTold() {
    assertThat(remarks()).isEmpty();
    Bag leaves = bag(Outcome.Kind.TISSUE);
    readings.add(potassium(leaves, leaves.code()));
    assertThat(remarks())
        .singleElement()
        .asString()
        .contains("bag " + leaves.code() + " holds leaves, not soil");
  }

  @Test
  void aCodeThatNoBagHasIsTold() {
    readings.add(potassium(bag(Outcome.Kind.SOIL), "XYZ"));
    assertThat(remarks()).singleElement().asString().contains("no bag of this trial has the code");
  }

  @Test
  void bagsNumberedInAWayOfTheirOwnAreNoFault() {
    readings.clear();
    readings.add(potassium(bag(Outcome.Kind.SOIL), "17"));
    assertThat(remarks()).isEmpty();
  }
}
