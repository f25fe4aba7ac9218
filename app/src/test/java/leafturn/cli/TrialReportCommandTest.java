package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leafturn.records.Examples;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The documents of trial analyse. */
class TrialReportCommandTest {
  private static final Path DATA = Examples.file("split-yard.csv");
  private static final Path MODEL = Examples.file("split-yard.model.json");

  @TempDir private Path folder;

  private static Ran analyse(Path data, Path model, Path report) {
    return Ran.of(
        "trial", "analyse", data.toString(), model.toString(), "--report", report.toString());
  }

  private String html(Path data, String model) throws IOException {
    Path file = Files.writeString(folder.resolve("model.json"), model);
    Path report = folder.resolve("findings.html");
    Ran ran = analyse(data, file, report);
    assertThat(ran.err()).contains("Wrote");
    return Files.readString(report);
  }

  @Test
  void theExampleIsAnsweredInASentenceWithItsMargin() throws IOException {
    String html = html(DATA, Files.readString(MODEL));
    assertThat(html)
        .contains("Potassium ppm differs", "margin that matters: a ratio of 1.1 either way")
        .contains("the paired result and the mixed model of one season")
        .contains("yard 8, returned");
  }

  @Test
  void aYardReadOnFewerDaysThanOthersHasNoWholeSeason() throws IOException {
    String fewer = Files.readString(DATA).replaceFirst("yard 3,returned,2026-06-15,.*\n", "");
    Path data = Files.writeString(folder.resolve("fewer.csv"), fewer);
    assertThat(html(data, Files.readString(MODEL)))
        .contains(
            "Yards: 8 started, 7 with a whole season, 1 read on fewer days than others.",
            "yard 3: the season is summed up over the 3 of 4 dates");
  }

  @Test
  void thePdfIsReadableAndItsTypeFacesAreEmbedded() throws IOException {
    Path report = folder.resolve("findings.pdf");
    assertThat(analyse(DATA, MODEL, report).exitCode()).isZero();
    try (PDDocument document = Loader.loadPDF(report.toFile())) {
      assertThat(new PDFTextStripper().getText(document))
          .contains("Potassium ppm differs", "What may be concluded", "1 / ");
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
    }
  }

  @Test
  void withoutAMarginEquivalenceIsNotJudged() throws IOException {
    String model = Files.readString(MODEL).replaceAll("(?s),\\s*\"trial\": \\{.*\\}\\s*\\}", "}");
    assertThat(html(DATA, model))
        .containsOnlyOnce("No margin that matters was fixed")
        .doesNotContain("equivalent within", "no margin");
  }

  @Test
  void aModelThatIsNoComparisonInUnitsIsShownAsItWasAsked() throws IOException {
    Path data =
        Files.writeString(
            folder.resolve("plots.csv"),
            "bed,depth,value\na,1,3\na,2,5\nb,1,4\nb,2,5\nc,1,2\nc,2,6\n");
    String model =
        "{\"response\": \"value\", \"covariates\": [\"depth\"], \"fixed\": [\"depth\"], \"random\": [{\"within\": [\"bed\"]}]}";
    assertThat(html(data, model))
        .contains("The model as it was asked for", "equivalence is not judged");
  }

  @Test
  void anotherEndingIsRefusedAndNothingWritten() {
    Path report = folder.resolve("findings.docx");
    Ran ran = analyse(DATA, MODEL, report);
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains(".pdf or .html");
    assertThat(report).doesNotExist();
  }
}
