package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.records.Examples;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Sheet;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.PackedTrial;
import leafturn.records.trial.TrialPackageFile;
import leafturn.reports.trial.TrialPackage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole trial that comes in from its data package, and goes out again the same. */
class TrialImportRoomTest {
  private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"([^\"]+)\"");

  @TempDir Path folder;
  private Book book;
  private LeafturnServer server;
  private Asking asking;

  @BeforeEach
  void start() {
    book = Book.open(BookPlace.of(folder), Clock.systemUTC());
    DemoBook.write(book);
    server = LeafturnServer.start(book, Clock.systemUTC(), 0);
    asking = new Asking(server);
  }

  @AfterEach
  void stop() {
    server.close();
    book.close();
  }

  private static PackedTrial example(boolean frozen) {
    PackedTrial read =
        PackedTrial.read(
            Examples.file("split-yards.trial.json"),
            Examples.file("split-yards.readings.csv"),
            null);
    if (!frozen) {
      return read;
    }
    TrialSheet.Frozen seal =
        new TrialSheet.Frozen("2026-04-01T08:00:00Z", "Wren", BookPlan.hash(read.trial()), null);
    TrialSheet trial = new TrialSheet(read.trial().plan(), List.of(), seal, null, null, "A note.");
    TrialEventSheet event =
        new TrialEventSheet(
            "00000000-0000-4000-8000-000000000001",
            LocalDate.of(2026, 6, 2),
            TrialEventSheet.Happening.DOG_URINE,
            List.of("B1-1"),
            0.3,
            null,
            null,
            null);
    return new PackedTrial(trial, List.of(event), read.readings());
  }

  private static byte[] zip(PackedTrial trial) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TrialPackage.of(trial, LocalDate.of(2026, 6, 3)).writeTo(out);
    return out.toByteArray();
  }

  private HttpResponse<String> send(byte[] zip) throws Exception {
    return asking.upload("/import", Map.of("kind", "trial"), "trial.zip", zip);
  }

  private void add(byte[] zip) throws Exception {
    HttpResponse<String> sent = send(zip);
    assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
    String address = Asking.location(sent).getPath();
    String page = asking.get(address).body();
    assertThat(page)
        .contains("1 trial can be imported", "230 readings", "Import this trial")
        .contains("Not all of its lawns are lawns of this book");
    Matcher seen = SEEN.matcher(page);
    assertThat(seen.find()).isTrue();
    assertThat(asking.postForm(address + "/add", Map.of("seen", seen.group(1))).statusCode())
        .isEqualTo(303);
    assertThat(asking.get(address).body()).contains("1 trial imported");
  }

  private Sheet<TrialSheet> imported() {
    return book.read(reading -> reading.all(Kind.TRIAL)).stream()
        .filter(trial -> trial.content().name().equals("Eight split yards"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aTrialComesInWithAllThatBefellItAndGoesOutTheSame() throws Exception {
    PackedTrial packed = example(true);
    add(zip(packed));
    Sheet<TrialSheet> trial = imported();
    assertThat(trial.content()).isEqualTo(packed.trial());
    String page = asking.get("/trials/" + trial.id()).body();
    assertThat(page)
        .contains("The plan was frozen by Wren", "unchanged since", "230 readings", "dog urine");
    PackedTrial out =
        book.read(
            reading ->
                new PackedTrial(
                    trial.content(),
                    reading.ofTrial(Kind.TRIAL_EVENT, trial.id()).stream()
                        .map(Sheet::content)
                        .toList(),
                    reading.ofTrial(Kind.TRIAL_READINGS, trial.id()).stream()
                        .flatMap(sheet -> sheet.content().readings().stream())
                        .toList()));
    assertThat(out).isEqualTo(packed);

    HttpResponse<String> again = send(zip(packed));
    assertThat(again.statusCode()).isEqualTo(422);
    assertThat(again.body()).contains("the book has the trial of this plan already");
  }

  @Test
  void aPlanThatWasNeverFrozenIsNotFrozenAfterItsReadings() throws Exception {
    add(zip(example(false)));
    String trial = "/trials/" + imported().id();
    assertThat(asking.get(trial).body())
        .contains("its plan was never frozen", "230 readings")
        .doesNotContain("Freeze the plan</button>");
    assertThat(asking.get("/trials").body()).contains("never frozen");
    HttpResponse<String> answer = asking.postForm(trial + "/freeze");
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("has readings already");
  }

  @Test
  void whatIsNoPackageIsToldAndNothingComesIn() throws Exception {
    int before = book.read(reading -> reading.all(Kind.TRIAL)).size();
    HttpResponse<String> sent = send("plot,date\n".getBytes(StandardCharsets.UTF_8));
    assertThat(sent.statusCode()).isEqualTo(422);
    assertThat(sent.body()).contains("cannot be read as a zip file", "A whole trial");
    assertThatList(book.read(reading -> reading.all(Kind.TRIAL))).hasSize(before);
  }

  @Test
  void whatTheFindingsPageGivesIsReadBack() throws Exception {
    Sheet<TrialSheet> demo = book.read(reading -> reading.all(Kind.TRIAL)).get(0);
    HttpResponse<byte[]> zip = asking.bytes("/trials/" + demo.id() + "/data.zip");
    PackedTrial back = TrialPackageFile.open("trial.zip", zip.body()).read();
    assertThat(back.trial().plan()).isEqualTo(demo.content().plan());
    assertThat(back.trial().frozen()).isEqualTo(demo.content().frozen());
    assertThat(back.readings()).hasSize(192);
    assertThat(back.events()).hasSize(1);
    assertThat(send(zip.body()).body()).contains("the book has the trial of this plan already");
  }
}
