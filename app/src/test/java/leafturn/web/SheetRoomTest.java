package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.Test;

class SheetRoomTest extends DemoSite {
  private static final String LAWN = "/lawns/heron-bank-play";
  private static final Pattern HEIGHT_NOW = Pattern.compile("The grass stands at (\\d+)");

  @Test
  void everySheetOfTheBookIsToldInWordsAndCanBeCorrected() throws Exception {
    for (Kind<?> kind : Kind.all()) {
      if (SheetDesk.OWN_PAGES.contains(kind)) {
        continue;
      }
      for (Sheet<?> sheet : book.read(reading -> reading.all(kind)).stream().limit(2).toList()) {
        HttpResponse<String> page = visitor.ask("/sheets/" + sheet.id());
        assertThat(page.statusCode()).as("%s", kind).isEqualTo(200);
        assertThat(page.body())
            .as("%s", kind)
            .contains("Entered by " + sheet.writtenBy(), "Correct it")
            .doesNotContain("style=", "onclick");
        assertThat(visitor.ask("/sheets/" + sheet.id() + "/correct").statusCode()).isEqualTo(200);
      }
    }
  }

  @Test
  void aCorrectedEntryIsToldFieldByFieldAndChangesTheStateOfToday() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    String before = heightNow();
    HttpResponse<String> saved = correct(mowing, 1, "90", "was set too high");
    assertThat(saved.statusCode()).isEqualTo(303);
    assertThat(visitor.read("/sheets/" + mowing.id()))
        .contains("Corrected by", "Cut to", "51\u202fmm", "90\u202fmm", "was set too high")
        .contains("Entered by");
    assertThat(heightNow()).isNotEqualTo(before);
    assertThat(correct(mowing, 2, "51", "").statusCode()).isEqualTo(303);
    assertThat(heightNow()).isEqualTo(before);
  }

  @Test
  void aNumberOutOfRangeStandsBesideItsFieldAndNothingTypedIsLost() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    HttpResponse<String> answer = correct(mowing, 1, "9000", "typed at the lawn");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("id=\"f-heightAfterMm-fault\"", "value=\"9000\"", "typed at the lawn");
    assertThat(lastMowing().version()).isEqualTo(1);
  }

  @Test
  void twoWhoCorrectTheSameSheetLoseNothing() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    assertThat(correct(mowing, 1, "60", "by the first").statusCode()).isEqualTo(303);
    HttpResponse<String> second = correct(mowing, 1, "70", "by the second");
    assertThat(second.statusCode()).isEqualTo(409);
    assertThat(second.body())
        .contains("Somebody else was quicker", "by the first", "by the second")
        .contains("60\u202fmm", "70\u202fmm", "value=\"70\"", "name=\"version\" value=\"2\"")
        .contains("Save mine over it", "Keep theirs");
    assertThat(note(lastMowing())).isEqualTo("by the first");
    assertThat(correct(mowing, 2, "70", "by the second").statusCode()).isEqualTo(303);
    assertThat(note(lastMowing())).isEqualTo("by the second");
    assertThat(visitor.read("/sheets/" + mowing.id())).contains("by the first", "by the second");
  }

  @Test
  void whoeverSavesTheirsOverAnotherChangesOnlyWhatTheyChanged() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    assertThat(correct(mowing, 1, "51", "by the first").statusCode()).isEqualTo(303);
    Map<String, String> mine = fields(mowing, 1, "70", note(mowing).replace("null", ""));
    HttpResponse<String> stale = send(mowing, mine);
    assertThat(stale.statusCode()).isEqualTo(409);
    String form = stale.body().substring(stale.body().indexOf("<form class=\"entry"));
    assertThat(form).contains("by the first", "value=\"70\"");
    assertThat(stale.body()).doesNotContain("Went over it twice</th>");
  }

  @Test
  void whoeverCorrectsWhatAnotherWithdrewIsToldThatItIsWithdrawnAndStaysSo() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    String path = "/sheets/" + mowing.id();
    Map<String, String> mine = fields(mowing, 1, "70", "mine");
    assertThat(visitor.send(path + "/withdraw", Map.of("version", "1")).statusCode())
        .isEqualTo(303);
    HttpResponse<String> stale = send(mowing, mine);
    assertThat(stale.statusCode()).isEqualTo(409);
    assertThat(stale.body())
        .contains("withdrew this sheet", "stays withdrawn until it is restored")
        .contains("Save mine over it, still withdrawn", "Leave it withdrawn")
        .doesNotContain("changed this sheet");
    mine.put("version", "2");
    assertThat(send(mowing, mine).statusCode()).isEqualTo(303);
    assertThat(visitor.read(path)).contains("it no longer counts", "Restore it", "mine");
  }

  @Test
  void anEntryOfADayToComeIsRefusedWhenItIsCorrectedToo() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    Map<String, String> fields = fields(mowing, 1, "51", "");
    fields.put("day", "2015-06-30");
    HttpResponse<String> answer = send(mowing, fields);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("Tuesday 30 June 2015 has not come yet");
    assertThat(lastMowing().version()).isEqualTo(1);
  }

  @Test
  void aMowingThatCannotStandBesideAnotherOfItsDayIsToldBesideItsHeight() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    String day = mowing.content().day().toString();
    String beside = "00000000-0000-4000-8000-0000000000bb";
    book.write(
        "Ada",
        writing ->
            writing.add(
                Kind.LOG,
                beside,
                Kind.LOG.read(
                    new SourceText(
                        "log",
                        "{\"lawn\": \"%s\", \"day\": \"%s\", \"what\": \"mown\","
                                .formatted(lawnId(), day)
                            + " \"heightBeforeMm\": 50, \"heightAfterMm\": 40,"
                            + " \"returnedShare\": 1}"))));
    Map<String, String> fields = fields(mowing, 1, "51", "");
    fields.put("heightBeforeMm", "140");
    assertThat(send(mowing, fields).statusCode()).as("140 to 51, then 50 to 40").isEqualTo(303);
    fields.put("version", "2");
    fields.put("heightAfterMm", "30");
    HttpResponse<String> answer = send(mowing, fields);
    assertThat(answer.statusCode()).as("140 to 30, and 50 to 40").isEqualTo(422);
    assertThat(answer.body())
        .contains("id=\"f-heightBeforeMm-fault\"", "The log has this for the same day: Mown");
    String path = "/sheets/" + beside;
    book.write("Ada", writing -> writing.withdraw(Kind.LOG, beside, 1));
    assertThat(send(mowing, fields).statusCode()).as("140 to 30 alone").isEqualTo(303);
    HttpResponse<String> restored = visitor.send(path, path + "/restore", Map.of("version", "2"));
    assertThat(restored.statusCode()).as("50 to 40 beside 140 to 30").isEqualTo(422);
    assertThat(restored.body())
        .contains("This entry stays withdrawn: the log has this for the same day: Mown");
    assertThat(visitor.read(path)).contains("it no longer counts");
  }

  @Test
  void aWithdrawnEntryStaysAndCanBeRestored() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    String path = "/sheets/" + mowing.id();
    String before = heightNow();
    assertThat(visitor.read(path + "/withdraw")).contains("It is never lost");
    assertThat(visitor.send(path + "/withdraw", Map.of("version", "1")).statusCode())
        .isEqualTo(303);
    assertThat(visitor.read(path)).contains("it no longer counts", "Withdrawn by", "Restore it");
    assertThat(visitor.read("/properties/heron-bank")).contains("Mown on Wednesday 20 May 2015");
    assertThat(heightNow()).isNotEqualTo(before);
    assertThat(visitor.send(path, path + "/restore", Map.of("version", "2")).statusCode())
        .isEqualTo(303);
    assertThat(visitor.read(path)).contains("Restored by");
    assertThat(heightNow()).isEqualTo(before);
  }

  @Test
  void aWithdrawalOfAnOlderStateIsRefused() throws Exception {
    Sheet<LogSheet> mowing = lastMowing();
    assertThat(correct(mowing, 1, "60", "").statusCode()).isEqualTo(303);
    String path = "/sheets/" + mowing.id() + "/withdraw";
    assertThat(visitor.send(path, Map.of("version", "1")).statusCode()).isEqualTo(409);
    assertThat(lastMowing().withdrawn()).isFalse();
  }

  @Test
  void whatDoesNotGoTogetherIsRefusedBesideItsField() throws Exception {
    HttpResponse<String> answer =
        visitor.send(
            LAWN + "/edit",
            "/sheets/" + lawnId(),
            Map.of(
                "version", "1",
                "name", "Play lawn",
                "address", "heron-bank-play",
                "grass", "tall fescue",
                "soil.texture", "clay",
                "soil.fieldCapacity", "0.05"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("must rise in this order");
  }

  @Test
  void aProgrammeTellsItsDaysInWordsAndWhetherItMowsTooSeldom() throws Exception {
    Map<String, String> fields = new HashMap<>();
    fields.put("from", "2015-05-28");
    fields.put("mowing.trigger.everyDays", "300");
    fields.put("mowing.from", "07-01");
    fields.put("mowing.to", "07-02");
    fields.put("kind", "programme");
    fields.put("lawn", lawnId());
    String form = "/sheets/new?kind=programme&lawn=" + lawnId();
    HttpResponse<String> saved = visitor.send(form, "/sheets/new", fields);
    assertThat(saved.statusCode()).isEqualTo(303);
    assertThat(visitor.read(saved.headers().firstValue("Location").orElseThrow()))
        .contains("1\u00a0July", "It mows once a year at most")
        .doesNotContain(">07-01<");
    fields.put("mowing.to", "07-01");
    HttpResponse<String> single = visitor.send(form, "/sheets/new", fields);
    assertThat(single.statusCode()).isEqualTo(422);
    assertThat(single.body()).contains("ends on the day it begins on");
    fields.put("mowing.to", "07-02");
    fields.put("mowing.trigger.everyDays", "366");
    HttpResponse<String> never = visitor.send(form, "/sheets/new", fields);
    assertThat(never.statusCode()).isEqualTo(422);
    assertThat(never.body()).contains("from 1 to 365");
    fields.put("mowing.trigger.everyDays", "7");
    fields.put("mowing.trigger.oneThird", "true");
    assertThat(visitor.send(form, "/sheets/new", fields).body())
        .contains("It stands beside “Mown every so many days”; keep one of them.");
  }

  @Test
  void thereIsNoSheetForWhoeverMayNotSeeIt() throws Exception {
    assertThat(visitor.ask("/sheets/00000000-0000-4000-8000-00000000abcd").statusCode())
        .isEqualTo(404);
    assertThat(visitor.ask("/sheets/x").statusCode()).isEqualTo(404);
    assertThat(visitor.ask("/properties/nowhere").statusCode()).isEqualTo(404);
  }

  @Test
  void numbersStandInTheUnitsOfTheirReader() throws Exception {
    String path = "/sheets/" + lastMowing().id();
    inUsUnits();
    assertThat(visitor.read(path)).contains("2.008\u202fin");
    assertThat(visitor.read(path + "/correct")).contains("value=\"2.008\"", "in in");
  }

  private HttpResponse<String> correct(
      Sheet<LogSheet> mowing, int version, String heightAfterMm, String note) throws Exception {
    return send(mowing, fields(mowing, version, heightAfterMm, note));
  }

  private HttpResponse<String> send(Sheet<LogSheet> mowing, Map<String, String> fields)
      throws Exception {
    String path = "/sheets/" + mowing.id();
    return visitor.send(path + "/correct", path, fields);
  }

  private static Map<String, String> fields(
      Sheet<LogSheet> mowing, int version, String heightAfterMm, String note) {
    Map<String, String> fields = new HashMap<>();
    fields.put("version", Integer.toString(version));
    fields.put("day", mowing.content().day().toString());
    fields.put("returnedShare", "0.5");
    fields.put("heightBeforeMm", "112");
    fields.put("heightAfterMm", heightAfterMm);
    fields.put("note", note);
    return fields;
  }

  private String lawnId() {
    return book.read(reading -> reading.at(Kind.LAWN, "heron-bank-play")).orElseThrow().id();
  }

  private Sheet<LogSheet> lastMowing() {
    List<Sheet<LogSheet>> mowings =
        book.read(reading -> reading.ofLawn(Kind.LOG, lawnId())).stream()
            .filter(entry -> entry.content().done() instanceof Done.Mown)
            .toList();
    return mowings.get(mowings.size() - 1);
  }

  private static String note(Sheet<LogSheet> entry) {
    return String.valueOf(entry.content().note());
  }

  /** The height of the grass today as the lawn's page tells it. */
  private String heightNow() throws Exception {
    Matcher height = HEIGHT_NOW.matcher(visitor.read(LAWN));
    assertThat(height.find()).isTrue();
    return height.group(1);
  }
}
