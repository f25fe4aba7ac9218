package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.records.book.Sheet;
import leafturn.records.people.Role;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.trial.TrialPackageFile;
import org.junit.jupiter.api.Test;

/** Readings and mishaps of a trial, entered on the site. */
class TrialEntryRoomTest extends TwoYardsSite {
  @Test
  void ratersEnterBlindInTheOrderOfTheWalkAndASecondSendingAddsNothing() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    Browser helper = site.signedIn(Role.HELPER);
    assertThat(helper.get("/trials").body()).contains("Two yards").doesNotContain("Eight split");
    String form = helper.get(trial + "/readings/enter?date=2015-05-04&outcome=quality").body();
    assertThat(form)
        .contains("B1-1", "B1-2", "B2-1", "B2-2", "The arms are not shown")
        .doesNotContain("B1-1, collected")
        .doesNotContain("B1-1, returned");
    String entry = form.replaceAll("(?s).*name=\"entry\" value=\"([^\"]+)\".*", "$1");
    Map<String, String> sent = TwoYards.rating("Henk", "6.5");
    sent.put("entry", entry);
    sent.put("plot-B1-2", "12");
    sent.put("plot-B2-1", "good");
    HttpResponse<String> faulty = yards.post(helper, trial + "/readings/enter", sent);
    assertThat(faulty.statusCode()).isEqualTo(422);
    assertThat(faulty.body())
        .contains(
            "outside what the plan allows", "is no number", "value=\"6.5\"", "value=\"good\"");
    sent.put("plot-B1-2", "7");
    sent.put("plot-B2-1", "5");
    sent.put("plot-B2-2", "5.5");
    assertThat(yards.post(helper, trial + "/readings/enter", sent).statusCode()).isEqualTo(303);
    assertThat(yards.post(helper, trial + "/readings/enter", sent).statusCode()).isEqualTo(303);
    List<Sheet<TrialReadingsSheet>> sheets = yards.readings(trial);
    assertThatList(sheets).hasSize(1);
    assertThat(sheets.get(0).content().readings()).hasSize(4);

    TrialPackageFile packed = TrialPackageFile.open("trial.zip", adviser.file(trial + "/data.zip"));
    assertThat(Objects.requireNonNull(packed.read().trial().past()).entered())
        .containsExactly(
            new TrialPast.Entered(
                LocalDate.of(2015, 5, 28),
                "quality",
                LocalDate.of(2015, 5, 4),
                List.of("B1-1", "B1-2", "B2-1", "B2-2")));

    sent.put("entry", "00000000-0000-4000-8000-000000000001");
    assertThat(yards.post(helper, trial + "/readings/enter", sent).body())
        .contains("The book has 6.5 already");
    assertThat(helper.get(trial + "/readings").body())
        .contains("4 of 4")
        .doesNotContain("Before anything is concluded");
    assertThat(adviser.get(trial + "/readings").body())
        .contains("Before anything is concluded", "2 units; below 5", "under way");
    assertThat(yards.post(helper, trial + "/end", Map.of()).statusCode()).isEqualTo(403);
  }

  @Test
  void whatHasNotComeYetIsNotEntered() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    Map<String, String> mown = Map.of("day", "2199-05-10", "what", "mown");
    HttpResponse<String> event = yards.post(adviser, trial + "/events", mown);
    assertThat(event.statusCode()).isEqualTo(422);
    assertThat(event.body()).contains("10 May 2199 has not come yet");
    Map<String, String> sent = TwoYards.rating("Ada", "6,5");
    sent.put("date", "2199-05-10");
    HttpResponse<String> entry = yards.post(adviser, trial + "/readings/enter", sent);
    assertThat(entry.statusCode()).isEqualTo(422);
    assertThat(entry.body()).contains("10 May 2199 has not come yet", "value=\"6,5\"");
    sent.put("date", "2015-05-04");
    assertThat(yards.post(adviser, trial + "/readings/enter", sent).statusCode()).isEqualTo(303);
    assertThat(yards.readings(trial).get(0).content().readings().get(0).value()).isEqualTo("6.5");
  }

  /** The planned days lie before and after 28 May 2015, the day of the site. */
  @Test
  void aDayToComeSaysWhenItIsEnteredInsteadOfAskingForIt() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    assertThat(adviser.get(trial + "/readings").body())
        .contains("enter?date=2015-05-04", "to be entered from 1\u00a0June on")
        .doesNotContain("enter?date=2015-06-01");
  }

  /** A rating is a class of a scale; no laboratory looked for it. */
  @Test
  void aRatingBelowADetectionLimitIsRefused() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    HttpResponse<String> answer =
        yards.post(adviser, trial + "/readings/enter", TwoYards.rating("Ada", "<2"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("it has no detection limit");
    assertThatList(yards.readings(trial)).isEmpty();
  }

  @Test
  void allFaultsOfAnEventAreToldAtOnceAndNothingIsNotedThatNobodyChose() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    assertThat(adviser.get(trial + "/events").body())
        .containsPattern("<select id=\"f-what\"[^>]*>\\s*<option value=\"\"")
        .doesNotContain("value=\"mown\" selected");
    Map<String, String> none = new LinkedHashMap<>(Map.of("day", "2015-05-10", "what", ""));
    HttpResponse<String> answer = yards.post(adviser, trial + "/events", none);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("f-what-fault");

    Map<String, String> event = event("dog urine", "B1-1");
    event.put("day", "2199-05-10");
    event.put("areaM2", "-2");
    event.put("exclusion.leftOut", "true");
    event.put("mown.returnedHeightMm", "900");
    event.put("mown.collectedHeightMm", "40");
    answer = yards.post(adviser, trial + "/events", event);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("f-day-fault", "f-areaM2-fault", "f-exclusion-why-fault")
        .contains("f-mown-returnedHeightMm-fault", "f-mown-collectedHeightMm-fault")
        .contains("10 May 2199 has not come yet", "told of a mowing alone");
  }

  @Test
  void whatIsStillToBeDoneIsToldOnceThePlannedDaysArePast() {
    Map<String, String> fields = yards.plan();
    fields.put("dates", "2015-04-06\n2015-04-13");
    String trial = yards.planned(fields);
    yards.post(adviser, trial + "/freeze", Map.of());
    assertThat(adviser.get("/trials").body()).contains("all planned days are past: 0 of 8");
    Map<String, String> sent = TwoYards.rating("Ada", "6");
    sent.put("date", "2015-04-06");
    assertThat(yards.post(adviser, trial + "/readings/enter", sent).statusCode()).isEqualTo(303);
    String past =
        "ll planned days are past: 1 of 8 readings are in; enter what is missing, then end";
    assertThat(adviser.get("/trials").body()).contains("a" + past).doesNotContain("under way");
    assertThat(adviser.get(trial).body()).contains("A" + past);
  }

  @Test
  void whatBefellOnePracticeIsToldToBlindRatersWithoutItsPlots() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    Map<String, String> drift = event("clippings drift", "B1-2");
    drift.put("exclusion.why", "the collected half got some");
    drift.put("exclusion.leftOut", "true");
    keep(trial + "/events", drift);
    keep(trial + "/events", event("dog urine", "B2-1"));
    assertThat(site.signedIn(Role.HELPER).get(trial).body())
        .contains("clippings drifted over (plots are not shown to raters)", "dog urine (B2-1)")
        .doesNotContain("B1-2", "collected half");
    assertThat(adviser.get(trial).body())
        .contains("clippings drifted over (B1-2); left out, the collected half got some");
  }

  private static Map<String, String> event(String what, String plots) {
    return new LinkedHashMap<>(Map.of("day", "2015-05-10", "what", what, "plots", plots));
  }

  private void keep(String path, Map<String, String> event) {
    assertThat(yards.post(adviser, path, event).statusCode()).isEqualTo(303);
  }

  @Test
  void theRulesOfTheFrozenPlanAreOfferedAsReasons() {
    Map<String, String> fields = new LinkedHashMap<>(yards.plan());
    fields.put("exclusions", "Dog urine on more than a tenth of a plot.\nSpilled feed.");
    String trial = yards.planned(fields);
    yards.post(adviser, trial + "/freeze", Map.of());
    fields.put("exclusions", "Whatever looks odd");
    fields.put("why", "A second thought.");
    fields.put("version", Integer.toString(yards.trial(trial).version()));
    assertThat(yards.plan(trial + "/plan", fields).statusCode()).isEqualTo(303);
    assertThat(adviser.get(trial + "/events").body())
        .contains(
            "list=\"f-exclusion-why-offered\"",
            "<datalist id=\"f-exclusion-why-offered\"",
            ">rule 1</option>",
            "rule 1: Dog urine on more than a tenth of a plot; rule 2: Spilled feed)",
            "Another reason stays possible")
        .doesNotContain("Whatever looks odd");
  }

  @Test
  void mishapsAreNotedAndDecidedOn() {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    Map<String, String> event = event("dog urine", "B1-1");
    event.put("areaM2", "0.4");
    keep(trial + "/events", event);
    Sheet<TrialEventSheet> noted =
        site.book
            .read(reading -> reading.ofTrial(Kind.TRIAL_EVENT, yards.trial(trial).id()))
            .get(0);
    assertThat(noted.content().exclusion()).isNull();
    event.put("exclusion.leftOut", "true");
    event.put("exclusion.blind", "true");
    event.put("exclusion.why", "Rule 2 of the plan");
    event.put("version", "1");
    keep(trial + "/events/" + noted.id(), event);
    assertThat(adviser.get(trial).body())
        .contains("dog urine (B1-1); left out, Rule 2 of the plan");
    assertThat(yards.past(trial).events()).as("a first decision takes nothing back").isEmpty();
    event.put("exclusion.leftOut", "false");
    event.put("exclusion.why", "It was next door");
    event.put("version", "2");
    keep(trial + "/events/" + noted.id(), event);
    assertThat(yards.past(trial).events())
        .singleElement()
        .satisfies(
            earlier ->
                assertThat(earlier.words())
                    .isEqualTo("dog urine (B1-1); left out, Rule 2 of the plan"));
  }

  @Test
  void readingsAreWithdrawnForAReasonThatIsKept() throws Exception {
    String trial = yards.planned();
    yards.post(adviser, trial + "/freeze", Map.of());
    Map<String, String> sent = TwoYards.rating("Henk", "6.5");
    assertThat(yards.post(adviser, trial + "/readings/enter", sent).statusCode()).isEqualTo(303);
    Sheet<TrialReadingsSheet> sheet = yards.readings(trial).get(0);
    String back = trial + "/readings/" + sheet.id() + "/withdraw";
    Map<String, String> form = new LinkedHashMap<>();
    form.put("version", Integer.toString(sheet.version()));
    form.put("why", " ");
    HttpResponse<String> refused = yards.post(adviser, back, form);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("Say why these readings are withdrawn.");
    assertThatList(yards.readings(trial)).hasSize(1);
    form.put("why", "the neighbour's plot was read");
    assertThat(yards.post(adviser, back, form).statusCode()).isEqualTo(303);
    assertThatList(yards.readings(trial)).isEmpty();
    assertThat(adviser.get(trial + "/readings").body())
        .contains("quality: 1 reading: withdrawn by", "the neighbour's plot was read");
    TrialPackageFile packed = TrialPackageFile.open("trial.zip", adviser.file(trial + "/data.zip"));
    assertThat(Objects.requireNonNull(packed.read().trial().past()).withdrawn())
        .extracting(TrialPast.Withdrawn::why)
        .containsExactly("the neighbour's plot was read");
  }
}
