package leafturn.trials.design.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.trials.design.Design;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.Plans;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialPlan;
import org.junit.jupiter.api.Test;

/** Bags of soil and leaves, their codes and the blind duplicates among them. */
class BagsTest {
  private static TrialPlan yards(long seed) {
    List<TrialLawn> lawns =
        List.of(
            Plans.lawn("one", Plans.rectangle(0, 0, 20, 10), null),
            Plans.lawn("two", Plans.rectangle(0, 0, 24, 9), null),
            Plans.lawn("three", Plans.rectangle(0, 0, 24, 16), null));
    return Plans.withCores(Plans.plan(Design.SPLIT_YARD, 2, 3, lawns, seed), 15, 5);
  }

  private static Outcome leaves() {
    return new Outcome(
        "leaf potassium",
        Outcome.Kind.TISSUE,
        "g/kg",
        null,
        null,
        Outcome.Scale.LOG,
        Outcome.Summary.SEASON_MEAN,
        1.2,
        false);
  }

  @Test
  void bagsOfADateHaveCodesOfTheirOwnThatShareNothingWithPlots() {
    TrialLayout layout = TrialLayout.of(yards(3));
    assertThat(layout.bags().stream().filter(bag -> bag.duplicateOf() == null)).hasSize(5 * 6 * 2);
    assertThat(new HashSet<>(layout.bags().stream().map(Bag::code).toList()))
        .hasSize(layout.bags().size());
    assertThat(layout.bags().stream().map(Bag::code)).allMatch(BlindCodes::isCode);
  }

  @Test
  void aTenthOfTheBagsOfEachDateIsDividedUnderAnotherCode() {
    TrialLayout layout = TrialLayout.of(yards(10));
    Map<String, Bag> byCode = new HashMap<>();
    layout.bags().forEach(bag -> byCode.put(bag.code(), bag));
    Map<LocalDate, Integer> byDate = new HashMap<>();
    for (Map.Entry<String, String> divided : layout.dividedBags().entrySet()) {
      Bag half = Objects.requireNonNull(byCode.get(divided.getKey()));
      Bag whole = Objects.requireNonNull(byCode.get(divided.getValue()));
      assertThat(whole.duplicateOf()).isNull();
      assertThat(half.plot()).isEqualTo(whole.plot());
      assertThat(half.date()).isEqualTo(whole.date());
      assertThat(half.number()).isEqualTo(whole.number());
      byDate.merge(half.date(), 1, Integer::sum);
    }
    assertThat(byDate).hasSize(5).allSatisfy((date, number) -> assertThat(number).isEqualTo(1));
    assertThat(new HashSet<>(layout.dividedBags().values())).hasSize(5);
  }

  /** Soil and leaves of three yards on these days of April, with so many bags of soil a plot. */
  private static List<Bag> sampled(int bags, int... days) {
    List<LocalDate> dates =
        Arrays.stream(days).mapToObj(day -> LocalDate.of(2026, 4, day)).toList();
    return TrialLayout.of(Plans.sampled(Plans.with(yards(10), leaves()), dates, bags)).bags();
  }

  /** Labels may be printed: what is on them stays true. */
  @Test
  void anotherDateLeavesAllOtherBagsAsTheyAre() {
    List<Bag> before = sampled(2, 10, 20);
    assertThat(sampled(2, 10, 20, 30)).containsAll(before);
    assertThat(sampled(2, 1, 10, 15, 20)).containsAll(before);
    assertThat(before).containsAll(sampled(2, 20));
  }

  @Test
  void moreBagsOfAPlotLeaveAllOtherBagsAsTheyAre() {
    for (int bags = 1; bags < 4; bags++) {
      assertThat(sampled(bags + 1, 10, 20)).containsAll(sampled(bags, 10, 20));
    }
  }

  @Test
  void codesTellNothingOfPlotDateOrNumber() {
    List<Bag> bags = sampled(4, 10, 20);
    for (int at = 0; at < 6; at++) {
      int place = at;
      assertThat(bags.stream().map(bag -> bag.code().charAt(place)).distinct().count())
          .as("characters at place %d of %d bags", at, bags.size())
          .isGreaterThan(20);
    }
  }

  @Test
  void everyTissueSampleHasABagAndItsBlindDuplicates() {
    TrialPlan plan = yards(10);
    TrialLayout layout = TrialLayout.of(Plans.with(plan, leaves()));
    List<Bag> bags =
        layout.bags().stream().filter(bag -> bag.holds() == Outcome.Kind.TISSUE).toList();
    assertThat(bags.stream().filter(bag -> bag.duplicateOf() == null)).hasSize(5 * 6);
    assertThat(bags.stream().filter(bag -> bag.duplicateOf() != null)).hasSize(5);
    assertThat(new HashSet<>(layout.bags().stream().map(Bag::code).toList()))
        .hasSize(layout.bags().size());
    assertThat(layout.bags().subList(0, layout.bags().size() - bags.size()))
        .as("bags of soil are what they would be without leaves")
        .isEqualTo(TrialLayout.of(plan).bags());
  }
}
