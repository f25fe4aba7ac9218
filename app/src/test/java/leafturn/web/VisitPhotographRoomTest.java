package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.VisitSheet;
import org.junit.jupiter.api.Test;

class VisitPhotographRoomTest extends DemoSite {
  private static final String VISIT = "00000000-0000-4000-8000-00000000000a";

  private String lawn = "";

  @Override
  void prepare() {
    lawn = book.read(reading -> reading.all(Kind.LAWN).get(0).id());
    String text =
        "{\"lawn\": \"%s\", \"day\": \"2015-05-20\", \"heightsMm\": [70, 80]}".formatted(lawn);
    VisitSheet visit = Kind.VISIT.read(new SourceText("visit", text));
    book.write("Test", writing -> writing.add(Kind.VISIT, VISIT, visit));
  }

  @Test
  void photographsOfADayAreAddedOnThePageOfTheVisitAndToldApart() throws Exception {
    assertThat(add("North gate", jpeg(8)).statusCode()).isEqualTo(303);
    assertThat(add("By the birch", jpeg(9)).statusCode()).isEqualTo(303);
    assertThat(add("By the birch", jpeg(9)).statusCode()).as("sent again").isEqualTo(303);

    assertThat(visit().content().photographs())
        .extracting(VisitSheet.FixedPoint::point)
        .containsExactly("North gate", "By the birch");
    assertThat(visit().content().heightsMm()).containsExactly(70.0, 80.0);
    assertThat(visitor.read("/sheets/" + VISIT))
        .contains("Photograph 1: North gate", "Photograph 2: By the birch")
        .containsPattern(
            "class=\"pictures small\">\\s*<li><a [^>]+><img [^>]*width=\"320\" height=\"240\"")
        .contains("<form class=\"entry screen-only\"");
    assertThat(visitor.read("/sheets/" + VISIT).replaceAll("(?s)<h2 id=\"history\".*", ""))
        .as("once, below its picture")
        .containsOnlyOnce("North gate")
        .containsOnlyOnce("By the birch");
    String form = visitor.read("/sheets/" + VISIT + "/correct");
    for (VisitSheet.FixedPoint point : visit().content().photographs()) {
      assertThat(form).contains("<img src=\"/photographs/" + point.photograph() + "\"");
    }
    assertThat(form)
        .contains("2015-05-20, no. 1, ", "2015-05-20, no. 2, ")
        .contains(", North gate</option>", ", By the birch</option>");
  }

  @Test
  void aPhotographWithoutAPointOrThatIsNoPictureIsRefusedBesideItsField() throws Exception {
    HttpResponse<String> nameless = add(" ", jpeg(8));
    assertThat(nameless.statusCode()).isEqualTo(422);
    assertThat(nameless.body()).contains("id=\"photograph-fault\"", "The point has no name");
    HttpResponse<String> noPicture = add("North gate", "<svg/>".getBytes());
    assertThat(noPicture.statusCode()).isEqualTo(422);
    assertThat(noPicture.body()).contains("no JPEG, PNG or WebP picture", "value=\"North gate\"");
    HttpResponse<String> empty = add("North gate", new byte[0]);
    assertThat(empty.statusCode()).isEqualTo(422);
    assertThat(empty.body()).contains("The photograph is empty; choose another file.");
    assertThat(add("x".repeat(81), jpeg(8)).statusCode()).isEqualTo(422);
    assertThat(visit().version()).isEqualTo(1);
    List<?> kept = book.read(reading -> reading.ofLawn(Kind.PHOTOGRAPH, lawn));
    assertThat(kept).isEmpty();
  }

  @Test
  void onlyAVisitTakesOne() throws Exception {
    String path = "/sheets/" + lawn + "/photographs";
    assertThat(asking.post(path, Map.of("point", "x"), jpeg(8)).statusCode()).isEqualTo(404);
  }

  private Sheet<VisitSheet> visit() {
    return book.read(reading -> reading.find(Kind.VISIT, VISIT).orElseThrow());
  }

  private HttpResponse<String> add(String point, byte[] picture) throws Exception {
    return asking.post("/sheets/" + VISIT + "/photographs", Map.of("point", point), picture);
  }

  private static byte[] jpeg(int edge) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(edge, edge, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
    return bytes.toByteArray();
  }
}
