package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.records.Examples;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Sheet;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.PackedTrial;
import leafturn.records.trial.TrialPackageFile;
import leafturn.reports.trial.TrialPackage;
import leafturn.trials.observation.Reading;
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

  /** An example in a season before the day of the demonstration. */
  private Path moved(String name) throws IOException {
    String text = Files.readString(Examples.file(name)).replace("2026-", "2014-");
    return Files.writeString(folder.resolve(name), text);
  }

  private PackedTrial example(boolean frozen) throws IOException {
    PackedTrial read =
        PackedTrial.read(moved("split-yards.trial.json"), moved("split-yards.readings.csv"), null);
    if (!frozen) {
      return read;
    }
    TrialSheet.Frozen seal =
        new TrialSheet.Frozen("2014-04-01T08:00:00Z", "Wren", BookPlan.hash(read.trial()), null);
    TrialSheet trial =
        TrialSheet.planned(read.trial().plan(), List.of()).frozenAs(seal).noted("A note.");
    TrialEventSheet event =
        new TrialEventSheet(
            "00000000-0000-4000-8000-000000000001",
            LocalDate.of(2014, 6, 2),
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
    TrialPackage.of(trial, LocalDate.of(2014, 6, 3), ZoneOffset.UTC).writeTo(out);
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
    assertThat(asking.get(address).body())
        .contains("1 trial imported", "It changes no advice")
        .doesNotContain("The advice follows");
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
        .contains(
            "The plan was frozen by Wren",
            "unchanged since",
            "this book did not see it",
            "230 readings",
            "dog urine");
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

  /** The example with its margin changed after it was frozen, and a reading taken back. */
  private PackedTrial withPast() throws IOException {
    PackedTrial frozen = example(true);
    JsonNode before = frozen.trial().plan();
    ObjectNode after = before.deepCopy();
    after.withArray("outcomes").forEach(each -> ((ObjectNode) each).put("margin", 1.5));
    Reading back = Reading.own("B1-1", LocalDate.of(2014, 6, 1), "quality", "9", "Ada");
    TrialPast past =
        new TrialPast(
            List.of(
                new TrialPast.PlanVersion(before, LocalDate.of(2014, 4, 1), null),
                new TrialPast.PlanVersion(after, LocalDate.of(2014, 5, 4), "A slip of the pen.")),
            List.of(new TrialPast.Withdrawn(LocalDate.of(2014, 6, 2), List.of(back), null)),
            List.of(
                new TrialPast.EarlierEvent(
                    LocalDate.of(2014, 6, 3), LocalDate.of(2014, 6, 2), "dog urine (all plots)")));
    return new PackedTrial(
        frozen.trial().with(after, List.of()).with(past), frozen.events(), frozen.readings());
  }

  @Test
  void whatWasChangedAndTakenBackComesWithATrialAndGoesOutWithIt() throws Exception {
    PackedTrial packed = withPast();
    add(zip(packed));
    Sheet<TrialSheet> trial = imported();
    assertThat(trial.content().past()).isEqualTo(packed.trial().past());
    assertThat(asking.get("/trials/" + trial.id()).body())
        .contains("Changed after it was frozen", "4 May 2014, in the book it came from")
        .contains("Why: A slip of the pen.", "a difference of 1.5 matters");
    assertThat(asking.get("/trials/" + trial.id() + "/findings").body())
        .contains("when the plan was frozen; it was changed to 1.5 on 4 May 2014 (A slip of the")
        .contains(
            "Changed on 3 June 2014: of 2 June 2014 it was noted before: dog urine (all plots)")
        .contains("Withdrawn on 2 June 2014: 1 reading of quality (B1-1 on 1 June 2014: 9");
    byte[] out = asking.bytes("/trials/" + trial.id() + "/data.zip").body();
    PackedTrial again = TrialPackageFile.open("trial.zip", out).read();
    assertThat(again.trial().past()).isEqualTo(packed.trial().past());
  }

  @Test
  void aPastThatDoesNotLeadToThePlanIsRefused() throws Exception {
    PackedTrial packed = withPast();
    TrialPast past = Objects.requireNonNull(packed.trial().past());
    TrialPast backwards =
        new TrialPast(
            List.of(past.plans().get(1), past.plans().get(0)), past.withdrawn(), past.events());
    HttpResponse<String> sent =
        send(zip(new PackedTrial(packed.trial().with(backwards), List.of(), packed.readings())));
    assertThat(sent.statusCode()).isEqualTo(422);
    assertThat(sent.body())
        .contains("its last plan is not the plan of the package")
        .contains("its first plan is not the one that was frozen");
  }

  @Test
  void readingsAndEventsOfDaysToComeAreRefused() throws Exception {
    PackedTrial packed = example(true);
    List<Reading> readings = new ArrayList<>(packed.readings());
    readings.add(Reading.own("B1-1", LocalDate.of(2199, 1, 2), "quality", "6", "Ada"));
    HttpResponse<String> sent =
        send(zip(new PackedTrial(packed.trial(), packed.events(), readings)));
    assertThat(sent.statusCode()).isEqualTo(422);
    assertThat(sent.body())
        .contains("1 of its 231 readings are dated after today", "2 January 2199 has not come yet");
    TrialEventSheet dog = packed.events().get(0);
    TrialEventSheet later =
        new TrialEventSheet(
            dog.trial(),
            LocalDate.of(2199, 1, 2),
            dog.what(),
            dog.plots(),
            dog.areaM2(),
            null,
            null,
            null);
    HttpResponse<String> events =
        send(zip(new PackedTrial(packed.trial(), List.of(later), packed.readings())));
    assertThat(events.statusCode()).isEqualTo(422);
    assertThat(events.body()).contains("dog urine: 2 January 2199 has not come yet");
  }
}
