package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import leafturn.records.round.BookRules;
import org.junit.jupiter.api.Test;

class RulesRoomTest extends DemoSite {
  private static final String LAWN = "/lawns/linden-house-back";
  private static final String RULE = "clump-limit-dry";
  private static final String WET = "clump-limit-wet";
  private static final String WHY = ">Too much for the turf";
  private static final String COLLECT = "Mow today and collect: too much for the turf";

  @Test
  void oneSeesWhatWouldChangeBeforeItDoes() throws Exception {
    send(WET, "save", "8", "Trial", 0);
    HttpResponse<String> looked = send("look", "10", "Trial", 0);
    assertThat(looked.statusCode()).isEqualTo(200);
    assertThat(looked.body())
        .contains("2 lawns’ advice would change", "Back lawn, Linden House", COLLECT)
        .contains("Play lawn, Heron Bank", "on Wednesday, collect again")
        .contains("because: Dry clippings where they lie thickest", "40\u202fg/m² → 10\u202fg/m²")
        .contains("then counts: Clump index", "no longer counts: ")
        .contains("value=\"10\"", "value=\"Trial\"");
    assertThat(get(LAWN)).contains("<h1>Mow today and return");
  }

  @Test
  void aThresholdThatIsSetChangesTheCallAndSaysWhy() throws Exception {
    send(WET, "save", "8", "Trial", 0);
    assertThat(send("save", "10", "Our own trial of 2014", 0).statusCode()).isEqualTo(303);
    assertThat(get(LAWN)).contains(">Mow today and collect.<", WHY, " at 10\u00a0g/m²");
    assertThat(get("/rules")).contains("Our own trial of 2014", "set by Owner; usual 40\u202fg/m²");
    HttpResponse<String> back = send("standard", "", "", 1);
    assertThat(back.statusCode()).isEqualTo(303);
    assertThat(get(back.headers().firstValue("Location").orElseThrow()))
        .contains("role=\"status\">Set back to the usual: 40\u202fg/m².");
    assertThat(get(LAWN)).contains("<h1>Mow today and return");
    assertThat(send("save", "10", "Once more", 2).statusCode()).isEqualTo(303);
    assertThat(get(LAWN)).contains(">Mow today and collect.<", WHY);
  }

  @Test
  void wordsFollowAShareThatIsSetAndItsReasonIsTold() throws Exception {
    String rule = "one-third";
    assertThat(get("/rules/one-third"))
        .contains("Usual a third: ", "value=\"33.33\"", "from 20 to 50\u202f%")
        .doesNotContain("0.3333");
    assertThat(send(rule, "save", "25", "Shade thins it.", 0).statusCode()).isEqualTo(303);
    assertThat(get("/rules"))
        .contains("a quarter", "set by Owner; usual a third")
        .doesNotContain("role=\"status\">Saved");
    assertThat(get("/rules?saved=one-third"))
        .contains("role=\"status\">Saved: from now on a quarter counts.");
    assertThat(get("/rules?saved=nothing")).doesNotContain("role=\"status\">Saved");
    String lawn = get(LAWN);
    assertThat(lawn.replaceAll("((about|usual|half of|when) a third)", ""))
        .contains("set by hand: Shade thins it; ", "more than a quarter")
        .doesNotContain("a third", "A third");
  }

  @Test
  void aThresholdThatIsSavedAsItStoodKeepsAllItsDigits() throws Exception {
    assertThat(send("one-third", "save", "33.33", "Looked at it.", 0).statusCode()).isEqualTo(303);
    var kept = book.read(reading -> BookRules.sheet(reading, "one-third")).orElseThrow();
    assertThat(kept.content().threshold()).isEqualTo(1.0 / 3);
    assertThat(send("one-third", "save", "33.3", "A little less.", 1).statusCode()).isEqualTo(303);
    var less = book.read(reading -> BookRules.sheet(reading, "one-third")).orElseThrow();
    assertThat(less.content().threshold()).isEqualTo(0.333);
    assertThat(send("one-third", "save", "0.3", "Not per cent.", 2).body())
        .contains("0.3 is out of range; give a number from 20 to 50, %.");
  }

  @Test
  void aStricterThirdMakesNobodyWaitWithOverdueGrass() throws Exception {
    assertThat(send("one-third", "look", "25", "Trial", 0).body())
        .contains("a quarter")
        .doesNotContain("then: Wait");
  }

  @Test
  void formsAskByTheShareThatIsSet() throws Exception {
    send("one-third", "save", "25", "Shade thins it.", 0);
    for (String page : List.of(LAWN + "/programme", LAWN + "/season", "/properties/new")) {
      assertThat(get(page)).as(page).contains("a quarter").doesNotContain("a third");
    }
  }

  @Test
  void aThresholdIsNotCorrectedPastTheOthersOnItsSheet() throws Exception {
    send("one-third", "save", "30", "Shade thins it.", 0);
    send("half", "save", "42", "And once more.", 0);
    String id = book.read(reading -> BookRules.sheet(reading, "one-third")).orElseThrow().id();
    HttpResponse<String> refused =
        visitor.send(
            "/sheets/" + id + "/correct",
            "/sheets/" + id,
            Map.of("version", "1", "threshold", "45", "reason", "Drier."));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("out of order");
    assertThat(get("/sheets/" + id)).contains("30\u202f%").doesNotContain("45\u202f%");
  }

  @Test
  void everyFaultIsToldAndNothingTypedIsLost() throws Exception {
    HttpResponse<String> refused = send("save", "700", "", 0);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("700 is out of range; give a number from 10 to 100, g/m².", "value=\"700\"")
        .contains("give why it was set");
    assertThat(get("/rules")).doesNotContain("set by");
  }

  @Test
  void whoIsSecondIsToldAndMaySaveOverIt() throws Exception {
    send("save", "20", "First", 0);
    HttpResponse<String> stale = send("save", "30", "Second", 0);
    assertThat(stale.statusCode()).isEqualTo(409);
    assertThat(stale.body())
        .contains("It was set to 20\u202fg/m²: First", "value=\"30\"", "value=\"1\"");
    assertThat(send("save", "30", "Second", 1).statusCode()).isEqualTo(303);
    assertThat(get("/rules")).contains("Second");
  }

  @Test
  void onlyWhatHasAThresholdCanBeSet() throws Exception {
    assertThat(visitor.ask("/rules/season").statusCode()).isEqualTo(404);
    assertThat(visitor.ask("/rules/nothing").statusCode()).isEqualTo(404);
  }

  @Test
  void thresholdsOutOfOrderAreRefusedWithWhatWouldBeRight() throws Exception {
    for (String step : new String[] {"look", "save"}) {
      HttpResponse<String> refused = send(step, "15", "Trial", 0);
      assertThat(refused.statusCode()).isEqualTo(422);
      assertThat(refused.body())
          .contains("clump-limit-wet (20) and clump-limit-dry (15) are out of order");
    }
    assertThat(get("/rules")).doesNotContain("set by");
  }

  private HttpResponse<String> send(String step, String threshold, String reason, int version)
      throws Exception {
    return send(RULE, step, threshold, reason, version);
  }

  private HttpResponse<String> send(
      String rule, String step, String threshold, String reason, int version) throws Exception {
    return visitor.send(
        "/rules/" + rule,
        Map.of(
            "_version", Integer.toString(version),
            "rule", rule,
            "threshold", threshold,
            "reason", reason,
            "step", step));
  }

  private String get(String path) throws Exception {
    return visitor.read(path);
  }
}
