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
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.SizeDocument;
import leafturn.records.trial.SizeFile;
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
  void pairsOfStripsThatTheirCoinsCannotConfirmAreWarnedOf() throws IOException {
    ObjectNode plan = plan();
    plan.remove("sides");
    plan.put("design", "paired-strips").put("pairs", 6);
    while (plan.get("lawns").size() > 1) {
      ((ArrayNode) plan.get("lawns")).remove(1);
    }
    ((ObjectNode) plan.get("outcomes").get(0)).put("margin", 3);
    assertThat(of(plan).weak()).isTrue();
    assertThat(of(plan).words())
        .startsWith("6 pairs of strips find")
        .contains("cannot reach p below 0.05", "one coin lays two pairs", "it takes 11");
    plan.put("pairs", 11);
    assertThat(of(plan).words()).doesNotContain("cannot reach");
  }

  /** Three lawns of four plots each are judged by eight degrees of freedom, not by two. */
  @Test
  void listedLawnsCountTheirPlots() throws IOException {
    ObjectNode plan = plan();
    plan.remove("sides");
    plan.put("design", "listed");
    while (plan.get("lawns").size() > 3) {
      ((ArrayNode) plan.get("lawns")).remove(3);
    }
    ArrayNode list = plan.putArray("allowedLayouts");
    for (int pattern = 0; pattern < 32; pattern++) {
      ArrayNode layout = list.addArray();
      for (int half = 0; half < 6; half++) {
        boolean turned = (pattern >> half & 1) == 1;
        layout.add(turned ? "returned" : "collected").add(turned ? "collected" : "returned");
      }
    }
    SizeForm form = new SizeForm(BookPlan.of(TrialSheet.planned(plan, List.of())), "visual rating");
    SizeDocument size = SizeFile.read(form.filled(Units.METRIC).document("size", form.base()));
    assertThat(size.size().design().degreesOfFreedom(Objects.requireNonNull(size.size().units())))
        .isEqualTo(8);
    assertThat(form.ofList().get(0)).startsWith("Over the 32 layouts").contains("is 0.0313.");
    assertThat(of(plan).words()).startsWith("3 lawns find").doesNotContain("cannot reach");
  }

  @Test
  void aPlanWithFaultsIsNotJudged() throws IOException {
    ObjectNode plan = plan();
    plan.remove("question");
    assertThat(PlannedChance.of(TrialSheet.planned(plan, List.of()), Units.METRIC)).isNull();
  }
}
