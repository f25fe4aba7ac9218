package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.Test;

/** Entries that may be slips: of work logged a second time, and of another lawn. */
class LogDoubtTest extends DemoSite {
  private static final String LAWN = "linden-house-back";
  private static final String TWICE = "The log has this for the same day too: ";
  private static final String WITHDRAW =
      "Both count; withdraw one of them if it was done only once.";

  private static final String YEAR =
      "lies more than a year from today and from every other entry of this lawn; look whether the"
          + " year is right.";

  @Test
  void theSameMowingTwiceIsSavedByTheFormAndTold() throws Exception {
    String first = logged(Map.of("as", "returned", "heightAfterMm", "76", "note", "Late."));
    assertThat(asking.get("/log?saved=" + first).body()).doesNotContain(TWICE);
    String second = logged(Map.of("as", "returned", "heightAfterMm", "76", "heightBeforeMm", "98"));
    assertThat(asking.get("/log?saved=" + second).body())
        .contains(
            "In the book: Mown, returned", TWICE + "Mown, returned, to 76\u202fmm. " + WITHDRAW)
        .contains("<a href=\"/sheets/" + second + "\">The entry</a>");
    assertThat(entries()).extracting(Sheet::id).contains(first, second);
    withdraw(first);
    assertThat(asking.get("/log?saved=" + second).body()).doesNotContain(TWICE);
    assertThat(asking.get("/sheets/" + second).body()).doesNotContain(TWICE);
    HttpResponse<String> restored =
        asking.postForm("/sheets/" + first + "/restore", Map.of("version", "2"));
    assertThat(restored.statusCode()).isEqualTo(303);
    assertThat(asking.get("/sheets/" + first).body())
        .contains(TWICE + "Mown, returned, from 98\u202fmm to 76\u202fmm. " + WITHDRAW);
  }

  @Test
  void aDayOfAnotherYearIsToldWithItsYear() throws Exception {
    String entry = logged(Map.of("as", "watered", "waterMm", "6", "day", "2014-05-27"));
    assertThat(asking.get("/log?saved=" + entry).body())
        .contains(", Tuesday 27 May 2014.")
        .doesNotContain(YEAR);
    String mistyped = logged(Map.of("as", "watered", "waterMm", "6", "day", "2012-05-27"));
    assertThat(asking.get("/log?saved=" + mistyped).body()).contains("27 May 2012 " + YEAR);
  }

  @Test
  void theFormOfACorrectionSaysHowAnEntryComesToAnotherLawn() throws Exception {
    String entry = logged(Map.of("as", "watered", "waterMm", "6"));
    String other = "If it belongs to another lawn, withdraw it on its own page and log it at that";
    assertThat(asking.get("/sheets/" + entry + "/correct").body()).contains(other);
    assertThat(asking.get("/sheets/" + lawn() + "/correct").body())
        .contains("What it said before is kept")
        .doesNotContain(other);
  }

  @Test
  void otherWorkAndOtherHeightsAreNotDoubted() throws Exception {
    logged(Map.of("as", "returned", "heightAfterMm", "76"));
    logged(Map.of("as", "watered", "waterMm", "6"));
    logged(Map.of("as", "observed", "things", "clumps"));
    for (Map<String, String> other :
        List.of(
            Map.of("as", "returned", "heightAfterMm", "70"),
            Map.of("as", "watered", "waterMm", "7"),
            Map.of("as", "observed", "things", "clumps"))) {
      assertThat(asking.get("/log?saved=" + logged(other)).body())
          .as(other.toString())
          .contains("In the book: ")
          .doesNotContain(TWICE);
    }
    Map<String, String> handled = Map.of("as", "collected", "heightAfterMm", "76");
    assertThat(asking.get("/log?saved=" + logged(handled)).body())
        .contains(TWICE + "Mown, returned, to 76\u202fmm. " + WITHDRAW);
    Map<String, String> again = Map.of("as", "watered", "waterMm", "6", "note", "Evening.");
    assertThat(asking.get("/log?saved=" + logged(again)).body())
        .contains(TWICE + "Watered, 6\u202fmm. " + WITHDRAW);
  }

  @Test
  void theQueueOfAPhoneIsToldTheDoubtWithItsAcknowledgement() throws Exception {
    Map<String, String> first = queued();
    HttpResponse<String> plain = asking.post("/queue", first);
    assertThat(plain.body()).isEqualTo("{\"id\":\"" + first.get("id") + "\"}");
    Map<String, String> second = queued();
    for (int times = 0; times < 2; times++) {
      HttpResponse<String> answer = asking.post("/queue", second);
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.body())
          .startsWith("{\"id\":\"" + second.get("id") + "\",\"doubt\":\"" + TWICE);
    }
    assertThat(entries()).extracting(Sheet::id).containsOnlyOnce(second.get("id"));
  }

  private Map<String, String> queued() {
    Map<String, String> entry = new HashMap<>();
    entry.put("id", UUID.randomUUID().toString());
    entry.put("lawn", lawn());
    entry.put("as", "returned");
    entry.put("units", "metric");
    entry.putIfAbsent("day", "2015-05-28");
    return entry;
  }

  private String logged(Map<String, String> fields) throws Exception {
    Map<String, String> entry = new HashMap<>(fields);
    String id = UUID.randomUUID().toString();
    entry.put("id", id);
    entry.putIfAbsent("day", "2015-05-28");
    assertThat(asking.post("/lawns/" + LAWN + "/log", entry).statusCode()).isEqualTo(303);
    return id;
  }

  private void withdraw(String entry) {
    book.write("Ada", writing -> writing.withdraw(Kind.LOG, entry, 1));
  }

  private List<Sheet<LogSheet>> entries() {
    return book.read(reading -> reading.ofLawn(Kind.LOG, lawn()));
  }

  private String lawn() {
    return book.read(reading -> reading.at(Kind.LAWN, LAWN)).orElseThrow().id();
  }
}
