package leafturn.trials.analysis.ordinal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import org.junit.jupiter.api.Test;

/** Ratings from which little or nothing can be estimated end in a result or in a sentence. */
class DegenerateRatingsClosedFormTest {
  private static final List<String> HEADER = List.of("yard", "arm", "rating");

  private static OrdinalAnalysis analysed(List<List<String>> rows, boolean yards) {
    List<Integer> lines = IntStream.range(2, rows.size() + 2).boxed().toList();
    TrialModel model =
        new TrialModel(
            "rating",
            TrialModel.Scale.ORDINAL,
            List.of("arm"),
            List.of(),
            List.of(Term.of("arm")),
            true,
            yards ? List.of(RandomTerm.mean("yard")) : List.of(),
            null,
            DegreesOfFreedom.DESIGN,
            null,
            Map.of());
    return OrdinalAnalysis.of(new TrialTable(HEADER, rows, lines), model);
  }

  private static List<String> row(int yard, String arm, int rating) {
    return List.of("yard " + yard, arm, Integer.toString(rating));
  }

  @Test
  void allInOneClass() {
    List<List<String>> rows = List.of(row(1, "a", 6), row(1, "b", 6), row(2, "a", 6));
    assertThatThrownBy(() -> analysed(rows, false))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("at least two classes");
  }

  /** Where arms tell the classes apart, the likelihood goes to 1: G² = 2 n log 2 in halves. */
  @Test
  void armsThatSeparateTheClasses() {
    List<List<String>> rows = new ArrayList<>();
    for (int yard = 1; yard <= 6; yard++) {
      rows.add(row(yard, "a", 4));
      rows.add(row(yard, "b", 7));
    }
    for (boolean yards : List.of(false, true)) {
      OrdinalAnalysis found = analysed(rows, yards);
      assertThat(found.tests().get(0).chiSquared())
          .isCloseTo(2 * rows.size() * Math.log(2), within(1e-3));
      assertThat(found.warnings())
          .anySatisfy(warning -> assertThat(warning).contains("separates the classes"));
    }
  }

  @Test
  void yardsThatSeparateTheClasses() {
    List<List<String>> rows = new ArrayList<>();
    for (int yard = 1; yard <= 8; yard++) {
      rows.add(row(yard, "a", yard));
      rows.add(row(yard, "b", yard));
    }
    soundOrSaid(rows);
  }

  @Test
  void valuesThatAreHardlyClassesAreTold() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      rows.add(row(i / 2, i % 2 == 0 ? "a" : "b", i * 5 % 8));
    }
    assertThat(analysed(rows, false).warnings())
        .anySatisfy(
            warning ->
                assertThat(warning).contains("12 rows have 8 different values", "fewer than two"));
    rows.addAll(List.copyOf(rows));
    assertThat(analysed(rows, false).warnings())
        .noneSatisfy(warning -> assertThat(warning).contains("fewer than two"));
  }

  @Test
  void oneYard() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      rows.add(row(1, i % 2 == 0 ? "a" : "b", i % 3));
    }
    soundOrSaid(rows);
  }

  @Test
  void randomScarceRatings() {
    for (long seed = 1; seed <= 150; seed++) {
      Random random = new Random(seed);
      List<List<String>> rows = new ArrayList<>();
      int count = 3 + random.nextInt(9);
      for (int i = 0; i < count; i++) {
        rows.add(row(random.nextInt(4), random.nextBoolean() ? "a" : "b", random.nextInt(3)));
      }
      soundOrSaid(rows);
    }
  }

  private static void soundOrSaid(List<List<String>> rows) {
    try {
      OrdinalAnalysis found = analysed(rows, true);
      assertThat(found.logLikelihood()).as("%s", rows).isFinite().isLessThanOrEqualTo(1e-6);
      assertThat(found.randomSd()).as("%s", rows).isFinite();
    } catch (TrialFaultException said) {
      assertThat(said.getMessage()).as("%s", rows).doesNotContain("onvergence").endsWith(".");
    }
  }
}
