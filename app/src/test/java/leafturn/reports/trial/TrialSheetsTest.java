package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.quantity.Units;
import leafturn.records.SourceText;
import leafturn.records.trial.TrialPlanFile;
import leafturn.reports.paper.Paper;
import leafturn.trials.design.layout.TrialLayout;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What belongs together stands on one sheet of paper, and no sheet holds a few lines left over. */
class TrialSheetsTest {
  private static final String PLAN =
      """
      {"name": "Yards", "question": "Does it?", "design": "split-yard", "sides": "coin",
       "factor": "practice",
       "arms": [{"name": "collected", "clippings": "collected"},
                {"name": "returned", "clippings": "returned"}],
       "lawns": [%s],
       "season": {"from": "2026-04-01", "to": "2026-10-31"},
       "dates": ["2026-04-20", "2026-06-01", "2026-09-12"],
       "outcomes": [{"name": "quality", "kind": "rating", "unit": "1-9", "low": 1, "high": 9,
                     "margin": 0.5, "primary": true},
                    {"name": "K", "kind": "soil", "unit": "mg/kg", "low": 10, "high": 1000}],
       "cores": {"perPlot": 4, "dates": ["2026-04-20"]}, "seed": 1}
      """;

  private static TrialLayout layout() {
    String lawns =
        IntStream.rangeClosed(1, 6)
            .mapToObj(
                yard ->
                    "{\"name\": \"Yard %d\", \"outline\": \"24 x 16\", \"mower\": {\"deckWidthMm\": 530, \"discharge\": \"right\"}}"
                        .formatted(yard))
            .collect(Collectors.joining(", "));
    return TrialLayout.of(TrialPlanFile.read(new SourceText("plan", PLAN.formatted(lawns))));
  }

  private static List<String> sheets(Paper paper) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    paper.writePdf(out);
    List<String> sheets = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        sheets.add(stripper.getText(document));
      }
    }
    return sheets;
  }

  @Test
  void aLawnsMapPlotsAndCornersStandOnOneSheet() throws IOException {
    List<String> sheets = sheets(LayoutPaper.of(layout(), Units.METRIC));
    assertThat(sheets).hasSize(1 + 6);
    for (int yard = 1; yard <= 6; yard++) {
      assertThat(sheets.get(yard)).contains("Yard " + yard, "Plots", "Corners, with two tapes");
    }
  }

  /** A lawn whose plots take several sheets begins below what is kept the same. */
  @Test
  void theFirstSheetOfManyPlotsHoldsTheirMap() throws IOException {
    String arms =
        IntStream.rangeClosed(1, 6)
            .mapToObj("{\"name\": \"rate %d\", \"clippings\": \"returned\"}"::formatted)
            .collect(Collectors.joining(", "));
    String plan =
        PLAN.formatted(
                "{\"name\": \"Long meadow\", \"outline\": \"60 x 40\", \"mower\": {\"deckWidthMm\": 530, \"discharge\": \"rear\"}}")
            .replace("split-yard", "randomised-block")
            .replaceFirst(
                "\"sides\": \"coin\"",
                "\"blocks\": 6, \"plots\": {\"passes\": 3, \"guardPasses\": 1, \"lengthM\": 3}")
            .replaceFirst("(?s)\"arms\": \\[.*?\\],", "\"arms\": [" + arms + "],");
    TrialLayout many = TrialLayout.of(TrialPlanFile.read(new SourceText("plan", plan)));
    assertThat(many.plots()).hasSize(36);
    List<String> sheets = sheets(LayoutPaper.of(many, Units.METRIC));
    assertThat(sheets.get(0))
        .contains("What is kept the same", "Long meadow", "Passes run towards");
  }

  @Test
  void eachDateHasItsTableAndItsMapsOnOneSheet() throws IOException {
    List<String> sheets = sheets(FieldSheets.of(layout(), Units.METRIC));
    for (String date : List.of("20 April 2026\n", "1 June 2026\n", "12 September 2026\n")) {
      List<String> ofDate =
          sheets.stream()
              .filter(sheet -> sheet.contains(date) && !sheet.contains("Cores on"))
              .toList();
      assertThat(ofDate).hasSize(1);
      assertThat(ofDate.get(0)).contains("Where the plots lie", "B6-2");
    }
    assertThat(sheets).hasSizeLessThanOrEqualTo(1 + 3 + 4);
  }
}
