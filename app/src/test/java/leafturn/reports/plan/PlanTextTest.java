package leafturn.reports.plan;

import static leafturn.reports.plan.SamplePlan.plan;
import static leafturn.reports.plan.SamplePlan.result;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.Spread;
import leafturn.advice.season.AimWeights;
import leafturn.advice.season.PlanAim;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.advice.season.Ranking;
import leafturn.advice.season.SeasonPlan;
import leafturn.quantity.Units;
import leafturn.reports.Paragraph;
import leafturn.reports.UnitWords;
import org.junit.jupiter.api.Test;

/** The plan on a terminal tells each number with the digits it has elsewhere. */
class PlanTextTest {
  private static final UnitWords UNITS = new UnitWords(Units.METRIC);

  private static ProgrammeOutcome outcome() {
    return new ProgrammeOutcome(
        new Spread(28, 33, 36),
        new Spread(510.2, 561.7, 598.4),
        new Spread(244.3, 272.6, 303.1),
        new ProgrammeOutcome.Work(
            new Spread(10.2, 11.04, 11.9), new Spread(11.2, 12.94, 13.6), null, null),
        new ProgrammeOutcome.Kept(
            new Spread(16.6, 18.87, 20.4), Spread.exactly(2), Spread.exactly(8)),
        new ProgrammeOutcome.Feed(14.7, new Spread(8.02, 9.44, 10.7)),
        new Spread(0.062, 0.146, 0.241),
        new ProgrammeOutcome.Thatch(
            Spread.exactly(3), Spread.exactly(3), new Spread(3.05, 3.14, 3.28)),
        new ProgrammeOutcome.Risks(new Spread(7, 9, 12), new Spread(0.11, 0.154, 0.2)));
  }

  private static String firstRow() {
    SeasonPlan plan = plan(result(Origin.PRESENT, "", outcome()));
    AimWeights weights = AimWeights.usual();
    return PlanText.of(plan, Ranking.of(plan, weights), weights, List.of(), 0).stream()
        .dropWhile(line -> !line.startsWith("No."))
        .skip(1)
        .findFirst()
        .orElseThrow();
  }

  private static String number(PlanFigure figure) {
    String words = Paragraph.plain(figure.words().apply(outcome()).middle());
    return words.endsWith("%") ? words : words.replaceFirst(" .*", "");
  }

  @Test
  void theTableHasTheDigitsOfThePage() {
    List<PlanFigure> work = PlanFigure.work(UNITS);
    List<PlanFigure> nutrients = PlanFigure.nutrients(UNITS);
    List<PlanFigure> turf = PlanFigure.turf(UNITS, "a third");
    List<String> page = new ArrayList<>(List.of("0"));
    for (int figure : new int[] {0, 1, 3, 4}) {
      page.add(number(work.get(figure)));
    }
    for (int figure : new int[] {0, 3, 4}) {
      page.add(number(nutrients.get(figure)));
    }
    for (int figure : new int[] {2, 3, 4, 5}) {
      page.add(number(turf.get(figure)));
    }

    assertThat(firstRow().trim().split(" {2,}")).containsExactlyElementsOf(page);
  }

  @Test
  void anOwnProgrammeIsListedWithWhatItDoes() {
    SeasonPlan plan =
        plan(result(Origin.PRESENT, "", outcome()), result(Origin.GIVEN, "Mine", outcome()));
    AimWeights weights = AimWeights.usual();
    assertThat(PlanText.of(plan, Ranking.of(plan, weights), weights, List.of(), 0))
        .anyMatch(line -> line.matches(" +0 {2}As now.*"))
        .anyMatch(
            line ->
                line.startsWith("   1  Mine: every 7 days to 76 mm, clippings returned, no feed"));
  }

  @Test
  void nitrateIsTheSameInTheTableAndInTheSentences() {
    String told = new AimWords(UNITS, "a third").figure(PlanAim.NITRATE, outcome());

    assertThat(Paragraph.plain(told)).isEqualTo("0.15 g/m² N");
    assertThat(firstRow()).contains(" 0.15 ").doesNotContain("0.146");
  }
}
