package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import leafturn.records.Dates;
import leafturn.records.Examples;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialPast.PlanVersion;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookFindings;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.TrialChecks;
import leafturn.records.trial.TrialGrounds;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Findings;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.Remark;
import org.junit.jupiter.api.Test;

/** A verdict stands only as far as what was kept of plan and readings bears it. */
class StandingWordsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final LocalDate CHANGED = LocalDate.of(2026, 5, 4);

  static ObjectNode plan(double margin) throws IOException {
    ObjectNode plan =
        (ObjectNode) JSON.readTree(Files.readString(Examples.file("split-yards.trial.json")));
    plan.path("outcomes")
        .forEach(
            outcome -> {
              if (outcome.path("primary").asBoolean()) {
                ((ObjectNode) outcome).put("margin", margin);
              }
            });
    return plan;
  }

  /** The plan now, frozen as another on a day. */
  static TrialSheet trial(ObjectNode now, ObjectNode frozen, String day) {
    String hash = BookPlan.hash(TrialSheet.planned(frozen, List.of()));
    TrialSheet.Frozen seal = new TrialSheet.Frozen(day + "T08:00:00Z", "Ada", hash, null);
    return TrialSheet.planned(now, List.of())
        .frozenAs(seal)
        .endedOn(LocalDate.of(2026, 11, 1), null);
  }

  static List<Reading> readings(TrialSheet trial, boolean raterByArm) {
    SplittableRandom random = new SplittableRandom(7);
    TrialPlan plan = BookPlan.of(trial);
    List<Reading> readings = new ArrayList<>();
    for (LaidPlot plot : TrialLayout.of(plan).plots()) {
      String arm = plot.unit().arm();
      for (LocalDate date : plan.observing().dates()) {
        double value = (arm.equals("returned") ? 6.5 : 4.5) + random.nextDouble();
        String rater = raterByArm && arm.equals("returned") ? "Bo" : "Ada";
        readings.add(Reading.own(plot.code(), date, "quality", "%.1f".formatted(value), rater));
      }
    }
    return readings;
  }

  private static Findings findings(TrialSheet trial, boolean raterByArm, TrialPast past) {
    return BookFindings.of(
        new BookFindings.Basis(
            trial.with(past), List.of(), readings(trial, raterByArm), true, ZoneOffset.UTC));
  }

  static String document(Findings findings) {
    return new FindingsDocument(findings, null, List.of()).paper().html();
  }

  @Test
  void whereTreatmentAndRaterGoTogetherThereIsNoVerdict() throws IOException {
    TrialSheet trial = trial(plan(0.5), plan(0.5), "2026-03-01");
    Findings findings = findings(trial, true, TrialPast.UNKNOWN);
    FindingsView view = new FindingsView(findings);
    assertThat(view.answer())
        .isEqualTo(view.headline())
        .startsWith("No verdict: Treatment and rater always go together");
    assertThat(findings.outcomes().get(0).effects()).allMatch(each -> each.verdict() == null);
    assertThat(new FindingsWords(findings).sentence(findings.outcomes().get(0)))
        .startsWith("Described, not judged: ");
    assertThat(FindingsReport.of(findings, List.of(), "leafturn").sentence())
        .startsWith("No verdict: ");
    assertThat(document(findings))
        .contains("No verdict: ", "nothing is concluded from it")
        .containsOnlyOnce("Treatment and rater always go together")
        .doesNotContain("Quality differs", "The result holds");
  }

  @Test
  void aDifferenceIsToldBesideTheMargin() throws IOException {
    TrialSheet clear = trial(plan(0.5), plan(0.5), "2026-03-01");
    assertThat(new FindingsView(findings(clear, false, TrialPast.UNKNOWN)).headline())
        .startsWith("Quality differs")
        .contains(" It is larger than what was fixed as mattering, ±0.5")
        .doesNotContain("is undecided");
    TrialSheet close = trial(plan(2), plan(2), "2026-03-01");
    assertThat(new FindingsView(findings(close, false, TrialPast.UNKNOWN)).headline())
        .startsWith("Quality differs")
        .contains(" Whether it is smaller than what was fixed as mattering, ±2", "is undecided")
        .doesNotContain("It is larger than");
  }

  @Test
  void aMarginChangedAfterFreezingIsToldAndTheFrozenOneJudges() throws IOException {
    TrialSheet trial = trial(plan(2), plan(0.5), "2026-03-01");
    TrialPast past =
        new TrialPast(
            List.of(
                new PlanVersion(plan(0.5), LocalDate.of(2026, 3, 1), null),
                new PlanVersion(plan(2), CHANGED, "a slip of the pen")),
            List.of(),
            List.of());
    Findings findings = findings(trial, false, past);
    String told =
        "The margin of quality was 0.5 when the plan was frozen; it was changed to 2 on 2026-05-04 (a slip of the pen).";
    assertThat(new FindingsView(findings).headline())
        .startsWith("Quality differs")
        .contains(told, "The verdict is by the plan as it was frozen.");
    assertThat(findings.outcomes().get(0).outcome().margin()).isEqualTo(0.5);
    assertThat(new FindingsView(findings).record())
        .noneMatch(each -> each.contains("No deviation") || each.contains(told));
    assertThat(document(findings))
        .containsOnlyOnce(Dates.inWords(told))
        .doesNotContain("fixed beforehand", "changed after it was frozen", "changed since");
  }

  @Test
  void onlyAPlanFrozenBeforeTheFirstReadingIsFixedBeforehand() throws IOException {
    TrialSheet kept = trial(plan(0.5), plan(0.5), "2026-03-01");
    assertThat(document(findings(kept, false, TrialPast.UNKNOWN)))
        .contains("fixed beforehand", "before the first reading");
    TrialSheet late = trial(plan(0.5), plan(0.5), "2026-09-01");
    assertThat(document(findings(late, false, TrialPast.UNKNOWN)))
        .containsOnlyOnce("frozen on 1 September 2026")
        .contains(
            "The plan was frozen on 1 September 2026, after readings of 20 April 2026 and later")
        .doesNotContain("fixed beforehand");
  }

  @Test
  void aPlanFrozenAfterItsLastPlannedDayIsToldAsSuch() throws IOException {
    TrialSheet late = trial(plan(0.5), plan(0.5), "2027-03-01");
    assertThat(BookPlan.isFrozenLate(late, ZoneOffset.UTC)).isTrue();
    assertThat(BookPlan.isFrozenLate(trial(plan(0.5), plan(0.5), "2026-03-01"), ZoneOffset.UTC))
        .isFalse();
    assertThat(document(findings(late, false, TrialPast.UNKNOWN)))
        .doesNotContain("fixed beforehand", "before the first reading");
  }

  @Test
  void readingsTakenBackAreADeviation() throws IOException {
    TrialSheet trial = trial(plan(0.5), plan(0.5), "2026-03-01");
    LocalDate day = LocalDate.of(2026, 4, 20);
    Reading before = Reading.own(readings(trial, false).get(0).plot(), day, "quality", "9", "Ada");
    String again = readings(trial, false).get(0).value();
    TrialPast.Withdrawn taken =
        new TrialPast.Withdrawn(LocalDate.of(2026, 6, 1), List.of(before), "wrong plot read");
    Findings findings = findings(trial, false, new TrialPast(List.of(), List.of(taken), List.of()));
    assertThat(new FindingsView(findings).record())
        .contains(
            "Deviation: Withdrawn on 2026-06-01, because wrong plot read: 1 reading of quality (%s on 2026-04-20: 9, now %s)."
                .formatted(before.plot(), again))
        .doesNotContain("No deviation from the plan was noted.");
  }

  /** Frozen in the evening of 19 April at home, when it is 20 April in universal time. */
  @Test
  void daysAreCountedWhereTheBookIsKept() throws IOException {
    TrialSheet.Frozen seal =
        new TrialSheet.Frozen(
            "2026-04-21T02:00:00Z",
            "Ada",
            BookPlan.hash(TrialSheet.planned(plan(0.5), List.of())),
            null);
    TrialSheet trial = TrialSheet.planned(plan(0.5), List.of()).frozenAs(seal);
    List<Reading> readings = readings(trial, false);
    ZoneId home = ZoneId.of("America/New_York");
    assertThat(
            document(
                BookFindings.of(new BookFindings.Basis(trial, List.of(), readings, true, home))))
        .contains("frozen on 20 April 2026, before the first reading");
    assertThat(
            document(
                BookFindings.of(
                    new BookFindings.Basis(trial, List.of(), readings, true, ZoneOffset.UTC))))
        .contains("frozen on 21 April 2026, after readings of 20 April 2026 and later");
  }

  @Test
  void whatAPlanSaidBeforeIsToldThingByThing() throws IOException {
    ObjectNode later = plan(0.5);
    ((ObjectNode) later.path("protocol")).put("heightMm", 60).put("deckCleaned", false);
    ((ObjectNode) later.path("season")).put("to", "2026-11-15");
    ((ObjectNode) later.path("lawns").path(1)).put("outline", "24 x 14");
    TrialSheet trial = trial(later, plan(0.5), "2026-03-01");
    TrialPast past =
        new TrialPast(
            List.of(
                new PlanVersion(plan(0.5), LocalDate.of(2026, 3, 1), null),
                new PlanVersion(later, CHANGED, null)),
            List.of(),
            List.of());
    assertThat(new FindingsView(findings(trial, false, past)).record())
        .filteredOn(line -> line.startsWith("Deviation: "))
        .allSatisfy(line -> assertThat(line).hasSizeLessThan(300).doesNotContain("=", "{"))
        .anyMatch(line -> line.contains("last day of the season was 2026-10-31"))
        .anyMatch(line -> line.contains("rule to clean the deck between was kept"));
  }

  @Test
  void aPlanThatWasNeverFrozenGivesNoVerdict() throws IOException {
    TrialSheet never = TrialSheet.planned(plan(0.5), List.of());
    Findings findings = findings(never, false, TrialPast.UNKNOWN);
    assertThat(new FindingsView(findings).headline())
        .startsWith("No verdict: The plan was never frozen");
    assertThat(document(findings))
        .contains("The plan was never frozen: nothing shows that margin")
        .doesNotContain("fixed beforehand", "The plan was frozen on");
  }

  @Test
  void aLastDateThatWasNotReadIsADeviation() throws IOException {
    ObjectNode last = plan(0.5);
    last.path("outcomes")
        .forEach(
            outcome -> {
              if (outcome.path("primary").asBoolean()) {
                ((ObjectNode) outcome).put("summary", "last-date");
              }
            });
    TrialSheet trial = trial(last, last, "2026-03-01");
    List<Reading> early =
        readings(trial, false).stream()
            .filter(each -> each.date().isBefore(LocalDate.of(2026, 10, 1)))
            .toList();
    Findings findings =
        BookFindings.of(new BookFindings.Basis(trial, List.of(), early, true, ZoneOffset.UTC));
    assertThat(new FindingsView(findings).record())
        .contains(
            "Deviation: quality was not read on its last planned date, 2026-10-12; 2026-08-24, the last one read, stands for it.");
  }

  /** Of eight yards one was read: what was planned cannot judge. */
  @Test
  void oneYardReadOfManyHasNoDegreesOfFreedom() throws IOException {
    TrialSheet trial = trial(plan(0.5), plan(0.5), "2026-03-01");
    List<Reading> first =
        readings(trial, false).stream().filter(each -> each.plot().startsWith("B1-")).toList();
    Findings findings =
        BookFindings.of(new BookFindings.Basis(trial, List.of(), first, true, ZoneOffset.UTC));
    assertThat(findings.reach()).isEqualTo(Findings.Reach.TWO_AREAS);
    assertThat(new FindingsView(findings).headline())
        .startsWith("No verdict: Treatments have no replicates (0 degrees of freedom)");
    assertThat(document(findings))
        .contains("One yard split once", "Yards: 8 started, 1 with a whole season")
        .doesNotContain("7 degrees", "p =");
    List<Remark> remarks =
        new TrialChecks(
                trial, TrialGrounds.of(TrialLayout.of(BookPlan.of(trial))), first, List.of(), true)
            .remarks();
    assertThat(remarks.stream().map(Remark::sentence))
        .anyMatch(each -> each.contains("one unit holds them all once"))
        .noneMatch(each -> each.contains("7 degrees"));
    assertThat(
            new TrialChecks(
                    trial,
                    TrialGrounds.of(TrialLayout.of(BookPlan.of(trial))),
                    first,
                    List.of(),
                    false)
                .remarks().stream().map(Remark::sentence))
        .as("while the season lasts, the other yards may still be read")
        .anyMatch(each -> each.contains("7 degrees"));
  }
}
