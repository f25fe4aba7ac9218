package leafturn.trials.observation;

import static leafturn.trials.observation.ObservedYards.MAY;
import static leafturn.trials.observation.ObservedYards.QUALITY;
import static leafturn.trials.observation.ObservedYards.SOIL_K;
import static leafturn.trials.observation.ObservedYards.measured;
import static leafturn.trials.observation.ObservedYards.rating;
import static leafturn.trials.observation.ObservedYards.sample;
import static leafturn.trials.observation.ObservedYards.sentences;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.Models;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.Remark.Weight;
import org.junit.jupiter.api.Test;

/** The mistakes with readings and their analysis, a test for each, named after the mistake. */
class ReadingMistakesTest {
  @Test
  void twoRowsForOnePlotAndDateOrDuplicatesCountedTwice() {
    List<Reading> twice = List.of(rating("B1-1", MAY, "6"), rating("B1-1", MAY, "7"));
    assertThat(sentences(ReadingKeys.remarks(twice), Weight.REFUSED).get(0))
        .contains("quality of plot B1-1 on 2026-05-04 stands twice (6 and 7)");
    List<Reading> duplicates =
        List.of(
            measured("B1-1", MAY, "120", "mg/kg", "Mehlich-3", null, 1),
            measured("B1-1", MAY, "126", "mg/kg", "Mehlich-3", null, 2),
            measured("B1-2", MAY, "100", "mg/kg", "Mehlich-3", null, 1));
    assertThat(ReadingKeys.remarks(duplicates)).isEmpty();
    OutcomeReadings read = OutcomeReadings.of(SOIL_K, duplicates, null);
    LaboratoryDuplicates averaged = LaboratoryDuplicates.of(read.readings());
    assertThatList(averaged.samples().stream().map(CleanReading::value).toList())
        .containsExactly(123.0, 100.0);
    assertThat(averaged.variance()).isCloseTo(18, within(1e-12));
    assertThat(averaged.degreesOfFreedom()).isEqualTo(1);
    assertThat(sentences(averaged.remarks(averaged.blind(Map.of()), "mg/kg"), Weight.NOTE))
        .satisfiesExactly(each -> assertThat(each).contains("4.24 mg/kg", "1 degree of freedom)"));
  }

  @Test
  void blindDuplicateCountsWithItsBagAndTellsOnTheLaboratory() {
    List<Reading> readings =
        List.of(
            sample("AAAAAAA", "100", 1),
            sample("AAAAAAA", "101", 2),
            sample("bbbbbbb ", "140", null),
            sample("CCCCCCC", "90", null));
    LaboratoryDuplicates known =
        LaboratoryDuplicates.of(OutcomeReadings.of(SOIL_K, readings, null).readings());
    LaboratoryDuplicates blind = known.blind(Map.of("BBBBBBB", "AAAAAAA"));
    assertThatList(blind.samples().stream().map(CleanReading::value).toList())
        .containsExactly((100.5 + 140) / 2, 90.0);
    assertThat(blind.variance()).isCloseTo(39.5 * 39.5 / 2, within(1e-9));
    assertThat(known.variance()).isCloseTo(0.5, within(1e-12));
    assertThat(sentences(known.remarks(blind, "mg/kg"), Weight.WARNING))
        .satisfiesExactly(each -> assertThat(each).contains("Blind duplicates differ more"));
    List<CleanReading> alone = known.blind(Map.of()).samples();
    assertThat(alone).hasSize(3);
  }

  @Test
  void laboratoryOrMethodChangedMidSeason() {
    List<Reading> two =
        List.of(
            measured("B1-1", "120", "mg/kg", "Mehlich-3"),
            measured("B1-2", "100", "mg/kg", "ammonium acetate"));
    assertThat(sentences(MethodChange.remarks(two), Weight.REFUSED).get(0))
        .contains("Mehlich-3", "ammonium acetate", "not one quantity", "each method by itself");
    List<Reading> batches =
        List.of(
            measured("B1-1", MAY, "120", "mg/kg", "Mehlich-3", "run 1", null),
            measured("B1-2", MAY, "100", "mg/kg", "Mehlich-3", "run 2", null),
            measured("B2-1", MAY.plusDays(7), "100", "mg/kg", "Mehlich-3", "run 2", null));
    assertThat(sentences(MethodChange.remarks(batches), Weight.WARNING).get(0))
        .contains("2 batches", "blocks");
    List<Reading> oneDay = batches.subList(0, 2);
    assertThat(sentences(MethodChange.remarks(oneDay), Weight.WARNING).get(0)).contains("blocks");
    assertThat(sentences(MethodChange.remarks(oneDay), Weight.NOTE)).isEmpty();
    List<Reading> spelled =
        List.of(
            measured("B1-1", "120", "mg/kg", "Mehlich 3"),
            measured("B1-2", "100", "mg/kg", "mehlich-3"));
    assertThat(MethodChange.remarks(spelled)).isEmpty();
  }

  @Test
  void unitsMixed() {
    List<Reading> mixed =
        List.of(
            measured("B1-1", "120", "ppm", "Mehlich-3"),
            measured("B1-2", "120", "mg/kg K2O", "Mehlich-3"),
            measured("B2-1", "120", null, "Mehlich-3"),
            measured("B2-2", "120", "lb/acre", "Mehlich-3"),
            measured("B3-1", "9000", "mg/kg", "Mehlich-3"));
    OutcomeReadings read = OutcomeReadings.of(SOIL_K, mixed, null);
    assertThat(read.readings().get(0).value()).isEqualTo(120);
    assertThat(read.readings().get(1).value()).isCloseTo(120 / 1.2046, within(0.005));
    assertThatList(read.faults())
        .satisfiesExactly(
            each -> assertThat(each).contains("Plot B2-1", "unit of soil K is missing"),
            each -> assertThat(each).contains("Plot B2-2", "depth of the cores"));
    assertThatList(sentences(UnitChange.remarks(SOIL_K, read.readings()), Weight.WARNING))
        .satisfiesExactly(
            each ->
                assertThat(each)
                    .contains("2 in ppm and 1 in mg/kg K2O", "Mehlich-3", "converted to mg/kg"));
    List<CleanReading> spelled = List.of(read.readings().get(0), read.readings().get(2));
    assertThat(UnitChange.remarks(SOIL_K, spelled)).isEmpty();
    assertThatList(read.doubts())
        .satisfiesExactly(
            each ->
                assertThat(each).contains("Plot B3-1", "9000", "10 to 1000 mg/kg", "another unit"));
  }

  @Test
  void belowDetectionAsZeroOrAsTheLimitOrAsHalfOfItInSilence() {
    assertThat(ReadingValue.of("<2", null)).isEqualTo(new ReadingValue(2, true));
    assertThat(ReadingValue.of("nd", 2.0)).isEqualTo(new ReadingValue(2, true));
    assertThat(ReadingValue.of("0", 2.0)).isEqualTo(new ReadingValue(2, true));
    assertThat(ReadingValue.of("2", 2.0)).isEqualTo(new ReadingValue(2, false));
    assertThatThrownBy(() -> ReadingValue.of("nd", null)).hasMessageContaining("detection limit");
    String few = "arm,y\na,<2\na,3\na,4\na,5\na,3.5\nb,4\nb,5\nb,6\nb,4.5\nb,5.5\n";
    Models model = Models.of("y").factors("arm").fixed("arm");
    assertThat(TrialAnalysis.of(ReferenceCase.table(few), model.model()).warnings())
        .anySatisfy(each -> assertThat(each).contains("stand at half of it"))
        .anySatisfy(each -> assertThat(each).contains("at the limit", "zero"));
    String many = few.replace("a,3\n", "a,<2\n");
    assertThatThrownBy(() -> TrialAnalysis.of(ReferenceCase.table(many), model.model()))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("above 15 %");
  }

  @Test
  void skewedNutrientsOnTheirRawScale() {
    double[] skewed = new double[40];
    List<String> groups = new ArrayList<>();
    for (int i = 0; i < skewed.length; i++) {
      groups.add(i % 2 == 0 ? "returned" : "collected");
      skewed[i] = Math.exp(4 + 0.85 * Math.sin(2.4 * i) * 1.3);
    }
    BoxCox profile = BoxCox.profile(skewed, groups);
    assertThat(profile.remark("soil P", false).sentence()).contains("log scale", "ratio");
    assertThat(profile.remark("soil P", true).weight()).isEqualTo(Weight.NOTE);
    assertThat(new BoxCox(5, 1.98, 5).remark("soil P", false).sentence())
        .contains("the closer they lie")
        .doesNotContain("compare it on the log scale");
    assertThat(new BoxCox(-2.36, -3, -1.5).remark("soil P", false).sentence())
        .contains("Box-Cox power \u22122.36, 95 % limits \u22123.00 to \u22121.50;");
    assertThatThrownBy(() -> BoxCox.profile(new double[] {0, 1}, List.of("a", "a")))
        .hasMessageContaining("no logarithm");
  }

  @Test
  void outlierRemovedBecauseItWasInconvenient() {
    String csv = "arm,y\na,1\na,1.2\na,0.9\na,1.1\na,9\nb,2\nb,2.1\nb,1.9\nb,2.2\nb,1.8\n";
    TrialAnalysis analysis =
        TrialAnalysis.of(
            ReferenceCase.table(csv), Models.of("y").factors("arm").fixed("arm").model());
    assertThat(analysis.warnings())
        .anySatisfy(each -> assertThat(each).contains("lies apart", "stays in"));
    assertThat(analysis.fit().frame().rows()).isEqualTo(10);
  }

  @Test
  void ratingTreatedAsARatio() {
    Reading perCent =
        new Reading(
            "B1-1", MAY, "quality", "80", "%", null, null, null, null, "Ada", null, null, null);
    assertThat(OutcomeReadings.of(QUALITY, List.of(perCent), null).faults().get(0))
        .contains("rating", "no per cent");
    assertThatThrownBy(
            () ->
                new Outcome(
                    "quality",
                    Outcome.Kind.RATING,
                    "1-9",
                    1.0,
                    9.0,
                    Outcome.Scale.LOG,
                    Outcome.Summary.SEASON_MEAN,
                    1.2,
                    true))
        .hasMessageContaining("a rating has no logarithm");
    assertThat(
            OutcomeReadings.of(QUALITY, List.of(rating("B1-1", MAY, "12")), null).doubts().get(0))
        .contains("outside what the plan allows", "1 to 9");
  }

  @Test
  void valuesThatAreNoNumbersOrCannotBe() {
    List<Reading> bad =
        List.of(
            measured("B1-1", "about 120", "mg/kg", "Mehlich-3"),
            measured("B1-2", "1e300", "mg/kg", "Mehlich-3"));
    assertThatList(OutcomeReadings.of(SOIL_K, bad, null).faults())
        .satisfiesExactly(
            each -> assertThat(each).contains("Plot B1-1", "'about 120' is no number"),
            each -> assertThat(each).contains("Plot B1-2", "1e300", "beyond what can be"));
  }

  private static final Outcome SOIL_P =
      new Outcome(
          "soil_phosphorus",
          Outcome.Kind.SOIL,
          "mg/kg P",
          1.0,
          500.0,
          Outcome.Scale.LOG,
          Outcome.Summary.LAST_DATE,
          1.2,
          true);

  private static Reading phosphorus(ObservedPlot plot, int day, double value, String unit) {
    String written = String.format(java.util.Locale.ROOT, "%.4f", value);
    return MeasuredReading.of(plot.code(), MAY.plusDays(day), SOIL_P.name(), written, unit)
        .reading();
  }

  /** Five yards at two dates; the values scatter by some per cent between the dates. */
  private static List<Reading> twoDates(double lastTimes, String unit) {
    List<Reading> readings = new ArrayList<>();
    double value = 40;
    for (ObservedPlot plot : ObservedYards.yards(5)) {
      value += 7;
      readings.add(phosphorus(plot, 0, value, "mg/kg P"));
      readings.add(phosphorus(plot, 90, value * (1 + value % 5 / 50) * lastTimes, unit));
    }
    return readings;
  }

  private static List<Remark> form(List<Reading> readings) {
    return NutrientForm.remarks(
        SOIL_P, ObservedYards.yards(5), OutcomeReadings.of(SOIL_P, readings, null).readings());
  }

  @Test
  void aDateInTheOtherFormOfANutrient() {
    assertThatList(sentences(form(twoDates(2.2914, "mg/kg P")), Weight.WARNING))
        .satisfiesExactly(
            each -> assertThat(each).contains("date", "P₂O₅", "a factor of 2.29", "times"));
    assertThat(form(twoDates(1, "mg/kg P"))).isEmpty();
    assertThat(form(twoDates(1.6, "mg/kg P"))).isEmpty();
    assertThat(form(twoDates(2.2914, "mg/kg P2O5"))).isEmpty();
    assertThatList(sentences(form(twoDates(1, "mg/kg")), Weight.WARNING))
        .satisfiesExactly(
            each -> assertThat(each).contains("10 of 20 values say mg/kg", "of P or P₂O₅"));
  }

  @Test
  void aDateInAnotherUnitIsOneSentence() {
    List<Reading> grams = twoDates(1000, "mg/kg P");
    assertThatList(OutcomeReadings.of(SOIL_P, grams, null).doubts())
        .satisfiesExactly(
            each ->
                assertThat(each)
                    .contains("2026-08-02: 10 of 10 values", "Divided by 1000 they would lie"));
    Reading outside = phosphorus(ObservedYards.yards(1).get(0), 0, 186_000, "%");
    assertThatList(OutcomeReadings.of(SOIL_P, List.of(outside), null).doubts())
        .satisfiesExactly(each -> assertThat(each).contains("1860000000 lies outside"));
  }

  @Test
  void anAmountBelowNothing() {
    Reading below = phosphorus(ObservedYards.yards(1).get(0), 0, -4, "mg/kg P");
    assertThatList(OutcomeReadings.of(SOIL_P, List.of(below), null).faults())
        .satisfiesExactly(each -> assertThat(each).contains("-4", "lies below 0"));
  }
}
