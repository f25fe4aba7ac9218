package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.RuleEntry;
import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;

class RuleGroupsTest {
  private final RulesPage page = new RulesPage(CallRules.standard(), Map.of(), Units.METRIC);

  @Test
  void everyRuleAndFigureHasItsPlace() {
    List<RuleEntry> shown =
        java.util.stream.Stream.of(page.ranked(), page.figures())
            .flatMap(List::stream)
            .flatMap(group -> group.entries().stream())
            .toList();
    assertThat(shown).containsExactlyInAnyOrderElementsOf(CallRules.standard().entries());
    assertThat(page.ranked()).extracting(RulesPage.Group::heading).doesNotContain("Others");
    assertThat(page.figures()).extracting(RulesPage.Group::heading).doesNotContain("Others");
  }
}
