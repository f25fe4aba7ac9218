package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.net.http.HttpResponse;
import java.util.Map;
import java.util.Objects;
import leafturn.records.book.Sheet;
import leafturn.records.people.Role;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import org.junit.jupiter.api.Test;

/** A trial on the site: planned, frozen, read, changed afterwards and ended. */
class TrialRoomTest extends TwoYardsSite {
  @Test
  void allFaultsOfAPlanStandBesideItsFieldsAndWhatWasTypedIsKept() {
    Map<String, String> fields = yards.plan();
    fields.put("name", "");
    fields.put("outcomes[0].margin", "half");
    fields.put("dates", "2015-13-01");
    HttpResponse<String> answer = yards.plan("/trials/new", fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("to be put right", "f-name-fault", "f-outcomes-0-margin-fault", "f-dates-fault")
        .contains("value=\"half\"", "2015-13-01", "Does returning keep the turf as good?");
  }

  @Test
  void anEmptyPlanAsksForTwoArmsAndTellsEachFaultOnceInAPersonsWords() {
    String blank = adviser.get("/trials/new").body();
    String seen = blank.substring(0, blank.indexOf("More arms, up to eight"));
    assertThat(seen).contains("Arm 2").doesNotContain("Arm 3");
    assertThat(blank).doesNotContain("<details class=\"folded\" open");
    HttpResponse<String> answer = yards.post(adviser, "/trials/new", Map.of());
    assertThat(answer.statusCode()).isEqualTo(422);
    String faults = answer.body().replaceAll("(?s).*?id=\"faults\">(.*?)</div>.*", "$1");
    assertThat(faults.split("f-inBook", -1)).hasSize(2);
    assertThat(faults)
        .contains("None is chosen", "Name the arms that are compared", "Say what is observed")
        .contains("Give the days on which something is read", "#f-question", "#f-season-from")
        .doesNotContain("objects", "season:", "lawns:", "arms:", "outcomes:");
    Map<String, String> three = yards.plan();
    three.put("arms[2].name", "by rule");
    three.put("name", "");
    assertThat(yards.plan("/trials/new", three).body())
        .contains("<details class=\"folded\" open", "value=\"by rule\"");
  }

  /** Whoever must not know the arms could guess a seed that is today's date. */
  @Test
  void aNewPlanHasASeedThatNobodyCanGuess() {
    String first = seed(adviser.get("/trials/new").body());
    assertThat(first).matches("\\d+").isNotEqualTo(seed(adviser.get("/trials/new").body()));
  }

  private static String seed(String page) {
    return page.replaceAll("(?s).*<input[^>]*name=\"seed\"[^>]*value=\"(\\d*)\".*", "$1");
  }

  @Test
  void nothingIsReadBeforeThePlanIsFrozenAndLaterChangesAreShown() {
    String trial = yards.planned();
    assertThat(adviser.get(trial).body())
        .contains("being planned", "Freeze the plan")
        .containsPattern(
            "2 yards find a difference of 0.5, the margin that matters, with a chance of \\d")
        .contains("take more yards before you freeze");
    String enter = trial + "/readings/enter?date=2015-05-04&outcome=quality";
    assertThat(adviser.get(enter).statusCode()).isEqualTo(409);
    assertThat(adviser.get(enter).body()).contains("is not frozen");

    assertThat(yards.post(adviser, trial + "/freeze", Map.of()).statusCode()).isEqualTo(303);
    Sheet<TrialSheet> frozen = yards.trial(trial);
    TrialSheet.Frozen seal = Objects.requireNonNull(frozen.content().frozen());
    assertThat(seal.by()).isEqualTo(site.name(Role.ADVISER));
    assertThat(adviser.get(trial).body()).contains("unchanged since", seal.hash());
    assertThat(yards.post(adviser, trial + "/freeze", Map.of()).statusCode()).isEqualTo(303);
    assertThat(yards.trial(trial).version()).isEqualTo(frozen.version());

    Map<String, String> changed = yards.plan();
    changed.put("outcomes[0].margin", "1");
    changed.put("version", Integer.toString(frozen.version()));
    assertThat(yards.plan(trial + "/plan", changed).body()).contains("say why it is changed");
    changed.put("why", "The margin was a slip of the pen.");
    assertThat(yards.plan(trial + "/plan", changed).statusCode()).isEqualTo(303);
    assertThat(adviser.get(trial).body())
        .contains("changed since", "Changed after it was frozen")
        .contains("Why: The margin was a slip of the pen.")
        .contains("a difference of 0.5 matters", "a difference of 1 matters");

    changed.put("outcomes[0].margin", "0.5");
    changed.put("version", Integer.toString(frozen.version() + 1));
    changed.remove("why");
    assertThat(yards.plan(trial + "/plan", changed).body()).contains("say why it is changed");
    changed.put("why", "It was none.");
    assertThat(yards.plan(trial + "/plan", changed).statusCode()).isEqualTo(303);
    assertThat(adviser.get(trial).body())
        .contains("unchanged since", "Why: It was none.", "Why: The margin was a slip of the pen.");
  }

  @Test
  void whatFreezingLateMeansIsSaidBesideTheButton() {
    String late = adviser.get(yards.planned()).body();
    assertThat(late.substring(0, late.indexOf("Freeze the plan</button>")))
        .contains("Its first planned day, Monday 4 May 2015, has passed.", "convinces less");
    Map<String, String> fields = yards.plan();
    int next = java.time.LocalDate.now(java.time.ZoneOffset.UTC).getYear() + 1;
    fields.replaceAll((name, value) -> value.replace("2015-", next + "-"));
    String trial = yards.planned(fields);
    assertThat(adviser.get(trial).body())
        .contains("Freeze the plan</button>")
        .doesNotContain("has passed");
  }

  /** Of the two ways one coin can fall on two yards, one puts each treatment on one side. */
  @Test
  void aLayoutThatCanGiveNoVerdictIsToldBesideTheButtonAndOnTheFrozenPlan() {
    String sentence = "Findings of this layout will give no verdict";
    int told = 0;
    for (int seed = 1; seed <= 8; seed++) {
      Map<String, String> fields = yards.plan();
      fields.put("name", "Yards " + seed);
      fields.put("seed", Integer.toString(seed));
      String trial = yards.planned(fields);
      boolean doubted = adviser.get(trial + "/layout").body().contains(sentence);
      String plan = adviser.get(trial).body();
      assertThat(plan.substring(0, plan.indexOf("Freeze the plan</button>")).contains(sentence))
          .isEqualTo(doubted);
      yards.post(adviser, trial + "/freeze", Map.of());
      assertThat(adviser.get(trial).body().contains(sentence)).isEqualTo(doubted);
      told += doubted ? 1 : 0;
    }
    assertThat(told).isBetween(1, 7);
  }

  @Test
  void theLayoutStaysAsItWasFrozen() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    Sheet<TrialSheet> frozen = yards.trial(trial);
    assertThat(Objects.requireNonNull(frozen.content().frozen()).layout()).hasSize(64);
    Map<String, String> moved = changed(frozen);
    moved.put("plots.edgeM", "2.5");
    moved.put("seed", "8");
    HttpResponse<String> answer = yards.plan(trial + "/plan", moved);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("he seed, the plots cannot be changed any more");
    assertThat(yards.trial(trial).version()).isEqualTo(frozen.version());
  }

  /** The demonstration has a day of its own, whatever the calendar says. */
  @Test
  void aTrialOfTheDemoIsFrozenOnTheDayOfItsBook() {
    Map<String, String> fields = yards.plan();
    fields.replaceAll((name, value) -> value.replace("2015-05-04", "2015-05-29"));
    String trial = yards.planned(fields);
    yards.post(adviser, trial + "/freeze", Map.of());
    assertThat(adviser.get(trial).body())
        .contains("on 28 May 2015, ", "unchanged since")
        .doesNotContain("after all its planned days");
  }

  private Map<String, String> changed(Sheet<TrialSheet> frozen) {
    Map<String, String> changed = yards.plan();
    changed.put("why", "The hedge grew.");
    changed.put("version", Integer.toString(frozen.version()));
    return changed;
  }

  @Test
  void noComparisonNamedMeansAllPairs() {
    Map<String, String> fields = yards.plan();
    fields.put("contrasts", " ");
    String trial = yards.planned(fields);
    var plan = leafturn.records.trial.BookPlan.of(yards.trial(trial).content());
    assertThatList(plan.treatments().contrasts())
        .containsExactly(new leafturn.trials.design.Contrast("returned", "collected"));
  }

  @Test
  void anEndedTrialTakesNoMoreAndSaysWhy() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    assertThat(yards.post(adviser, trial + "/end", Map.of("why", "The yard was sold")).statusCode())
        .isEqualTo(303);
    assertThat(adviser.get(trial).body()).contains("It ended on", "The yard was sold");
    assertThat(adviser.get(trial + "/readings/enter?date=2015-05-04&outcome=quality").statusCode())
        .isEqualTo(409);
  }

  @Test
  void theTrialOfTheDemoIsMarkedAsInvented() {
    Sheet<TrialSheet> demo = site.book.read(reading -> reading.all(Kind.TRIAL)).get(0);
    assertThat(demo.content().note()).contains("Invented");
    assertThat(adviser.get("/trials/" + demo.id()).body())
        .contains("It ended on", "unchanged since", "192 readings");
    assertThat(adviser.get("/trials/" + demo.id() + "/findings").body())
        .contains("frozen on 28 March 2014, before the first reading")
        .doesNotContain("entered on", "after all its planned days");
    assertThat(adviser.get("/trials/" + demo.id() + "/readings").body())
        .contains("20 April 2014", "Before anything is concluded")
        .doesNotContain("more than 7 days after they were read")
        .doesNotContainPattern(">[^<]*2014-\\d\\d-\\d\\d[^<]*<");
    Sheet<TrialReadingsSheet> read =
        site.book.read(reading -> reading.ofTrial(Kind.TRIAL_READINGS, demo.id())).get(0);
    String back = "/trials/%s/readings/%s/withdraw".formatted(demo.id(), read.id());
    HttpResponse<String> refused =
        yards.post(
            adviser,
            back,
            Map.of("version", Integer.toString(read.version()), "why", "wrong plot"));
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.body()).contains("This trial has ended; its readings stay as they are.");
    assertThat(adviser.get("/trials/" + demo.id() + "/readings").body())
        .doesNotContain(">Withdraw<");
    Browser reader = site.signedIn(Role.READER);
    assertThat(reader.get("/trials/" + demo.id()).statusCode()).isEqualTo(404);
  }
}
