package leafturn.records.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Objects;
import leafturn.records.Examples;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.exchange.TrialGround;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.MeasuredReading;
import leafturn.trials.observation.Reading;
import org.junit.jupiter.api.Test;

/** Changes of a plan that would take from readings what they stand for. */
class KeptReadingsTest {
  private static final String PLAN = Examples.text("split-yards.trial.json").text();

  private final TrialGround ground = changed("", "");

  private static TrialGround changed(String what, String by) {
    assertThat(PLAN).contains(what);
    return TrialGrounds.of(
        "plan", TrialPlanFile.read(new SourceText("plan", PLAN.replace(what, by))));
  }

  /** A value of soil of the first planned day, under the code of its bag. */
  private Reading soil(boolean half) {
    String code =
        ground.bags().entrySet().stream()
            .filter(bag -> bag.getValue().holds() == Outcome.Kind.SOIL)
            .filter(bag -> bag.getValue().date().toString().equals("2026-04-20"))
            .filter(bag -> (bag.getValue().duplicateOf() != null) == half)
            .findFirst()
            .orElseThrow()
            .getKey();
    TrialGround.Bag bag = Objects.requireNonNull(ground.bag(code));
    return MeasuredReading.of(bag.plot(), bag.date(), "soil_potassium", "120", "mg/kg")
        .sample(code)
        .reading();
  }

  private List<String> refused(TrialGround after, Reading... readings) {
    InputException refused =
        catchThrowableOfType(
            InputException.class, () -> KeptReadings.check(ground, after, List.of(readings)));
    return refused == null ? List.of() : refused.faults();
  }

  private static final String DATES = "\"dates\": [\"2026-04-20\", \"2026-10-12\"]";

  @Test
  void aDateMayComeAndOneWithoutReadingsMayGo() {
    TrialGround fewer = changed(DATES, "\"dates\": [\"2026-04-20\"]");
    assertThat(fewer.bags()).hasSizeLessThan(ground.bags().size());
    assertThat(ground.bags().entrySet()).containsAll(fewer.bags().entrySet());
    assertThat(refused(fewer, soil(false), soil(true))).isEmpty();
    assertThatCode(() -> KeptReadings.check(fewer, ground, List.of(soil(false))))
        .doesNotThrowAnyException();
  }

  @Test
  void aDateWhoseBagsHaveReadingsStays() {
    TrialGround fewer = changed(DATES, "\"dates\": [\"2026-10-12\"]");
    assertThat(refused(fewer, soil(false), soil(true)))
        .singleElement()
        .asString()
        .contains("must keep its soil bags of 2026-04-20", "2 readings", "take them back first");
  }

  @Test
  void anOutcomeWithReadingsStays() {
    assertThat(refused(changed("\"soil_potassium\"", "\"soil_k\""), soil(false)))
        .singleElement()
        .asString()
        .contains("must keep the outcome soil_potassium", "1 reading of it", "take it back");
    assertThat(refused(changed("\"soil_potassium\"", "\"soil_k\""))).isEmpty();
  }
}
