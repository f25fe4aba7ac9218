package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import leafturn.quantity.SoilLayer;
import leafturn.records.Choice;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Visits, soil tests and thatch: what their readers refuse, and what follows from the figures. */
class MeasurementSheetsTest {
  private static final String VISIT =
      """
      {"lawn": ID, "day": "2015-05-28", "heightsMm": [70, 74, 78],
       "cover": {"grass": 81, "weed": 10, "moss": 5, "bare": 4},
       "compaction": {"method": "screwdriver", "depthMm": 90}, "thatchPlugsMm": [9, 12, 15],
       "photographs": [{"point": "gate", "photograph": ID}]}
      """;
  private static final String SOIL_TEST =
      """
      {"lawn": ID, "day": "2015-03-10", "laboratory": "Field station", "extractant": "Mehlich-3",
       "depthCm": 10,
       "determinations": [{"analyte": "pH", "value": 6.4, "unit": "pH"},
                          {"analyte": "phosphorus", "value": 50, "unit": "lb/ac", "asOxide": true},
                          {"analyte": "boron", "detectionLimit": 0.2, "unit": "mg/kg"}]}
      """;
  private static final String THATCH =
      """
      {"lawn": ID, "day": "2015-05-28", "plugsMm": [9, 12, 15], "method": "pressed"}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /lawn =                              | lawn             | the id of the lawn
          /day =                               | day              | missing
          /heightsMm = [70, 2]                 | heightsMm[1]     | from 3 to 1000, mm
          /heightsMm = [9,9,9,9,9,9,9,9,9,9,9,9,9,9,9,9,9,9,9,9,9] | heightsMm | 21 readings; give up to 20
          /cover/weed = 1.5                    | cover.weed       | not a whole number
          /cover/moss = -1                     | cover.moss       | from 0 to 10000
          /cover = {}                          | cover.grass      | fell on grass
          /cover = {"grass": 0}                | cover.grass      | no point is counted
          /cover/clover = 3                    | cover.clover     | no such field
          /compaction/method =                 | compaction.method | one of penetrometer
          /compaction/method = "penetrometer" ; /compaction/depthMm = | compaction.resistanceKPa | missing
          /compaction/words = "soft"           | compaction.words | belongs to the method words
          /compaction/depthMm = 301            | compaction.depthMm | from 0 to 300
          /thatchPlugsMm = [151]               | thatchPlugsMm[0] | from 0 to 150, mm
          /photographs/0/point =               | photographs[0].point | name of the point
          /photographs/0/photograph = "x"      | photographs[0].photograph | the id of a photograph
          """)
  void refusesAFaultyVisit(String changes, String field, String words) {
    Changed.assertRefused(Kind.VISIT, VISIT, changes, field, words);
  }

  @Test
  void aCountThatCannotBeReadIsNotSaidToBeMissingToo() {
    String visit =
        "{\"lawn\": \"00000000-0000-4000-8000-000000000001\", \"day\": \"2015-05-28\","
            + " \"cover\": {\"grass\": 80.5}}";
    assertThatThrownBy(() -> Kind.VISIT.read(new SourceText("visit", visit)))
        .isInstanceOfSatisfying(
            InputException.class,
            refused ->
                assertThatList(refused.faults())
                    .singleElement()
                    .asString()
                    .contains("not a whole number"));
  }

  @Test
  void refusesAVisitThatTellsNothing() {
    String empty = "{\"lawn\": ID, \"day\": \"2015-05-28\"}";
    Changed.assertRefused(Kind.VISIT, empty, "", "heightsMm", "anything else");
    Changed.assertRefused(
        Kind.VISIT, empty, "/heightsMm = [] ; /photographs = []", "heightsMm", "it is empty");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /lawn =                             | lawn                        | or property with
          /property = ID                      | property                    | keep one of them
          /bed = ID                           | bed                         | stands without property
          /laboratory =                       | laboratory                  | who made the test
          /depthCm =                          | depthCm                     | from 1 to 200, cm
          /depthCm = 0                        | depthCm                     | from 1 to 200
          /determinations =                   | determinations              | at least one figure
          /determinations = []                | determinations              | it is empty
          /determinations/0/analyte =         | determinations[0].analyte   | one of pH, buffer pH
          /determinations/0/analyte = "P"     | determinations[0].analyte   | one of pH, buffer pH
          /determinations/0/value = 13        | determinations[0].value     | from 2 to 12, pH
          /determinations/0/value =           | determinations[0].value     | when it lay below
          /determinations/0/unit =            | determinations[0].unit      | one of pH, %
          /determinations/0/unit = "ppm"      | determinations[0].unit      | not reported in ppm; give one of pH
          /determinations/0/asOxide = true    | determinations[0].asOxide   | only phosphorus
          /determinations/2/analyte = "pH" ; /determinations/2/unit = "pH" ; /determinations/2/detectionLimit = 3 | determinations[2].analyte | already
          /determinations/2/value = 0.1       | determinations[2].value     | below the detection limit
          /determinations/2/value = -1        | determinations[2].value     | from 0 to 1000000, mg/kg
          """)
  void refusesAFaultySoilTest(String changes, String field, String words) {
    Changed.assertRefused(Kind.SOIL_TEST, SOIL_TEST, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /plugsMm =           | plugsMm    | at least one plug
          /plugsMm = []        | plugsMm    | it is empty
          /plugsMm = [-1]      | plugsMm[0] | from 0 to 150, mm
          /method =            | method     | one of pressed, unpressed
          /method = "dry"      | method     | pressed, unpressed
          """)
  void refusesAFaultyThatchMeasurement(String changes, String field, String words) {
    Changed.assertRefused(Kind.THATCH, THATCH, changes, field, words);
  }

  @Test
  void findsMeanAndSpreadOfAVisit() {
    VisitSheet visit = Kind.VISIT.read(Changed.document(VISIT, ""));
    assertThat(visit.meanHeightMm()).hasValue(74);
    assertThat(visit.heightSpreadMm()).hasValue(4);
    assertThat(visit.meanThatchMm()).hasValue(12);
    VisitSheet one = Kind.VISIT.read(Changed.document(VISIT, "/heightsMm = [70]"));
    assertThat(one.heightSpreadMm()).isEmpty();
    ThatchSheet thatch = Kind.THATCH.read(Changed.document(THATCH, ""));
    assertThat(thatch.meanMm()).hasValue(12);
    assertThat(thatch.spreadMm()).hasValue(3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          mg/kg     | false | 45
          mg/100 g  | false | 450
          lb/ac     | false | 37.8
          mg/kg     | true  | 19.64
          """)
  void turnsAFigureIntoMilligramsOfTheElementPerKilogram(
      String unit, boolean asOxide, double expectedMgPerKg) {
    SoilUnit read = Objects.requireNonNull(Choice.of(unit, SoilUnit.class));
    Determination figure = new Determination(Analyte.PHOSPHORUS, 45.0, null, read, asOxide);
    assertThat(figure.mgPerKg(new SoilLayer(10, 1.334)).orElseThrow())
        .isCloseTo(expectedMgPerKg, within(0.05));
  }

  @Test
  void makesNoFigureOfWhatLayBelowDetectionOrCannotBeTurned() {
    SoilTestSheet test = Kind.SOIL_TEST.read(Changed.document(SOIL_TEST, ""));
    Determination boron = test.of(Analyte.BORON).orElseThrow();
    assertThat(boron.belowDetectionLimit()).isTrue();
    assertThat(boron.mgPerKg(null)).isEmpty();
    assertThat(test.of(Analyte.PHOSPHORUS).orElseThrow().mgPerKg(null)).isEmpty();
    assertThat(test.of(Analyte.PH).orElseThrow().mgPerKg(null)).isEmpty();
    assertThat(test.of(Analyte.ZINC)).isEmpty();
  }
}
