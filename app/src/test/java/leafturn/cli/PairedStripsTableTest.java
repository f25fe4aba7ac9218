package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import leafturn.records.SourceText;
import leafturn.records.trial.TrialPlanFile;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table of paired strips, of which one coin laid two pairs. */
class PairedStripsTableTest {
  private static final String PLAN =
      """
      {"name": "Strips", "question": "Does returning clippings change quality?",
       "design": "paired-strips", "pairs": 2, "factor": "practice",
       "arms": [{"name": "collected", "clippings": "collected"},
                {"name": "returned", "clippings": "returned"}],
       "lawns": [%s],
       "season": {"from": "2026-04-01", "to": "2026-10-31"}, "dates": ["2026-09-01"],
       "outcomes": [{"name": "quality", "kind": "measurement", "unit": "g", "margin": 0.5, "primary": true}],
       "seed": 20260401}
      """;
  private static final String LAWN =
      """
      {"name": "Yard %d", "outline": "26 x 16", "bearingDeg": 0, "mower": {"deckWidthMm": 530, "discharge": "rear"}}""";
  private static final String MODEL =
      """
      {"response": "quality", "factors": ["practice"], "fixed": ["practice"],
       "random": [{"within": ["pair"]}], "compare": {"factor": "practice"}, "trial": {%s}}
      """;

  @TempDir private Path folder;

  private String analysed(String trial) throws IOException {
    String text =
        PLAN.formatted(String.join(", ", LAWN.formatted(1), LAWN.formatted(2), LAWN.formatted(3)));
    Path plan = Files.writeString(folder.resolve("plan.json"), text);
    StringBuilder csv = new StringBuilder("plot,pair,practice,quality\n");
    for (LaidPlot plot : TrialLayout.of(TrialPlanFile.read(new SourceText("plan", text))).plots()) {
      int pair = plot.unit().block();
      double effect = plot.unit().arm().equals("returned") ? 1 + 0.1 * pair : 0;
      csv.append(
          String.format(
              Locale.ROOT, "%s,%d,%s,%.1f%n", plot.code(), pair, plot.unit().arm(), 6 + effect));
    }
    return AnalysedTable.findings(folder, plan, csv, MODEL.formatted(trial));
  }

  /**
   * Six pairs, three coins: eight layouts, of which the drawn one and its mirror image show most.
   */
  @Test
  void pairsOfOneCoinTurnTogether() throws IOException {
    assertThat(analysed("\"plot\": \"plot\""))
        .contains("by the 8 layouts", "cannot go below p = 0.250")
        .doesNotContain("Quality differs");
  }

  @Test
  void withoutTheirCodesTheCoinsAreNotKnown() throws IOException {
    assertThat(analysed("")).startsWith("2 ").contains("paired-strips", "codes of its plots");
  }
}
