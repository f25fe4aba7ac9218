package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.List;
import leafturn.records.Examples;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import org.junit.jupiter.api.Test;

/** The page that tells how many yards a trial needs. */
class TrialSizeRoomTest extends DemoSite {
  private static final String ID = "5f0c0a52-1d0b-4f0e-9c61-2f3b7a7c9d10";
  private static final String PAGE = "/trials/" + ID + "/size";

  @Override
  void prepare() {
    try {
      JsonNode plan = new ObjectMapper().readTree(Examples.file("split-yards.trial.json").toFile());
      TrialSheet trial = TrialSheet.planned(plan, List.of());
      book.write("Owner", writing -> writing.add(Kind.TRIAL, ID, trial));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void thePlanAsksTheQuestion() throws Exception {
    String page = visitor.read(PAGE);
    assertThat(page)
        .contains("<h1>To find a difference of 0.5 with a power of 80\u00a0% takes 16 yards")
        .contains(
            "More ratings or dates help down to a floor, beyond which they cannot replace yards",
            "minimum detectable difference")
        .contains("where a coin draws each yard's side", "Take care")
        .contains("<svg class=\"season-wide\"", "to show equivalence")
        .contains("Equivalence: two one-sided t tests at 5\u00a0% each")
        .contains("Leinauer 2015", "name=\"spread.core\"", "value=\"0.65\"");
    assertThat(page).doesNotContain("style=", "<script>");
  }

  @Test
  void variancesOfOnesOwnChangeTheAnswer() throws Exception {
    String asked =
        "?of=visual+rating&outcome=visual+rating&difference=0.5&units=8&dates=1&cores=1"
            + "&spread.plot=0.1&spread.plotByDate=0&spread.core=0.1&spread.laboratory=0";
    assertThat(visitor.read(PAGE + asked)).contains("takes 4 yards", "over 99\u00a0%");
    String none = visitor.read(PAGE + asked.replace("spread.plot=0.1", "spread.plot=x"));
    assertThat(none).contains("This cannot be answered yet", "is not a number", "value=\"x\"");
  }

  @Test
  void anotherOutcomeBringsItsOwnVariances() throws Exception {
    String page =
        visitor.read(
            PAGE + "?of=visual+rating&outcome=soil+potassium&spread.core=0.65&difference=0.5");
    assertThat(page).contains("a ratio of 1.2 ", "name=\"ratio\"", "value=\"0.35\"");
  }

  @Test
  void faultsAreToldAllAtOnceAndKeepWhatWasTyped() throws Exception {
    HttpResponse<String> refused =
        visitor.ask(
            PAGE
                + "?of=visual+rating&outcome=visual+rating&difference=-1&margin=0&units=1&dates=1");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("-1 is out of range", "0 is out of range", "1 yard leaves nothing to judge")
        .contains("value=\"-1\"");
  }

  @Test
  void whatAnAddressAloneAsksIsAnsweredOrRefused() throws Exception {
    HttpResponse<String> negative = visitor.ask(PAGE + "?units=-5");
    assertThat(negative.statusCode()).isEqualTo(422);
    assertThat(negative.body()).contains("value=\"-5\"");
    HttpResponse<String> unknown = visitor.ask(PAGE + "?outcome=worms");
    assertThat(unknown.statusCode()).isEqualTo(422);
    assertThat(unknown.body()).contains("worms", "has no starting values", "soil potassium");
    assertThat(visitor.ask(PAGE + "?units=8").statusCode()).isEqualTo(200);
  }

  @Test
  void whereNothingVariesNoSizeIsReckoned() throws Exception {
    String nothing =
        "?of=visual+rating&outcome=visual+rating&difference=0.5&margin=0.5&units=8&dates=5&cores=1"
            + "&spread.plot=0&spread.plotByDate=0&spread.core=0&spread.laboratory=0";
    for (String asked : List.of(nothing, nothing.replace("&margin=0.5", "&margin="))) {
      HttpResponse<String> refused = visitor.ask(PAGE + asked);
      assertThat(refused.statusCode()).isEqualTo(422);
      assertThat(refused.body()).contains("all are 0; where nothing varies no trial is needed.");
    }
  }

  @Test
  void aPlanOfTheLastDateAsksForOneDate() throws Exception {
    assertThat(visitor.read(PAGE)).contains(dates(5)).doesNotContain("The plan compares");
    summedUp("last-date");
    assertThat(visitor.read(PAGE))
        .contains(dates(1), "The plan compares the last date alone, so one date is asked for");
  }

  @Test
  void theMarginOfAChangeADayIsNoDifferenceOfMeans() throws Exception {
    summedUp("slope");
    assertThat(visitor.read(PAGE))
        .contains("The plan compares the change of quality through the season.")
        .doesNotContain("a difference of 0.5", "yards. To find");
  }

  private static String dates(int dates) {
    return "name=\"dates\" type=\"text\" inputmode=\"decimal\" value=\"%d\"".formatted(dates);
  }

  private void summedUp(String summary) {
    TrialSheet planned = book.read(book -> book.find(Kind.TRIAL, ID)).orElseThrow().content();
    ObjectNode plan = planned.plan().deepCopy();
    ((ObjectNode) plan.get("outcomes").get(0)).put("summary", summary);
    book.write(
        "Owner", writing -> writing.revise(Kind.TRIAL, ID, 1, planned.with(plan, planned.lawns())));
  }

  @Test
  void aFrozenMarginStaysInTheQuestion() throws Exception {
    TrialSheet planned = book.read(book -> book.find(Kind.TRIAL, ID)).orElseThrow().content();
    TrialSheet frozen =
        planned.frozenAs(
            new TrialSheet.Frozen("2026-03-01T08:00:00Z", "Owner", BookPlan.hash(planned), null));
    ObjectNode plan = frozen.plan().deepCopy();
    ((ObjectNode) plan.get("outcomes").get(0)).put("margin", 1.5);
    book.write("Owner", writing -> writing.revise(Kind.TRIAL, ID, 1, frozen));
    book.write(
        "Owner", writing -> writing.revise(Kind.TRIAL, ID, 2, frozen.with(plan, frozen.lawns())));
    assertThat(visitor.read(PAGE)).contains("To find a difference of 0.5 ");
  }

  @Test
  void whatIsNoTrialIsNotFound() throws Exception {
    assertThat(visitor.ask("/trials/nothing/size").statusCode()).isEqualTo(404);
  }
}
