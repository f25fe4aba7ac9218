package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import leafturn.records.LawnFile;
import leafturn.records.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stations, properties, lawns and programmes: what their readers refuse. */
class LawnSheetsTest {
  private static final String STATION =
      """
      {"name": "By the pond", "origin": "read by hand", "windHeightM": 2, "latitudeDeg": 40,
       "standIn": true}
      """;
  private static final String PROPERTY =
      """
      {"name": "Heron Bank", "address": "heron-bank", "latitudeDeg": 40.78, "station": ID,
       "timeZone": "America/New_York"}
      """;
  private static final String LAWN =
      """
      {"property": ID, "name": "Play lawn", "address": "heron-bank-play", "habit": "Mown weekly.",
       "areaM2": 900, "slopePercent": 3, "grass": "tall fescue", "soil": {"texture": "clay"},
       "mower": {"deckWidthMm": 760, "deckType": "rear bag", "lastSharpened": "2015-04-01"},
       "spinUpYears": 4, "parameters": {"gmax": 19}}
      """;
  private static final String PROGRAMME =
      """
      {"lawn": ID, "name": "As ever", "from": "2015-01-01",
       "mowing": {"heightMm": 51, "trigger": {"everyDays": 7}, "from": "03-25", "to": 320,
                  "clippings": {"returnedShare": 0.5}},
       "feeding": [{"on": "04-10", "fastNGPerM2": 4.9}], "irrigation": {"shareOfDemand": 1},
       "mownBy": "Ines", "mowingDays": ["friday"], "deckHeightsMm": [38, 51, 64]}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /name =             | name         | missing
          /origin =           | origin       | where the record comes from
          /windHeightM =      | windHeightM  | from 0.5 to 100, m
          /windHeightM = 0    | windHeightM  | from 0.5 to 100
          /latitudeDeg = 91   | latitudeDeg  | from -90 to 90
          /longitudeDeg = 181 | longitudeDeg | from -180 to 180
          /elevationM = 6000  | elevationM   | from -430 to 5500
          /standIn = "no"     | standIn      | true or false
          /wind = 2           | wind         | no such field
          """)
  void refusesAFaultyStation(String changes, String field, String words) {
    Changed.assertRefused(Kind.STATION, STATION, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /name = " "            | name        | not usable
          /address =             | address     | a short name for addresses
          /address = "Up Here"   | address     | lower-case letters
          /latitudeDeg =         | latitudeDeg | ° north
          /timeZone =            | timeZone    | an IANA name
          /timeZone = "Mars"     | timeZone    | is not a time zone
          /station = "none"      | station     | the id of a weather station
          """)
  void refusesAFaultyProperty(String changes, String field, String words) {
    Changed.assertRefused(Kind.PROPERTY, PROPERTY, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /property =                     | property            | the id of the property
          /areaM2 = 0                     | areaM2              | from 1 to 1000000
          /outline = {}                   | outline.patches     | the pieces of the outline
          /outline = 3                    | outline             | object in braces
          /slopePercent = 101             | slopePercent        | from 0 to 100, %
          /grass =                        | grass               | one of tall fescue
          /grass = "fescue"               | grass               | not a grass known here
          /soil/texture = "cley"          | soil.texture        | did you mean clay?
          /soil/fieldCapacity = 0.7       | soil.fieldCapacity  | must rise in this order
          /soil/phosphorusPpm = -1        | soil.phosphorusPpm  | from 0 to 2000
          /soil/depth = 10                | soil.depth          | no such field
          /shadeFraction = 1              | shadeFraction       | from 0 to 0.9
          /mower = "old"                  | mower               | object in braces
          /mower/deckWidthMm = 76         | mower.deckWidthMm   | from 200 to 4000
          /mower/deckType = "rear bags"   | mower.deckType      | rear discharge, rear bag
          /mower/lastSharpened = "May"    | mower.lastSharpened | is not a date
          /mower/colour = "red"           | mower.colour        | no such field
          /spinUpYears = 1.5              | spinUpYears         | not a whole number
          /parameters/gmx = 1             | parameters.gmx      | did you mean gmax?
          /parameters/fc = 0.05           | parameters          | must be below
          /habit = 3                      | habit               | a text in quotation marks
          """)
  void refusesAFaultyLawn(String changes, String field, String words) {
    Changed.assertRefused(Kind.LAWN, LAWN, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /lawn =                             | lawn              | the id of the lawn
          /from =                             | from              | a date such as
          /mowing/heightMm = 2                | mowing.heightMm   | from 3 to 200, mm
          /mowing/trigger = {}                | mowing.trigger.everyDays | "oneThird": true
          /mowing/trigger/oneThird = true     | mowing.trigger.oneThird  | keep one of them
          /mowing/from = "31-03"              | mowing.from       | not a day of any year
          /mowing/clippings/returnedShare = 2 | mowing.clippings.returnedShare | from 0 to 1
          /feeding/0/on =                     | feeding[0].on     | give "MM-DD" or a day
          /feeding/0/dayOfYear = 3            | feeding[0].on     | keep one of them
          /feeding = [3]                      | feeding[0]        | give an object
          /irrigation/shareOfDemand = 2       | irrigation.shareOfDemand | from 0 to 1.5
          /mowingDays = ["fryday"]            | mowingDays[0]     | one of monday
          /mowingDays = ["friday", "friday"]  | mowingDays[1]     | in the list already
          /deckHeightsMm = [38, 2]            | deckHeightsMm[1]  | from 3 to 200, mm
          /deckHeightsMm = 38                 | deckHeightsMm     | it is not a list
          """)
  void refusesAFaultyProgramme(String changes, String field, String words) {
    Changed.assertRefused(Kind.PROGRAMME, PROGRAMME, changes, field, words);
  }

  @Test
  void takesTheAreaFromTheOutlineUnlessSomebodyMeasuredIt() {
    String outline = "/outline = {\"patches\": [{\"edge\": [[0, 0], [20, 0], [20, 10], [0, 10]]}]}";
    LawnSheet measured = Kind.LAWN.read(Changed.document(LAWN, outline));
    assertThat(measured.surfaceM2()).isEqualTo(900);
    LawnSheet drawn = Kind.LAWN.read(Changed.document(LAWN, outline + " ; /areaM2 ="));
    assertThat(drawn.surfaceM2()).isEqualTo(200);
    Property property = Kind.PROPERTY.read(Changed.document(PROPERTY, ""));
    SourceText composed = LawnDocument.compose(property, null, drawn, null);
    assertThat(LawnFile.read(composed).lawn().ground().areaM2()).isEqualTo(200);
    assertThat(Kind.LAWN.read(Changed.document(LAWN, "/areaM2 =")).surfaceM2()).isNull();
  }

  @Test
  void readsWhatIsRight() {
    assertThat(Kind.STATION.read(Changed.document(STATION, "")).standIn()).isTrue();
    assertThat(Kind.PROPERTY.read(Changed.document(PROPERTY, "")).station()).isEqualTo(Changed.ID);
    assertThat(Kind.LAWN.read(Changed.document(LAWN, "")).parameters()).containsEntry("gmax", 19.0);
    ProgrammeSheet programme = Kind.PROGRAMME.read(Changed.document(PROGRAMME, ""));
    assertThat(programme.deckHeightsMm()).containsExactly(38.0, 51.0, 64.0);
    assertThat(programme.day()).isEqualTo("2015-01-01");
  }

  @Test
  void tellsTheSharesOfAMixture() {
    String mixture =
        """
        /mixture = [{"grass": "perennial ryegrass", "percent": 12.5}, {"grass": "fine fescue", "percent": 7.5}]\
        """;
    LawnSheet lawn = Kind.LAWN.read(Changed.document(LAWN, mixture));
    assertThat(lawn.grasses())
        .isEqualTo("tall fescue 80 %, perennial ryegrass 12.5 %, fine fescue 7.5 %");
    assertThat(Kind.LAWN.read(new SourceText("again", Kind.LAWN.write(lawn)))).isEqualTo(lawn);
    assertThat(Kind.LAWN.read(Changed.document(LAWN, "")).grasses()).isEqualTo("tall fescue");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          [{"grass": "fine fescue"}]                        | percent | missing
          [{"grass": "fine fescue", "percent": 60}]         | percent | from 1 to 50
          [{"grass": "moss", "percent": 10}]                | grass   | not a grass known here
          [{"grass": "tall fescue", "percent": 10}]         | grass   | is named already
          [{"grass": "fine fescue", "percent": 40}, {"grass": "zoysiagrass", "percent": 30}] | percent | the main grass would have 30 %
          """)
  void refusesAFaultyMixture(String mixture, String field, String words) {
    int last = mixture.contains("}, {") ? 1 : 0;
    Changed.assertRefused(
        Kind.LAWN, LAWN, "/mixture = " + mixture, "mixture[" + last + "]." + field, words);
  }
}
