package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import leafturn.records.Examples;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookFindings;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.PlanVersion;
import leafturn.records.trial.TrialPast;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Findings;
import leafturn.trials.observation.Reading;
import org.junit.jupiter.api.Test;

/** A verdict stands only as far as what was kept of plan and readings bears it. */
class StandingWordsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final LocalDate CHANGED = LocalDate.of(2026, 5, 4);

  private static ObjectNode plan(double margin) throws IOException {
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
  private static TrialSheet trial(ObjectNode now, ObjectNode frozen, String day) {
    String hash = BookPlan.hash(new TrialSheet(frozen, List.of(), null, null, null, null));
    TrialSheet.Frozen seal = new TrialSheet.Frozen(day + "T08:00:00Z", "Ada", hash, null);
    return new TrialSheet(now, List.of(), seal, LocalDate.of(2026, 11, 1), null, null);
  }

  private static List<Reading> readings(TrialSheet trial, boolean raterByArm) {
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
        new BookFindings.Basis(trial, List.of(), readings(trial, raterByArm), true, past));
  }

  private static String document(Findings findings) {
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
        .doesNotContain("Quality differs", "The result holds");
  }

  @Test
  void aMarginChangedAfterFreezingIsToldAndTheFrozenOneJudges() throws IOException {
    TrialSheet trial = trial(plan(2), plan(0.5), "2026-03-01");
    TrialPast past =
        new TrialPast(
            List.of(
                new PlanVersion(plan(0.5), LocalDate.of(2026, 3, 1), null),
                new PlanVersion(plan(2), CHANGED, "a slip of the pen")),
            List.of());
    Findings findings = findings(trial, false, past);
    String told =
        "The margin of quality was 0.5 when the plan was frozen; it was changed to 2 on 2026-05-04 (a slip of the pen).";
    assertThat(new FindingsView(findings).headline())
        .startsWith("Quality differs")
        .contains(told, "The verdict is by the plan as it was frozen.");
    assertThat(findings.outcomes().get(0).outcome().margin()).isEqualTo(0.5);
    assertThat(new FindingsView(findings).record()).contains("Deviation: " + told);
    assertThat(document(findings)).doesNotContain("fixed beforehand");
  }

  @Test
  void onlyAPlanFrozenBeforeTheFirstReadingIsFixedBeforehand() throws IOException {
    TrialSheet kept = trial(plan(0.5), plan(0.5), "2026-03-01");
    assertThat(document(findings(kept, false, TrialPast.UNKNOWN)))
        .contains("fixed beforehand", "before the first reading");
    TrialSheet late = trial(plan(0.5), plan(0.5), "2026-09-01");
    assertThat(document(findings(late, false, TrialPast.UNKNOWN)))
        .contains("though readings are dated before that")
        .doesNotContain("fixed beforehand");
  }

  @Test
  void aPlanFrozenAfterItsLastPlannedDayIsToldAsSuch() throws IOException {
    TrialSheet late = trial(plan(0.5), plan(0.5), "2027-03-01");
    assertThat(BookPlan.isFrozenLate(late)).isTrue();
    assertThat(BookPlan.isFrozenLate(trial(plan(0.5), plan(0.5), "2026-03-01"))).isFalse();
    assertThat(document(findings(late, false, TrialPast.UNKNOWN)))
        .doesNotContain("fixed beforehand", "before the first reading");
  }

  @Test
  void readingsTakenBackAreADeviation() throws IOException {
    TrialSheet trial = trial(plan(0.5), plan(0.5), "2026-03-01");
    String back = "Withdrawn on 2026-06-01 by Ada: 4 readings of quality";
    Findings findings = findings(trial, false, new TrialPast(List.of(), List.of(back)));
    assertThat(new FindingsView(findings).record())
        .contains("Deviation: " + back + ".")
        .doesNotContain("No deviation from the plan was noted.");
  }
}
