package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CallRulesTest {
  @Test
  void everyRuleStandsInTheFileWithItsSource() {
    assertThat(CallRules.standard().entries())
        .extracting(RuleEntry::rule)
        .containsExactly(CallRule.values());
    assertThat(CallRules.standard().entries()).noneMatch(entry -> entry.source().isBlank());
  }

  @Test
  void everyReferenceIsListed() throws IOException {
    String listed = Files.readString(Path.of("..", "docs", "references.md"));
    assertThat(CallRules.standard().entries())
        .flatExtracting(entry -> List.of(entry.reference().split(" ")))
        .filteredOn(key -> !key.isEmpty())
        .isNotEmpty()
        .allMatch(key -> listed.contains("**" + key + "**"));
  }

  @Test
  void ranksCountFromOneWithoutAGap() {
    List<Integer> ranks =
        CallRules.standard().entries().stream()
            .map(RuleEntry::rank)
            .filter(rank -> rank > 0)
            .toList();
    assertThat(ranks).isEqualTo(IntStream.rangeClosed(1, ranks.size()).boxed().toList());
  }

  @Test
  void everyThresholdLiesInTheRangeItMayBeSetTo() {
    assertThat(CallRules.standard().entries())
        .filteredOn(RuleEntry::editable)
        .allMatch(e -> e.threshold() >= e.low() && e.threshold() <= e.high());
  }

  @Test
  void aSetThresholdIsUsedAndShownAsSet() {
    CallRules rules = CallRules.standard().with(Map.of("clump-limit-dry", 30.0));
    assertThat(rules.threshold(CallRule.CLUMP_LIMIT_DRY)).isEqualTo(30);
    assertThat(rules.entry(CallRule.CLUMP_LIMIT_DRY).source()).contains("set by hand", "40");
    assertThat(CallRules.standard().threshold(CallRule.CLUMP_LIMIT_DRY)).isEqualTo(40);
  }

  @Test
  void everyFaultIsNamedAtOnce() {
    assertThatThrownBy(() -> CallRules.standard().with(Map.of("clump-limit", 30.0, "half", 5.0)))
        .hasMessageContaining("no rule named clump-limit")
        .hasMessageContaining("clump-limit-dry")
        .hasMessageContaining("half is 5, but must lie from 0.4 to 0.7");
  }

  @Test
  void thresholdsOutOfOrderAreNamedTogether() {
    assertThatThrownBy(
            () -> CallRules.standard().with(Map.of("one-third", 0.5, "half", 0.45, "clumps", 2.0)))
        .hasMessageContaining("one-third (0.5) and half (0.45) are out of order")
        .hasMessageContaining("clumps (2) and clumps-heavy (1.5) are out of order");
    assertThatThrownBy(() -> CallRules.standard().with(Map.of("due", 0.3, "one-third", 0.25)))
        .hasMessageContaining("due (0.3) and one-third (0.25) are out of order");
  }

  @Test
  void theLawnsOwnLeastGrowthGivesWayToAPersons() {
    CallRules set = CallRules.standard().with(Map.of("least-growth", 9.0));
    assertThat(set.unlessSet(CallRule.LEAST_GROWTH, 3, "the lawn's own"))
        .extracting(rules -> rules.threshold(CallRule.LEAST_GROWTH))
        .isEqualTo(9.0);
    assertThat(CallRules.standard().unlessSet(CallRule.LEAST_GROWTH, 3, "the lawn's own"))
        .extracting(rules -> rules.threshold(CallRule.LEAST_GROWTH))
        .isEqualTo(3.0);
  }
}
