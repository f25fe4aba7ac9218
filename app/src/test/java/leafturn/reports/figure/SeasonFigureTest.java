package leafturn.reports.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import leafturn.advice.call.LawnOnRound;
import leafturn.web.SampleRound;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SeasonFigureTest {
  @ParameterizedTest
  @EnumSource(SeasonFormat.class)
  void noLabelCoversAnotherOrLeavesTheFigure(SeasonFormat format) throws Exception {
    for (LawnOnRound lawn : SampleRound.get().lawns()) {
      Document figure = read(SeasonFigure.draw(lawn.call(), format));
      Element root = figure.getDocumentElement();
      Box edge = new Box(0, 0, number(root, "width"), number(root, "height"));
      List<Label> labels = labels(figure);
      for (int i = 0; i < labels.size(); i++) {
        assertThat(labels.get(i).box().inside(edge)).as(labels.get(i).words()).isTrue();
        for (int j = i + 1; j < labels.size(); j++) {
          assertThat(labels.get(i).box().overlaps(labels.get(j).box()))
              .as("%s: %s covers %s", lawn.slug(), labels.get(i).words(), labels.get(j).words())
              .isFalse();
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(SeasonFormat.class)
  void theLinesAreNamed(SeasonFormat format) throws Exception {
    for (LawnOnRound lawn : SampleRound.get().lawns()) {
      List<String> words =
          labels(read(SeasonFigure.draw(lawn.call(), format))).stream().map(Label::words).toList();
      assertThat(words)
          .as(lawn.slug())
          .anyMatch(label -> label.startsWith("cut height"))
          .anyMatch(label -> label.contains("a third"))
          .anyMatch(label -> label.startsWith("if not mown"))
          .anyMatch(label -> label.startsWith("today, 29"))
          .anyMatch(label -> label.endsWith("returned") || label.equals("collected"));
    }
  }

  @Test
  void itNeedsNoInlineStyle() {
    for (SeasonFormat format : SeasonFormat.values()) {
      assertThat(SeasonFigure.draw(SampleRound.get().lawns().get(1).call(), format))
          .doesNotContain("style");
    }
  }

  @Test
  void aStraightLineCrossesABoxOnlyWhereItRunsThrough() {
    Box box = new Box(10, 10, 20, 10);
    assertThat(box.isCrossedBy(new Point(0, 15), new Point(40, 15))).isTrue();
    assertThat(box.isCrossedBy(new Point(15, 12), new Point(16, 13))).isTrue();
    assertThat(box.isCrossedBy(new Point(20, 0), new Point(20, 40))).isTrue();
    assertThat(box.isCrossedBy(new Point(0, 0), new Point(8, 40))).isFalse();
    assertThat(box.isCrossedBy(new Point(0, 15), new Point(9, 15))).isFalse();
    assertThat(box.isCrossedBy(new Point(0, 25), new Point(40, 25))).isFalse();
  }

  private static List<Label> labels(Document figure) {
    List<Label> labels = new ArrayList<>();
    NodeList texts = figure.getElementsByTagName("text");
    for (int i = 0; i < texts.getLength(); i++) {
      Element text = (Element) texts.item(i);
      Label.Align align =
          switch (text.getAttribute("text-anchor")) {
            case "start" -> Label.Align.START;
            case "middle" -> Label.Align.MIDDLE;
            default -> Label.Align.END;
          };
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
