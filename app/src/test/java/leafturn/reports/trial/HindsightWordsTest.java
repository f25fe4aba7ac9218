package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import leafturn.records.Dates;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookFindings;
import leafturn.trials.findings.Findings;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.Remark;
import org.junit.jupiter.api.Test;

/** What was decided, taken back or entered with results in sight stands beside the headline. */
class HindsightWordsTest {
  private static final String TRIAL = "00000000-0000-0000-0000-000000000000";
  private static final LocalDate DOG = LocalDate.of(2026, 8, 1);
  private static final LocalDate LATE = LocalDate.of(2026, 10, 20);
  private static final LocalDate LAST = LocalDate.of(2026, 10, 12);
  private static final String BOTH =
      "With the readings kept in that were left out, or withdrawn with results in sight: Quality differs";

  private static TrialSheet trial() throws IOException {
    return StandingWordsTest.trial(
        StandingWordsTest.plan(0.5), StandingWordsTest.plan(0.5), "2026-03-01");
  }

  private static TrialEventSheet leftOut(LocalDate decided, String why) {
    TrialEventSheet.Exclusion exclusion =
        new TrialEventSheet.Exclusion(true, true, "Ada", decided, why);
    return new TrialEventSheet(
        TRIAL,
        DOG,
        TrialEventSheet.Happening.DOG_URINE,
        List.of("B4-2"),
        null,
        null,
        exclusion,
        null);
  }

  private static Findings findings(
      TrialSheet trial, List<Reading> readings, List<TrialEventSheet> events, TrialPast past) {
    return BookFindings.of(
        new BookFindings.Basis(trial.with(past), events, readings, true, ZoneOffset.UTC));
  }

  private static Findings leavingOut(TrialEventSheet event, TrialPast past) throws IOException {
    TrialSheet trial = trial();
    List<Reading> readings = StandingWordsTest.readings(trial, false);
    return findings(trial, readings, List.of(event), past);
  }

  private static TrialPast entered(LocalDate on, LocalDate day) {
    TrialPast.Entered entered = new TrialPast.Entered(on, "quality", day, List.of("B4-2"));
    return new TrialPast(List.of(), List.of(), List.of(), List.of(entered), null);
  }

  @Test
  void aPlotLeftOutAfterTheVerdictIsNotTakenAsBlind() throws IOException {
    Findings findings = leavingOut(leftOut(LATE, "dog"), TrialPast.UNKNOWN);
    String told =
        "Left out from 2026-08-01 on: plots B4-2 (dog urine; dog). It was decided on 2026-10-20, and is not taken as blind: it came after the last planned day, 2026-10-12, when results could be seen; its reason is no rule of the frozen plan.";
    assertThat(new FindingsView(findings).headline()).contains(BOTH, told);
    assertThat(StandingWordsTest.document(findings))
        .containsOnlyOnce("Left out from 1 August 2026 on")
        .contains(
            BOTH,
            Dates.inWords(told),
            "Before anything is concluded",
            "told to be decided blind, but");
    assertThat(FindingsReport.of(findings, List.of(), "leafturn").sentence()).contains(BOTH, told);
    assertThat(findings.standing().remarks())
        .noneMatch(each -> each.sentence().contains("decided blind;"))
        .isSortedAccordingTo((one, other) -> one.weight().compareTo(other.weight()));
  }

  @Test
  void aPlotLeftOutByRuleBeforeItWasReadIsBlindAndShownBothWays() throws IOException {
    TrialEventSheet event = leftOut(DOG, "Rule 2: dog urine");
    Findings findings = leavingOut(event, entered(LocalDate.of(2026, 8, 24), LAST));
    assertThat(new FindingsView(findings).headline())
        .contains(BOTH)
        .doesNotContain("not taken as blind");
    Findings known =
        leavingOut(
            leftOut(LocalDate.of(2026, 9, 3), "rule 2"),
            entered(LAST.minusDays(45), LocalDate.of(2026, 8, 24)));
    assertThat(new FindingsView(known).headline())
        .contains("not taken as blind: 1 of its readings stood in the book.");
  }

  /**
   * The tests tell their own degrees of freedom; those of the whole layout stand not beside them.
   */
  @Test
  void degreesOfFreedomAreThoseOfTheUnitsThatAreLeft() throws IOException {
    TrialEventSheet event = leftOut(DOG, "Rule 2: dog urine");
    assertThat(StandingWordsTest.document(leavingOut(event, TrialPast.UNKNOWN)))
        .doesNotContain("Treatments are judged on");
    TrialSheet trial = trial();
    List<Reading> readings = StandingWordsTest.readings(trial, false);
    assertThat(StandingWordsTest.document(findings(trial, readings, List.of(), TrialPast.UNKNOWN)))
        .contains("Treatments are judged on");
  }

  @Test
  void whatAPackageSaysOfItsFreezingIsToldAsThat() throws IOException {
    TrialSheet trial = trial();
    List<Reading> readings = StandingWordsTest.readings(trial, false);
    for (boolean brought : List.of(true, false)) {
      BookFindings.Basis basis =
          new BookFindings.Basis(trial, List.of(), readings, true, ZoneOffset.UTC, brought);
      String words = StandingWordsTest.document(BookFindings.of(basis));
      assertThat(words.contains("this book did not see it")).isEqualTo(brought);
      assertThat(words.contains("fixed beforehand")).isEqualTo(!brought);
    }
  }

  @Test
  void readingsTakenBackWithResultsInSightStandBesideTheHeadline() throws IOException {
    TrialSheet trial = trial();
    List<Reading> all = StandingWordsTest.readings(trial, false);
    List<Reading> kept = all.stream().filter(each -> each.date().isBefore(LAST)).toList();
    List<Reading> back = all.stream().filter(each -> each.date().equals(LAST)).toList();
    TrialPast past =
        new TrialPast(
            List.of(), List.of(new TrialPast.Withdrawn(LATE, back, "rater ill")), List.of());
    Findings findings = findings(trial, kept, List.of(), past);
    assertThat(new FindingsView(findings).headline())
        .contains(
            "16 readings of quality on 2026-10-12 were withdrawn on 2026-10-20 (rater ill), after the last planned day, 2026-10-12, when results could be seen; nothing stands in their place.");
    assertThat(new FindingsView(findings).headline()).contains(BOTH);
    Findings whole = findings(trial, all, List.of(), TrialPast.UNKNOWN);
    assertThat(Objects.requireNonNull(findings.keptIn()).effects())
        .isEqualTo(whole.outcomes().get(0).effects());
    assertThat(new FindingsView(findings).flow())
        .startsWith("Yards: 8 started, 0 with a whole season, 8 read on fewer days than planned");
    assertThat(findings.standing().remarks())
        .noneMatch(each -> each.sentence().contains("under way"));
  }

  @Test
  void anEventChangedWithResultsInSightStandsBesideTheHeadline() throws IOException {
    TrialSheet trial = trial();
    TrialPast past =
        new TrialPast(
            List.of(),
            List.of(),
            List.of(
                new TrialPast.EarlierEvent(LATE, DOG, "dog urine (B4-2)"),
                new TrialPast.EarlierEvent(LAST, DOG, "hail (all plots)")));
    Findings findings = findings(trial, StandingWordsTest.readings(trial, false), List.of(), past);
    String told =
        "What befell the trial on 2026-08-01 was noted otherwise before it was changed on 2026-10-20, after the last planned day, 2026-10-12, when results could be seen: dog urine (B4-2).";
    assertThat(new FindingsView(findings).headline()).contains(told).doesNotContain("hail");
    assertThat(StandingWordsTest.document(findings)).contains(Dates.inWords(told));
    assertThat(new FindingsView(findings).record())
        .anyMatch(each -> each.contains("it was noted before: hail (all plots)"));
  }

  @Test
  void aLayoutThatWasDrawnAgainAndAgainIsToldBesideTheHeadline() throws IOException {
    TrialSheet trial = trial();
    List<Reading> readings = StandingWordsTest.readings(trial, false);
    String told = "The layout was drawn 6 times before the plan was frozen";
    Findings often = findings(trial, readings, List.of(), drawn(6));
    assertThat(new FindingsView(often).headline()).contains(told);
    assertThat(StandingWordsTest.document(often)).containsOnlyOnce(told);
    Findings once = findings(trial, readings, List.of(), drawn(1));
    assertThat(new FindingsView(once).headline()).doesNotContain("drawn");
    assertThat(StandingWordsTest.document(once)).contains("The layout was drawn once before");
    Findings unknown = findings(trial, readings, List.of(), TrialPast.UNKNOWN);
    assertThat(StandingWordsTest.document(unknown)).doesNotContain("layout was drawn");
  }

  private static TrialPast drawn(int draws) {
    return new TrialPast(List.of(), List.of(), List.of(), List.of(), draws);
  }

  @Test
  void aPlotLeftOutWhenNothingMoreWasReadChangesNothing() throws IOException {
    TrialSheet trial = trial();
    List<Reading> early =
        StandingWordsTest.readings(trial, false).stream()
            .filter(each -> each.date().isBefore(DOG))
            .toList();
    Findings findings = findings(trial, early, List.of(leftOut(DOG, "rule 2")), TrialPast.UNKNOWN);
    assertThat(findings.standing().remarks())
        .extracting(Remark::sentence)
        .anyMatch(each -> each.contains("when nothing more was read there; it changes nothing"))
        .noneMatch(each -> each.contains("with and without"));
  }

  @Test
  void anEarlyEndStandsBesideTheHeadline() throws IOException {
    TrialSheet trial = trial().endedOn(LocalDate.of(2026, 9, 1), "results are clear");
    List<Reading> early =
        StandingWordsTest.readings(trial, false).stream()
            .filter(each -> each.date().isBefore(LocalDate.of(2026, 9, 1)))
            .toList();
    Findings findings = findings(trial, early, List.of(), TrialPast.UNKNOWN);
    assertThat(StandingWordsTest.document(findings))
        .containsOnlyOnce("ended on 1 September 2026")
        .containsOnlyOnce("results are clear");
    assertThat(new FindingsView(findings).headline())
        .contains(
            "The trial was ended on 2026-09-01, before its last planned day 2026-10-12",
            "(results are clear): a trial that stops when it looks good finds too much.");
  }

  @Test
  void readingsByEyeEnteredLongAfterAreTold() throws IOException {
    TrialSheet trial = trial();
    List<Reading> readings = StandingWordsTest.readings(trial, false);
    LocalDate first = readings.get(0).date();
    Findings late = findings(trial, readings, List.of(), entered(LATE, first));
    assertThat(late.standing().remarks())
        .extracting(Remark::sentence)
        .anyMatch(
            each ->
                each.startsWith("1 reading was entered on 2026-10-20, more than 7 days after")
                    && each.endsWith("B4-2 on " + first + "."));
    Findings inTime = findings(trial, readings, List.of(), entered(LAST.plusDays(5), LAST));
    assertThat(inTime.standing().remarks())
        .noneMatch(each -> each.sentence().contains("entered on"));
  }

  @Test
  void aPlanFrozenAfterTheFirstReadingIsToldBesideTheHeadline() throws IOException {
    TrialSheet late =
        StandingWordsTest.trial(
            StandingWordsTest.plan(0.5), StandingWordsTest.plan(0.5), "2026-11-01");
    List<Reading> readings = StandingWordsTest.readings(late, false);
    Findings findings = findings(late, readings, List.of(), TrialPast.UNKNOWN);
    assertThat(new FindingsView(findings).headline())
        .contains("The plan was frozen on 2026-11-01, after readings of ", "convinces less");
    assertThat(findings.standing().remarks())
        .anyMatch(each -> each.sentence().contains("the verdict convinces less"));
  }
}
