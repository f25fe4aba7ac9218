package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.model.Comparison.Multiplicity;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/** Which analysis values below detection get, by their share and by the model. */
class BelowDetectionClosedFormTest {
  private static final String ONE_WAY =
      "arm,y\na,<1\na,<1\na,1.4\na,2.2\na,1.9\nb,<1\nb,3.1\nb,2.7\nb,4.2\nb,3.3\n";

  private static Models oneWay() {
    return Models.of("y").factors("arm").fixed("arm").compare("arm", null, Multiplicity.NONE);
  }

  private static boolean isCensored(String csv, Models models) {
    return CensoredAnalysis.isFor(ReferenceCase.table(csv), models.model());
  }

  @Test
  void independentPlotsBeyondFifteenPercentAreCensored() {
    assertThat(isCensored(ONE_WAY, oneWay())).isTrue();
    assertThat(isCensored(ONE_WAY.replace("<1", "0.9"), oneWay())).isFalse();
    assertThat(isCensored(ONE_WAY, oneWay().random("arm"))).isFalse();
  }

  /** Means of groups are those of the likelihood at the detection limit, none below all data. */
  @Test
  void theMeansOfTheLikelihoodLieBelowThoseOfTheLimits() {
    CensoredAnalysis own = CensoredAnalysis.of(ReferenceCase.table(ONE_WAY), oneWay().model());
    double atLimit = (1 + 1 + 1.4 + 2.2 + 1.9) / 5;
    assertThat(own.means().get(0).estimate().value()).isLessThan(atLimit);
    assertThat(own.contrasts().get(0).estimate().df()).isEqualTo(8);
    assertThat(own.tests().get(0).p()).isBetween(0.0, 0.2);
    assertThat(own.above()).extracting(CensoredAnalysis.Above::above).containsExactly(3, 4);
    assertThat(own.warnings()).anySatisfy(w -> assertThat(w).contains("3 of 10 values of y"));
  }

  /** With one group the score of the likelihood is zero at its estimate. */
  @Test
  void theEstimateSolvesTheLikelihood() {
    String csv = "y\n<1\n<1\n1.4\n2.2\n1.9\n2.6\n";
    CensoredAnalysis own = CensoredAnalysis.of(ReferenceCase.table(csv), Models.of("y").model());
    double mean = own.coefficients().get(0).estimate();
    double scale = Objects.requireNonNull(own.fit()).regression().scale();
    double score = 0;
    for (double value : new double[] {1.4, 2.2, 1.9, 2.6}) {
      score += (value - mean) / scale;
    }
    double z = (1 - mean) / scale;
    double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    score -= 2 * density / (0.5 * Erf.erfc(-z / Math.sqrt(2)));
    assertThat(score).isCloseTo(0, within(1e-7));
  }

  @Test
  void beyondSeventyPercentOnlyNumbersAboveTheLimitAreGiven() {
    String csv = "arm,y\na,<1\na,<1\na,<1\na,2.2\nb,<1\nb,<1\nb,<1\nb,4.2\n";
    CensoredAnalysis own = CensoredAnalysis.of(ReferenceCase.table(csv), oneWay().model());
    assertThat(own.fit()).isNull();
    assertThat(own.tests()).isEmpty();
    assertThat(own.means()).isEmpty();
    assertThat(own.above()).extracting(CensoredAnalysis.Above::above).containsExactly(1, 1);
    assertThat(own.warnings()).anySatisfy(w -> assertThat(w).contains("above 70 %"));
  }

  @Test
  void aGroupWhollyBelowDetectionHasNoMean() {
    assertThatThrownBy(
            () -> censored("arm,y\na,<1\na,<1\na,<1\nb,2.1\nb,3.4\nb,2.6\nb,4.2\n", oneWay()))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("in arm a lie below detection, so its mean has no lower bound")
        .hasMessageEndingWith("or leave that group out.");
  }

  @Test
  void allGroupsWhollyBelowDetectionAreNamed() {
    String csv = "arm,y\na,<1\na,<1\nb,<1\nb,<1\nc,2.1\nc,3.4\nc,2.6\nc,4.2\nc,3.9\n";
    assertThatThrownBy(() -> censored(csv, oneWay()))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("in arm a and arm b lie below detection, so their means have no")
        .hasMessageEndingWith("or leave those groups out.");
  }

  @Test
  void aGroupOfTwoFactorsIsNamedByBoth() {
    String csv =
        "arm,feed,y\na,low,<1\na,low,<1\na,low,<1\na,high,2.1\na,high,3.4\na,high,2.5\n"
            + "b,low,2.6\nb,low,4.2\nb,low,3.1\nb,high,2.9\nb,high,3.7\nb,high,4.4\n";
    Models crossed = Models.of("y").factors("arm", "feed").fixed("arm", "feed", "arm*feed");
    assertThatThrownBy(() -> censored(csv, crossed))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("in arm a with feed low lie below detection, so its mean has");
  }

  private static CensoredAnalysis censored(String csv, Models models) {
    return CensoredAnalysis.of(ReferenceCase.table(csv), models.model());
  }
}
