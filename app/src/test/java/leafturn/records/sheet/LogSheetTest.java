package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import leafturn.model.lawn.LogEntry;
import leafturn.records.Examples;
import leafturn.records.InputException;
import leafturn.records.LogFile;
import leafturn.records.LogReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LogSheetTest {
  private static final String MOWN =
      """
      {"lawn": ID, "day": "2015-05-28", "time": "07:30", "what": "mown", "heightBeforeMm": 95,
       "heightAfterMm": 76, "returnedShare": 0, "bags": 4, "weightKg": 38, "wentTo": "the heap",
       "minutes": 35, "twoPasses": false, "note": "Wet."}
      """;

  private static LogSheet read(String changes) {
    return Kind.LOG.read(Changed.document(MOWN, changes));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /lawn = "here"                | lawn           | the id of the lawn
          /lawn =                       | lawn           | missing
          /day =                        | day            | missing
          /day = "28 May"               | day            | write year, month and day
          /time = "7:30"                | time           | hours and minutes as 07:30
          /time = "24:00"               | time           | hours and minutes
          /what = "mowed"               | what           | one of mown, fed
          /what = 3                     | what           | one of mown, fed
          /what =                       | what           | one of mown, fed, watered
          /heightBeforeMm = 2           | heightBeforeMm | from 3 to 1000, mm
          /heightAfterMm = 100          | heightAfterMm  | above the height before, 95 mm
          /returnedShare =              | returnedShare  | missing
          /returnedShare = 1.1          | returnedShare  | from 0 to 1
          /bags = -1                    | bags           | from 0 to 10000
          /weightKg = "much"            | weightKg       | is not a number
          /minutes = 2000               | minutes        | from 0 to 1440
          /twoPasses = "yes"            | twoPasses      | true or false
          /note = "a\\u0000b"            | note           | U+0000, which is no text
          /wentTo = "a\\ud800"           | wentTo         | U+D800, which is no text
          /photographs = [3]            | photographs[0] | 3 is no id; give the id of a photograph
          /photographs = [ID, ID]       | photographs[1] | stands in the list already
          /photographs = ID             | photographs    | it is not a list
          /waterMm = 5                  | waterMm        | belongs to watered, but this entry is mown
          /product = "X"                | product        | belongs to fed or treated or limed
          /height = 5                   | height         | there is no such field
          """)
  void refusesAFaultyMowing(String changes, String field, String words) {
    Changed.assertRefused(Kind.LOG, MOWN, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "what": "fed"                                               | fastNGPerM2 | at least one of
          "what": "fed", "kGPerM2": 101                               | kGPerM2     | from 0 to 100
          "what": "fed", "kGPerM2": 1, "wateredIn": 1                 | wateredIn   | true or false
          "what": "watered"                                           | waterMm     | from 0 to 200
          "what": "watered", "waterMm": 201                           | waterMm     | from 0 to 200
          "what": "treated", "productKind": "herbicide", "labelSaysNone": true | product | on the label
          "what": "treated", "product": "X", "labelSaysNone": true    | productKind | one of herbicide
          "what": "treated", "product": "X", "productKind": "other"   | clippingsIntervalDays | label
          "what": "treated", "product": "X", "productKind": "other", "labelSaysNone": true, "clippingsIntervalDays": 3 | labelSaysNone | keep one
          "what": "treated", "product": "X", "productKind": "other", "neverUse": true, "mowingsBeforeUse": 3 | neverUse | beside mowingsBeforeUse
          "what": "treated", "product": "X", "productKind": "other", "mowingsBeforeUse": 21 | mowingsBeforeUse | from 0 to 20
          "what": "treated", "product": "X", "productKind": "other", "neverUse": true, "ingredientGroup": "acid" | ingredientGroup | pyridine acid
          "what": "treated", "product": "X", "productKind": "other", "clippingsIntervalDays": 1.5 | clippingsIntervalDays | whole number
          "what": "treated", "product": "X", "productKind": "other", "labelSaysNone": true, "waitBeforeMowingDays": 61 | waitBeforeMowingDays | from 0 to 60
          "what": "seeded", "gPerM2": 501                             | gPerM2      | from 0.1 to 500
          "what": "aerated", "depthMm": 301                           | depthMm     | from 0.5 to 300
          "what": "limed"                                             | gPerM2      | missing
          "what": "limed", "gPerM2": 1001                             | gPerM2      | from 0.1 to 1000
          "what": "observed"                                          | things      | what was seen
          "what": "observed", "things": ["clump"]                     | things[0]   | one of seed heads, own stalks
          "what": "observed", "things": [], "photographs": [] | things | it is empty
          "what": "observed", "things": ["wet", "wet"]                | things[1]   | already
          "what": "observed", "things": ["wet"], "notThere": ["wet"]  | notThere    | wet stands among what was seen
          "what": "observed", "leafCoverFraction": 1.1                | leafCoverFraction | from 0 to 1
          "what": "fed", "kGPerM2": 1, "waterInMm": 51                | waterInMm   | from 0 to 50
          "what": "observed", "heightMm": 1001                        | heightMm    | from 3 to 1000
          "what": "observed", "note": "-", "returnedShare": 1         | returnedShare | belongs to mown
          """)
  void refusesAFaultyEntryOfAnotherKind(String fields, String field, String words) {
    String document = "{\"lawn\": ID, \"day\": \"2015-05-28\", %s}".formatted(fields);
    Changed.assertRefused(Kind.LOG, document, "", field, words);
  }

  @Test
  void reportsAllFaultsAtOnce() {
    assertThat(Changed.faults(Kind.LOG, MOWN, "/day = 3 ; /bags = -1 ; /waterMm = 5")).hasSize(3);
  }

  @Test
  void readsAMowing() {
    LogSheet mown = read("");
    assertThat(mown.what()).isEqualTo(What.MOWN);
    assertThat(mown.done())
        .isEqualTo(new Done.Mown(95.0, 76.0, 0, 4.0, 38.0, "the heap", 35.0, false));
    assertThat(mown.forModel()).contains(new LogEntry.Mown(mown.day(), 95, 76, 0));
  }

  @Test
  void givesTheModelNoHeightThatNobodyMeasured() {
    LogSheet mown = read("/heightBeforeMm = ; /heightAfterMm =");
    assertThat(mown.forModel()).contains(new LogEntry.Mown(mown.day(), Double.NaN, Double.NaN, 0));
  }

  @ParameterizedTest
  @EnumSource(What.class)
  void tellsTheModelOfMowingFeedingWaterAndMeasuredHeightsOnly(What what) {
    AnySheet any = new AnySheet(what.ordinal());
    LogSheet entry = any.log(any.id(), new AnyLog(new AnyValue(1)).done(what));
    boolean measured = entry.done() instanceof Done.Observed seen && seen.heightMm() != null;
    boolean told = measured || List.of(What.MOWN, What.FED, What.WATERED).contains(what);
    assertThat(entry.forModel().isPresent()).isEqualTo(told);
    assertThat(entry.what()).isEqualTo(what);
  }

  @ParameterizedTest
  @ValueSource(strings = {"log.csv", "heron-bank-play.log.csv", "quarry-cottage-terrace.log.csv"})
  void takesOverALogFileWhole(String example) {
    LogReading file = LogFile.read(Examples.file(example));
    List<LogSheet> sheets =
        file.lines().stream().map(line -> LogSheet.of(Changed.ID, line)).toList();
    assertThat(sheets.stream().map(sheet -> sheet.forModel().orElseThrow()).toList())
        .isNotEmpty()
        .isEqualTo(file.entries());
    assertThat(sheets).allSatisfy(sheet -> assertThat(Kind.LOG.checked(sheet)).isEqualTo(sheet));
  }

  @Test
  void keepsTheRemarkOfALineUnlessItIsTooLong() {
    LocalDate day = LocalDate.of(2015, 5, 28);
    LogEntry water = new LogEntry.Watered(day, 12);
    assertThat(LogSheet.of(Changed.ID, new LogReading.Line(2, water, "by hand")).note())
        .isEqualTo("by hand");
    LogReading.Line talkative = new LogReading.Line(3, water, "x".repeat(4001));
    assertThatThrownBy(() -> LogSheet.of(Changed.ID, talkative))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("note: it has 4001 characters; shorten it to 4000");
  }
}
