package leafturn.records.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.quantity.Units;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.Mutations;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlineTextTest {
  private static final long SEED = 20_150_529;
  private static final String WITH_ALL =
      """
      origin 10.5 -50.25
      0 0
      12, 0
      12;8.5
      0 8.5

      2 x 1 at 4 3

      8\t3
      9 3
      8.5 4
      +
      20 0
      24 0
      22 -4
      """;

  @Test
  void aListMayHoldHolesPiecesAndAnOrigin() {
    Outline outline = OutlineText.read("outline", WITH_ALL);
    assertThat(outline.anchor()).isEqualTo(new Anchor(10.5, -50.25));
    assertThat(outline.patches()).hasSize(2);
    assertThat(outline.patches().get(0).holes())
        .containsExactly(Ring.of(4, 3, 4, 4, 6, 4, 6, 3), Ring.of(8, 3, 8.5, 4, 9, 3));
    assertThat(outline.areaM2()).isEqualTo(12 * 8.5 - 2 - 0.5 + 8);
  }

  @ParameterizedTest
  @CsvSource({"12 x 8", "12x8", "12 × 8", "' 12 X 8.0 '"})
  void aRectangleIsOneLine(String line) {
    assertThat(OutlineText.read("outline", line)).isEqualTo(Outline.rectangle(12, 8));
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    RandomOutlines outlines = new RandomOutlines(73);
    for (int i = 0; i < 300; i++) {
      Outline outline = outlines.next();
      for (Units units : Units.values()) {
        String list = OutlineText.told(OutlineText.write(outline, units), units);
        assertThat(OutlineText.read("outline", list)).isEqualTo(outline);
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | it has no corners; give at least three.",
        "0 0/4 0 | line 1: it has 2 corners; give at least three different ones.",
        "0 0/4 0/four 4 | line 3: \"four 4\" is no corner; give x and y in m",
        "0 0/4 0/12,5 3 | line 3: \"12,5 3\" is no corner",
        "0 0/4 0/40000 3 | line 3: x 40000, y 3 lies too far away; give both from -10000 to 10000",
        "0 0/4 4/4 0/0 4 | line 1: its line crosses or touches itself near x 2, y 2",
        "9 x 9//3 3/3 12/5 3 | line 3: this hole reaches outside the edge near x 3, y 12",
        "9 x 9//2 x 2 at 1 1//2 x 2 at 2 2 | line 1: near x 2, y 3 a hole overlaps another",
        "9 x 9//2 x 2 at 0 1 | line 1: near x 0, y 1 a hole overlaps another or runs along the edge",
        "9 x 9//4.5 0/9 4.5/4.5 9/0 4.5 | line 1: holes cut this piece into separate parts",
        "4 x 4/+/4 x 4 at 3 3 | two pieces overlap or share a side near x 4, y 3",
        "4 x 4/+/4 x 4 at 4 0 | two pieces overlap or share a side",
        "0.5 x 0.5 | its area is 0.25 m²; an outline has from 1 to 1,000,000 m²",
        "2000 x 2000 | its area is 4000000 m²",
        "0 0/4 x 4 | line 2: a rectangle stands alone; put an empty line before it.",
        "0 x 4 | line 1: a rectangle needs a length and a width above 0 m.",
        "9999 x 4 at 2 2 | line 1: x 10001, y 6 lies too far away",
        "ft:0 0/4 0/four 4 | line 3: \"four 4\" is no corner; give x and y in ft",
        "ft:0 0/4 0/40000 3 | line 3: x 40000, y 3 lies too far away; give both from -32808.399 to 32808.399, ft",
        "ft:0 0/40 40/40 0/0 40 | line 1: its line crosses or touches itself near x 20, y 20",
        "origin 12 99/4 x 4 | line 1: \"origin 12 99\" is no origin",
        "origin 12 9/origin 12 9/4 x 4 | line 2: the origin is given twice",
      })
  void aFaultNamesItsLine(String text, String sentence) {
    List<Faults.Fault> faults = faults(text.replace('/', '\n'));
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).field()).isEqualTo("outline");
    assertThat(faults.get(0).sentence()).startsWith(sentence);
  }

  @Test
  void allFaultsAreToldUpToAScore() {
    assertThat(faults("a\nb\n\nc")).hasSize(3);
    List<Faults.Fault> many = faults("x\n".repeat(50));
    assertThat(many).hasSize(21);
    assertThat(many.get(20).sentence()).isEqualTo("30 more faults follow.");
  }

  @Test
  void tooManyCornersAreRefused() {
    String circle =
        IntStream.range(0, 5001)
            .mapToObj(i -> "%.3f %.3f".formatted(50 * Math.cos(i / 796.), 50 * Math.sin(i / 796.)))
            .collect(Collectors.joining("\n"));
    assertThat(faults(circle))
        .extracting(Faults.Fault::sentence)
        .first()
        .asString()
        .startsWith("it has 5,001 corners");
    assertThat(faults("0 0\n".repeat(60_000)))
        .extracting(Faults.Fault::sentence)
        .containsExactly("it is too long; give fewer corners.");
  }

  @Test
  void aSpoiltListIsReadOrRefused() {
    int refused = 0;
    for (int i = 0; i < 2000; i++) {
      String spoilt = new Mutations(SEED + i).spoil(WITH_ALL);
      try {
        assertThat(OutlineText.read("outline", spoilt).areaM2()).isBetween(1., 1e6);
      } catch (InputException e) {
        assertThat(e.faults()).as("seed %d + %d", SEED, i).isNotEmpty();
        refused++;
      }
    }
    assertThat(refused).isBetween(500, 1999);
  }

  private static List<Faults.Fault> faults(String text) {
    InputException thrown =
        catchThrowableOfType(InputException.class, () -> OutlineText.read("outline", text));
    assertThat(thrown).as(text).isNotNull();
    return thrown.faultsByField();
  }
}
