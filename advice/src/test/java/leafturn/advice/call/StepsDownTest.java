package leafturn.advice.call;

import static leafturn.advice.call.Situation.all;
import static leafturn.advice.call.Situation.best;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
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
      assertThat(best(call).remark()).doesNotContain("over");
      assertThat(all(call)).doesNotContain("gentlest way down");
    }
  }

  @Test
  void ofManyCutsTheFirstAndTheLastAreToldAndAReasonHasAll() {
    Call call =
        Situation.of(Species.TALL_FESCUE, 51, 5, 28).mown(20, 210).dry(3, 14, 12, 24).call();
    List<Particulars.Cut> cuts = call.particulars().cuts();
    assertThat(cuts).hasSizeGreaterThan(OptionWords.MOST_TOLD);
    assertThat(call.sentence()).contains("more cuts, the last to 51 mm on ");
    assertThat(best(call).title()).contains("more cuts to 51 mm by ");
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
        .filteredOn(reason -> reason.meaning().contains("gentlest way down"))
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
}
