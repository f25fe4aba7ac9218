package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.inference.MeansAndContrasts.Contrast;
import leafturn.trials.analysis.inference.NewUnit;
import leafturn.trials.analysis.model.Comparison.Multiplicity;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.numeric.Tails;
import leafturn.trials.analysis.paired.PairedDifference;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;

/** The interval for a new unit in balanced data, where it follows from mean squares. */
class NewUnitClosedFormTest {

  private static Contrast first(TrialAnalysis analysis) {
    return analysis.contrasts().get(0);
  }

  /** An analysis of a practice that varies within a unit, between which it varies too. */
  private static TrialAnalysis ofPractice(CharSequence csv, String unit) {
    Models models =
        Models.of("score")
            .factors("practice")
            .fixed("practice")
            .random(unit)
            .random(unit, "practice")
            .compare("practice", null, Multiplicity.NONE);
    return TrialAnalysis.of(ReferenceCase.table(csv.toString()), models.model());
  }

  /** Holds that no interval is given for a new unit, and that one sentence says why. */
  private static void assertNoRange(TrialAnalysis analysis, String... why) {
    assertThat(first(analysis).newUnit()).isNull();
    assertThat(analysis.warnings())
        .filteredOn(sentence -> sentence.startsWith("No range is given"))
        .singleElement(InstanceOfAssertFactories.STRING)
        .contains(why);
  }

  @Test
  void inBalancedPairsItIsThatOfThePairedDifferences() {
    Models models =
        Models.of("wear")
            .factors("mat")
            .fixed("mat")
            .random("boy")
            .compare("mat", null, Multiplicity.NONE);
    TrialTable pairs = Cases.table("shoes_paired");
    StringBuilder csv = new StringBuilder("boy,mat,wear\n");
    double[] differences = new double[pairs.rows().size()];
    for (int i = 0; i < differences.length; i++) {
      String one = pairs.cells("A")[i];
      String other = pairs.cells("B")[i];
      csv.append("%d,A,%s%n%d,B,%s%n".formatted(i, one, i, other));
      differences[i] = Double.parseDouble(one) - Double.parseDouble(other);
    }
    TrialAnalysis analysis = TrialAnalysis.of(ReferenceCase.table(csv.toString()), models.model());
    PairedDifference.Interval paired = PairedDifference.of(differences).newYard(0.95);
    NewUnit.Interval own = Objects.requireNonNull(first(analysis).newUnit());
    assertThat(own.unit()).containsExactly("boy");
    assertThat(own.df()).isCloseTo(9, within(1e-5));
    assertThat(own.lower()).isCloseTo(paired.lower(), within(1e-6));
    assertThat(own.upper()).isCloseTo(paired.upper(), within(1e-6));
  }

  /**
   * Six workers, three machines, three runs: the variance of a difference in a new worker is 7/9 of
   * the mean square between and -6/9 of that within.
   */
  @Test
  void withReplicatesTheVarianceBetweenUnitsIsParted() {
    Models models = Cases.machines().compare("Machine", null, Multiplicity.NONE);
    TrialAnalysis analysis = TrialAnalysis.of(Cases.table("machines"), models.model());
    double within = analysis.fit().residualVariance();
    double between = 3 * analysis.fit().variances().get(1).variance() + within;
    double variance = 7.0 / 9 * between - 6.0 / 9 * within;
    double df =
        variance
            * variance
            / (Math.pow(7.0 / 9 * between, 2) / 10 + Math.pow(6.0 / 9 * within, 2) / 36);
    double reach = Math.sqrt(variance) * Tails.tQuantileTwoSided(0.05, df);
    NewUnit.Interval own = Objects.requireNonNull(first(analysis).newUnit());
    assertThat(own.df()).isCloseTo(df, within(1e-4));
    double difference = first(analysis).estimate().value();
    assertThat(own.lower()).isCloseTo(difference - reach, within(1e-4));
    assertThat(own.upper()).isCloseTo(difference + reach, within(1e-4));
  }

  @Test
  void slopesOfTheTreatmentTellTheSame() {
    RandomTerm apart = new RandomTerm(List.of("Worker"), List.of("Machine"), false, true);
    Models models =
        Models.of("score")
            .factors("Machine")
            .fixed("Machine")
            .random(apart)
            .compare("Machine", null, Multiplicity.NONE);
    TrialAnalysis analysis = TrialAnalysis.of(Cases.table("machines"), models.model());
    NewUnit.Interval own = Objects.requireNonNull(first(analysis).newUnit());
    double difference = first(analysis).estimate().value();
    double reach = own.upper() - difference;
    double spread = reach / Tails.tQuantileTwoSided(0.05, own.df());
    double se = first(analysis).estimate().se();
    double[] published = {16.6405, 74.3956, 28.2447};
    assertThat(spread * spread - se * se)
        .isCloseTo(published[0] + published[1] - 2 * published[2], within(1e-3));
  }

  @Test
  void withoutUnitsThereIsNone() {
    Models models =
        Models.of("weight")
            .factors("group")
            .fixed("group")
            .compare("group", null, Multiplicity.NONE);
    TrialAnalysis analysis = TrialAnalysis.of(Cases.table("plantgrowth"), models.model());
    assertThat(first(analysis).newUnit()).isNull();
  }

  /** Means of a block and treatment lie on parallel lines, so that their variance is zero. */
  @Test
  void whereTheVarianceBetweenUnitsIsHeldAtZeroThereIsNone() {
    StringBuilder csv = new StringBuilder("block,practice,feed,score\n");
    double[] feeds = {-0.5, 0.2, 0.3};
    for (int block = 0; block < 4; block++) {
      for (int practice = 0; practice < 2; practice++) {
        for (int feed = 0; feed < 3; feed++) {
          double apart = feeds[(feed + block + practice) % 3];
          csv.append(
              "%d,%d,f%d,%s%n".formatted(block, practice, feed, 5 + block + practice + apart));
        }
      }
    }
    TrialAnalysis analysis = ofPractice(csv, "block");
    assertThat(first(analysis).estimate().se()).isPositive();
    assertNoRange(analysis, "new block", "estimated at zero");
  }

  /**
   * Two yards, two practices, four plots: a variance between yards that hardly exceeds the plots'
   * own has one degree of freedom less what the plots take from it.
   */
  @Test
  void whereLessThanOneDegreeOfFreedomTellsTheSentenceSaysSo() {
    StringBuilder csv = new StringBuilder("yard,practice,score\n");
    double[] plots = {-1.5, -0.5, 0.5, 1.5};
    for (int yard = 0; yard < 2; yard++) {
      for (int practice = 0; practice < 2; practice++) {
        for (double plot : plots) {
          double together = yard == practice ? 0.5 : -0.5;
          csv.append("%d,%d,%s%n".formatted(yard, practice, 5 + practice + together + plot));
        }
      }
    }
    TrialAnalysis analysis = ofPractice(csv, "yard");
    assertThat(analysis.fit().variances().get(1).variance()).isPositive();
    assertNoRange(analysis, "new yard", "less than one degree of freedom");
  }

  /** Blocks within yards make no new year: only what the treatment varies with is new. */
  @Test
  void theUnitIsWhatTheTreatmentVariesWith() {
    StringBuilder csv = new StringBuilder("yard,year,practice,score\n");
    double[] yards = {-2, 1, 0.5, 0.5};
    for (int yard = 0; yard < yards.length; yard++) {
      for (int year = 0; year < 3; year++) {
        double together = (yard + 2 * year) % 3 - 1;
        csv.append("%d,%d,a,%s%n".formatted(yard, year, 5 + yards[yard] + 0.2 * together));
        csv.append("%d,%d,b,%s%n".formatted(yard, year, 6 - yards[yard] - 0.1 * together));
      }
    }
    Models models =
        Models.of("score")
            .factors("practice")
            .fixed("practice")
            .random("yard")
            .random("yard", "year")
            .random("yard", "practice")
            .compare("practice", null, Multiplicity.NONE);
    TrialAnalysis analysis = TrialAnalysis.of(ReferenceCase.table(csv.toString()), models.model());
    NewUnit.Interval own = Objects.requireNonNull(first(analysis).newUnit());
    assertThat(own.unit()).containsExactly("yard");
  }

  /** A plot has one practice only, so that no plot and rater tells how practices differ in it. */
  @Test
  void plotsCrossedWithRatersAreNoUnits() {
    StringBuilder csv = new StringBuilder("plot,rater,practice,score\n");
    double[] plots = {-3, 1, 4, -2, 3, -1};
    for (int plot = 0; plot < plots.length; plot++) {
      for (int rater = 0; rater < 3; rater++) {
        double together = (plot + 2 * rater) % 3 - 1;
        double value = 5 + plots[plot] + 0.3 * rater + 0.1 * together;
        csv.append("p%d,r%d,%d,%s%n".formatted(plot, rater, plot % 2, value));
      }
    }
    Models models =
        Models.of("score")
            .factors("practice")
            .fixed("practice")
            .random("plot")
            .random("rater")
            .compare("practice", null, Multiplicity.NONE);
    TrialAnalysis analysis = TrialAnalysis.of(ReferenceCase.table(csv.toString()), models.model());
    assertThat(first(analysis).newUnit()).isNull();
  }
}
