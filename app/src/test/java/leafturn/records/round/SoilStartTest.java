package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import leafturn.advice.call.LawnOnRound;
import leafturn.quantity.Units;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.Engine;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.SoilTestSheet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A soil test kept for a lawn is where its model starts from. */
class SoilStartTest {
  private static final String ID = "00000000-0000-4000-8000-000000000001";
  private static final LocalDate BEGINS = LocalDate.of(2012, 1, 1);
  private static final LocalDate ON = LocalDate.of(2015, 5, 28);
  private static final String P = figure("phosphorus", 61, "mg/kg");
  private static final String K = figure("potassium", 88, "ppm");

  @TempDir private Path folder;

  @Test
  void whatTheDescriptionLeavesEmptyStartsFromTheLatestTestBeforeTheRecordBegins() {
    SoilStart start =
        start(
            lawn(""),
            test("2009-04-03", 10, "Mehlich-3", figure("phosphorus", 20, "mg/kg")),
            test("2011-04-03", 10, "Mehlich 3", P, K, figure("organic matter", 4.2, "%")));
    assertThat(start.soil().phosphorusPpm()).isEqualTo(61);
    assertThat(start.soil().potassiumPpm()).isEqualTo(88);
    assertThat(start.soil().organicMatterPercent()).isCloseTo(4.2, within(1e-9));
    assertThat(start.soil().testDepthCm()).isEqualTo(10);
    assertThat(start.notes())
        .containsExactly(
            "Phosphorus, potassium and organic matter start from the soil test of 3 April 2011.");
    assertThat(start.words()).isEqualTo("from the soil test of 3 April 2011");
  }

  @Test
  void theDescriptionWinsWhereItGivesAFigure() {
    SoilStart start =
        start(lawn("\"phosphorusPpm\": 33"), test("2011-04-03", 10, "Mehlich-3", P, K));
    assertThat(start.soil().phosphorusPpm()).isEqualTo(33);
    assertThat(start.words())
        .isEqualTo("P from the lawn's description, K from the soil test of 3 April 2011");
    assertThat(start.notes())
        .containsExactly("Potassium starts from the soil test of 3 April 2011.");
  }

  @Test
  void aLaterTestStandsInAndThatIsSaidButNoneAfterTheDayOfTheAdvice() {
    SoilStart start =
        start(
            lawn(""),
            test("2015-04-03", 10, "Mehlich-3", P, K),
            test("2015-06-01", 10, "Mehlich-3", figure("phosphorus", 5, "ppm")));
    assertThat(start.soil().phosphorusPpm()).isEqualTo(61);
    assertThat(start.notes())
        .containsExactly(
            "Phosphorus and potassium start from the soil test of 3 April 2015.",
            "No soil test is older than the weather record, which begins on 1 January 2012: the"
                + " model starts there from what this later one found.");
    assertThat(start.words())
        .isEqualTo(
            "reckoned from 1 January 2012 on as if the soil test of 3 April 2015 had been taken"
                + " then");
  }

  @Test
  void anEarlierTestIsTheStartAndTheLaterOneIsThereToCompare() {
    SoilStart start =
        start(
            lawn(""),
            test("2015-04-03", 10, "Mehlich-3", figure("phosphorus", 5, "ppm")),
            test("2011-04-03", 10, "Mehlich-3", P, K));
    assertThat(start.soil().phosphorusPpm()).isEqualTo(61);
    assertThat(start.notes())
        .endsWith(
            "The soil test of 3 April 2015 is there to compare with: the model goes on from the"
                + " earlier one.");
  }

  @Test
  void unitsAreConvertedOnlyWhereTheyCanBe() {
    String perArea = figure("phosphorus", 80, "kg/ha");
    SoilStart known =
        start(lawn("\"bulkDensityGPerCm3\": 1.6"), test("2011-04-03", 10, null, perArea));
    // 8 g/m2 in 10 x 10 x 1.6 = 160 kg/m2 of soil
    assertThat(known.soil().phosphorusPpm()).isCloseTo(50.0, within(1e-9));
    assertThat(known.notes())
        .containsExactly(
            "Phosphorus starts from the soil test of 3 April 2011, which does not tell its"
                + " extractant: it is read as Mehlich-3.");
    assertThat(start(lawn(""), test("2011-04-03", 10, null, perArea)).notes())
        .containsExactly(
            "Of the soil test of 3 April 2011 phosphorus is not used: kg/ha needs the soil's bulk"
                + " density, which the lawn's description does not give.");
    assertThat(
            start(lawn(""), test("2011-04-03", 10, null, figure("potassium", 80, "mg/L"))).notes())
        .containsExactly(
            "Of the soil test of 3 April 2011 potassium is not used: mg/L is of a scoop of soil"
                + " whose mass the test does not tell.");
  }

  @Test
  void anotherExtractantIsNotUsedAndTheStartStaysAssumed() {
    SoilStart start =
        start(
            lawn(""), test("2011-04-03", 10, "Olsen", P, K, figure("organic matter", 42, "g/kg")));
    assertThat(start.soil().phosphorusPpm()).isNull();
    assertThat(start.soil().extractant()).isNull();
    assertThat(start.soil().organicMatterPercent()).isCloseTo(4.2, within(1e-9));
    assertThat(start.words()).isEqualTo("from an assumed start");
    assertThat(start.notes())
        .contains(
            "Organic matter starts from the soil test of 3 April 2011.",
            "Of the soil test of 3 April 2011 phosphorus is not used: it was extracted with Olsen,"
                + " the model's scale is that of Mehlich-3, and figures of different extractants do"
                + " not convert.");
  }

  @Test
  void otherDepthsAndFiguresBelowTheLimitAreNotUsed() {
    String below = "{\"analyte\": \"phosphorus\", \"detectionLimit\": 5, \"unit\": \"ppm\"}";
    assertThat(start(lawn(""), test("2011-04-03", 10, null, below)).notes().get(0))
        .endsWith("it lay below the detection limit, and how far below nobody knows.");
    assertThat(start(lawn("\"testDepthCm\": 15"), test("2011-04-03", 10, null, P)).notes().get(0))
        .endsWith("its cores have another depth than the lawn's description.");
    assertThat(start(lawn(""), test("2011-04-03", 60, null, P)).notes().get(0))
        .endsWith("its cores reach deeper than the model’s soil.");
    assertThat(start(lawn("")).words()).isEqualTo("from an assumed start");
  }

  @Test
  void aTestKeptInTheBookMovesTheAdviceAtOnce() {
    Clock clock = Clock.fixed(Instant.parse("2015-06-01T11:00:00Z"), ZoneOffset.UTC);
    try (Book book = Book.open(Engine.H2.newPlace(folder), clock);
        BookRound rounds = new BookRound(book, clock)) {
      DemoBook.write(book);
      book.write(
          "test",
          writing -> {
            var sheet = writing.at(Kind.LAWN, "linden-house-back").orElseThrow();
            return writing.revise(
                Kind.LAWN, sheet.id(), sheet.version(), bare(sheet.content().property()));
          });
      LawnOnRound before = back(rounds);
      assertThat(before.description().soilStart()).isEqualTo("from an assumed start");
      String lawn =
          rounds.register().lawns().stream()
              .filter(placed -> placed.address().equals("linden-house-back"))
              .findFirst()
              .orElseThrow()
              .lawn()
              .id();
      book.write(
          "test",
          writing ->
              writing.add(
                  Kind.SOIL_TEST,
                  new UUID(0x4000, 0x8000000000000001L).toString(),
                  testOf(lawn, "2011-04-03", 10, "Mehlich-3", P, figure("potassium", 300, "ppm"))));
      LawnOnRound after = back(rounds);
      assertThat(after.description().soilStart()).isEqualTo("from the soil test of 3 April 2011");
      assertThat(after.call().notes())
          .contains("Phosphorus and potassium start from the soil test of 3 April 2011.");
      assertThat(after.call().today().soilPotassiumPpm())
          .isGreaterThan(before.call().today().soilPotassiumPpm() + 20);
    }
  }

  private static LawnSheet bare(String property) {
    return Kind.LAWN.read(
        new SourceText(
            "lawn",
            "{\"property\": \"%s\", \"name\": \"Back lawn\", \"address\": \"linden-house-back\", \"grass\": \"tall fescue\"}"
                .formatted(property)));
  }

  private static LawnOnRound back(BookRound rounds) {
    return rounds
        .today(
            register -> register.onlyLawn("linden-house-back"), Units.METRIC, Duration.ofMinutes(1))
        .lawns()
        .get(0);
  }

  private static SoilStart start(LawnSheet lawn, SoilTestSheet... tests) {
    return SoilStart.of(lawn, List.of(tests), BEGINS, ON);
  }

  private static LawnSheet lawn(String soil) {
    return Kind.LAWN.read(
        new SourceText(
            "lawn",
            "{\"property\": \"%s\", \"name\": \"L\", \"address\": \"l\", \"grass\": \"tall fescue\", \"soil\": {%s}}"
                .formatted(ID, soil)));
  }

  private static SoilTestSheet test(
      String day, double depthCm, @Nullable String extractant, String... figures) {
    return testOf(ID, day, depthCm, extractant, figures);
  }

  private static SoilTestSheet testOf(
      String lawn, String day, double depthCm, @Nullable String extractant, String... figures) {
    String told = extractant == null ? "" : "\"extractant\": \"%s\", ".formatted(extractant);
    return Kind.SOIL_TEST.read(
        new SourceText(
            "test",
            "{\"lawn\": \"%s\", \"day\": \"%s\", \"laboratory\": \"County\", %s\"depthCm\": %s, \"determinations\": [%s]}"
                .formatted(lawn, day, told, depthCm, String.join(", ", Arrays.asList(figures)))));
  }

  private static String figure(String analyte, double value, String unit) {
    return "{\"analyte\": \"%s\", \"value\": %s, \"unit\": \"%s\"}".formatted(analyte, value, unit);
  }
}
