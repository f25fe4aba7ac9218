package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import javax.imageio.ImageIO;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Sheet;
import leafturn.records.people.People;
import leafturn.records.people.Role;
import leafturn.records.people.Shares;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.PhotographSheet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The log as plain forms and as entries of a phone's queue. */
class LogRoomTest {
  private static final String LAWN = "linden-house-back";
  private static final byte[] JPEG = jpeg();

  @TempDir static Path folder;
  private static Book book;
  private static LeafturnServer server;
  private static Asking owner;

  private final String id = UUID.randomUUID().toString();

  @BeforeAll
  static void start() {
    book = Book.open(BookPlace.of(folder.resolve("book")), Clock.systemUTC());
    DemoBook.write(book);
    server = LeafturnServer.start(book, Clock.systemUTC(), 0);
    owner = new Asking(server);
  }

  @AfterAll
  static void stop() {
    server.close();
    book.close();
  }

  @Test
  void theFormWorksByItselfAndSendingItTwiceMakesOneEntry() throws Exception {
    Map<String, String> entry =
        Map.of("id", id, "as", "collected", "day", "2015-05-27", "bags", "3");
    for (int times = 0; times < 2; times++) {
      HttpResponse<String> answer = owner.post("/lawns/" + LAWN + "/log", entry);
      assertThat(answer.statusCode()).isEqualTo(303);
      assertThat(Asking.location(answer)).hasToString("/log?saved=" + id);
    }
    assertThat(kept(id))
        .hasValueSatisfying(
            sheet -> {
              assertThat(sheet.version()).isEqualTo(1);
              assertThat(sheet.content().day()).isEqualTo(LocalDate.of(2015, 5, 27));
              assertThat(sheet.content().done())
                  .isEqualTo(new Done.Mown(null, null, 0, 3.0, null, null, null, false));
            });
    assertThat(owner.get("/log?saved=" + id).body())
        .contains("In the book: Mown, collected, Back lawn, Linden House, Wednesday 27 May.");
  }

  @Test
  void aFaultyFormComesBackWithAllItsFaultsAndAllThatWasTyped() throws Exception {
    HttpResponse<String> answer =
        owner.post(
            "/lawns/" + LAWN + "/log",
            Map.of("id", id, "as", "treated", "day", "soon", "note", "dew <b>still</b> on"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("4 things are to be put right", "id=\"treated-f-day\"", "treated-f-product-fault")
        .contains("“The label says nothing of clippings”")
        .contains("dew &lt;b&gt;still&lt;/b&gt; on", "value=\"" + id + "\"")
        .doesNotContain("set labelSaysNone");
    assertThat(kept(id)).isEmpty();
  }

  @Test
  void theQueueAcknowledgesAnEntryHoweverOftenItIsSent() throws Exception {
    Map<String, String> entry = entry("watered", "waterMm", "12,5");
    for (int times = 0; times < 3; times++) {
      HttpResponse<String> answer = owner.post("/queue", entry);
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.body()).isEqualTo("{\"id\":\"" + id + "\"}");
    }
    assertThat(kept(id))
        .hasValueSatisfying(
            sheet -> assertThat(sheet.content().done()).isEqualTo(new Done.Watered(12.5)));
  }

  @Test
  void anIdThatStandsForSomethingElseIsAConflict() throws Exception {
    owner.post("/queue", entry("watered", "waterMm", "1"));
    HttpResponse<String> answer = owner.post("/queue", entry("watered", "waterMm", "2"));
    assertThat(answer.statusCode()).isEqualTo(409);
    assertThat(answer.body()).contains("same id is in the book already");
    assertThat(kept(id))
        .hasValueSatisfying(
            sheet -> assertThat(sheet.content().done()).isEqualTo(new Done.Watered(1)));
  }

  @Test
  void everyFaultOfAnEntryIsToldWithItsFieldAndLabel() throws Exception {
    HttpResponse<String> answer = owner.post("/queue", entry("limed", "gPerM2", "lots"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("\"field\":\"gPerM2\",\"label\":\"Product given\"", "lots");
  }

  @Test
  void aDayThatHasNotComeAtTheLawnIsAFault() throws Exception {
    HttpResponse<String> answer = owner.post("/queue", entry("returned", "day", "2015-05-29"));
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains(
            "\"field\":\"day\"", "Friday 29 May 2015 has not come yet", "Thursday 28 May 2015");
  }

  @Test
  void aHeightThatCannotStandBesideACutOfThatDayIsToldWithWhatTheLogHas() throws Exception {
    Map<String, String> first = entry("returned", "heightAfterMm", "76");
    first.putAll(Map.of("heightBeforeMm", "95", "day", "2015-03-03"));
    assertThat(owner.post("/queue", first).statusCode()).isEqualTo(200);
    Map<String, String> second = new HashMap<>(first);
    second.putAll(Map.of("id", UUID.randomUUID().toString(), "heightBeforeMm", "140"));
    second.put("heightAfterMm", "64");
    HttpResponse<String> answer = owner.post("/queue", second);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("\"field\":\"heightBeforeMm\"", "the log has this for the same day", "from 95");
    second.put("heightBeforeMm", "78");
    assertThat(owner.post("/queue", second).statusCode()).isEqualTo(200);
    assertThat(owner.post("/queue", first).statusCode()).as("sent again").isEqualTo(200);
  }

  @Test
  void numbersAreInTheUnitsInWhichTheyWereTyped() throws Exception {
    Map<String, String> entry = entry("returned", "heightAfterMm", "2.25");
    entry.put("units", "us");
    assertThat(owner.post("/queue", entry).statusCode()).isEqualTo(200);
    Done.Mown mown = (Done.Mown) kept(id).orElseThrow().content().done();
    assertThat(mown.heightAfterMm()).isCloseTo(57.15, within(1e-9));
  }

  @Test
  void aPhotographIsKeptWithItsEntryOnceHoweverOftenItIsSent() throws Exception {
    Map<String, String> entry = entry("observed", "things", "clumps");
    assertThat(owner.post("/queue", entry, JPEG).statusCode()).isEqualTo(200);
    assertThat(owner.post("/queue", entry, JPEG).statusCode()).isEqualTo(200);
    LogSheet kept = kept(id).orElseThrow().content();
    assertThat(kept.photographs()).hasSize(1);
    String photograph = kept.photographs().get(0);
    Optional<Sheet<PhotographSheet>> sheetOfIt =
        book.read(reading -> reading.find(Kind.PHOTOGRAPH, photograph));
    assertThat(sheetOfIt)
        .hasValueSatisfying(
            sheet -> assertThat(sheet.content().sizeBytes()).isEqualTo(JPEG.length));
  }

  @Test
  void whatIsNoPictureIsRefusedBeforeAnythingIsWritten() throws Exception {
    HttpResponse<String> answer =
        owner.post("/queue", entry("observed", "things", "clumps"), "<svg/>".getBytes());
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("no JPEG, PNG or WebP picture");
    assertThat(kept(id)).isEmpty();
  }

  @Test
  void aLawnThatIsNotSharedLooksLikeOneThatIsNotThere() throws Exception {
    Asking helper = helperOf("mill-race");
    HttpResponse<String> answer = helper.post("/queue", entry("watered", "waterMm", "3"));
    assertThat(answer.statusCode()).isEqualTo(422);
    Map<String, String> nowhere = entry("watered", "waterMm", "3");
    nowhere.put("lawn", UUID.randomUUID().toString());
    assertThat(helper.post("/queue", nowhere).body()).isEqualTo(answer.body());
    assertThat(helper.get("/lawns/" + LAWN + "/log").statusCode()).isEqualTo(404);
    assertThat(helper.get("/queue/lawns").body()).contains("Orchard").doesNotContain("Linden");
    assertThat(helper.get("/log").body()).contains("Orchard").doesNotContain("Linden");
    assertThat(kept(id)).isEmpty();
  }

  @Test
  void whatAPhoneKeepsHoldsNothingOfTheBook() throws Exception {
    for (String path : new String[] {"/phone/log/metric", "/phone/log/us", "/phone/offline"}) {
      String page = owner.get(path).body();
      assertThat(page).contains("<main").doesNotContain("Linden", "invented", ">Owner<");
      assertThat(page).doesNotContainPattern("name=\"_token\" value=\"[^\"]+\"");
    }
    assertThat(owner.get("/phone/log/us").body()).contains("in inches</span>");
  }

  @Test
  void theWorkerAndTheManifestNameFilesThatAreThere() throws Exception {
    HttpResponse<String> worker = owner.get("/worker.js");
    assertThat(worker.headers().firstValue("Content-Type"))
        .contains("text/javascript; charset=utf-8");
    for (String text : new String[] {worker.body(), owner.get("/manifest.webmanifest").body()}) {
      var files =
          java.util.regex.Pattern.compile("\"(/assets/[^\"]+)\"").matcher(text).results().toList();
      assertThat(files).hasSizeGreaterThan(3);
      for (var file : files) {
        assertThat(owner.get(file.group(1)).statusCode()).as(file.group(1)).isEqualTo(200);
      }
    }
  }

  @Test
  void whatTheKeptScriptsImportIsKeptToo() throws Exception {
    List<String> kept = named("/assets/[^/]+/([a-z-]+\\.js)", owner.get("/worker.js").body());
    assertThat(kept).contains("log.js");
    for (String script : kept) {
      if (!script.equals("worker.js")) {
        String text = owner.get(new Assets().address(script)).body();
        assertThat(kept).as(script).containsAll(named("from \"\\./([a-z-]+\\.js)\"", text));
      }
    }
  }

  private static List<String> named(String pattern, String text) {
    return java.util.regex.Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"leaf-192.png", "leaf-512.png", "leaf-maskable-512.png"})
  void anIconIsAsLargeAsItsNameSays(String name) throws Exception {
    byte[] png = owner.bytes(new Assets().address(name)).body();
    int width = java.nio.ByteBuffer.wrap(png, 16, 4).getInt();
    assertThat(name).contains("-" + width + ".");
  }

  private Map<String, String> entry(String as, String field, String typed) {
    String lawn = book.read(reading -> reading.at(Kind.LAWN, LAWN)).orElseThrow().id();
    Map<String, String> entry = new HashMap<>();
    entry.put("id", id);
    entry.put("lawn", lawn);
    entry.put("as", as);
    entry.put("units", "metric");
    entry.put("day", "2015-05-28");
    entry.put(field, typed);
    return entry;
  }

  private static Asking helperOf(String property) {
    String person =
        book.write(
            "Test",
            writing -> {
              String added =
                  People.add(writing, "Helper " + UUID.randomUUID(), Role.HELPER, Units.METRIC)
                      .id();
              String shared = writing.at(Kind.PROPERTY, property).orElseThrow().id();
              Shares.set(writing, added, Set.of(shared));
              return added;
            });
    return Asking.as(server, book, person);
  }

  private static Optional<Sheet<LogSheet>> kept(String entry) {
    return book.read(reading -> reading.find(Kind.LOG, entry));
  }

  private static byte[] jpeg() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
