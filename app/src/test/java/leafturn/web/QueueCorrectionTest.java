package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.Test;

/** An entry that a phone sent while it was being corrected there. */
class QueueCorrectionTest extends DemoSite {
  private final String id = UUID.randomUUID().toString();

  private Map<String, String> watered(String mm, boolean corrects) {
    Map<String, String> entry = new HashMap<>();
    entry.put("id", id);
    entry.put("lawn", lawn());
    entry.put("as", "watered");
    entry.put("units", "metric");
    entry.put("day", "2015-05-28");
    entry.put("waterMm", mm);
    entry.put("corrects", String.valueOf(corrects));
    return entry;
  }

  private String lawn() {
    return book.read(reading -> reading.at(Kind.LAWN, "linden-house-back").orElseThrow().id());
  }

  private List<Done> versions() {
    return book.read(
        reading ->
            reading.history(Kind.LOG, id).stream().map(sheet -> sheet.content().done()).toList());
  }

  @Test
  void theCorrectionTakesItsPlaceOnceAndWhatItSaidBeforeIsKept() throws Exception {
    assertThat(asking.post("/queue", watered("1", false)).statusCode()).isEqualTo(200);
    for (int times = 0; times < 3; times++) {
      HttpResponse<String> answer = asking.post("/queue", watered("2", true));
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.body()).contains(id);
    }
    assertThat(versions()).containsExactly(new Done.Watered(2), new Done.Watered(1));
  }

  @Test
  void theCorrectionOfWhatNeverCameIsTheEntry() throws Exception {
    assertThat(asking.post("/queue", watered("2", true)).statusCode()).isEqualTo(200);
    assertThat(versions()).containsExactly(new Done.Watered(2));
  }

  @Test
  void aFaultOfTheCorrectionIsToldAndTheEntryStays() throws Exception {
    asking.post("/queue", watered("1", false));
    Map<String, String> tomorrow = watered("2", true);
    tomorrow.put("day", "2015-05-29");
    HttpResponse<String> answer = asking.post("/queue", tomorrow);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("has not come yet");
    assertThat(versions()).containsExactly(new Done.Watered(1));
  }

  @Test
  void whatWasChangedInTheBookSinceIsLeftAndThatIsTold() throws Exception {
    asking.post("/queue", watered("1", false));
    Sheet<LogSheet> sent = book.read(reading -> reading.find(Kind.LOG, id)).orElseThrow();
    book.write("Somebody", writing -> writing.withdraw(Kind.LOG, id, sent.version()));
    HttpResponse<String> answer = asking.post("/queue", watered("2", true));
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("changed or withdrawn since", "discard this one");
    assertThat(versions()).containsExactly(new Done.Watered(1), new Done.Watered(1));
  }

  @Test
  void anEntryOfSomebodyElseIsNotCorrected() throws Exception {
    Map<String, String> typed = watered("1", false);
    asking.post("/queue", typed);
    Sheet<LogSheet> theirs = book.read(reading -> reading.find(Kind.LOG, id)).orElseThrow();
    String other = UUID.randomUUID().toString();
    book.write("Somebody", writing -> writing.add(Kind.LOG, other, theirs.content()));
    Map<String, String> correction = watered("2", true);
    correction.put("id", other);
    HttpResponse<String> answer = asking.post("/queue", correction);
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains(QueueRoom.TAKEN);
  }
}
