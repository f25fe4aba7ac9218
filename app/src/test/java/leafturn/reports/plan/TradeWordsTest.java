package leafturn.reports.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import leafturn.advice.call.Spread;
import leafturn.advice.season.AimWeights;
import leafturn.advice.season.PlanAim;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.advice.season.Ranking;
import leafturn.advice.season.SeasonPlan;
import leafturn.quantity.Units;
import leafturn.reports.UnitWords;
import org.junit.jupiter.api.Test;

/** What is said of gains and prices, of made-up outcomes. */
class TradeWordsTest {
  private static final AimWeights WEIGHTS =
      new AimWeights(Map.of(PlanAim.WORK, 8.0, PlanAim.NITRATE, 1.0));

  private static ProgrammeOutcome outcome(double mowings, double nitrateGPerM2) {
    return outcome(mowings, nitrateGPerM2, 500);
  }

  private static ProgrammeOutcome outcome(
      double mowings, double nitrateGPerM2, double growthGPerM2) {
    Spread none = Spread.exactly(0);
    return new ProgrammeOutcome(
        Spread.exactly(mowings),
        Spread.exactly(growthGPerM2),
        none,
        new ProgrammeOutcome.Work(null, none, null, null),
        new ProgrammeOutcome.Kept(none, none, none),
        new ProgrammeOutcome.Feed(0, none),
        Spread.exactly(nitrateGPerM2),
        new ProgrammeOutcome.Thatch(none, none, none),
        new ProgrammeOutcome.Risks(none, none));
  }

  private static String trades(double nitrateOfOther) {
    SeasonPlan plan =
        SamplePlan.plan(
            SamplePlan.result(Origin.PRESENT, "", outcome(20, 0.6)),
            SamplePlan.result(Origin.GIVEN, "Mine", outcome(30, nitrateOfOther)));
    return String.join(
        "\n",
        new TradeWords(plan, Ranking.of(plan, WEIGHTS), WEIGHTS, new UnitWords(Units.METRIC))
            .trades());
  }

  @Test
  void whatIsBetterByLessThanCountsIsNotToldAsBetter() {
    assertThat(trades(0.56))
        .contains(
            "Of 2 programmes 1 is unbeaten: it is",
            "None that keeps a lawn is better, by a difference that counts, than the one nearest your aims for less work and less nitrate lost.")
        .doesNotContain("If ", " are unbeaten");
  }

  @Test
  void anAimAloneIsToldBesideWhatTheNearestHas() {
    assertThat(trades(0.2))
        .contains(
            "Of 2 programmes 2 are unbeaten",
            "If less nitrate lost were all that counts: Mine (0.20\u202fg/m²\u00a0N instead of 0.60\u202fg/m²\u00a0N), at the price of more work (30\u202fmowings).");
  }

  @Test
  void grassThatGrowsLessIsAPriceWhateverIsWeighed() {
    SeasonPlan plan =
        SamplePlan.plan(
            SamplePlan.result(Origin.PRESENT, "", outcome(20, 0.6)),
            SamplePlan.result(Origin.GIVEN, "Mine", outcome(30, 0.2, 400)));
    TradeWords words =
        new TradeWords(plan, Ranking.of(plan, WEIGHTS), WEIGHTS, new UnitWords(Units.METRIC));
    assertThat(String.join("\n", words.trades()))
        .contains("at the price of more work (30\u202fmowings) and less growth (400\u202fg/m²).");
    assertThat(words.against(1))
        .anyMatch(told -> told.contains("less growth (400\u202fg/m² instead of 500\u202fg/m²)"));
    assertThat(words.against(0)).isEmpty();
  }

  private static String against(double mm, double litresPerM2) {
    ProgrammeOutcome plain = outcome(20, 0.6);
    ProgrammeOutcome other =
        new ProgrammeOutcome(
            plain.mowings(),
            plain.growthGPerM2(),
            Spread.exactly(mm),
            new ProgrammeOutcome.Work(null, Spread.exactly(litresPerM2), null, null),
            plain.kept(),
            plain.feed(),
            Spread.exactly(0.2),
            plain.thatch(),
            plain.risks());
    SeasonPlan plan =
        SamplePlan.plan(
            SamplePlan.result(Origin.PRESENT, "", plain),
            SamplePlan.result(Origin.GIVEN, "Mine", other));
    return String.join(
        "\n",
        new TradeWords(plan, Ranking.of(plan, WEIGHTS), WEIGHTS, new UnitWords(Units.METRIC))
            .against(1));
  }

  @Test
  void whatChangesMuchIsToldWhateverItsAimWeighs() {
    assertThat(against(174, 5.7))
        .contains("Against now it gives less nitrate lost")
        .contains(
            "It costs more to carry away (", " and more water (174\u202fmm instead of none).");
    assertThat(against(9, 0.4)).doesNotContain("costs", "water", "carry");
  }

  @Test
  void usReadersLeaveTheirClippings() {
    assertThat(new AimWords(new UnitWords(Units.US), "a third").measure(PlanAim.KEEPING))
        .isEqualTo("N in clippings left, lb/1000 ft² a year");
  }
}
