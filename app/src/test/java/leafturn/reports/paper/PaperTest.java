package leafturn.reports.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What comes out on paper. */
class PaperTest {
  private static final String DRAWING =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200\" height=\"50\" viewBox=\"0 0 200 50\">"
          + "<style>.words { font-family: 'Atkinson Hyperlegible Next'; fill: #23291f }</style>"
          + "<text class=\"words\" x=\"10\" y=\"30\" font-size=\"14\">drawn words</text></svg>";

  private static byte[] pdf(String body) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Paper.of("Beds & <borders>", "", body).writePdf(out);
    return out.toByteArray();
  }

  @Test
  void everySheetHasItsTitleAndNumberAndEveryFontIsEmbedded() throws IOException {
    byte[] pdf =
        pdf(
            "<h1>Split yards</h1><p>Within ±0.5 m² ≤ α − <b>bold</b></p>"
                + DRAWING
                + "<h2 class=\"new-sheet\">Second</h2>");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isEqualTo(2);
      String text = new PDFTextStripper().getText(document);
      assertThat(text)
          .contains("Split yards", "±0.5 m² ≤ α − bold", "Beds & <borders>", "1 / 2", "2 / 2");
      Set<String> names = new HashSet<>();
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertThat(font.isEmbedded()).as(font.getName()).isTrue();
          names.add(font.getName().replaceFirst("^[A-Z]+\\+", ""));
        }
      }
      assertThat(names).contains("AtkinsonHyperlegibleNext-Regular", "Literata-SemiBold");
    }
  }

  /** A joined glyph of two letters would be lost where words are copied or searched for. */
  @Test
  void wordsAreWholeWhenCopied() throws IOException {
    String words = "field sheets, first office, waffle, flow, coffee, fjord";
    byte[] pdf = pdf("<h1>" + words + "</h1><p>" + words + " <b>" + words + "</b></p>");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertThat(text).containsPattern("(" + words + ".*){3}");
    }
  }

  @Test
  void numbersAreNotBrokenWithinTheirFigures() {
    String text = "margin ±0.5 points, −0.35 to 1,234.5. 6 yards";
    WholeNumbers breaks = new WholeNumbers();
    breaks.setText(text);
    List<String> pieces = new ArrayList<>();
    int from = 0;
    for (int at = breaks.next(); at >= 0; at = breaks.next()) {
      pieces.add(text.substring(from, at));
      from = at;
    }
    assertThat(pieces)
        .containsExactly(
            "margin ", "±0.5 ", "points, ", "−0.35 ", "to ", "1,234.5. ", "6 ", "yards");
  }

  @Test
  void whatIsNotWellFormedIsNotSetAtAll() {
    assertThatIllegalStateException().isThrownBy(() -> pdf("<p>open"));
  }
}
