package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.records.SourceText;
import leafturn.records.trial.TrialPlanFile;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of designs that only the plan's layout explains. */
class PlannedTableCommandTest {
  private static final String PLAN =
      """
      {"name": "Mowing by feed", "question": "Does returning clippings replace feed?",
       "design": "split-plot", "blocks": 4, "factor": "practice",
       "arms": [{"name": "collected", "clippings": "collected"},
                {"name": "returned", "clippings": "returned"}],
       "secondFactor": "feed", "secondArms": [{"name": "half"}, {"name": "full"}],
       "lawns": [{"name": "Linden House, park", "outline": "26 x 16", "bearingDeg": 0,
                  "mower": {"deckWidthMm": 530, "discharge": "rear"}}],
       "plots": {"passes": 3, "guardPasses": 1, "lengthM": 3},
       "season": {"from": "2026-04-01", "to": "2026-10-31"}, "dates": ["2026-05-01", "2026-09-01"],
       "outcomes": [{"name": "quality", "kind": "measurement", "unit": "g", "margin": 0.5, "primary": true}],
       "protocol": {"feed": "equal"}, "seed": 20260401}
      """;
  private static final String MODEL =
      """
      {"response": "quality", "factors": ["practice", "feed"],
       "fixed": ["practice", "feed", "practice*feed"],
       "random": [{"within": ["block"]}, {"within": ["block", "practice"]}],
       "compare": {"factor": "practice"}%s}
      """;

  @TempDir private Path folder;

  private String analysed(String trial, boolean swapped) throws IOException {
    return analysed(trial, swapped, List.of(""));
  }

  /**
   * @param dates cells of a further column, a row of each plot with each; one empty cell for none
   */
  private String analysed(String trial, boolean swapped, List<String> dates) throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.json"), PLAN);
    TrialLayout layout = TrialLayout.of(TrialPlanFile.read(new SourceText("plan", PLAN)));
    Random random = new Random(3);
    boolean dated = dates.size() > 1;
    StringBuilder csv =
        new StringBuilder("plot,block,practice,feed,quality%s\n".formatted(dated ? ",seen" : ""));
    for (LaidPlot plot : layout.plots()) {
      boolean returned = plot.unit().arm().equals("returned");
      String arm = returned == swapped ? "collected" : "returned";
      double value = 6 + (returned ? 1 : 0) + 0.3 * random.nextGaussian();
      for (String date : dates) {
        csv.append(
            "%s,%d,%s,%s,%s%s%n"
                .formatted(
                    plot.code(),
                    plot.unit().block(),
                    arm,
                    plot.unit().secondArm(),
                    value + 0.1 * random.nextGaussian(),
                    dated ? "," + date : ""));
      }
    }
    return AnalysedTable.findings(folder, plan, csv, MODEL.formatted(trial));
  }

  @Test
  void aSplitPlotIsFoundByTheCodesOfItsPlots() throws IOException {
    assertThat(analysed(", \"trial\": {\"plot\": \"plot\"}", false))
        .contains("Exact test of 'returned' against 'collected' by the 16 layouts")
        .contains(
            "by the 16 layouts that might have been drawn",
            "the exact test by the layouts cannot go below p = 0.125");
  }

  @Test
  void withoutCodesTheSentenceTellsHowToGiveThem() throws IOException {
    assertThat(analysed(", \"trial\": {}", false))
        .startsWith("2 ")
        .contains("split-plot", "codes of its plots");
  }

  @Test
  void datesOfTheTableAreTakenOrAskedFor() throws IOException {
    String codes = ", \"trial\": {\"plot\": \"plot\"}";
    assertThat(analysed(codes, false, List.of("2026-05-01", "2026-09-01")))
        .contains("from the model of all dates", "by trapezoids");
    assertThat(analysed(codes, false, List.of("spring", "autumn")))
        .startsWith("2 ")
        .contains("plans 2 dates", "\"trial\": {\"date\": \"date\"}");
  }

  @Test
  void anArmThatThePlanDoesNotGiveIsAFault() throws IOException {
    assertThat(analysed(", \"trial\": {\"plot\": \"plot\"}", true))
        .startsWith("2 ")
        .contains("by the plan, but the table says");
  }

  @Test
  void lawnsOfThePlanWithoutAReadingAreNamedAndCountAsStarted() throws IOException {
    StringBuilder csv = new StringBuilder("yard,practice,quality\n");
    for (int yard = 1; yard <= 4; yard++) {
      csv.append(
          "L%d,collected,%s%nL%d,returned,%s%n"
              .formatted(yard, 5 + yard, yard, 6.2 + yard + 0.1 * yard * yard));
    }
    String lawns =
        IntStream.rangeClosed(1, 5)
            .mapToObj(
                yard ->
                    "{\"name\": \"L%d\", \"outline\": \"20 x 12\", \"mower\": {\"deckWidthMm\": 530, \"discharge\": \"rear\"}}"
                        .formatted(yard))
            .collect(Collectors.joining(", "));
    String plan =
        """
        {"name": "Halves", "question": "Does returning clippings change density?",
         "design": "split-yard", "sides": "coin", "factor": "practice",
         "arms": [{"name": "collected", "clippings": "collected"},
                  {"name": "returned", "clippings": "returned"}],
         "lawns": [%s],
         "season": {"from": "2026-04-01", "to": "2026-10-31"}, "dates": ["2026-05-01"],
         "outcomes": [{"name": "quality", "kind": "measurement", "unit": "g", "margin": 0.5, "primary": true}],
         "protocol": {"feed": "equal"}, "seed": 20260401}
        """
            .formatted(lawns);
    String model =
        """
        {"response": "quality", "factors": ["yard", "practice"], "fixed": ["practice"],
         "random": [{"within": ["yard"]}], "compare": {"factor": "practice"},
         "trial": {"yard": "yard", "arm": "practice"}}
        """;
    assertThat(
            AnalysedTable.findings(
                folder, Files.writeString(folder.resolve("plan.json"), plan), csv, model))
        .contains("Yards: 5 started, 4 with a whole season; 1 left out, for the reasons given.")
        .contains("The table has no reading of L5, which the plan has.");
  }
}
