package leafturn.trials.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.data.TrialTable;
import org.junit.jupiter.api.Test;

/** Sphericity beside mauchly.test and anova of R 4.2.2, powers beside MASS::boxcox. */
class SeriesAndScalePublishedTest {
  @Test
  void sphericityOfTheSleepStudyIsTheReferences() {
    ReferenceCase sleep = new ReferenceCase("sleepstudy");
    TrialTable table = sleep.table();
    String[] reactions = table.cells("Reaction");
    double[][] values = new double[reactions.length / 10][10];
    for (int i = 0; i < reactions.length; i++) {
      values[i / 10][i % 10] = Double.parseDouble(reactions[i]);
    }
    Sphericity own = Sphericity.of(values);
    assertThat(own.mauchlyW())
        .isCloseTo(sleep.number("results/sphericity/mauchly_W"), within(1e-12));
    assertThat(own.greenhouseGeisser())
        .isCloseTo(sleep.number("results/sphericity/greenhouse_geisser"), within(5e-5));
    assertThat(own.huynhFeldt())
        .isCloseTo(sleep.number("results/sphericity/huynh_feldt"), within(5e-5));
    assertThat(own.remark().sentence()).contains("0.37", "0.47", "correlation over time");
  }

  /** In one group the group's means are those of all, so nothing changes. */
  @Test
  void oneGroupIsTheSleepStudyItself() {
    TrialTable table = new ReferenceCase("sleepstudy").table();
    String[] reactions = table.cells("Reaction");
    double[][] values = new double[reactions.length / 10][10];
    for (int i = 0; i < reactions.length; i++) {
      values[i / 10][i % 10] = Double.parseDouble(reactions[i]);
    }
    Sphericity plain = Sphericity.of(values);
    Sphericity grouped =
        Objects.requireNonNull(
            Sphericity.within(values, Collections.nCopies(values.length, "all")));
    assertThat(grouped.mauchlyW()).isCloseTo(plain.mauchlyW(), within(1e-12));
    assertThat(grouped.huynhFeldt()).isCloseTo(plain.huynhFeldt(), within(1e-9));
    assertThat(Sphericity.within(values, IntStream.range(0, 18).mapToObj(i -> "u" + i).toList()))
        .isNull();
  }

  @Test
  void thePowerForWarpBreaksIsTheReferencesToItsGrid() {
    ReferenceCase warp = new ReferenceCase("warpbreaks");
    TrialTable table = warp.table();
    double[] breaks =
        Arrays.stream(table.cells("breaks")).mapToDouble(Double::parseDouble).toArray();
    String[] wool = table.cells("wool");
    String[] tension = table.cells("tension");
    List<String> groups = new ArrayList<>();
    for (int i = 0; i < breaks.length; i++) {
      groups.add(wool[i] + tension[i]);
    }
    BoxCox own = BoxCox.profile(breaks, groups);
    assertThat(own.lambda()).isCloseTo(warp.number("results/boxcox/lambda_max"), within(1e-3));
    assertThat(own.lower()).isCloseTo(warp.number("results/boxcox/ci95/0"), within(1e-3));
    assertThat(own.upper()).isCloseTo(warp.number("results/boxcox/ci95/1"), within(1e-3));
    for (double unit : new double[] {1e-12, 1000, 1e30}) {
      double[] others = Arrays.stream(breaks).map(each -> each * unit).toArray();
      BoxCox inAnotherUnit = BoxCox.profile(others, groups);
      assertThat(inAnotherUnit.lambda()).isCloseTo(own.lambda(), within(1e-6));
      assertThat(inAnotherUnit.lower()).isCloseTo(own.lower(), within(1e-6));
      assertThat(inAnotherUnit.upper()).isCloseTo(own.upper(), within(1e-6));
    }
    assertThat(own.remark("breaks", false).sentence()).contains("compare it on the log scale");
  }
}
