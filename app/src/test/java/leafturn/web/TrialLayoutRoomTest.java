package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import leafturn.records.Examples;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import org.junit.jupiter.api.Test;

/** The layout of a trial in the book, and its files. */
class TrialLayoutRoomTest extends DemoSite {
  private static final String ID = "0a1b2c3d-0000-4000-8000-000000000001";
  private static final String NARROW_ID = "0a1b2c3d-0000-4000-8000-000000000002";
  private static final String PAGE = "/trials/" + ID + "/layout";

  @Override
  void prepare() {
    add(ID, example());
    ObjectNode narrow = example();
    ((ObjectNode) narrow.get("lawns").get(1)).put("outline", "3 x 1.5");
    add(NARROW_ID, narrow);
  }

  private static ObjectNode example() {
    try {
      return (ObjectNode)
          new ObjectMapper().readTree(Examples.text("split-yards.trial.json").text());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private void add(String id, JsonNode plan) {
    TrialSheet trial = TrialSheet.planned(plan, List.of());
    book.write("Owner", writing -> writing.add(Kind.TRIAL, id, trial));
  }

  private Sheet<TrialSheet> trial() {
    return book.read(reading -> reading.find(Kind.TRIAL, ID)).orElseThrow();
  }

  @Test
  void everyLawnHasItsMapAndATableBehindIt() throws Exception {
    String page = visitor.read(PAGE);
    assertThat(page)
        .contains("drawn from the seed 20260401", "This page tells the treatments")
        .contains("The layout was drawn once so far.")
        .contains("Map of Heron Bank, play with 2 plots", "B8-2", "class=\"plot plot-1\"")
        .contains("From A, m", "Walking order", "480 cores on 2 dates go into 64 bags")
        .contains("taken from a GeoJSON file on a lawn's own page has one")
        .doesNotContain("layout.geojson");
  }

  @Test
  void filesAreThereAndOthersAreNot() throws Exception {
    assertThat(visitor.read(PAGE + "/map.svg")).startsWith("<svg xmlns=");
    assertThat(visitor.ask(PAGE + "/labels.pdf").statusCode()).isEqualTo(200);
    assertThat(visitor.ask(PAGE + "/layout.geojson").statusCode()).isEqualTo(404);
    assertThat(visitor.ask(PAGE + "/other").statusCode()).isEqualTo(404);
  }

  @Test
  void anotherSeedIsKeptWithThePlanUntilItIsFrozen() throws Exception {
    assertThat(draw().statusCode()).isEqualTo(303);
    long seed = trial().content().plan().path("seed").asLong();
    assertThat(seed).isNotEqualTo(20260401);
    assertThat(visitor.read(PAGE)).contains("the seed " + seed, "was drawn 2 times so far");
    book.write(
        "Owner",
        writing -> {
          TrialSheet now = trial().content();
          TrialSheet.Frozen frozen =
              new TrialSheet.Frozen("2026-04-01T08:00:00Z", "Owner", BookPlan.hash(now), null);
          return writing.revise(Kind.TRIAL, ID, trial().version(), now.frozenAs(frozen));
        });
    assertThat(draw().statusCode()).isEqualTo(409);
    assertThat(trial().content().plan().path("seed").asLong()).isEqualTo(seed);
    assertThat(visitor.read(PAGE))
        .contains("was drawn 2 times before the plan was frozen")
        .doesNotContain("Draw anew");
  }

  private HttpResponse<String> draw() throws Exception {
    return visitor.send("/trials/" + ID, PAGE, Map.of());
  }

  @Test
  void aPlanThatDoesNotFitSaysWhy() throws Exception {
    assertThat(visitor.read("/trials/" + NARROW_ID + "/layout"))
        .contains("There is no layout yet", "Linden House, back: nothing of the");
  }
}
