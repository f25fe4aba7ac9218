package leafturn.records;

import static leafturn.records.Examples.faultsOf;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.MonthDay;
import java.util.List;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Lawn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LawnFileTest {
  private static final String LEAST =
      """
      {"site": {"latitudeDeg": 40.78}, "grass": "tall fescue"}
      """;

  private static LawnReading read(String json) {
    return LawnFile.read(new SourceText("LAWN.json", json));
  }

  private static List<String> faults(String json) {
    return faultsOf(() -> read(json));
  }

  @Test
  void readsEveryFieldOfTheFullExample() {
    LawnReading reading = LawnFile.read(Examples.file("linden-house-front.lawn.json"));
    Lawn lawn = reading.lawn();
    assertThat(reading.notes()).isEmpty();
    assertThat(lawn.site().latitudeDeg()).isEqualTo(40.78);
    assertThat(lawn.site().timeZone()).hasToString("America/New_York");
    assertThat(lawn.ground().grass()).isEqualTo(Species.TALL_FESCUE);
    assertThat(lawn.ground().soil().water().saturation()).isEqualTo(0.45);
    assertThat(lawn.ground().soil().test().extractant()).isEqualTo("Mehlich-3");
    assertThat(lawn.ground().areaM2()).isEqualTo(420);
    assertThat(lawn.ground().mower()).isEqualTo(new Lawn.Mower(530.0, 70.0, 4.0, false));
    assertThat(lawn.programme().mowing().everyDays()).isEqualTo(7);
    assertThat(lawn.programme().mowing().from()).isEqualTo(CalendarDay.on(MonthDay.of(4, 1)));
    assertThat(lawn.programme().mowing().returnedShare()).isZero();
    assertThat(lawn.programme().feedings()).hasSize(4);
    assertThat(lawn.programme().feedings().get(0).fastNGPerM2()).isEqualTo(3.675);
    assertThat(lawn.programme().irrigationShareOfDemand()).isEqualTo(0.5);
    assertThat(lawn.spinUpYears()).isEqualTo(4);
  }

  @Test
  void fillsInWhatMayBeLeftOutAndSaysSo() {
    LawnReading reading = read(LEAST);
    Lawn lawn = reading.lawn();
    assertThat(lawn.programme().mowing().heightMm()).isEqualTo(76);
    assertThat(lawn.programme().mowing().byOneThirdRule()).isTrue();
    assertThat(lawn.programme().mowing().returnedShare()).isEqualTo(1);
    assertThat(lawn.programme().mowing().from()).isEqualTo(CalendarDay.ofYear(75));
    assertThat(lawn.spinUpYears()).isEqualTo(4);
    assertThat(lawn.ground().soil().test().organicMatterPercent()).isEqualTo(5);
    assertThat(String.join("\n", reading.notes()))
        .contains("elevationM 0 m", "windHeightM 2 m")
        .contains("fieldCapacity 0.25 m3/m3 (loam)", "curveNumber 61", "phosphorusPpm 45 ppm")
        .contains("heightMm 76 mm", "one-third rule", "returnedShare 1", "to day 345")
        .contains("shareOfDemand 0", "spinUpYears 4");
  }

  @Test
  void aProgrammeThatMowsTooSeldomIsToldOrRefused() {
    String mowing = "{'from': '07-01', 'to': '07-02', 'trigger': {'everyDays': %d}}";
    String lawn = LEAST.strip().replaceFirst("}$", ", \"mowing\": %s}");
    LawnReading meadow = read(lawn.formatted(mowing.formatted(300).replace('\'', '"')));
    assertThat(meadow.notes())
        .contains("It mows once a year at most: fewer than 4 mowings keep a meadow and no lawn.");
    assertThat(faults(lawn.formatted(mowing.formatted(366).replace('\'', '"'))))
        .singleElement()
        .asString()
        .contains("366 is out of range; give a number from 1 to 365");
  }

  @Test
  void aMowingSeasonOfASingleDayIsKeptAndSaidToBeSeldom() {
    String mowing = "{\"from\": \"07-01\", \"to\": \"07-01\"}";
    LawnReading once = read(LEAST.strip().replaceFirst("}$", ", \"mowing\": " + mowing + "}"));
    assertThat(once.notes())
        .contains("It mows once a year at most: fewer than 4 mowings keep a meadow and no lawn.");
  }

  @Test
  void southOfTheEquatorTheAssumedSeasonLiesHalfAYearLater() {
    LawnReading reading =
        read("{\"site\": {\"latitudeDeg\": -37}, \"grass\": \"perennial ryegrass\"}");
    assertThat(reading.lawn().programme().mowing().from()).isEqualTo(CalendarDay.ofYear(257));
    assertThat(reading.lawn().programme().mowing().to()).isEqualTo(CalendarDay.ofYear(163));
    assertThat(String.join("\n", reading.notes())).contains("from day 257", "to day 163");
  }

  @Test
  void loamHasTheWaterContentsOfTheModelsDefaults() {
    Parameters defaults = Parameters.of(Species.TALL_FESCUE);
    assertThat(SoilTexture.named("loam"))
        .contains(
            new SoilTexture("loam", defaults.get("fc"), defaults.get("wp"), defaults.get("sat")));
  }

  @Test
  void everyTextureMakesASoil() {
    assertThat(SoilTexture.all())
        .hasSize(12)
        .allSatisfy(
            texture ->
                assertThat(
                        read("""
                                {"site": {"latitudeDeg": 1}, "grass": "zoysiagrass",
                                 "soil": {"texture": "%s"}}
                                """
                                .formatted(texture.name()))
                            .lawn()
                            .ground()
                            .soil()
                            .water()
                            .fieldCapacity())
                    .isEqualTo(texture.fieldCapacity()));
  }

  @Test
  void reportsAllFaultsAtOnceWithLineAndPath() {
    assertThat(
            faults(
                """
                {
                  "site": {"latitudeDeg": 140, "windHeightM": "two"},
                  "grass": "tall fescu",
                  "soil": {"fieldCapacity": 1.7, "texture": "sandy lome"},
                  "mowing": {"heigthMm": 76, "trigger": {"everyDays": 7.5}},
                  "feeding": [{"on": "02-30", "fastNGPerM2": -1}]
                }
                """))
        .containsExactlyInAnyOrder(
            "LAWN.json, line 2, site.latitudeDeg: 140 is out of range; give a number from -90 to"
                + " 90, ° north.",
            "LAWN.json, line 2, site.windHeightM: \"two\" is not a number; give a number from 0.5"
                + " to 100, m.",
            "LAWN.json, line 3, grass: \"tall fescu\" is not a grass known here; did you mean tall"
                + " fescue?",
            "LAWN.json, line 4, soil.texture: \"sandy lome\" is not a texture known here; did you"
                + " mean sandy loam?",
            "LAWN.json, line 4, soil.fieldCapacity: 1.7 is out of range; give a number from 0.02"
                + " to 0.8, m3/m3.",
            "LAWN.json, line 5, mowing.trigger.everyDays: 7.5 is not a whole number; give one from"
                + " 1 to 365, days.",
            "LAWN.json, line 5, mowing.heigthMm: there is no such field; did you mean heightMm?",
            "LAWN.json, line 6, feeding[0].on: \"02-30\" is not a day of any year; give \"MM-DD\""
                + " or a day of the year from 1 to 366.",
            "LAWN.json, line 6, feeding[0].fastNGPerM2: -1 is out of range; give a number from 0"
                + " to 100, g/m².");
  }

  /** One wrong value for each field: what is put in, and words the sentence must have. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "elevationM": 9000                | site        | out of range
          "longitudeDeg": null              | site        | leave the field out
          "timeZone": "Europe/Pariss"       | site        | Europe/Paris
          "timeZone": 3                     | site        | text in quotation marks
          "wiltingPoint": 0.3               | soil        | must rise
          "saturation": NaN                 | soil        | not a number
          "curveNumber": 1e999              | soil        | not a number
          "organicMatterPercent": "5,0"     | soil        | not a number
          "testDepthCm": [15]               | soil        | a list
          "bulkDensityGPerCm3": 13.3        | soil        | from 0.5 to 2
          "phosphorusPpm": -1               | soil        | from 0 to 2000
          "potassiumPpm": 5001              | soil        | from 0 to 5000
          "extractant": " "                 | soil        | text
          "phosphorus": 4                   | soil        | phosphorusPpm
          "heightMm": 2                     | mowing      | from 3 to 200
          "trigger": {}                     | mowing      | oneThird
          "trigger": {"oneThird": false}    | mowing      | no trigger
          "trigger": {"oneThird": true, "everyDays": 3} | mowing | keep one
          "trigger": 7                      | mowing      | object
          "from": "4-15"                    | mowing      | MM-DD
          "to": 367                         | mowing      | from 1 to 366
          "from": true                      | mowing      | not a day
          "clippings": {"returnedShare": 2} | mowing      | from 0 to 1
          "clippings": {"returned": 1}      | mowing      | no such field
          "shareOfDemand": 1.6              | irrigation  | from 0 to 1.5
          "deckWidthMm": 100                | mower       | from 200 to 4000
          "bagLitres": "big"                | mower       | not a number
          "speedKmPerH": 200                | mower       | from 0.5 to 20
          "doubleCut": "yes"                | mower       | true or false
          "gmx": 19                         | parameters  | did you mean gmax?
          "gmax": -1                        | parameters  | usual values run from 12 to 24
          "gmax": 1e6                       | parameters  | out of range
          "gmax": "19"                      | parameters  | not a number
          "fc": 0.05                        | parameters  | must be below
          """)
  void refusesAWrongValueOfAField(String field, String section, String words) {
    String site =
        section.equals("site") ? "{\"latitudeDeg\": 1, " + field + "}" : "{\"latitudeDeg\": 1}";
    String rest = section.equals("site") ? "" : ", \"%s\": {%s}".formatted(section, field);
    List<String> faults =
        faults("{\"site\": %s, \"grass\": \"tall fescue\"%s}".formatted(site, rest));
    assertThat(faults).singleElement().asString().contains("LAWN.json, line 1", section, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "spinUpYears": -1      | from 0 to 200
          "spinUpYears": 2.5     | whole number
          "areaM2": 0            | from 1 to 1000000
          "shadeFraction": 1     | from 0 to 0.9
          "feeding": {}          | square brackets
          "feeding": [7]         | give an object
          "feeding": [{}]        | feeding[0].on: it is missing; give "MM-DD" or a day
          "feeding": [{"on": "05-01", "dayOfYear": 5}] | keep one
          "feeding": [{"dayOfYear": 0}] | from 1 to 366
          "soil": "loam"         | object in braces
          "mower": 3             | object in braces
          "irrigaton": {}        | did you mean irrigation?
          "xyzzy": 1             | valid names are
          "areaM2": 5, "areaM2": 6 | keep one
          """)
  void refusesAWrongFieldOfTheLawn(String field, String words) {
    List<String> faults =
        faults("{\"site\": {\"latitudeDeg\": 1}, \"grass\": \"tall fescue\", %s}".formatted(field));
    assertThat(faults).singleElement().asString().contains("LAWN.json, line 1, ", words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''                                    | empty
          []                                    | JSON object
          {"site"                               | not valid JSON
          {"site": {"latitudeDeg": 1}, "grass": "bermudagrass"} {} | more text follows
          {}                                    | site: it is missing
          {}                                    | grass: it is missing
          {"site": {}, "grass": "bermudagrass"} | latitudeDeg: it is missing
          {"site": {"latitudeDeg": 1}, "grass": 5} | text in quotation marks
          """)
  void refusesADocumentThatIsNoLawn(String json, String words) {
    assertThat(faults(json)).anySatisfy(fault -> assertThat(fault).contains("LAWN.json", words));
  }

  @Test
  void refusesADocumentNestedTooDeep() {
    assertThat(faults("{\"soil\": " + "[".repeat(5000) + "]".repeat(5000) + "}"))
        .singleElement()
        .asString()
        .contains("not valid JSON");
  }

  @Test
  void toleratesAByteOrderMarkAndWindowsLineEnds() {
    byte[] bytes =
        ("\uFEFF" + Examples.text("lawn.json").text().replace("\n", "\r\n"))
            .getBytes(StandardCharsets.UTF_8);
    SourceText source = SourceText.of("LAWN.json", bytes, LawnFile.LIMIT_BYTES);
    assertThat(LawnFile.read(source).lawn())
        .isEqualTo(LawnFile.read(Examples.file("lawn.json")).lawn());
  }

  @Test
  void saysWhichGrassesWereNotRunAgainstStudies() {
    assertThat(read(LEAST.replace("tall fescue", "Zoysiagrass")).notes())
        .anySatisfy(note -> assertThat(note).contains("zoysiagrass", "assumed"));
  }

  @Test
  void notesAnUnusualParameter() {
    LawnReading reading =
        read(
            LEAST
                .replace("}\n", ", \"parameters\": {\"gmax\": 30}}\n")
                .replace("}, \"g", "}, \"g"));
    assertThat(reading.lawn().parameters()).containsEntry("gmax", 30.0);
    assertThat(reading.notes())
        .anySatisfy(note -> assertThat(note).contains("gmax is set to 30", "from 12 to 24"));
  }
}
