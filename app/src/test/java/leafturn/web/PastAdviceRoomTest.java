package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import leafturn.records.sheet.AdviceSheet.Range;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.Test;

/** From the log at the lawn to its advice, and from advice to what became of it. */
class PastAdviceRoomTest extends DemoSite {
  private static final String LAWN = "/lawns/linden-house-back";
  private static final int MOST_TRIES = 100;

  private void log(String as, Map<String, String> fields) throws Exception {
    Map<String, String> sent = new java.util.HashMap<>(fields);
    sent.put("id", UUID.randomUUID().toString());
    sent.put("as", as);
    sent.put("day", "2015-05-28");
    assertThat(visitor.send(LAWN + "/log", sent).statusCode()).isEqualTo(303);
  }

  private void awaitAdvice(int count) throws InterruptedException {
    for (int i = 0; i < MOST_TRIES && kept() < count; i++) {
      Thread.sleep(100);
    }
    assertThat(kept()).isEqualTo(count);
  }

  private int kept() {
    return book.<Integer>read(
        reading ->
            reading
                .ofLawn(Kind.ADVICE, reading.at(Kind.LAWN, "linden-house-back").orElseThrow().id())
                .size());
  }

  @Test
  void adviceThatWasFollowedIsToldWithWhatWasMeasured() throws Exception {
    assertThat(visitor.read(LAWN + "/advice")).contains("No advice was given yet.");
    assertThat(visitor.read(LAWN)).contains("<h1>Mow today and return");
    awaitAdvice(1);
    visitor.read(LAWN);
    log("returned", Map.of("heightBeforeMm", "98", "heightAfterMm", "64", "minutes", "25"));
    visitor.read(LAWN);
    awaitAdvice(2);
    assertThat(visitor.read(LAWN + "/advice"))
        .contains("Of 1 put to the test, 1 followed.", "<strong>Followed</strong>")
        .contains(
            "Mow today and return",
            "Mown on 28\u00a0May to 64\u202fmm, returned",
            "98\u202fmm measured")
        .contains("by that day’s advice, 98\u202fmm measured", "Standard rules (")
        .containsPattern("Dry from about \\d+ to \\d+ by forecast")
        .containsPattern("Clippings seen for \\d+ \\(\\d+ to \\d+\\) days by forecast")
        .doesNotContain("style=");
  }

  @Test
  void anotherHeightIsToldBesideTheOneAdvised() throws Exception {
    visitor.read(LAWN);
    awaitAdvice(1);
    log("returned", Map.of("heightBeforeMm", "98", "heightAfterMm", "76"));
    assertThat(visitor.read(LAWN + "/advice"))
        .contains("Of 1 put to the test, 0 followed; 1 mown to another height.")
        .contains("Mown on 28\u00a0May to 76\u202fmm (64\u202fmm advised), returned");
  }

  @Test
  void clippingsAreNotSeenForNoughtDays() {
    assertThat(PastAdviceWords.inSight(new Range(0, 0, 0)))
        .isEqualTo("Clippings not seen at all by forecast");
    assertThat(PastAdviceWords.inSight(new Range(0, 0, 1)))
        .isEqualTo("Clippings seen for at most 1 day by forecast");
    assertThat(PastAdviceWords.inSight(new Range(1, 1, 1)))
        .isEqualTo("Clippings seen for 1 day by forecast");
    assertThat(PastAdviceWords.inSight(new Range(0, 1, 3)))
        .isEqualTo("Clippings seen for 1 (0 to 3) days by forecast");
  }

  @Test
  void adviceGivenInOtherUnitsSaysSo() throws Exception {
    visitor.read(LAWN);
    awaitAdvice(1);
    assertThat(visitor.read(LAWN + "/advice")).doesNotContain("as given, in");
    inUsUnits();
    assertThat(visitor.read(LAWN + "/advice")).contains("as given, in mm");
  }

  @Test
  void whatIsSeenAtTheLawnChangesTheAdviceAndItsReason() throws Exception {
    assertThat(visitor.read(LAWN)).contains("<h1>Mow today and return").doesNotContain("dormant");
    log("observed", Map.of("things", "dormant", "time", "08:00"));
    assertThat(visitor.read(LAWN))
        .doesNotContain("<h1>Mow today and return")
        .containsIgnoringCase("dormant");
  }

  @Test
  void adviceHasNoSheetToChange() throws Exception {
    visitor.read(LAWN);
    awaitAdvice(1);
    String id =
        book.read(reading -> reading.all(Kind.ADVICE)).stream().findFirst().orElseThrow().id();
    assertThat(visitor.ask("/sheets/" + id).statusCode()).isEqualTo(404);
    assertThat(visitor.ask("/sheets/" + id + "/correct").statusCode()).isEqualTo(404);
  }
}
