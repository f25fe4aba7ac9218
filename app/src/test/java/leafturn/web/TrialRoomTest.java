package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.records.book.Sheet;
import leafturn.records.people.Role;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A trial on the site: planned, frozen, read, changed afterwards and ended. */
class TrialRoomTest {
  @TempDir Path folder;
  private PeopledSite site;
  private Browser adviser;

  @BeforeEach
  void open() {
    site = new PeopledSite(folder, Clock.systemUTC());
    site.book.write("Wren", writing -> draw(writing, "linden-house-front"));
    site.book.write("Wren", writing -> draw(writing, "linden-house-back"));
    adviser = site.signedIn(Role.ADVISER);
  }

  @AfterEach
  void close() {
    site.close();
  }

  /** Gives a lawn an outline, so that it can be laid out. */
  private static Sheet<LawnSheet> draw(leafturn.records.book.BookWriting writing, String address) {
    Sheet<LawnSheet> lawn = writing.at(Kind.LAWN, address).orElseThrow();
    String document =
        Kind.LAWN
            .write(lawn.content())
            .replaceFirst("\\{", "{\"outline\": \"0 0\\\\n24 0\\\\n24 16\\\\n0 16\", ");
    return writing.revise(
        Kind.LAWN,
        lawn.id(),
        lawn.version(),
        Kind.LAWN.read(new leafturn.records.SourceText("lawn", document)));
  }

  private Map<String, String> plan() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("name", "Two yards");
    fields.put("question", "Does returning keep the turf as good?");
    fields.put("design", "split-yard");
    fields.put("factor", "practice");
    fields.put("arms[0].name", "collected");
    fields.put("arms[0].clippings", "collected");
    fields.put("arms[1].name", "returned");
    fields.put("arms[1].clippings", "returned");
    fields.put("seed", "7");
    fields.put("cores.perPlot", "0");
    fields.put("season.from", "2015-04-01");
    fields.put("season.to", "2015-10-31");
    fields.put("dates", "2015-05-04\n2015-06-01");
    fields.put("outcomes[0].name", "quality");
    fields.put("outcomes[0].kind", "rating");
    fields.put("outcomes[0].unit", "1-9");
    fields.put("outcomes[0].low", "1");
    fields.put("outcomes[0].high", "9");
    fields.put("outcomes[0].scale", "identity");
    fields.put("outcomes[0].summary", "season-mean");
    fields.put("outcomes[0].margin", "0.5");
    fields.put("outcomes[0].primary", "true");
    fields.put("contrasts", "returned − collected");
    fields.put("protocol.ratersBlind", "true");
    fields.put("protocol.feed", "equal");
    return fields;
  }

  private List<String> lawns() {
    return site.book.read(
        reading ->
            List.of(
                reading.at(Kind.LAWN, "linden-house-front").orElseThrow().id(),
                reading.at(Kind.LAWN, "linden-house-back").orElseThrow().id()));
  }

  private HttpResponse<String> post(Browser browser, String path, Map<String, String> fields) {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.put("_token", browser.token());
    return browser.post(path, all);
  }

  private HttpResponse<String> plan(String path, Map<String, String> fields) {
    StringBuilder body = new StringBuilder("_token=" + Browser.encoded(adviser.token()));
    fields.forEach(
        (name, value) ->
            body.append('&')
                .append(Browser.encoded(name))
                .append('=')
                .append(Browser.encoded(value)));
    lawns().forEach(id -> body.append("&inBook=").append(id));
    return adviser.send(
        adviser
            .request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(java.net.http.HttpRequest.BodyPublishers.ofString(body.toString())));
  }

  private static String faults(HttpResponse<String> answer) {
    return answer
        .body()
        .replaceAll("(?s).*<div class=\"faults\"", "")
        .replaceAll("(?s)</div>.*", "")
        .replaceAll("<[^>]*>", "");
  }

  private String planned() {
    HttpResponse<String> answer = plan("/trials/new", plan());
    assertThat(answer.statusCode()).as("%s", faults(answer)).isEqualTo(303);
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private Sheet<TrialSheet> trial(String path) {
    String id = path.substring(path.lastIndexOf('/') + 1);
    return site.book.read(reading -> reading.find(Kind.TRIAL, id)).orElseThrow();
  }

  @Test
  void allFaultsOfAPlanStandBesideItsFieldsAndWhatWasTypedIsKept() {
    Map<String, String> fields = plan();
    fields.put("name", "");
    fields.put("outcomes[0].margin", "half");
    fields.put("dates", "2015-13-01");
    HttpResponse<String> answer = plan("/trials/new", fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("to be put right", "f-name-fault", "f-outcomes-0-margin-fault", "f-dates-fault")
        .contains("value=\"half\"", "2015-13-01", "Does returning keep the turf as good?");
  }

  @Test
  void nothingIsReadBeforeThePlanIsFrozenAndLaterChangesAreShown() {
    String trial = planned();
    assertThat(adviser.get(trial).body()).contains("being planned").contains("Freeze the plan");
    String enter = trial + "/readings/enter?date=2015-05-04&outcome=quality";
    assertThat(adviser.get(enter).statusCode()).isEqualTo(409);
    assertThat(adviser.get(enter).body()).contains("is not frozen");

    assertThat(post(adviser, trial + "/freeze", Map.of()).statusCode()).isEqualTo(303);
    Sheet<TrialSheet> frozen = trial(trial);
    TrialSheet.Frozen seal = Objects.requireNonNull(frozen.content().frozen());
    assertThat(seal.by()).isEqualTo(site.name(Role.ADVISER));
    assertThat(adviser.get(trial).body()).contains("unchanged since", seal.hash());
    assertThat(post(adviser, trial + "/freeze", Map.of()).statusCode()).isEqualTo(303);
    assertThat(trial(trial).version()).isEqualTo(frozen.version());

    Map<String, String> changed = plan();
    changed.put("outcomes[0].margin", "1");
    changed.put("version", Integer.toString(frozen.version()));
    assertThat(plan(trial + "/plan", changed).body()).contains("say why it is changed");
    changed.put("why", "The margin was a slip of the pen.");
    assertThat(plan(trial + "/plan", changed).statusCode()).isEqualTo(303);
    assertThat(adviser.get(trial).body())
        .contains("changed since", "Changed after it was frozen", "slip of the pen")
        .contains("a difference of 0.5 matters", "a difference of 1 matters");
  }

  @Test
  void theLayoutStaysAsItWasFrozen() {
    String trial = planned();
    post(adviser, trial + "/freeze", Map.of());
    Sheet<TrialSheet> frozen = trial(trial);
    assertThat(Objects.requireNonNull(frozen.content().frozen()).layout()).hasSize(64);
    Map<String, String> moved = changed(frozen);
    moved.put("plots.edgeM", "2.5");
    moved.put("seed", "8");
    HttpResponse<String> answer = plan(trial + "/plan", moved);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("he seed, the plots cannot be changed any more");
    assertThat(trial(trial).version()).isEqualTo(frozen.version());
  }

  private Map<String, String> changed(Sheet<TrialSheet> frozen) {
    Map<String, String> changed = plan();
    changed.put("why", "The hedge grew.");
    changed.put("version", Integer.toString(frozen.version()));
    return changed;
  }

  @Test
  void ratersEnterBlindInTheOrderOfTheWalkAndASecondSendingAddsNothing() {
    String trial = planned();
    post(adviser, trial + "/freeze", Map.of());
    Browser helper = site.signedIn(Role.HELPER);
    assertThat(helper.get("/trials").body()).contains("Two yards").doesNotContain("Eight split");
    String form = helper.get(trial + "/readings/enter?date=2015-05-04&outcome=quality").body();
    assertThat(form)
        .contains("B1-1", "B1-2", "B2-1", "B2-2", "The arms are not shown")
        .doesNotContain("B1-1, collected")
        .doesNotContain("B1-1, returned");
    String entry = form.replaceAll("(?s).*name=\"entry\" value=\"([^\"]+)\".*", "$1");
    Map<String, String> sent = new LinkedHashMap<>();
    sent.put("entry", entry);
    sent.put("date", "2015-05-04");
    sent.put("outcome", "quality");
    sent.put("rater", "Henk");
    sent.put("plot-B1-1", "6.5");
    sent.put("plot-B1-2", "12");
    sent.put("plot-B2-1", "good");
    HttpResponse<String> faulty = post(helper, trial + "/readings/enter", sent);
    assertThat(faulty.statusCode()).isEqualTo(422);
    assertThat(faulty.body())
        .contains(
            "outside what the plan allows", "is no number", "value=\"6.5\"", "value=\"good\"");
    sent.put("plot-B1-2", "7");
    sent.put("plot-B2-1", "5");
    sent.put("plot-B2-2", "5.5");
    assertThat(post(helper, trial + "/readings/enter", sent).statusCode()).isEqualTo(303);
    assertThat(post(helper, trial + "/readings/enter", sent).statusCode()).isEqualTo(303);
    List<Sheet<TrialReadingsSheet>> sheets = readings(trial);
    assertThatList(sheets).hasSize(1);
    assertThat(sheets.get(0).content().readings()).hasSize(4);

    sent.put("entry", "00000000-0000-4000-8000-000000000001");
    assertThat(post(helper, trial + "/readings/enter", sent).body())
        .contains("The book has 6.5 already");
    assertThat(helper.get(trial + "/readings").body())
        .contains("4 of 4")
        .doesNotContain("Before anything is concluded");
    assertThat(adviser.get(trial + "/readings").body())
        .contains("Before anything is concluded", "2 units; below 5", "under way");
    assertThat(post(helper, trial + "/end", Map.of()).statusCode()).isEqualTo(403);
  }

  private List<Sheet<TrialReadingsSheet>> readings(String trial) {
    return site.book.read(reading -> reading.ofTrial(Kind.TRIAL_READINGS, trial(trial).id()));
  }

  @Test
  void noComparisonNamedMeansAllPairs() {
    Map<String, String> fields = plan();
    fields.put("contrasts", " ");
    HttpResponse<String> answer = plan("/trials/new", fields);
    assertThat(answer.statusCode()).as("%s", faults(answer)).isEqualTo(303);
    String trial = answer.headers().firstValue("Location").orElseThrow();
    var plan = leafturn.records.trial.BookPlan.of(trial(trial).content());
    assertThatList(plan.treatments().contrasts())
        .containsExactly(new leafturn.trials.design.Contrast("returned", "collected"));
  }

  @Test
  void whatHasNotComeYetIsNotEntered() {
    String trial = planned();
    post(adviser, trial + "/freeze", Map.of());
    Map<String, String> mown = Map.of("day", "2199-05-10", "what", "mown");
    HttpResponse<String> event = post(adviser, trial + "/events", mown);
    assertThat(event.statusCode()).isEqualTo(422);
    assertThat(event.body()).contains("10 May 2199 has not come yet");
    Map<String, String> sent =
        Map.of("date", "2199-05-10", "outcome", "quality", "rater", "Ada", "plot-B1-1", "6,5");
    HttpResponse<String> entry = post(adviser, trial + "/readings/enter", sent);
    assertThat(entry.statusCode()).isEqualTo(422);
    assertThat(entry.body()).contains("10 May 2199 has not come yet", "value=\"6,5\"");
    Map<String, String> come = new LinkedHashMap<>(sent);
    come.put("date", "2015-05-04");
    assertThat(post(adviser, trial + "/readings/enter", come).statusCode()).isEqualTo(303);
    assertThat(readings(trial).get(0).content().readings().get(0).value()).isEqualTo("6.5");
  }

  @Test
  void mishapsAreNotedAndDecidedOn() {
    String trial = planned();
    post(adviser, trial + "/freeze", Map.of());
    Map<String, String> event = new LinkedHashMap<>();
    event.put("day", "2015-05-10");
    event.put("what", "dog urine");
    event.put("plots", "B1-1");
    event.put("areaM2", "0.4");
    assertThat(post(adviser, trial + "/events", event).statusCode()).isEqualTo(303);
    Sheet<TrialEventSheet> noted =
        site.book.read(reading -> reading.ofTrial(Kind.TRIAL_EVENT, trial(trial).id())).get(0);
    assertThat(noted.content().exclusion()).isNull();
    event.put("exclusion.leftOut", "true");
    event.put("exclusion.blind", "true");
    event.put("exclusion.why", "Rule 2 of the plan");
    event.put("version", "1");
    assertThat(post(adviser, trial + "/events/" + noted.id(), event).statusCode()).isEqualTo(303);
    assertThat(adviser.get(trial).body())
        .contains("dog urine (B1-1); left out, Rule 2 of the plan");
  }

  @Test
  void anEndedTrialTakesNoMoreAndSaysWhy() {
    String trial = planned();
    post(adviser, trial + "/freeze", Map.of());
    assertThat(post(adviser, trial + "/end", Map.of("why", "The yard was sold")).statusCode())
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
    Sheet<TrialReadingsSheet> read =
        site.book.read(reading -> reading.ofTrial(Kind.TRIAL_READINGS, demo.id())).get(0);
    String back = "/trials/%s/readings/%s/withdraw".formatted(demo.id(), read.id());
    HttpResponse<String> refused =
        post(adviser, back, Map.of("version", Integer.toString(read.version())));
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.body()).contains("This trial has ended; its readings stay as they are.");
    assertThat(adviser.get("/trials/" + demo.id() + "/readings").body())
        .doesNotContain(">Withdraw<");
    Browser reader = site.signedIn(Role.READER);
    assertThat(reader.get("/trials/" + demo.id()).statusCode()).isEqualTo(404);
  }
}
