package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import leafturn.advice.call.CallRule;
import leafturn.advice.call.CallRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Intakes, beds, heaps, photographs and rules: what their readers refuse. */
class PlaceSheetsTest {
  private static final String INTAKE =
      """
      {"property": ID, "day": "2015-03-01", "children": true, "dogs": false,
       "watering": "moved sprinkler", "productsUsed": [{"product": "Green-up", "productKind": "other"}],
       "aims": ["play", "least work"], "accessWidthMm": 900,
       "mowing": {"mownBy": "Ines", "mowingDays": ["saturday"], "deckType": "mulching",
                  "deckHeightsMm": [38, 51], "lastSharpened": "2014-10-02"}}
      """;
  private static final String BED =
      """
      {"property": ID, "name": "Rose border", "areaM2": 14, "mulchDepthMm": 50, "growing": "Roses",
       "mostNKgPerHa": 170}
      """;
  private static final String HEAP =
      """
      {"property": ID, "name": "Bays", "heapKind": "hot", "volumeLitres": 900,
       "started": "2015-04-01"}
      """;
  private static final String PHOTOGRAPH =
      """
      {"lawn": ID, "day": "2015-05-28", "caption": "From the gate", "mediaType": "image/jpeg",
       "sizeBytes": 240000,
       "sha256": "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"}
      """;
  private static final String RULE =
      """
      {"rule": "one-third", "threshold": 0.3, "reason": "Their grass suffers sooner."}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /property =                           | property              | the id of the property
          /day =                                | day                   | missing
          /children = "two"                     | children              | true or false
          /watering = "hose"                    | watering              | none, by hand
          /productsUsed/0/product =             | productsUsed[0].product | its name
          /productsUsed/0/productKind = "x"     | productsUsed[0].productKind | herbicide
          /productsUsed/0/lastUsed = "2014"     | productsUsed[0].lastUsed | is not a date
          /productsUsed/0/amount = 3            | productsUsed[0].amount | no such field
          /aims = ["tidiness"]                  | aims[0]               | tidy
          /accessWidthMm = 90                   | accessWidthMm         | from 200 to 20000, mm
          /mowing/deckType = "mulch"            | mowing.deckType       | one of mulching, side discharge
          /mowing/deckHeightsMm = [1]           | mowing.deckHeightsMm[0] | from 3 to 200
          /mowing/lastSharpened = 3             | mowing.lastSharpened  | not usable
          /mowing/day = "friday"                | mowing.day            | no such field
          """)
  void refusesAFaultyIntake(String changes, String field, String words) {
    Changed.assertRefused(Kind.INTAKE, INTAKE, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /property =          | property     | the id of the property
          /name =              | name         | what its people call it
          /outline = {}        | outline.patches | the pieces of the outline
          /areaM2 = 0          | areaM2       | from 0.1 to 1000000, m²
          /mulchDepthMm = 301  | mulchDepthMm | from 0 to 300, mm
          /mostNKgPerHa = 1001 | mostNKgPerHa | from 0 to 1000, kg/ha
          /growing = ""        | growing      | not usable
          """)
  void refusesAFaultyBed(String changes, String field, String words) {
    Changed.assertRefused(Kind.BED, BED, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /property =             | property     | the id of the property
          /heapKind =             | heapKind     | one of hot, cold, leaf mould
          /heapKind = "leafmould" | heapKind     | one of hot, cold
          /volumeLitres = 9       | volumeLitres | from 10 to 1000000, litres
          /started = "spring"     | started      | is not a date
          """)
  void refusesAFaultyHeap(String changes, String field, String words) {
    Changed.assertRefused(Kind.HEAP, HEAP, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /lawn =                  | lawn      | or property with
          /property = ID           | property  | keep one of them
          /mediaType = "image/gif" | mediaType | not usable
          /mediaType =             | mediaType | one of image/jpeg, image/png, image/webp
          /sizeBytes =             | sizeBytes | the number of its bytes
          /sizeBytes = 20000001    | sizeBytes | from 1 to 20000000, bytes
          /sha256 =                | sha256    | the SHA-256
          /sha256 = "E3B0"         | sha256    | 64 hexadecimal digits
          """)
  void refusesAFaultyPhotograph(String changes, String field, String words) {
    Changed.assertRefused(Kind.PHOTOGRAPH, PHOTOGRAPH, changes, field, words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /rule = "one-thrid"                     | rule      | did you mean one-third?
          /rule = "one-thrid" ; /threshold =      | rule      | no rule whose threshold can be set
          /rule =                                 | rule      | the name of a rule
          /threshold =                            | threshold | a number from
          /threshold = 40                         | threshold | out of range
          /reason =                               | reason    | why it was set
          """)
  void refusesAFaultyRule(String changes, String field, String words) {
    Changed.assertRefused(Kind.RULE, RULE, changes, field, words);
  }

  @Test
  void readsWhatIsRight() {
    IntakeSheet intake = Kind.INTAKE.read(Changed.document(INTAKE, ""));
    assertThat(intake.aims()).containsExactly(Aim.PLAY, Aim.LEAST_WORK);
    assertThat(intake.mowing().deckHeightsMm()).containsExactly(38.0, 51.0);
    BedSheet bed = Kind.BED.read(Changed.document(BED, ""));
    assertThat(bed.mulchDepthMm()).isEqualTo(50);
    assertThat(bed.surfaceM2()).isEqualTo(14);
    assertThat(Kind.HEAP.read(Changed.document(HEAP, "")).heapKind())
        .isEqualTo(HeapSheet.HeapKind.HOT);
    assertThat(Kind.PHOTOGRAPH.read(Changed.document(PHOTOGRAPH, "")).lawn()).isEqualTo(Changed.ID);
  }

  @Test
  void setsTheThresholdOfItsRule() {
    RuleSheet rule = Kind.RULE.read(Changed.document(RULE, ""));
    assertThat(CallRules.standard().with(rule.thresholds()).threshold(CallRule.ONE_THIRD))
        .isEqualTo(0.3);
  }
}
