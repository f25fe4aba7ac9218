package leafturn.advice.call;

import static leafturn.advice.call.Situation.all;
import static leafturn.advice.call.Situation.best;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

/** Tall grass comes down in as many steps as the one-third rule needs, and in none too many. */
class StepsDownTest {
  private static final double THIRD = 1.0 / 3 + 0.02;

  /** Cut low and fed well: 138 mm over 51 mm a week after mowing. */
  private static Situation fedWell(int daysAgo) {
    return Situation.of(Species.TALL_FESCUE, 51, 5, 28)
        .mown(daysAgo, 138)
        .logged(new LogEntry.Fed(LocalDate.of(2015, 5, 10), 9, 0, 0, 0))
        .dry(3, 14, 12, 24);
  }

  @Test
  void noStepTakesMoreThanAThirdAndTheFirstClippingsAreCollected() {
    for (int daysAgo : new int[] {8, 17}) {
      Call call = fedWell(daysAgo).call();
      assertThat(call.choice()).isEqualTo(Choice.RAISE_AND_COLLECT);
      List<Particulars.Cut> cuts = call.particulars().cuts();
      assertThat(cuts).hasSizeGreaterThanOrEqualTo(3);
      assertThat(cuts.get(0).returned()).isFalse();
      assertThat(cuts.subList(1, cuts.size())).allMatch(Particulars.Cut::returned);
      assertThat(1 - cuts.get(0).toMm() / 138).isLessThanOrEqualTo(THIRD);
      assertThat(best(call).title()).endsWith("collect the first");
      assertThat(best(call).outcome().collectedFraction()).isBetween(0.2, 0.6);
      assertThat(best(call).remark()).doesNotContain("over");
      assertThat(all(call)).doesNotContain("at most");
    }
  }

  private static Situation grownLong(double heightMm) {
    return Situation.of(Species.TALL_FESCUE, 51, 5, 28).mown(20, heightMm).dry(3, 14, 12, 24);
  }

  private static Reason steps(Call call) {
    return call.reasons().stream()
        .filter(reason -> reason.ruleId().equals("one-third") && reason.meaning().contains("cuts:"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatStepsTakeIsOneFigureInWordsAndInTheTable() {
    for (int heightMm : new int[] {138, 150, 170, 235, 300}) {
      Call call = grownLong(heightMm).call();
      Spread taken = best(call).outcome().heightTakenFraction();
      String largest = Words.percent(taken.middle());
      assertThat(steps(call).headline()).contains(largest);
      assertThat(steps(call).against()).isEqualTo(taken.middle() > THIRD);
      if (taken.middle() > THIRD) {
        assertThat(call.sentence()).contains("Up to " + largest + " of the height");
      }
    }
  }

  /** Common practice, no source: at most three cuts, and none of more than half. */
  @Test
  void grassGrownLongComesDownInThreeCutsAndByHowMuchThatBreaksTheThirdIsTold() {
    for (int heightMm : new int[] {235, 260, 300, 400}) {
      Call call = grownLong(heightMm).call();
      List<Particulars.Cut> cuts = call.particulars().cuts();
      Reason steps = steps(call);

      assertThat(call.choice()).isEqualTo(Choice.RAISE_AND_COLLECT);
      assertThat(cuts).hasSize(3);
      assertThat(cuts.get(0).returned()).isFalse();
      assertThat(call.sentence())
          .containsPattern("Up to (4\\d|50) % of the height comes off at once, more than a third")
          .contains("so that it is done in three cuts");
      assertThat(steps.against()).isTrue();
      assertThat(steps.meaning())
          .containsPattern("The largest takes (4\\d|50) %, where a third is the limit")
          .contains("brought down in three at most (common practice, no source)");
    }
  }

  /** Common practice, no source: one cut that breaks the third, collected, at the highest deck. */
  @Test
  void theFirstCutIsOneThatDecksCanBeSetToWhereThatTakesNoMoreThanHalf() {
    for (int heightMm : new int[] {185, 210, 228}) {
      Call call = grownLong(heightMm).call();
      List<Particulars.Cut> cuts = call.particulars().cuts();

      assertThat(cuts).hasSize(3);
      assertThat(cuts.get(0).toMm()).isEqualTo(DeckHeights.HIGHEST_MM);
      assertThat(cuts.get(0).returned()).isFalse();
      assertThat(call.sentence())
          .startsWith("Raise the deck, mow today to 115 mm and collect")
          .contains("more than a third, for no usual deck cuts higher")
          .doesNotContain("trimmer");
      assertThat(steps(call).meaning())
          .contains("No usual deck cuts above 115 mm", "(common practice, no source)");
      assertThat(cuts)
          .extracting(Particulars.Cut::toMm)
          .isSortedAccordingTo(Comparator.reverseOrder());
    }
  }

  /** Common practice, no source: what is over half is not left lying, whatever the height. */
  @Test
  void tallGrassIsNeverReturnedInOneCut() {
    for (int heightMm = 110; heightMm <= 400; heightMm += 29) {
      Call call = grownLong(heightMm).call();
      assertThat(call.particulars().cuts()).hasSizeBetween(2, 3);
      assertThat(call.particulars().cuts().get(0).returned()).isFalse();
    }
  }

  /** A day somebody chose is that of the first cut; further ones come as ever. */
  @Test
  void afterAChosenDayFurtherCutsComeOnTheUsualDays() {
    Situation tall =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 28).mown(12, 100).dry(3, 8, 12, 24);
    LocalDate tuesday = LocalDate.of(2015, 6, 2);

    assertThat(daysOfCuts(tall, Visits.ANY_DAY.firstOn(tuesday)))
        .containsExactly(tuesday, tuesday.plusDays(3));
    assertThat(
            daysOfCuts(tall, Visits.every(DayOfWeek.THURSDAY, DayOfWeek.MONDAY).firstOn(tuesday)))
        .containsExactly(tuesday, LocalDate.of(2015, 6, 8));
  }

  private static List<LocalDate> daysOfCuts(Situation lawn, Visits visits) {
    Call call = lawn.facts(Circumstances.NONE.withVisits(visits)).call();
    return call.particulars().cuts().stream().map(Particulars.Cut::day).toList();
  }

  @Test
  void ofManyCutsTheFirstAndTheLastAreToldAndAReasonHasAll() {
    Call call =
        Situation.of(Species.FINE_FESCUE, 20, 6, 20)
            .mown(20, 110)
            .dry(3, 8, 12, 24)
            .rule("most-cuts", 5)
            .call();
    List<Particulars.Cut> cuts = call.particulars().cuts();
    assertThat(cuts).hasSizeGreaterThan(OptionWords.MOST_TOLD);
    assertThat(call.sentence()).contains("more cuts, the last to 20 mm on ");
    assertThat(best(call).title()).contains("more cuts to 20 mm by ");
    assertThat(call.reasons())
        .filteredOn(reason -> reason.ruleId().equals("one-third"))
        .singleElement()
        .satisfies(
            reason ->
                assertThat(reason.meaning().split(" to \\d+ mm ", -1)).hasSize(cuts.size() + 1));
  }

  @Test
  void whatTakesMoreThanAThirdAllTheSameSaysSo() {
    Call meadow =
        Situation.of(Species.FINE_FESCUE, 20, 6, 20).mown(70, 400).dry(3, 8, 12, 24).call();
    assertThat(meadow.reasons())
        .filteredOn(reason -> reason.meaning().contains("(common practice, no source)"))
        .singleElement()
        .satisfies(reason -> assertThat(reason.against()).isTrue());
  }

  @Test
  void noStepLowersTheGrassByLessThanAStepOfTheDeck() {
    for (int heightMm = 80; heightMm <= 120; heightMm += 5) {
      Call call =
          Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 28)
              .mown(6, heightMm)
              .dry(3, 8, 12, 24)
              .facts(
                  Circumstances.NONE.withVisits(Visits.every(DayOfWeek.THURSDAY, DayOfWeek.MONDAY)))
              .call();
      assertThat(call.options())
          .extracting(Option::title)
          .noneMatch(title -> title.contains("to 65 mm"));
    }
  }

  @Test
  void aVisitThatTheLabelForbidsDoesNotHoldStepsFromTheNextOneAgainstThem() {
    LocalDate on = LocalDate.of(2015, 5, 20);
    Situation treated =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20)
            .mown(8, 118)
            .dry(5, 1, 12, 22)
            .logged(new LogEntry.Watered(on.minusDays(2), 9));
    Circumstances wednesdays =
        Treated.withHerbicide(on.minusDays(1), 3).withVisits(Visits.every(DayOfWeek.WEDNESDAY));
    Call call = treated.facts(wednesdays).call();
    assertThat(call.mowOn()).isEqualTo(on.plusDays(7));
    assertThat(call.particulars().cuts()).hasSizeGreaterThan(1);
    assertThat(best(call).remark()).doesNotContain("over");
  }
}
