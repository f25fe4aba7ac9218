package leafturn.records.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import leafturn.records.Examples;
import leafturn.records.InputException;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import leafturn.records.trial.TrialGrounds;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.MeasuredReading;
import leafturn.trials.observation.OutcomeReadings;
import leafturn.trials.observation.ReadingValue;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.assertj.core.api.ListAssert;
import org.junit.jupiter.api.Test;

/** Slips of a whole column, and of one name. */
class ReadingSlipsTest {
  private static TrialGround ground() throws IOException {
    var plan =
        new ObjectMapper().readTree(Files.readString(Examples.file("split-yards.trial.json")));
    return new TrialGrounds().of(TrialSheet.planned(plan, List.of()));
  }

  private static ListAssert<String> faults(String csv) throws IOException {
    TrialGround ground = ground();
    Table table = TableFile.read("r.csv", csv.getBytes(StandardCharsets.UTF_8), null);
    return assertThatThrownBy(() -> ReadingImport.read(table, ground))
        .asInstanceOf(type(InputException.class))
        .extracting(InputException::faults, InstanceOfAssertFactories.list(String.class));
  }

  @Test
  void aWrongUnitOfAColumnIsToldOnceWithItsFirstRows() throws IOException {
    StringBuilder csv = new StringBuilder("plot,date,outcome,value,unit\n");
    for (int yard = 1; yard <= 5; yard++) {
      csv.append("B").append(yard).append("-1,2026-06-02,soil_potassium,120,lb/acre\n");
    }
    faults(csv + "B1-2,2026-06-02,potash,120,mg/kg\n")
        .satisfiesExactly(
            each ->
                assertThat(each)
                    .startsWith("r.csv, line 2, column E / unit: ")
                    .endsWith("So it is in 5 rows: line 2, line 3, line 4 and 2 more."),
            each -> assertThat(each).contains("line 7", "no outcome of the plan"));
  }

  @Test
  void aBagOfLeafHoldsNoSoil() throws IOException {
    String code = SampleBags.of(ground(), Outcome.Kind.TISSUE).getKey();
    faults("sample,outcome,value,unit\n" + code + ",soil_potassium,120,mg/kg\n")
        .singleElement()
        .asString()
        .contains("line 2", code + " is the code of a bag of leaf, but soil_potassium is measured");
  }

  @Test
  void whatHasNoLogarithmIsNoValueOfALogScale() throws IOException {
    faults("plot,date,outcome,value,unit\nB1-1,2026-06-02,soil_potassium,0,mg/kg\n")
        .singleElement()
        .asString()
        .contains("line 2", "0 has no logarithm, on which the plan compares soil_potassium");
  }

  @Test
  void aRatingHasNoDetectionLimit() throws IOException {
    faults(
            "plot,date,outcome,value,rater\nB1-1,2026-06-02,quality,<2,Ada\nB1-2,2026-06-02,quality,6,Ada\n")
        .singleElement()
        .satisfies(each -> assertThat(each).contains("line 2", "<2", "it has no detection limit"));
  }

  @Test
  void aValueBelowItsLimitThatIsNotWrittenSoIsTold() {
    for (String value : List.of("0", "0.4", "<10", "nd", "10", "12")) {
      var reading =
          MeasuredReading.of("B1-1", LocalDate.of(2026, 6, 2), "soil_potassium", value, "mg/kg")
              .by("Fen Laboratory", "Mehlich-3")
              .limit(10)
              .reading();
      boolean told = value.startsWith("0");
      String sentence = value + " stands below the detection limit of 10 and is counted as <10";
      assertThat(ReadingValue.unwrittenLimit(reading)).isEqualTo(told ? sentence : null);
      Outcome potassium =
          new Outcome(
              "soil_potassium",
              Outcome.Kind.SOIL,
              "mg/kg",
              10.0,
              1000.0,
              Outcome.Scale.LOG,
              Outcome.Summary.LAST_DATE,
              1.25,
              false);
      assertThat(OutcomeReadings.of(potassium, List.of(reading), null).doubts())
          .hasSize(told ? 1 : 0)
          .allMatch(each -> each.contains("B1-1") && each.contains(sentence));
    }
  }

  @Test
  void namesWrittenInTwoWaysAndControlCharactersAreFaults() throws IOException {
    faults(
            "plot,date,outcome,value,rater\n"
                + "B1-1,2026-06-02,quality,6,Ada\n"
                + "B1-2,2026-06-02,quality,6,ada\n"
                + "B2-1,2026-06-02,quality,6,A\u0000da\n"
                + "B2-2,2026-06-02,quality,6,Ada\n")
        .containsExactly(
            "r.csv, line 3: The rater \"ada\" is \"Ada\" before, which differ only in capitals; write them alike.",
            "r.csv, line 4: The cell \"A·da\" holds the control character U+0000; remove it.");
  }
}
