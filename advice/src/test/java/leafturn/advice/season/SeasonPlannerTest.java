package leafturn.advice.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Spread;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.ProgrammeOutcome.Feed;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;
import leafturn.model.lawn.SiteClimate;
import org.junit.jupiter.api.Test;

/** A plan compares programmes on common weather, always with the same answer. */
final class SeasonPlannerTest {
  private final Lawn lawn = PlanExamples.fescue(5);

  private List<PlannedProgramme> some() {
    return List.of(
        PlanExamples.other(lawn, "returned", 7, ReturnPractice.always(1), 14.7),
        PlanExamples.other(lawn, "by the rules", 4, ReturnPractice.byTheRules(), 7.35),
        PlanExamples.other(lawn, "by thirds, unfed", 0, ReturnPractice.always(1), 0));
  }

  @Test
  void givesTheSameAnswerOnAnyNumberOfThreadsAndAnotherForAnotherSeed() {
    PlanRequest request = PlanExamples.request(lawn, PlanExamples.newYork(), 12, some());
    SeasonPlan one = SeasonPlanner.plan(request, 1, PlanProgress.NONE);
    SeasonPlan three = SeasonPlanner.plan(request, 3, PlanProgress.NONE);
    PlanRequest.Draws otherSeed = new PlanRequest.Draws(12, 8);
    SeasonPlan other =
        SeasonPlanner.plan(
            new PlanRequest(
                lawn, request.climate(), some(), false, otherSeed, CallRules.standard()),
            1,
            PlanProgress.NONE);

    assertThat(three).isEqualTo(one);
    assertThat(other.programmes()).isNotEqualTo(one.programmes());
    assertThat(one.programmes()).hasSize(4);
    assertThat(one.present().planned().origin()).isEqualTo(Origin.PRESENT);
  }

  @Test
  void theProgrammeOfNowNeedsTheFeedItGives() {
    SeasonPlan plan = PlanExamples.plan(lawn, 10, some());
    Feed own = plan.present().outcome().feed();

    assertThat(own.givenNGPerM2()).isEqualTo(14.7);
    assertThat(PlanExamples.needed(plan.present()).middle()).isEqualTo(14.7);
    // The one-parameter rule of science: a return effect of a third saves a third and more of N.
    assertThat(PlanExamples.needed(plan.programmes().get(1)).high()).isBetween(3.0, 0.75 * 14.7);
  }

  @Test
  void programmesMowAndAreCountedByTheShareThatIsSet() {
    List<PlannedProgramme> byThirds =
        List.of(PlanExamples.other(lawn, "by thirds", 0, ReturnPractice.always(1), 14.7));
    SeasonPlan usual = PlanExamples.plan(lawn, 10, byThirds);
    SeasonPlan sooner =
        SeasonPlanner.plan(
            new PlanRequest(
                lawn,
                PlanExamples.newYork(),
                byThirds,
                false,
                new PlanRequest.Draws(10, 7),
                CallRules.standard().with(Map.of("one-third", 0.25))),
            1,
            PlanProgress.NONE);

    assertThat(List.of(usual.basis().third(), sooner.basis().third()))
        .containsExactly("a third", "a quarter");
    assertThat(mowings(sooner.programmes().get(1)))
        .isGreaterThan(1.2 * mowings(usual.programmes().get(1)));
    assertThat(mowings(sooner.present())).isCloseTo(mowings(usual.present()), within(1.0));
    assertThat(sooner.present().outcome().risks().thirdRuleBrokenFraction().middle())
        .isGreaterThan(usual.present().outcome().risks().thirdRuleBrokenFraction().middle());
  }

  @Test
  void aSlowLawnIsNotProposedToBeMownTwiceAsOftenByTheUsualAims() {
    PlannedProgramme unfed = PlanExamples.other(lawn, "", 0, ReturnPractice.always(1), 0);
    SeasonPlan plan =
        SeasonPlanner.plan(
            new PlanRequest(
                PlanExamples.with(lawn, unfed.programme()),
                PlanExamples.newYork(),
                List.of(),
                true,
                new PlanRequest.Draws(10, 7),
                CallRules.standard()),
            2,
            PlanProgress.NONE);
    Ranking usual = Ranking.of(plan, AimWeights.usual());

    assertThat(mowings(plan.programmes().get(usual.best())))
        .isLessThan(2 * mowings(plan.present()));
  }

  @Test
  void cutsOnTheDayAThirdIsDueAreWithinIt() {
    SeasonPlan plan =
        PlanExamples.plan(
            lawn,
            10,
            List.of(
                PlanExamples.other(lawn, "by thirds", 0, ReturnPractice.always(1), 14.7),
                PlanExamples.other(lawn, "every fortnight", 14, ReturnPractice.always(1), 14.7)));

    assertThat(overAThird(plan.programmes().get(1)).high()).isLessThan(0.1);
    assertThat(overAThird(plan.programmes().get(2)).middle()).isGreaterThan(0.3);
  }

  private static Spread overAThird(SeasonPlan.Result result) {
    return result.outcome().risks().thirdRuleBrokenFraction();
  }

  private static double mowings(SeasonPlan.Result result) {
    return result.outcome().mowings().middle();
  }

  @Test
  void aMeadowIsNotProposedForALawn() {
    PlannedProgramme meadow =
        PlanExamples.other(lawn, "twice a year", 180, ReturnPractice.always(0), 14.7);
    SeasonPlan plan = PlanExamples.plan(lawn, 10, List.of(meadow));
    AimWeights workAlone = new AimWeights(Map.of(PlanAim.WORK, 1.0));

    Ranking ranking = Ranking.of(plan, workAlone);
    assertThat(plan.programmes().get(1).outcome().mowings().middle()).isBetween(1.0, 3.0);
    assertThat(ranking.places().get(1).unbeaten()).isTrue();
    assertThat(ranking.best()).isZero();
    assertThat(plan.basis().notes()).anyMatch(note -> note.contains("\"twice a year\" mows fewer"));
  }

  @Test
  void countsWhatTheDailyModelCounts() {
    Lawn settled = new Lawn(lawn.site(), lawn.ground(), lawn.programme(), 6, lawn.parameters());
    double modelled =
        LawnModel.run(settled, PlanExamples.newYork().weather()).years().stream()
            .mapToDouble(year -> year.clippings().mowings())
            .average()
            .orElseThrow();

    assertThat(PlanExamples.plan(lawn, 40, List.of()).present().outcome().mowings().middle())
        .isBetween(modelled - 2.5, modelled + 2.5);
  }

  @Test
  void theSearchTriesThreeHundredDifferentProgrammesRoundTheLawnsOwn() {
    List<PlannedProgramme> dry = ProgrammeGrid.round(lawn);
    Programme own = lawn.programme();
    Lawn watered = PlanExamples.with(lawn, new Programme(own.mowing(), own.feedings(), 0.8));

    assertThat(new HashSet<>(dry)).hasSize(dry.size()).hasSizeGreaterThanOrEqualTo(300);
    assertThat(new HashSet<>(ProgrammeGrid.round(watered))).hasSize(600);
    assertThat(dry)
        .anySatisfy(planned -> assertThat(planned.programme().mowing()).isEqualTo(own.mowing()))
        .anySatisfy(planned -> assertThat(planned.programme().mowing().heights().vary()).isTrue());
  }

  @Test
  void aRecordWithoutAWholeYearIsRefused() {
    SiteClimate record = PlanExamples.newYork(LocalDate.of(2012, 11, 30));

    assertThatThrownBy(
            () ->
                SeasonPlanner.plan(
                    PlanExamples.request(lawn, record, 10, List.of()), 1, PlanProgress.NONE))
        .isInstanceOf(NoPlanException.class)
        .hasMessageContaining("1 January to 31 December")
        .hasMessageContaining("2012-01-01 to 2012-11-30");
  }

  @Test
  void aProgrammeThatIsNeverMownIsRefusedByName() {
    Programme.Mowing own = lawn.programme().mowing();
    Programme.Mowing winter =
        new Programme.Mowing(
            CutHeights.always(150),
            0,
            CalendarDay.ofYear(10),
            CalendarDay.ofYear(12),
            own.clippings());
    PlannedProgramme never =
        new PlannedProgramme("mown at Epiphany", Origin.GIVEN, new Programme(winter, List.of(), 0));

    assertThatThrownBy(() -> PlanExamples.plan(lawn, 10, List.of(never)))
        .isInstanceOf(NoPlanException.class)
        .hasMessageContaining("mown at Epiphany")
        .hasMessageContaining("lower its cut height");
  }

  @Test
  void canBeStoppedAndTellsHowFarItIs() {
    List<Integer> heard = new ArrayList<>();
    AtomicInteger last = new AtomicInteger();
    PlanProgress stopsAtTwo =
        new PlanProgress() {
          @Override
          public void done(int programmes, int ofProgrammes) {
            heard.add(programmes);
            last.set(programmes);
            assertThat(ofProgrammes).isEqualTo(4);
          }

          @Override
          public boolean stopped() {
            return last.get() >= 2;
          }
        };

    assertThatThrownBy(
            () ->
                SeasonPlanner.plan(
                    PlanExamples.request(lawn, PlanExamples.newYork(), 10, some()), 1, stopsAtTwo))
        .isInstanceOf(PlanStoppedException.class);
    assertThat(heard).containsExactly(0, 1, 2);
  }

  @Test
  void tooFewPossibleSeasonsAreRefused() {
    assertThatThrownBy(() -> new PlanRequest.Draws(9, 1)).hasMessageContaining("10 to 2000");
  }
}
