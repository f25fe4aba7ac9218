package leafturn.records.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.quantity.Units;
import leafturn.records.SourceText;
import leafturn.reports.trial.LayoutPaper;
import leafturn.reports.trial.LayoutReport;
import leafturn.trials.design.layout.TrialLayout;
import org.junit.jupiter.api.Test;

/** A layout whose findings could give no verdict is told before it is pegged out. */
class LayoutDoubtsTest {
  private static final String PLAN =
      """
      {"name": "Yards", "question": "Does it?", %s, "factor": "practice",
       "arms": [{"name": "collected", "clippings": "collected"},
                {"name": "returned", "clippings": "returned"}],
       "lawns": [%s],
       "season": {"from": "2026-04-01", "to": "2026-10-31"}, "dates": ["2026-04-20"],
       "outcomes": [{"name": "quality", "kind": "rating", "unit": "1-9", "low": 1, "high": 9,
                     "margin": 0.5, "primary": true}], "seed": %d}
      """;

  private static TrialLayout layout(String design, int lawns, long seed) {
    String lawn =
        "{\"name\": \"Yard %d\", \"outline\": \"24 x 16\", \"mower\": {\"deckWidthMm\": 530, \"discharge\": \"right\"}}";
    List<String> all = IntStream.rangeClosed(1, lawns).mapToObj(lawn::formatted).toList();
    return TrialLayout.of(
        TrialPlanFile.read(
            new SourceText("plan", PLAN.formatted(design, String.join(", ", all), seed))));
  }

  private static String listed(List<String> layouts) {
    return "\"design\": \"listed\", \"allowedLayouts\": [%s]".formatted(String.join(", ", layouts));
  }

  private static String allOn(String first, String second) {
    return "["
        + String.join(", ", Collections.nCopies(4, "\"%s\", \"%s\"".formatted(first, second)))
        + "]";
  }

  @Test
  void aCoinThatPutsEachTreatmentOnOneSideIsToldOnPaperToo() {
    int told = 0;
    for (long seed = 1; seed <= 40; seed++) {
      TrialLayout layout = layout("\"design\": \"split-yard\"", 4, seed);
      long sides =
          layout.plots().stream().map(plot -> plot.where() + plot.unit().arm()).distinct().count();
      List<String> doubts = LayoutDoubts.of(layout);
      assertThat(doubts).hasSize(sides == 2 ? 1 : 0);
      if (sides == 2) {
        told++;
        assertThat(doubts.get(0))
            .startsWith("Treatment and side always go together (")
            .contains("no verdict: draw anew");
        assertThat(LayoutPaper.of(layout, Units.METRIC).html()).contains(doubts.get(0));
        assertThat(LayoutReport.of(layout).lines()).contains(doubts.get(0));
      }
    }
    assertThat(told).isBetween(1, 20);
    assertThat(LayoutDoubts.of(layout("\"design\": \"split-yard\"", 1, 1))).isEmpty();
  }

  @Test
  void aListOfTwoSidesCanShowNothing() {
    List<String> two = List.of(allOn("collected", "returned"), allOn("returned", "collected"));
    assertThatList(LayoutDoubts.of(layout(listed(two), 4, 1)))
        .satisfiesExactly(
            each -> assertThat(each).contains("2 allowed layouts", "below p = 1.00", "undecided"),
            each -> assertThat(each).startsWith("Treatment and side always go together ("));
  }

  @Test
  void pairsOfStripsWithFewCoinsAreTold() {
    List<String> few = LayoutDoubts.of(layout("\"design\": \"paired-strips\", \"pairs\": 2", 1, 1));
    assertThat(few)
        .anyMatch(each -> each.contains("2 pairs with 1 coin") && each.contains("p = 1.00"));
    assertThat(LayoutDoubts.of(layout("\"design\": \"paired-strips\", \"pairs\": 1", 6, 1)))
        .noneMatch(each -> each.contains("coin"));
  }

  /** A second factor may be the feed; then the paper tells its shares. */
  @Test
  void thePaperTellsTheShareOfTheFeed() {
    String design =
        """
        "design": "split-plot", "blocks": 2, "secondFactor": "feed", "protocol": {"feed": "equal"},
        "secondArms": [{"name": "low", "feedShare": 0}, {"name": "usual"}, {"name": "high", "feedShare": 2}]""";
    assertThat(LayoutPaper.of(layout(design, 1, 1), Units.METRIC).html())
        .contains("share of the usual feed: 'low' none, 'high' 2 times the usual; all others")
        .doesNotContain("All plots are fed alike");
    assertThat(
            LayoutPaper.of(
                    layout("\"protocol\": {\"feed\": \"equal\"}, \"design\": \"split-yard\"", 4, 1),
                    Units.METRIC)
                .html())
        .contains("All plots are fed alike.");
  }

  /** Of 31 layouts on five yards the last has no mirror image, the others have. */
  @Test
  void aDrawnLayoutThatItsMirrorImageMeetsIsTold() {
    List<String> layouts = new ArrayList<>();
    for (int pattern = 0; pattern < 31; pattern++) {
      List<String> arms = new ArrayList<>();
      for (int yard = 0; yard < 5; yard++) {
        boolean turned = (pattern >> yard & 1) == 1;
        arms.add(turned ? "\"returned\", \"collected\"" : "\"collected\", \"returned\"");
      }
      layouts.add("[" + String.join(", ", arms) + "]");
    }
    List<Boolean> told = new ArrayList<>();
    for (long seed = 1; seed <= 60; seed++) {
      TrialLayout layout = layout(listed(layouts), 5, seed);
      boolean alone =
          layout.plots().stream()
              .allMatch(plot -> plot.unit().column() == 1 == plot.unit().arm().equals("collected"));
      boolean warned =
          LayoutDoubts.of(layout).stream()
              .anyMatch(
                  each ->
                      each.startsWith("The list of 31 allowed layouts holds the mirror image")
                          && each.contains("below p = 0.0645")
                          && each.contains("could reach 0.0323"));
      assertThat(warned).isEqualTo(!alone);
      told.add(warned);
    }
    assertThat(told).contains(true, false);
  }

  @Test
  void stripsInTheSameOrderInEveryBlockAreTold() {
    List<String> orders = new ArrayList<>();
    for (long seed = 1; seed <= 20; seed++) {
      TrialLayout layout = layout("\"design\": \"randomised-block\", \"blocks\": 2", 1, seed);
      boolean same = layout.plots().get(0).unit().arm().equals(layout.plots().get(2).unit().arm());
      orders.add(same + "");
      assertThat(LayoutDoubts.of(layout)).hasSize(same ? 1 : 0);
    }
    assertThat(orders).contains("true", "false");
  }
}
