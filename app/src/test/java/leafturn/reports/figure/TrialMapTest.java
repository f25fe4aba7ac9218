package leafturn.reports.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.records.Examples;
import leafturn.records.SourceText;
import leafturn.records.trial.TrialPlanFile;
import leafturn.trials.design.layout.DroppedPlot;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import org.junit.jupiter.api.Test;

/** On the map of a lawn every plot and peg can be told, however narrow the strips are. */
class TrialMapTest {
  private static final String PLAN =
      """
      {"name": "Strips", "question": "Which?", "design": "paired-strips", "pairs": %d,
       "factor": "practice", "arms": [{"name": "collected"}, {"name": "returned"}],
       "lawns": [{"name": "Long meadow", "outline": "%s", "bearingDeg": %s,
                  "mower": {"deckWidthMm": 500, "discharge": "rear"}}],
       "season": {"from": "2026-04-01", "to": "2026-10-31"}, "dates": ["2026-05-01"],
       "outcomes": [{"name": "quality", "kind": "rating", "unit": "1-9", "low": 1, "high": 9,
                     "margin": 0.5, "primary": true}],
       "seed": 1}
      """;

  private static LaidLawn lawn(int pairs, String outline, double bearingDeg) {
    String plan = PLAN.formatted(pairs, outline, bearingDeg);
    return TrialLayout.of(TrialPlanFile.read(new SourceText("plan", plan))).lawns().get(0);
  }

  private static List<String> words(String svg) {
    List<String> words = new ArrayList<>();
    Matcher text = Pattern.compile("<text [^>]*>([^<]*)</text>").matcher(svg);
    while (text.find()) {
      words.add(text.group(1));
    }
    return words;
  }

  private static List<String> names(LaidLawn lawn) {
    return Stream.concat(
            lawn.plots().stream().map(LaidPlot::code),
            lawn.dropped().stream().map(DroppedPlot::mark))
        .toList();
  }

  private static List<String> words(LaidLawn lawn, OutlineFormat format) {
    TrialMap.Look look =
        new TrialMap.Look(List.of("collected", "returned"), List.of(), Units.METRIC);
    return words(TrialMap.draw(lawn, format, look));
  }

  private static List<String> pegs(LaidLawn lawn) {
    return lawn.pegs().stream().map(peg -> Integer.toString(peg.number())).toList();
  }

  @Test
  void narrowStripsBearTheirCodesAlongThem() {
    for (double bearingDeg : new double[] {0, 37, 90}) {
      LaidLawn lawn = lawn(6, "30 x 22", bearingDeg);
      for (OutlineFormat format : List.of(OutlineFormat.WIDE, OutlineFormat.NARROW)) {
        assertThat(words(lawn, format)).containsAll(names(lawn)).containsAll(pegs(lawn));
      }
    }
    String steep =
        TrialMap.draw(
            lawn(6, "30 x 22", 37),
            OutlineFormat.WIDE,
            new TrialMap.Look(List.of(), List.of(), Units.METRIC));
    assertThat(steep).contains("transform=\"rotate(-53 ").doesNotContain("plot-1");
  }

  @Test
  void stripsTooNarrowForWordsAreNamedWithALine() {
    LaidLawn lawn = lawn(10, "70 x 34", 0);
    assertThat(words(lawn, OutlineFormat.WIDE)).containsAll(names(lawn)).containsAll(pegs(lawn));
    assertThat(words(lawn, OutlineFormat.NARROW)).containsAll(names(lawn)).contains("A", "B");
    TrialMap.Look look = new TrialMap.Look(List.of(), List.of(), Units.METRIC);
    assertThat(TrialMap.draw(lawn(20, "70 x 34", 0), OutlineFormat.NARROW, look))
        .contains("class=\"leader\"");
  }

  private static final String BLOCKS =
      """
      {"name": "Blocks", "question": "Which?", "design": "randomised-block", "blocks": 12,
       "factor": "practice",
       "arms": [{"name": "a"}, {"name": "b"}, {"name": "c"}, {"name": "d"}, {"name": "e"},
                {"name": "f"}, {"name": "g"}, {"name": "h"}],
       "plots": {"passes": 3, "lengthM": 4},
       "lawns": [{"name": "Long meadow", "outline": "60 x 40",
                  "mower": {"deckWidthMm": 500, "discharge": "rear"}}],
       "season": {"from": "2026-04-01", "to": "2026-10-31"}, "dates": ["2026-05-01"],
       "outcomes": [{"name": "quality", "kind": "rating", "unit": "1-9", "low": 1, "high": 9,
                     "margin": 0.5, "primary": true}],
       "seed": 1}
      """;

  /** 96 plots: names alike and inside, and the numbers of the corners of blocks alone. */
  @Test
  void manySmallPlotsAreNamedInOneTypeAndTheirBlocksAloneAreNumbered() {
    LaidLawn lawn =
        TrialLayout.of(TrialPlanFile.read(new SourceText("plan", BLOCKS))).lawns().get(0);
    TrialMap.Look look = new TrialMap.Look(List.of(), List.of(), Units.METRIC);
    String map = TrialMap.draw(lawn, OutlineFormat.SHEET, look);
    List<String> words = words(map);
    assertThat(words).containsAll(names(lawn));
    Matcher code =
        Pattern.compile("<text [^>]*font-size=\"([^\"]*)\"[^>]*>B\\d+-\\d+</text>").matcher(map);
    assertThat(code.results().map(each -> each.group(1)).distinct()).hasSize(1);
    List<String> told = pegs(lawn).stream().filter(words::contains).toList();
    assertThat(lawn.pegs()).hasSizeGreaterThan(150);
    assertThat(told).hasSizeBetween(22, 4 * 4 * 2);
    assertThat(map).doesNotContain("class=\"leader\"").contains("Map of Long meadow");
  }

  @Test
  void plotsThatTakeACornerOfTheLawnAreDrawnEnlargedBelowIt() {
    String short3 =
        PLAN.formatted(3, "50 x 30", "0")
            .replace("\"factor\"", "\"plots\": {\"lengthM\": 3}, \"factor\"");
    LaidLawn lawn =
        TrialLayout.of(TrialPlanFile.read(new SourceText("plan", short3))).lawns().get(0);
    for (OutlineFormat format : List.of(OutlineFormat.WIDE, OutlineFormat.NARROW)) {
      assertThat(words(lawn, format))
          .contains("The plots, enlarged", "A", "B")
          .containsAll(names(lawn))
          .containsAll(pegs(lawn));
    }
    assertThat(words(lawn(6, "30 x 22", 0), OutlineFormat.WIDE))
        .doesNotContain("The plots, enlarged");
  }

  private static final Pattern PEG =
      Pattern.compile("<circle class=\"peg\" cx=\"([^\"]*)\" cy=\"([^\"]*)\"");

  /** On small maps too: nearest to its corner, on no other plot, and off the lines if it can. */
  @Test
  void aNumberIsThatOfTheCornerNearestToIt() throws Exception {
    String plan = Files.readString(Examples.file("split-yards.trial.json"));
    TrialLayout layout = TrialLayout.of(TrialPlanFile.read(new SourceText("plan", plan)));
    for (OutlineFormat format :
        List.of(OutlineFormat.THIRD_SHEET, OutlineFormat.HALF_SHEET, OutlineFormat.NARROW)) {
      for (LaidLawn lawn : layout.lawns()) {
        String map =
            TrialMap.draw(lawn, format, new TrialMap.Look(List.of(), List.of(), Units.METRIC));
        List<Point> corners =
            PEG.matcher(map).results().map(each -> point(each.group(1), each.group(2))).toList();
        Pattern number =
            Pattern.compile(
                "<text class=\"words\" x=\"([^\"]*)\" y=\"([^\"]*)\"[^>]*font-size=\"%.0f\">(\\d+)<"
                    .formatted(format.typePx));
        List<MatchResult> numbers = number.matcher(map).results().toList();
        assertThat(numbers).as("%s %s", lawn.lawn().name(), format).hasSizeGreaterThan(3);
        for (MatchResult each : numbers) {
          Point base = point(each.group(1), each.group(2));
          Point middle = new Point(base.x(), base.y() - 0.3 * format.typePx);
          Point own = corners.get(Integer.parseInt(each.group(3)) - 1);
          assertThat(corners)
              .as("%s %s %s", lawn.lawn().name(), format, each.group(3))
              .allMatch(
                  other -> apart(other, middle) >= apart(own, middle) + 0.05 * apart(own, other));
        }
      }
    }
  }

  private static Point point(String x, String y) {
    return new Point(Double.parseDouble(x), Double.parseDouble(y));
  }

  private static double apart(Point one, Point other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }
}
