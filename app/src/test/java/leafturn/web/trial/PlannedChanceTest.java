package leafturn.web.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import leafturn.quantity.Units;
import leafturn.records.Examples;
import leafturn.records.sheet.TrialSheet;
import org.junit.jupiter.api.Test;

/** What is told of a plan's size before it is frozen. */
class PlannedChanceTest {
  private static ObjectNode plan() throws IOException {
    return (ObjectNode)
        new ObjectMapper().readTree(Examples.file("split-yards.trial.json").toFile());
  }

  private static PlannedChance of(ObjectNode plan) {
    return Objects.requireNonNull(
        PlannedChance.of(TrialSheet.planned(plan, List.of()), Units.METRIC));
  }

  @Test
  void fewYardsAndOneYardAreWarnedOf() throws IOException {
    ObjectNode plan = plan();
    assertThat(of(plan).weak()).isTrue();
    assertThat(of(plan).words())
        .startsWith("8 yards find a difference of 0.5, the margin that matters, with a chance of ")
        .contains("80\u00a0% is usual", "take more yards before you freeze");
    ArrayNode lawns = (ArrayNode) plan.get("lawns");
    plan.remove("sides");
    while (lawns.size() > 1) {
      lawns.remove(1);
    }
    assertThat(of(plan).weak()).isTrue();
    assertThat(of(plan).words()).startsWith("One yard split once");
  }

  @Test
  void aMarginThatIsEasilyFoundIsNotWarnedOf() throws IOException {
    ObjectNode plan = plan();
    ((ObjectNode) plan.get("outcomes").get(0)).put("margin", 2);
    assertThat(of(plan).weak()).isFalse();
    assertThat(of(plan).words()).contains("over 99").doesNotContain("take more");
  }

  @Test
  void aPlanWithFaultsIsNotJudged() throws IOException {
    ObjectNode plan = plan();
    plan.remove("question");
    assertThat(PlannedChance.of(TrialSheet.planned(plan, List.of()), Units.METRIC)).isNull();
  }
}
