package leafturn.records;

import static leafturn.records.Examples.faultsOf;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundFileTest {
  private static final String ROUND =
      """
      {"adviser": "A", "day": "2015-05-28", "weather": "w.csv", "weatherOrigin": "a field",
       "lawns": [{"slug": "a-b", "property": "P", "lawn": "L", "habit": "H",
                  "description": "l.json", "log": "l.csv"}]}
      """;

  private static List<String> faults(String json) {
    return faultsOf(() -> RoundFile.read(new SourceText("round.json", json)));
  }

  @Test
  void readsARound() {
    RoundFile.Round round = RoundFile.read(new SourceText("round.json", ROUND));
    assertThat(round.day()).hasToString("2015-05-28");
    assertThat(round.standing()).isEmpty();
    assertThat(round.lawns())
        .containsExactly(new RoundFile.Entry("a-b", "P", "L", "H", "l.json", "l.csv"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "A"          | 7               | adviser: 7 is not usable
          "2015-05-28" | "2015-05-38"    | a day that exists
          "w.csv"      | "../w.csv"      | leads elsewhere
          "l.json"     | "/l.json"       | leads elsewhere
          "a-b"        | "A B"           | lower-case letters
          "habit"      | "habbit"        | did you mean habit?
          "log"        | "lgo"           | log: it is missing
          "a field"    | ""              | weatherOrigin
          [{           | [7, {           | give an object
          "day"        | "date"          | day: it is missing
          """)
  void refusesAWrongField(String right, String wrong, String words) {
    assertThat(faults(ROUND.replace(right, wrong)))
        .anySatisfy(fault -> assertThat(fault).contains("round.json, line ", words));
  }

  @Test
  void refusesTwoLawnsOfOneNameAndARoundWithoutLawns() {
    String lawn = ROUND.substring(ROUND.indexOf("[{") + 1, ROUND.indexOf("}]") + 1);
    assertThat(faults(ROUND.replace("[{", "[" + lawn + ", {")))
        .singleElement()
        .asString()
        .contains("lawns[1].slug", "taken");
    assertThat(faults(ROUND.replace(lawn, ""))).singleElement().asString().contains("at least one");
  }
}
