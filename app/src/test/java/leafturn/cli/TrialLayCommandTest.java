package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.Examples;
import leafturn.records.sheet.Schema;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command trial lay on the example and on what is wrong. */
class TrialLayCommandTest {
  private static final Path PLAN = Examples.file("split-yards.trial.json");
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private static Ran lay(Path plan, String... more) {
    return Ran.of(List.of("trial", "lay", plan.toString()), more);
  }

  private ObjectNode example() throws IOException {
    return (ObjectNode) JSON.readTree(PLAN.toFile());
  }

  private Path plan(JsonNode plan) throws IOException {
    return Files.writeString(folder.resolve("plan.json"), plan.toString());
  }

  @Test
  void theExampleFitsTheSchemaAndItsHalvesAreEqual() throws IOException {
    JsonNode report = JSON.readTree(lay(PLAN, "--json").out());
    Schema schema = new Schema();
    assertThat(schema.faults("", schema.root("trial-layout.schema.json"), report)).isEmpty();
    assertThat(report.get("seed").asLong()).isEqualTo(20260401);
    JsonNode plots = report.get("plots");
    assertThat(plots).hasSize(16);
    int firstReturned = 0;
    for (int yard = 0; yard < 8; yard++) {
      JsonNode first = plots.get(2 * yard);
      double area = first.get("areaM2").asDouble();
      assertThat(plots.get(2 * yard + 1).get("areaM2").asDouble())
          .isCloseTo(area, within(area / 1000));
      firstReturned += first.get("arm").asText().equals("returned") ? 1 : 0;
    }
    assertThat(firstReturned).as("balanced sides").isEqualTo(4);
    assertThat(report.get("cores")).hasSize(16 * 15 * 2);
    assertThat(report.get("bags")).hasSize(16 * 2 * 2 + 2 * 3 + 16 * 5 + 5 * 2);
    assertThat(report.at("/bags/63/duplicateOf").isNull()).isTrue();
    assertThat(report.at("/bags/64/duplicateOf").asText()).hasSize(7);
    assertThat(report.at("/bags/69/holds").asText()).isEqualTo("soil");
    assertThat(report.at("/bags/70/holds").asText()).isEqualTo("tissue");
    assertThat(report.get("walkingOrder")).hasSize(5 * 8);
  }

  @Test
  void aSeedOfTheCommandStandsInForThePlans() throws IOException {
    JsonNode same = JSON.readTree(lay(PLAN, "--json", "--seed", "20260401").out());
    assertThat(same).isEqualTo(JSON.readTree(lay(PLAN, "--json").out()));
    JsonNode other = JSON.readTree(lay(PLAN, "--json", "--seed", "2").out());
    assertThat(other.get("cores")).isNotEqualTo(same.get("cores"));
    Ran wrong = lay(PLAN, "--seed", "-4");
    assertThat(wrong.exitCode()).isEqualTo(2);
    assertThat(wrong.err()).contains("--seed: -4 is out of range");
  }

  @Test
  void theExampleInWords() {
    Ran ran = lay(PLAN);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out())
        .contains("Linden House, front", "first: clippings are collected there", "from A m")
        .contains("480 cores and 160 bags with codes, 16 of them blind duplicates");
  }

  @Test
  void mapSheetsAndPaperTellTreatmentsOnlyToThoseWhoMow() throws IOException {
    Path map = folder.resolve("map.svg");
    Path paper = folder.resolve("paper.pdf");
    Path sheets = folder.resolve("sheets.pdf");
    Ran ran =
        lay(
            PLAN,
            "--map",
            map.toString(),
            "--paper",
            paper.toString(),
            "--sheets",
            sheets.toString());
    assertThat(ran.err()).isEmpty();
    assertThat(Files.readString(map))
        .startsWith("<svg xmlns=")
        .contains("scale-bar", ">N<", ">B1-1<", "m from A", "Heron Bank, verge");
    assertThat(text(paper)).contains("returned", "collected", "Corners, with two tapes", "1 / ");
    assertThat(text(sheets))
        .contains("12 October 2026", "B8-2", "quality (1-9)", "Cores on 20 April 2026")
        .contains("D8954Z4", "second half", "half of the soil of B7K8XTP")
        .doesNotContain("returned", "collected");
  }

  /** Takes all but the first out of a list of a plan; the first. */
  private static ObjectNode keepFirst(ObjectNode plan, String list) {
    ArrayNode all = (ArrayNode) plan.get(list);
    while (all.size() > 1) {
      all.remove(1);
    }
    return (ObjectNode) all.get(0);
  }

  @Test
  void aRaterWithoutCoresHasAMap() throws IOException {
    ObjectNode plan = example();
    keepFirst(plan, "outcomes");
    plan.remove("cores");
    Path sheets = folder.resolve("sheets.pdf");
    assertThat(lay(plan(plan), "--sheets", sheets.toString()).err()).isEmpty();
    assertThat(text(sheets))
        .contains("Where the plots lie")
        .doesNotContain("Cores on", "returned", "collected");
  }

  /** Map, paper, terminal and JSON tell a tape by one number. */
  @Test
  void tapesAreTheSameEverywhere() throws IOException {
    Path map = folder.resolve("map.svg");
    Path paper = folder.resolve("paper.pdf");
    String words = lay(PLAN, "--map", map.toString(), "--paper", paper.toString()).out();
    String drawn = Files.readString(map);
    String printed = text(paper);
    for (JsonNode corner : JSON.readTree(lay(PLAN, "--json").out()).get("corners")) {
      String fromA = "%.2f".formatted(corner.get("fromAM").asDouble());
      String fromB = "%.2f".formatted(corner.get("fromBM").asDouble());
      assertThat(corner.get("fromAM").asDouble()).isEqualTo(Double.parseDouble(fromA));
      String number = corner.get("corner").asText();
      assertThat(drawn)
          .contains("Peg %s: %s m from A, %s m from B".formatted(number, fromA, fromB));
      assertThat(words).containsPattern("(?m)^%s .* %s +%s +".formatted(number, fromA, fromB));
      assertThat(printed).containsPattern("(?m)^%s .*%s %s ".formatted(number, fromA, fromB));
    }
  }

  @Test
  void fieldSheetsAskForWhatTheOutcomesNeed() throws IOException {
    ObjectNode plan = example();
    ArrayNode outcomes = (ArrayNode) plan.get("outcomes");
    Path sheets = folder.resolve("sheets.pdf");
    lay(plan(plan), "--sheets", sheets.toString());
    assertThat(text(sheets))
        .contains("Rater:", "Rate before you ask", "quality (1-9)", "Bag of leaves", "clip blades");
    outcomes.remove(0);
    ((ObjectNode) outcomes.get(1)).put("primary", true);
    lay(plan(plan), "--sheets", sheets.toString());
    assertThat(text(sheets))
        .contains("Sampled by:", "Bag of leaves", "Taken by:")
        .doesNotContain("Rate", "1-9");
    outcomes.remove(0);
    lay(plan(plan), "--sheets", sheets.toString());
    assertThat(text(sheets))
        .contains("Cores on 20 April 2026", "Taken by:", "second half")
        .doesNotContain("Rate", "Sampled by", "leaves", "In the order of the walk");
  }

  @Test
  void whatIsDroppedIsToldWithItsPlace() throws IOException {
    ObjectNode plan = example();
    ArrayNode lawns = plan.putArray("lawns");
    lawns.add(
        JSON.readTree(
            "{\"name\": \"Bed\", \"outline\": \"0 0\\n30 0\\n30 12\\n0 12\\n\\n3 5.5\\n16 5.5\\n16 6.5\\n3 6.5\", \"bearingDeg\": 90, \"mower\": {\"deckWidthMm\": 500, \"discharge\": \"rear\"}}"));
    plan.put("design", "paired-strips").put("pairs", 2).remove("sides");
    Path map = folder.resolve("map.svg");
    Path paper = folder.resolve("paper.pdf");
    Ran ran = lay(plan(plan), "--map", map.toString(), "--paper", paper.toString());
    assertThat(ran.err()).isEmpty();
    String told = "X1, (north|south)[a-z-]* of B.-., its middle .* m from A, .* m from B, on the";
    assertThat(ran.out()).containsPattern("Dropped: " + told);
    assertThat(Files.readString(map)).contains(">X1<").containsPattern("Dropped: " + told);
    assertThat(text(paper).replaceAll("\\s+", " "))
        .contains("Dropped plots", "X1", "a bed lies in it or too near it");
    JsonNode report = JSON.readTree(lay(plan(plan), "--json").out());
    JsonNode last = report.get("plots").get(report.get("plots").size() - 1);
    assertThat(last.get("usable").asBoolean()).isFalse();
    assertThat(last.get("where").asText()).containsPattern(told.replace("X1", "X\\d+"));
    Schema schema = new Schema();
    assertThat(schema.faults("", schema.root("trial-layout.schema.json"), report)).isEmpty();
  }

  @Test
  void aLabelIsReadByMachine() throws Exception {
    Path labels = folder.resolve("labels.pdf");
    assertThat(lay(PLAN, "--labels", labels.toString()).exitCode()).isZero();
    JsonNode report = JSON.readTree(lay(PLAN, "--json").out());
    List<String> codes = new ArrayList<>();
    report.get("bags").forEach(bag -> codes.add(bag.get("code").asText()));
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(labels))) {
      assertThat(document.getNumberOfPages()).isEqualTo(4 + 5);
      String words = new PDFTextStripper().getText(document);
      assertThat(codes).allSatisfy(code -> assertThat(words).contains(code));
      assertThat(words).doesNotContain("B1-1", "half");
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 200);
      BufferedImage first = page.getSubimage(100, 150, 420, 280);
      int[] pixels = first.getRGB(0, 0, 420, 280, null, 0, 420);
      String read =
          new QRCodeReader()
              .decode(
                  new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(420, 280, pixels))))
              .getText();
      assertThat(read).isIn(codes);
    }
  }

  @Test
  void geoJsonNeedsAPlaceOnTheEarth() throws IOException {
    Path file = folder.resolve("layout.geojson");
    Ran ran = lay(PLAN, "--geojson", file.toString(), "--map", folder.resolve("m.svg").toString());
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("these lawns have none: Linden House, front");
    assertThat(folder).isEmptyDirectory();
    ObjectNode plan = example();
    for (JsonNode lawn : plan.get("lawns")) {
      ObjectNode square = ((ObjectNode) lawn).remove(List.of("keepOut")).putObject("outline");
      square.put("type", "Polygon");
      square.set(
          "coordinates",
          JSON.readTree("[[[10,50],[10.0004,50],[10.0004,50.0002],[10,50.0002],[10,50]]]"));
    }
    assertThat(lay(plan(plan), "--geojson", file.toString()).err()).isEmpty();
    JsonNode features = JSON.readTree(file.toFile()).get("features");
    assertThat(features.findValuesAsText("kind"))
        .contains("plot", "measured", "core", "corner", "fixed corner");
    assertThat(features.get(1).at("/properties/block").isInt()).isTrue();
    JsonNode position = features.get(0).at("/geometry/coordinates/0/0");
    assertThat(position.get(0).asDouble()).isCloseTo(10.0002, within(0.0003));
    assertThat(position.get(1).asDouble()).isCloseTo(50.0001, within(0.0002));
  }

  @Test
  void whatDoesNotFitIsASentence() throws IOException {
    ObjectNode plan = example();
    ((ObjectNode) plan.get("lawns").get(3)).put("outline", "3 x 1.5");
    ((ObjectNode) plan.get("lawns").get(3)).remove("keepOut");
    Ran ran = lay(plan(plan), "--json");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("Heron Bank, verge: nothing of the", "half is left to measure");
    assertThat(lay(folder.resolve("none.json")).err()).contains("there is no such file");
  }

  @Test
  void manyDatesOfManyCoresAreRefused() throws IOException {
    ObjectNode plan = example();
    ObjectNode lawn = keepFirst(plan, "lawns");
    plan.put("sides", "coin");
    lawn.remove("keepOut");
    lawn.put("outline", "7 x 5");
    ((ObjectNode) plan.get("cores")).put("perPlot", 60).put("fromOldHolesM", 1);
    Ran ran = lay(plan(plan), "--geojson", folder.resolve("places.geojson").toString());
    assertThat(ran.err()).contains("no place is left for core", "fewer cores");
    assertThat(ran.err()).contains("json, lawns: --geojson needs longitude and latitude");
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      return new PDFTextStripper().getText(document);
    }
  }
}
