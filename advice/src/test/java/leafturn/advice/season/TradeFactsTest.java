package leafturn.advice.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.advice.season.SeasonPlan.Result;
import leafturn.model.Stores;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;
import org.junit.jupiter.api.Test;

/**
 * What people of the trade say of programmes, held against the plan: common practice, no source.
 */
final class TradeFactsTest {
  private static final ReturnPractice RETURNED = ReturnPractice.always(1);
  private static final ReturnPractice COLLECTED = ReturnPractice.always(0);
  private final Lawn lawn = PlanExamples.fescue(5);

  @Test
  void mowingTwoOrThreeTimesAWeekGivesTheSmallestClippings() {
    List<PlannedProgramme> given = new ArrayList<>();
    for (int everyDays : new int[] {2, 4, 7, 14, 21}) {
      given.add(PlanExamples.other(lawn, "every " + everyDays, everyDays, RETURNED, 14.7));
    }
    List<Result> results = PlanExamples.plan(lawn, 20, given).programmes();

    for (int number = 2; number < results.size(); number++) {
      assertThat(grownBetweenMowings(results.get(number)))
          .isGreaterThan(1.15 * grownBetweenMowings(results.get(number - 1)));
      assertThat(results.get(number).outcome().risks().thirdRuleBrokenFraction().middle())
          .isGreaterThanOrEqualTo(
              results.get(number - 1).outcome().risks().thirdRuleBrokenFraction().middle());
    }
  }

  private static double grownBetweenMowings(Result result) {
    return result.outcome().growthGPerM2().middle() / result.outcome().mowings().middle();
  }

  @Test
  void clippingsOfFrequentMowingsBreakDownFastest() {
    assertThat(daysClippingsLast(3)).isLessThan(0.95 * daysClippingsLast(7));
    assertThat(daysClippingsLast(7)).isLessThan(0.95 * daysClippingsLast(14));
  }

  /** Carbon of clippings that lies on the turf over what falls on it a day, d. */
  private double daysClippingsLast(int everyDays) {
    Programme programme =
        PlanExamples.other(lawn, "returned", everyDays, RETURNED, 14.7).programme();
    Lawn own = new Lawn(lawn.site(), lawn.ground(), programme, 4, Map.of("qual", 1.0));
    double[] lying = new double[1];
    double returnedKgPerHa =
        LawnModel.run(
                own,
                PlanExamples.newYork().weather(),
                run -> lying[0] += run.store(Stores.METABOLIC_C) + run.store(Stores.STRUCTURAL_C))
            .years()
            .stream()
            .mapToDouble(year -> year.clippings().returnedDryKgPerHa())
            .sum();
    return lying[0] / returnedKgPerHa;
  }

  @Test
  void seldomMowingWithReturnMakesThatchLikelier() {
    List<PlannedProgramme> given = new ArrayList<>();
    for (int everyDays : new int[] {4, 7, 14, 28}) {
      given.add(PlanExamples.other(lawn, "every " + everyDays, everyDays, RETURNED, 14.7));
    }
    List<Result> results = PlanExamples.plan(lawn, 10, given).programmes();

    for (int number = 2; number < results.size(); number++) {
      assertThat(thatchMm(results.get(number)))
          .isGreaterThan(1.04 * thatchMm(results.get(number - 1)));
    }
  }

  private static double thatchMm(Result result) {
    return result.outcome().thatch().after5YearsMm().middle();
  }

  @Test
  void returningDoesNotByItselfMakeThatch() {
    // Returned with the feed that makes it grow as the collected lawn does, thatch stays as thin.
    double needed = neededWhenReturned();
    Result collected = PlanExamples.plan(lawn, 20, List.of()).present();
    Result returned =
        PlanExamples.plan(
                lawn, 20, List.of(PlanExamples.other(lawn, "returned", 7, RETURNED, needed)))
            .programmes()
            .get(1);

    double thatchMm = returned.outcome().thatch().after5YearsMm().middle();
    double collectedMm = collected.outcome().thatch().after5YearsMm().middle();
    assertThat(needed).isLessThan(0.75 * 14.7);
    assertThat(thatchMm - collectedMm).isLessThan(1);
    assertThat(thatchMm).isLessThan(12.7);
  }

  private double neededWhenReturned() {
    Result returned =
        PlanExamples.plan(
                lawn, 20, List.of(PlanExamples.other(lawn, "returned", 7, RETURNED, 14.7)))
            .programmes()
            .get(1);
    return PlanExamples.needed(returned).middle();
  }

  @Test
  void aMixedProgrammeIsNormal() {
    Result mixed =
        PlanExamples.plan(
                lawn,
                20,
                List.of(
                    PlanExamples.other(lawn, "by the rules", 7, ReturnPractice.byTheRules(), 14.7)))
            .programmes()
            .get(1);

    assertThat(mixed.outcome().kept().nGPerM2().low()).isGreaterThan(2);
    assertThat(mixed.outcome().work().collectedLitresPerM2().low()).isGreaterThan(1);
    assertThat(mixed.outcome().risks().clumpMowings().high()).isZero();
  }

  @Test
  void noVisibleDifferenceBetweenHalvesIsANormalOutcome() {
    // On a rich soil that is well fed, growth of the two halves lies within a few per cent.
    Lawn rich = PlanExamples.fescue(9);
    List<Result> halves =
        PlanExamples.plan(
                rich,
                20,
                List.of(
                    PlanExamples.other(rich, "returned", 7, RETURNED, 39.2),
                    PlanExamples.other(rich, "collected", 7, COLLECTED, 39.2)))
            .programmes();
    double returned = halves.get(1).outcome().growthGPerM2().middle();
    double collected = halves.get(2).outcome().growthGPerM2().middle();

    assertThat(returned / collected).isBetween(0.95, 1.08);
  }
}
