package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import leafturn.advice.call.Circumstances;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.advice.call.Circumstances.FallenLeaves;
import leafturn.advice.call.Circumstances.HeapHeat;
import leafturn.advice.call.Place;
import leafturn.advice.call.Sighting;
import leafturn.advice.call.Treatment;
import leafturn.advice.call.Visits;
import leafturn.advice.call.WateringLimits;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Changed;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people entered reaches the call; what they did not tell stays not known. */
class KnownOfLawnTest {
  private static final LocalDate ON = LocalDate.of(2015, 5, 28);

  @TempDir Path folder;
  private Book book;
  private String lawn = "";
  private String property = "";

  @BeforeEach
  void open() {
    book = Book.open(BookPlace.of(folder), Clock.systemUTC());
    DemoBook.write(book);
    LawnSheet sheet = placed().lawn().content();
    lawn = placed().lawn().id();
    property = sheet.property();
  }

  @AfterEach
  void close() {
    book.close();
  }

  private PlacedLawn placed() {
    return book.read(Register::of).lawn("linden-house-back").orElseThrow();
  }

  private Circumstances known() {
    PlacedLawn placed = placed();
    return book.read(
        reading -> {
          List<LogSheet> log = reading.ofLawn(Kind.LOG, lawn).stream().map(Sheet::content).toList();
          return KnownOfLawn.of(reading, placed, null, log, ON);
        });
  }

  private void logged(String what, String fields) {
    add(Kind.LOG, "{\"lawn\": \"%s\", \"what\": \"%s\", %s}".formatted(lawn, what, fields));
  }

  private <C extends Content> void add(Kind<C> kind, String document) {
    book.write("Test", writing -> Changed.added(writing, kind, document));
  }

  @Test
  void nothingIsKnownOfWhatNobodyTold() {
    assertThat(known()).isEqualTo(Circumstances.NONE);
  }

  @Test
  void whatWasSeenAndNotThereIsToldWithItsHour() {
    logged(
        "observed",
        "\"day\": \"2015-05-27\", \"time\": \"08:00\", \"things\": [\"ground frost\", \"moss\"],"
            + " \"notThere\": [\"seed heads\"], \"leafCoverFraction\": 0.25");
    logged("observed", "\"day\": \"2015-05-29\", \"things\": [\"dormant\"]");
    LocalDate day = ON.minusDays(1);
    LocalTime eight = LocalTime.of(8, 0);
    assertThat(known().sightings())
        .containsExactly(
            new Sighting(day, eight, leafturn.advice.call.Sight.GROUND_FROST, true),
            new Sighting(
                day, eight, leafturn.advice.call.Sight.ANNUAL_BLUEGRASS_SEED_HEADS, false));
    assertThat(known().fallenLeaves()).contains(new FallenLeaves(day, 0.25));
  }

  @Test
  void leavesAreToldWhereNobodySaidHowMuchTheyHide() {
    logged("observed", "\"day\": \"2015-05-27\", \"things\": [\"leaf fall\"]");
    assertThat(known().fallenLeaves()).contains(new FallenLeaves(ON.minusDays(1), null));
  }

  @Test
  void aLabelIsToldAsItWasEntered() {
    logged(
        "treated",
        "\"day\": \"2015-05-20\", \"product\": \"Broadleaf\", \"productKind\": \"herbicide\","
            + " \"ingredientGroup\": \"pyridine acid\", \"mowingsBeforeUse\": 3,"
            + " \"waitBeforeMowingDays\": 2");
    assertThat(known().treatments())
        .containsExactly(
            new Treatment(
                LocalDate.of(2015, 5, 20),
                "Broadleaf",
                Treatment.Kind.HERBICIDE,
                Treatment.Group.PYRIDINE_ACID,
                new Treatment.Label(3, null, false, 2, true)));
  }

  @Test
  void granulesAreToldWhateverWasWateredSinceForTheRulesDecide() {
    logged(
        "fed",
        "\"day\": \"2015-05-27\", \"fastNGPerM2\": 4, \"feedForm\": \"granular\","
            + " \"waterInMm\": 8");
    assertThat(known().dryFeed()).contains(new DryFeed(ON.minusDays(1), 8));
    logged("watered", "\"day\": \"2015-05-28\", \"waterMm\": 9");
    assertThat(known().dryFeed()).isPresent();
  }

  @Test
  void liquidFeedAndFeedThatWasWateredInLieNowhere() {
    logged("fed", "\"day\": \"2015-05-26\", \"kGPerM2\": 4, \"feedForm\": \"liquid\"");
    assertThat(known().dryFeed()).isEmpty();
    logged("fed", "\"day\": \"2015-05-27\", \"kGPerM2\": 4, \"wateredIn\": true");
    assertThat(known().dryFeed()).isEmpty();
    logged("fed", "\"day\": \"2015-05-28\", \"kGPerM2\": 4, \"wateredIn\": false");
    assertThat(known().dryFeed()).contains(new DryFeed(ON, Double.NaN));
  }

  @Test
  void seedWaitsForItsFirstCut() {
    logged("seeded", "\"day\": \"2015-05-25\", \"seed\": \"Ryegrass\"");
    assertThat(known().place().newlySeeded()).isTrue();
    assertThat(known().place().sown()).isEqualTo("2015-05-25");
    logged("mown", "\"day\": \"2015-05-27\", \"returnedShare\": 1");
    assertThat(known().place().newlySeeded()).isFalse();
  }

  @Test
  void whoMowsAndWhatIsAllowedComesFromTheLatestTalk() {
    add(Kind.INTAKE, intake("2015-03-01", "\"mowing\": {\"mowingDays\": [\"monday\"]}"));
    add(
        Kind.INTAKE,
        intake(
            "2015-04-01",
            "\"aims\": [\"no clippings indoors\"],"
                + " \"mowing\": {\"mowingDays\": [\"friday\"], \"deckType\": \"rear bag\"},"
                + " \"wateringLimits\": {\"days\": [\"sunday\"], \"from\": \"21:00\","
                + " \"to\": \"06:00\"}"));
    add(Kind.INTAKE, intake("2015-06-01", "\"mowing\": {\"mowingDays\": [\"tuesday\"]}"));
    Circumstances known = known();
    assertThat(known.visits()).isEqualTo(Visits.every(DayOfWeek.FRIDAY));
    assertThat(known.place().deck()).isEqualTo(Place.Deck.REAR_BAG);
    assertThat(known.wishes().noClippings()).isTrue();
    assertThat(known.wateringLimits())
        .isEqualTo(
            new WateringLimits(
                false, Set.of(DayOfWeek.SUNDAY), LocalTime.of(21, 0), LocalTime.of(6, 0)));
  }

  private String intake(String day, String more) {
    return "{\"property\": \"%s\", \"day\": \"%s\", %s}".formatted(property, day, more);
  }

  @Test
  void aHeapIsHotWhereItsHeatWasLoggedOnThreeDays() {
    String heap = "{\"property\": \"%s\", \"name\": \"%s\", \"heapKind\": \"%s\", \"heat\": [%s]}";
    add(Kind.HEAP, heap.formatted(property, "Cold", "cold", ""));
    assertThat(known().wishes().heapHeat()).isEqualTo(HeapHeat.COLD);
    String two =
        "{\"day\": \"2015-05-20\", \"temperatureC\": 58}, {\"day\": \"2015-05-21\","
            + " \"temperatureC\": 60}";
    add(Kind.HEAP, heap.formatted(property, "Bays", "hot", two));
    assertThat(known().wishes().heapHeat()).isEqualTo(HeapHeat.NOT_KNOWN);
    String three = two + ", {\"day\": \"2015-05-22\", \"temperatureC\": 55}";
    add(Kind.HEAP, heap.formatted(property, "Bin", "hot", three));
    assertThat(known().wishes().heapHeat()).isEqualTo(HeapHeat.LOGGED);
  }

  @Test
  void slopeAndAnnualBluegrassComeFromTheLawn() {
    Sheet<LawnSheet> sheet = placed().lawn();
    String changes = "/slopePercent = 12 ; /annualBluegrass = \"unwanted\"";
    book.write("Test", writing -> Changed.revised(writing, sheet, changes));
    assertThat(known().place())
        .isEqualTo(new Place(12, Place.Deck.NOT_KNOWN, Place.AnnualBluegrass.UNWANTED, false));
  }
}
