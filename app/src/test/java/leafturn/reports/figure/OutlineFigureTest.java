package leafturn.reports.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import leafturn.quantity.Units;
import leafturn.records.shape.Anchor;
import leafturn.records.shape.Outline;
import leafturn.records.shape.OutlineText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class OutlineFigureTest {
  private static final Outline LAWN =
      OutlineText.read("outline", "0 0\n14 0\n14 6.5\n9 9\n9 12\n0 12\n\n2 x 3 at 3 3");
  private static final Pattern FIRST_SIDE =
      Pattern.compile("class=\"outline-turf\"[^>]* d=\"M([\\d.]+) [\\d.]+L([\\d.]+) ");

  @Test
  void itNamesItsAreaSidesAndScale() throws Exception {
    String svg = OutlineFigure.draw(LAWN, OutlineFormat.WIDE, Units.METRIC);
    assertThat(svg).contains("aria-label=\"Outline of 141\u202fm², its edges 60.1\u202fm long\"");
    assertThat(words(svg)).contains("14.0\u202fm", "5.6\u202fm", "3.0\u202fm").doesNotContain("N");
    assertThat(words(OutlineFigure.draw(LAWN, OutlineFormat.WIDE, Units.US)))
        .contains("45.9\u202fft");
  }

  @Test
  void theNorthIsShownWhereThePlaceIsKnown() throws Exception {
    Outline placed = LAWN.anchoredAt(new Anchor(10, 50));
    assertThat(words(OutlineFigure.draw(placed, OutlineFormat.NARROW, Units.METRIC))).contains("N");
  }

  @Test
  void itIsDrawnToScale() {
    String svg = OutlineFigure.draw(LAWN, OutlineFormat.WIDE, Units.METRIC);
    Matcher side = FIRST_SIDE.matcher(svg);
    Matcher bar =
        Pattern.compile("class=\"scale-bar\" d=\"M([\\d.]+) [\\d.]+L([\\d.]+)").matcher(svg);
    assertThat(side.find() && bar.find()).isTrue();
    double pxPerM = length(side) / 14;
    assertThat(length(bar)).isCloseTo(5 * pxPerM, within(0.2));
  }

  private static double length(Matcher fromTo) {
    return Double.parseDouble(fromTo.group(2)) - Double.parseDouble(fromTo.group(1));
  }

  @ParameterizedTest
  @EnumSource(OutlineFormat.class)
  void whateverTheShapeNoWordCoversAnotherOrLeavesTheFigure(OutlineFormat format) throws Exception {
    SplittableRandom random = new SplittableRandom(77);
    for (int i = 0; i < 120; i++) {
      Outline outline = star(random, 3 + random.nextInt(40), Math.exp(random.nextDouble(1, 6)));
      String svg = OutlineFigure.draw(outline, format, i % 2 == 0 ? Units.METRIC : Units.US);
      assertThat(svg).doesNotContain("style").doesNotContain("NaN");
      Element root = read(svg).getDocumentElement();
      Box edge = new Box(0, 0, number(root, "width"), number(root, "height"));
      assertThat(edge.height()).isLessThanOrEqualTo(format.mostHeightPx);
      List<Label> labels = labels(svg);
      for (int one = 0; one < labels.size(); one++) {
        assertThat(labels.get(one).box().inside(edge)).as(labels.get(one).words()).isTrue();
        for (int other = one + 1; other < labels.size(); other++) {
          assertThat(labels.get(one).box().overlaps(labels.get(other).box()))
              .as("%d: %s, %s", i, labels.get(one).words(), labels.get(other).words())
              .isFalse();
        }
      }
      assertThat(labels.isEmpty()).isEqualTo(format == OutlineFormat.SMALL);
    }
  }

  private static Outline star(SplittableRandom random, int corners, double radiusM) {
    StringBuilder list = new StringBuilder("origin 10 50\n");
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double radius = radiusM * random.nextDouble(0.5, 1);
      list.append(Math.rint(100 * radius * Math.cos(angle)) / 100).append(' ');
      list.append(Math.rint(100 * radius * Math.sin(angle)) / 100).append('\n');
    }
    return OutlineText.read("outline", list.toString());
  }

  @Test
  void stepsAreRound() {
    assertThat(List.of(0.2, 1.0, 1.1, 5.0, 6.0, 11.0, 200.0))
        .extracting(RoundSteps::atLeast)
        .containsExactly(1.0, 1.0, 5.0, 5.0, 10.0, 50.0, 500.0);
    assertThat(List.of(0.7, 1.0, 1.9, 2.0, 4.9, 9.0, 10.0, 260.0))
        .extracting(RoundSteps::atMost)
        .containsExactly(0.5, 1.0, 1.0, 2.0, 2.0, 5.0, 10.0, 200.0);
  }

  private static List<String> words(String svg) throws Exception {
    return labels(svg).stream().map(Label::words).toList();
  }

  private static List<Label> labels(String svg) throws Exception {
    List<Label> labels = new ArrayList<>();
    NodeList texts = read(svg).getElementsByTagName("text");
    for (int i = 0; i < texts.getLength(); i++) {
      Element text = (Element) texts.item(i);
      Label.Align align =
          text.getAttribute("text-anchor").equals("middle")
              ? Label.Align.MIDDLE
              : Label.Align.START;
      Point anchor = new Point(number(text, "x"), number(text, "y"));
      labels.add(new Label(anchor, align, number(text, "font-size"), "", text.getTextContent()));
    }
    return labels;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  private static Document read(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }
}
