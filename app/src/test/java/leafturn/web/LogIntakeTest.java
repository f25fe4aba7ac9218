package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a form of the log becomes in the book. */
class LogIntakeTest extends DemoSite {
  private static final String LOG = "/lawns/linden-house-back/log";

  private final String id = UUID.randomUUID().toString();

  @Test
  void aDayToComeIsToldAtOnceWithTheOtherFaults() throws Exception {
    HttpResponse<String> answer = log("limed", Map.of("day", "2015-05-29", "gPerM2", "lots"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("2 things are to be put right", "Friday 29 May 2015 has not come yet", "lots");
  }

  @Test
  void aCutNoLawnHasIsToldWithWhateverElseIsWrong() throws Exception {
    HttpResponse<String> answer =
        log(
            "returned",
            Map.of(
                "day", "2015-05-29",
                "heightAfterMm", "900",
                "heightBeforeMm", "xx",
                "minutes", "-5"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("4 things are to be put right", "Friday 29 May 2015 has not come yet")
        .contains("f-heightBeforeMm-fault", "f-minutes-fault")
        .contains("900 is out of range; give a number from 3 to 500, mm.");
    assertThat(log("returned", Map.of("day", "yesterday", "heightAfterMm", "900")).body())
        .contains("2 things are to be put right", "f-day-fault", "900 is out of range");
  }

  @Test
  void leavesAreWetOrDryNotBoth() {
    String json =
        """
        {"lawn": "%s", "day": "2015-05-27", "what": "observed", "things": ["wet", "dry leaves"]}
        """
            .formatted(id);
    LogSheet both = Kind.LOG.read(new SourceText("entry", json));
    LocalDate today = LocalDate.of(2015, 5, 28);
    assertThatThrownBy(
            () ->
                book.read(
                    reading -> {
                      new LogCheck(reading, today, Units.METRIC).check(id, both);
                      return id;
                    }))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("leaves are wet or dry, not both at once");
  }

  @Test
  void aUsualHeightIsShownToTheTenthOfAnInchAndKeptToTheMillimetre() throws Exception {
    inUsUnits();
    assertThat(visitor.read(LOG)).contains("value=\"2.5\"").doesNotContain("2.52");
    log("returned", Map.of("day", "2015-05-27", "heightAfterMm", "2.5"));
    assertThat(cutToMm()).isEqualTo(64);
  }

  @Test
  void aTypedHeightIsKeptAsTyped() throws Exception {
    inUsUnits();
    log("returned", Map.of("day", "2015-05-27", "heightAfterMm", "2"));
    assertThat(cutToMm()).isEqualTo(50.8);
  }

  @Test
  void aCutNoLawnHasIsRefusedAndOneFarFromItsUsualHeightIsAskedAbout() throws Exception {
    HttpResponse<String> slip =
        log("returned", Map.of("day", "2015-05-27", "heightAfterMm", "900"));
    assertThat(slip.statusCode()).isEqualTo(422);
    assertThat(slip.body())
        .contains("f-heightAfterMm-fault", "900 is out of range; give a number from 3 to 500, mm.");
    HttpResponse<String> high =
        log("returned", Map.of("day", "2015-05-27", "heightAfterMm", "190"));
    String saved = visitor.read(high.headers().firstValue("Location").orElseThrow());
    assertThat(saved)
        .contains("It says cut to 190\u202fmm, far from the 64\u202fmm at which this lawn is kept");
  }

  @Test
  void aCutNearItsUsualHeightIsSavedWithoutAQuestion() throws Exception {
    HttpResponse<String> usual =
        log("returned", Map.of("day", "2015-05-27", "heightAfterMm", "60"));
    assertThat(visitor.read(usual.headers().firstValue("Location").orElseThrow()))
        .contains("In the book")
        .doesNotContain("look whether it is right");
  }

  private HttpResponse<String> log(String as, Map<String, String> fields) throws Exception {
    Map<String, String> sent = new HashMap<>(fields);
    sent.putAll(Map.of("id", id, "as", as));
    return visitor.send(LOG, sent);
  }

  private @Nullable Double cutToMm() {
    Done done = book.read(reading -> reading.find(Kind.LOG, id)).orElseThrow().content().done();
    return ((Done.Mown) done).heightAfterMm();
  }
}
