package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.sheet.Changed;
import leafturn.records.sheet.Kind;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty book to the first advice. */
class PropertyRoomTest {
  private static final String NEW = "/properties/new";
  private static final Path WEATHER = Path.of("..", "docs", "examples", "new-york-2012-2015.csv");

  private static final String WITHOUT_STATION =
      """
      {"name": "Sallow House", "address": "sallow-house", "latitudeDeg": 40.8,
       "timeZone": "America/New_York"}
      """;

  @TempDir Path folder;
  private Book book;
  private LeafturnServer server;
  private SiteVisitor visitor;

  @BeforeEach
  void start() {
    Clock clock = Clock.fixed(Instant.parse("2015-06-10T10:00:00Z"), ZoneOffset.UTC);
    book = Book.open(BookPlace.of(folder), clock);
    server = LeafturnServer.start(book, clock, 0);
    visitor = new SiteVisitor(server.address());
  }

  @AfterEach
  void stop() {
    server.close();
    book.close();
  }

  /** The record up to the day before the one it is here. */
  private static String weather() throws IOException {
    return Files.readAllLines(WEATHER).stream()
        .takeWhile(line -> !line.contains(",2015-06-10,"))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void anEmptyBookLeadsToTheFormAndTheFormToAdvice() throws Exception {
    String units = "You read and write in metric units. <a href=\"/me\">Choose your units</a>";
    assertThat(visitor.read("/")).contains("holds no lawn yet", "href=\"/properties/new\"", units);
    assertThat(visitor.read("/properties/new")).contains(units);
    assertThat(visitor.read(NEW))
        .contains("value=\"530\"", "value=\"60\"", "value=\"4\"", "the usual one of the grass")
        .contains("common practice, no source", "Example record: New York");
    HttpResponse<String> begun = begin(Map.of("station", "example"), null);
    assertThat(begun.statusCode()).isEqualTo(303);
    assertThat(visitor.read(begun.headers().firstValue("Location").orElseThrow()))
        .contains("The advice for this lawn is being worked out.", "<progress")
        .contains("hx-get=\"/lawns/sallow-house-lawn\"", "<h1>")
        .doesNotContain("What each choice would do");
    assertThat(visitor.read("/lawns/sallow-house-lawn"))
        .contains("Sallow House", "What each choice would do");
    assertThat(visitor.read("/properties/sallow-house"))
        .contains("New York", "Programme from Wednesday 10 June 2015");
  }

  @Test
  void aDailyFileOfItsOwnIsTakenWithTheForm() throws Exception {
    HttpResponse<String> begun = begin(Map.of("station", "example"), weather());
    assertThat(begun.statusCode()).isEqualTo(303);
    assertThat(visitor.read("/lawns/sallow-house-lawn"))
        .contains("daily file rain.csv, given with Sallow House");
    assertThat(count(Kind.STATION)).isEqualTo(1);
    assertThat(book.read(reading -> reading.all(Kind.STATION)).get(0).content().latitudeDeg())
        .isEqualTo(40.8);
  }

  @Test
  void aRecordOfTheBookIsChosenBySomebodyAndFarFromItsPropertyTheLawnsPageSaysSo()
      throws Exception {
    assertThat(visitor.read(NEW)).contains("Filled in: that of this computer.");
    begin(Map.of("property.longitudeDeg", "-73.9"), weather());
    assertThat(visitor.read(NEW))
        .contains("Filled in: that of Sallow House.", "value=\"America/New_York\"")
        .contains("<option value=\"\" selected>Choose one</option>")
        .contains("Record of Sallow House (latitude 40.8, longitude -73.9)");
    Map<String, String> fjord =
        Map.of(
            "property.name", "Fjord",
            "property.latitudeDeg", "60.2",
            "property.longitudeDeg", "10.7",
            "station", "");
    HttpResponse<String> answer = begin(fjord, null);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("id=\"f-station-fault\"", "Choose the record of weather");
    Map<String, String> chosen = new HashMap<>(fjord);
    chosen.put("station", book.read(reading -> reading.all(Kind.STATION)).get(0).id());
    assertThat(begin(chosen, null).statusCode()).isEqualTo(303);
    String far = "The record “Record of Sallow House” was measured";
    assertThat(visitor.read("/lawns/fjord-lawn")).contains(far, "miles) away: beyond 100\u00a0km");
    assertThat(visitor.read("/lawns/sallow-house-lawn")).doesNotContain(far);
  }

  @Test
  void aFaultyFileIsToldBesideItsFieldTogetherWithAllElseAndNothingIsWritten() throws Exception {
    HttpResponse<String> answer =
        begin(
            Map.of("station", "example", "property.latitudeDeg", "north"),
            "date,tmin_c,tmax_c,rain_mm\n2015-05-01,1,2,wet\n2015-05-02,1,2,3,4\n");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains("It has 5 cells, but the header names 4 columns.")
        .contains("id=\"f-weatherFile-fault\"", "wet", "id=\"f-property-latitudeDeg-fault\"")
        .contains("value=\"Sallow House\"");
    assertThat(count(Kind.PROPERTY)).isZero();
    assertThat(count(Kind.STATION)).isZero();
  }

  @Test
  void aGoodFileIsAskedForOnceMoreWhereSomethingElseIsWrong() throws Exception {
    HttpResponse<String> answer = begin(Map.of("property.latitudeDeg", ""), weather());
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("browsers do not keep it");
  }

  @Test
  void ofTwoFieldsCalledAlikeTheFaultsSayWhichIsMeant() throws Exception {
    HttpResponse<String> answer =
        begin(Map.of("property.name", "", "lawn.name", "", "property.longitudeDeg", "200"), null);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body())
        .contains(">The property, Name</a>", ">Its first lawn, Name</a>", ">Longitude</a>");
  }

  @Test
  void anInventedStationIsRefused() throws Exception {
    HttpResponse<String> answer =
        begin(Map.of("station", "00000000-0000-4000-8000-00000000abcd"), null);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("There is no such station");
  }

  @Test
  void aPropertyCalledNewHasAPageOfItsOwn() throws Exception {
    begin(Map.of("station", "example", "property.name", "New"), null);
    assertThat(visitor.read("/properties/place")).contains("<h1>New</h1>");
  }

  @Test
  void aLawnWithoutWeatherShowsItsFactsAndTheDoorsToItsLogAndItsWeather() throws Exception {
    begin(
        Map.of("station", "example", "lawn.mower.deckWidthMm", "530", "lawn.areaM2", "640"), null);
    var place = book.read(reading -> reading.all(Kind.PROPERTY)).get(0);
    var bare = Kind.PROPERTY.read(new SourceText("property", WITHOUT_STATION));
    book.write(
        "Owner", writing -> writing.revise(Kind.PROPERTY, place.id(), place.version(), bare));
    String page = visitor.read("/lawns/sallow-house-lawn");
    assertThat(page)
        .contains("There is no weather for this property yet: whoever may change it chooses")
        .contains("href=\"/properties/sallow-house/edit\">Choose the property’s weather station")
        .contains("href=\"/weather/new\"", "href=\"/lawns/sallow-house-lawn/log\"")
        .contains("<dt>Grass</dt><dd>tall fescue", "640\u202fm²", "530\u202fmm")
        .contains("<dt>Cut height this month</dt><dd>76\u202fmm", "Nothing was logged yet");
    String lawn = book.read(reading -> reading.all(Kind.LAWN)).get(0).id();
    String visit =
        "{\"lawn\": \"%s\", \"day\": \"2015-05-01\", \"heightsMm\": [70]}".formatted(lawn);
    book.write("Owner", writing -> Changed.added(writing, Kind.VISIT, visit));
    assertThat(visitor.read("/lawns/sallow-house-lawn"))
        .contains("No work was logged yet, only a height on a visit: the lawn is taken to be kept")
        .doesNotContain("Nothing was logged");
    assertThat(visitor.read("/lawns/sallow-house-lawn/season"))
        .contains("No plan can be made yet. There is no weather for this property yet")
        .contains("href=\"/properties/sallow-house/edit\"", "href=\"/weather/new\"")
        .doesNotContain("Make the plan");
  }

  @Test
  void aStoredSeasonOfASingleDayStillHasItsAdviceAndItsSheets() throws Exception {
    begin(Map.of("station", "example"), null);
    var stored = book.read(reading -> reading.all(Kind.PROGRAMME)).get(0);
    String once =
        """
        {"lawn": "%s", "from": "2015-06-10",
         "mowing": {"heightMm": 76, "from": "06-10", "to": "06-10"}}
        """
            .formatted(stored.content().lawn());
    var single = Kind.PROGRAMME.read(new SourceText("programme", once));
    book.write(
        "Owner", writing -> writing.revise(Kind.PROGRAMME, stored.id(), stored.version(), single));
    assertThat(visitor.read("/lawns/sallow-house-lawn"))
        .contains("It mows once a year at most", "What each choice would do");
    assertThat(visitor.read("/properties/sallow-house")).contains("Programme from");
  }

  private int count(Kind<?> kind) {
    return book.read(reading -> reading.all(kind).size());
  }

  private HttpResponse<String> begin(Map<String, String> given, @Nullable String file)
      throws Exception {
    Map<String, String> fields = NewProperty.fields(given);
    return visitor.sendWithFile(NEW, fields, "weatherFile", file == null ? "" : "rain.csv", file);
  }
}
