package leafturn.trials.design.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import leafturn.trials.design.Design;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.Plans;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.ground.Place;
import org.junit.jupiter.api.Test;

/** Plots of which next to nothing is measured are told, and how many cores would fit. */
class SmallPlotsTest {
  private static TrialLayout laid(double widthM, double depthM, int blocks) {
    TrialLawn lawn = Plans.lawn("lawn", Plans.rectangle(0, 0, widthM, depthM), null);
    return TrialLayout.of(Plans.plan(Design.PAIRED_STRIPS, 2, blocks, List.of(lawn), 1));
  }

  private static List<String> notes(TrialLayout layout) {
    return layout.lawns().get(0).notes();
  }

  @Test
  void manyShortPlotsAreTold() {
    TrialLayout many = laid(40, 22, 80);
    assertThat(many.plots())
        .allSatisfy(plot -> assertThat(plot.place().measured().getArea()).isLessThan(1));
    assertThat(notes(many))
        .anySatisfy(
            note ->
                assertThat(note)
                    .startsWith("Of 160 plots less than 1 m² is measured (least of B")
                    .contains("common practice, no source"));
    assertThat(notes(laid(40, 22, 6))).noneSatisfy(note -> assertThat(note).contains("measured"));
  }

  /** A plot of 20 m2 of which so much is measured. */
  private static LaidPlot plot(double measuredM2) {
    Place place =
        new Place(
            Plans.rectangle(0, 0, 4, 5),
            Plans.rectangle(0, 0, 1, measuredM2),
            Plans.rectangle(0, 0, 4, 5).getFactory().createPolygon());
    return new LaidPlot("B1-1", new Unit(0, 1, 1, 1, "returned", null), place, "row 1");
  }

  @Test
  void noAreaIsToldToBeLessThanWhatItReads() {
    assertThat(MeasuredWords.of(List.of(plot(0.94))))
        .singleElement()
        .asString()
        .startsWith("Of plot B1-1 less than 1 m² is measured (that is: 0.9 m² of 20.0 m²)");
    assertThat(MeasuredWords.of(List.of(plot(0.96))))
        .singleElement()
        .asString()
        .startsWith("Of plot B1-1 less than a tenth is measured (that is: 1.0 m² of 20.0 m²)");
    assertThat(MeasuredWords.of(List.of(plot(1.96)))).isEmpty();
  }

  @Test
  void aNarrowLawnThatLeavesSliversIsTold() {
    assertThat(notes(laid(70, 2.4, 3)))
        .anySatisfy(note -> assertThat(note).contains("is measured").contains(" of "));
  }

  @Test
  void theRefusalOfCoresNamesHowManyFit() {
    TrialLawn small = Plans.lawn("small", Plans.rectangle(0, 0, 7, 5), 0.0);
    TrialPlan plan = Plans.plan(Design.SPLIT_YARD, 2, 1, List.of(small), 1);
    NoRoomException refused =
        catchThrowableOfType(
            NoRoomException.class, () -> TrialLayout.of(Plans.withCores(plan, 15, 6)));
    assertThat(refused).hasMessageMatching(".* \\d+ cores? a plot would fit on these dates\\.");
    String words = String.valueOf(refused.getMessage());
    int fit = Integer.parseInt(words.replaceFirst(".* (\\d+) cores? a plot would fit.*", "$1"));
    assertThat(TrialLayout.of(Plans.withCores(plan, fit, 6)).cores()).hasSize(2 * 6 * fit);
    assertThat(fit).isLessThan(15);
  }
}
