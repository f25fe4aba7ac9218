package leafturn.records.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import leafturn.records.Examples;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.sheet.Schema;
import leafturn.trials.design.Design;
import leafturn.trials.design.TrialPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan of a trial as a file: what it says, how it is written, and every way to be wrong. */
class TrialPlanFileTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String EXAMPLE = "split-yards.trial.json";

  @TempDir private Path folder;

  private static ObjectNode example() {
    try {
      return (ObjectNode) JSON.readTree(Examples.text(EXAMPLE).text());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static TrialPlan read(JsonNode document) {
    return TrialPlanFile.read(new SourceText("TRIAL.json", document.toString()));
  }

  private static List<String> faults(JsonNode document) {
    InputException wrong = catchThrowableOfType(InputException.class, () -> read(document));
    assertThat(wrong).as("this was read without a fault").isNotNull();
    return wrong.faults();
  }

  private static List<String> faultsAfter(Consumer<ObjectNode> change) {
    ObjectNode document = example();
    change.accept(document);
    return faults(document);
  }

  private static ObjectNode lawn(ObjectNode document, int index) {
    return (ObjectNode) document.get("lawns").get(index);
  }

  @Test
  void theExampleSaysWhatItSays() {
    TrialPlan plan = TrialPlanFile.read(Examples.file(EXAMPLE));
    assertThat(plan.arrangement().design()).isEqualTo(Design.SPLIT_YARD);
    assertThat(plan.arrangement().blocks()).isEqualTo(8);
    assertThat(plan.lawns()).hasSize(8);
    assertThat(plan.lawns().get(0).turf().getArea()).isEqualTo(26 * 12 + 17 * 4);
    assertThat(plan.lawns().get(4).turf().getArea()).isEqualTo(28 * 20 - 2 * 2.25);
    assertThat(plan.treatments().contrasts().get(0).first()).isEqualTo("returned");
    assertThat(plan.primary().name()).isEqualTo("quality");
    assertThat(plan.observing().cores().dates()).hasSize(2);
  }

  @Test
  void whatIsWrittenFitsTheSchemaAndIsReadAsTheSamePlan() throws IOException {
    Schema schema = new Schema();
    Schema.Place root = schema.root("trial.schema.json");
    assertThat(schema.faults("", root, example())).isEmpty();
    TrialPlan plan = read(example());
    JsonNode written = JSON.valueToTree(TrialPlanText.tree(plan));
    assertThat(schema.faults("", root, JSON.readTree(written.toString()))).isEmpty();
    TrialPlan again = read(JSON.readTree(TrialPlanText.canonical(plan)));
    assertThat(again).isEqualTo(plan);
    assertThat(TrialPlanText.sha256(again)).isEqualTo(TrialPlanText.sha256(plan));
  }

  @Test
  void theDigestTellsPlansApartAndNotTheirSpelling() {
    String digest = TrialPlanText.sha256(read(example()));
    assertThat(digest).matches("[0-9a-f]{64}");
    ObjectNode same = example();
    ((ObjectNode) same.get("plots")).remove("passes");
    same.remove("protocol");
    same.set("protocol", example().get("protocol"));
    lawn(same, 1).put("outline", "0 0\n22 0\n22 14\n0 14");
    assertThat(TrialPlanText.sha256(read(same))).isEqualTo(digest);
    ObjectNode other = example();
    other.put("seed", 20260402);
    assertThat(TrialPlanText.sha256(read(other))).isNotEqualTo(digest);
  }

  @Test
  void canonicalNumbersHaveNoExponentAndNoNeedlessZeros() {
    ObjectNode document = example();
    ((ObjectNode) document.get("outcomes").get(0)).put("margin", 1e-8);
    String canonical = TrialPlanText.canonical(read(document));
    assertThat(canonical)
        .contains("\"margin\":0.00000001", "\"feedShare\":1", "\"fromOldHolesM\":0.3")
        .doesNotContain(": ", "E-8");
  }

  @Test
  void outlinesMayBeGeoJsonInThePlanOrBesideIt() throws IOException {
    String ring = "[[10,50],[10.0003,50],[10.0003,50.0002],[10,50.0002],[10,50]]";
    String polygon = "{\"type\":\"Polygon\",\"coordinates\":[%s]}".formatted(ring);
    ObjectNode within = example();
    lawn(within, 0).set("outline", JSON.readTree(polygon));
    lawn(within, 0)
        .set(
            "keepOut",
            JSON.readTree(
                "[%s]".formatted(polygon.replace("0003", "0001").replace("0002", "0001"))));
    TrialPlan plan = read(within);
    assertThat(plan.lawns().get(0).origin()).isNotNull();
    assertThat(
            plan.lawns().get(0).keepOut().get(0).getArea() / plan.lawns().get(0).turf().getArea())
        .isCloseTo(1 / 6.0, within(1e-3));
    assertThat(plan.lawns().get(0).turf().covers(plan.lawns().get(0).keepOut().get(0))).isTrue();
    ObjectNode beside = within.deepCopy();
    lawn(beside, 0).remove("outline");
    lawn(beside, 0).put("outlineFile", "lawn.geojson");
    Files.writeString(folder.resolve("lawn.geojson"), polygon);
    Path file = Files.writeString(folder.resolve("TRIAL.json"), beside.toString());
    assertThat(TrialPlanText.sha256(TrialPlanFile.read(file)))
        .isEqualTo(TrialPlanText.sha256(plan));
    assertThat(faults(beside)).singleElement().asString().contains("no file can be named here");
    lawn(within, 0).put("outline", "20 x 20");
    assertThat(faults(within)).singleElement().asString().contains("in m too");
  }

  @Test
  void aFileOfManyThingsIsRefusedInAFewSentences() throws IOException {
    ObjectNode document = example();
    lawn(document, 0).remove("outline");
    lawn(document, 0).put("outlineFile", "layout.geojson");
    String point = "{'type':'Feature','geometry':{'type':'Point','coordinates':[1,2]}}";
    String features = String.join(",", Collections.nCopies(40, point));
    Files.writeString(
        folder.resolve("layout.geojson"),
        "{'type':'FeatureCollection','features':[%s]}".formatted(features).replace('\'', '"'));
    Path file = Files.writeString(folder.resolve("TRIAL.json"), document.toString());
    InputException wrong =
        catchThrowableOfType(InputException.class, () -> TrialPlanFile.read(file));
    assertThat(wrong.faults()).hasSize(4).last().asString().contains("outline alone");
  }

  @Test
  void allFaultsAreToldAtOnce() {
    assertThat(
            faultsAfter(
                plan -> {
                  plan.remove("question");
                  plan.put("designn", "split-yard");
                  lawn(plan, 0).put("outline", "0 0\n1 1");
                  lawn(plan, 1).remove("mower");
                  plan.put("seed", 1.5);
                }))
        .anySatisfy(fault -> assertThat(fault).contains("question: it is missing"))
        .anySatisfy(fault -> assertThat(fault).contains("designn", "did you mean design?"))
        .anySatisfy(fault -> assertThat(fault).contains("lawns[0].outline", "2 corners", "three"))
        .anySatisfy(fault -> assertThat(fault).contains("lawns[1].mower.deckWidthMm"))
        .anySatisfy(fault -> assertThat(fault).contains("seed", "whole number"));
  }

  @Test
  void aSeasonOrDatesOutOfOrderAreOneSentence() {
    assertThat(faultsAfter(plan -> plan.putArray("dates").add("2026-06-01").add("2026-04-20")))
        .hasSize(1);
    assertThat(
            faultsAfter(
                plan -> plan.putObject("season").put("from", "2026-10-31").put("to", "2026-04-01")))
        .hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          design     | "latin-squares"                     | did you mean latin-square?
          design     | "latin-square"                      | no degree of freedom
          design     | "split-plot"                        | needs a second factor
          design     | "paired-strips"                     | pairs: it is missing
          design     | "randomised-block"                  | blocks: it is missing
          design     | "listed"                            | it holds 0; give 2 to
          blocks     | 4                                   | counts no blocks
          arms       | [{"name":"only"}]                   | there is 1; give 2 to 8 treatments
          arms       | [{"name":"a"},{"name":"A"}]         | two treatments are called
          arms       | [{"name":"a"},{"name":"b"},{"name":"c"}] | compares two treatments, and there are 3
          contrasts  | [["returned","mown"]]               | "mown" is none of the treatments
          contrasts  | [["returned","returned"]]           | is compared with itself
          contrasts  | [["returned"]]                      | names 1 treatments; give two
          contrasts  | []                                  | no comparison is planned
          secondFactor | "feed"                            | has one factor
          dates      | ["2026-06-01","2026-04-20"]         | 2026-04-20 stands after 2026-06-01
          dates      | ["2026-06-01","2026-06-01"]         | stands in the list already
          dates      | ["2027-06-01"]                      | lies outside the season
          dates      | ["June"]                            | is no day
          season     | {"from":"2026-10-31","to":"2026-04-01"} | it ends on 2026-04-01
          lawns      | []                                  | it is empty
          seed       | -1                                  | is no seed
          plots      | {"passes":0}                        | plots.passes
          cores      | {"dates":["2025-01-01"]}            | lies outside the season
          outcomes   | [{"name":"q","kind":"rating","unit":"1-9","low":1,"high":9}] | 0 of 1 are primary
          outcomes   | [{"name":"q","kind":"rating","unit":"1-9","low":1,"high":9,"primary":true}] | has no margin
          outcomes   | [{"name":"q","kind":"rating","unit":"1-9","primary":true,"margin":1}] | a rating needs low and high
          outcomes   | [{"name":"q","kind":"soil","unit":"mg/kg","scale":"log","primary":true,"margin":0.5}] | ratio above 1
          outcomes   | [{"name":"q","kind":"rating","unit":"1-9","low":1,"high":9,"scale":"log","primary":true,"margin":2}] | no logarithm
          outcomes   | [{"name":"q","kind":"rating","unit":"1-9","low":1,"high":9,"primary":true,"margin":8}] | outcomes[0].margin: outcome "q": the margin 8 is half
          outcomes   | [{"name":"q","kind":"soil","unit":"mg/kg","low":9,"high":1,"primary":true,"margin":1}] | must lie below
          protocol   | {"feed":"reduced"}                  | have the same feedShare
          protocol   | {"heightMm":1e300}                  | protocol.heightMm
          """)
  void aPlanThatCannotBeIsRefused(String field, String value, String words) throws IOException {
    JsonNode replaced = JSON.readTree(value);
    assertThat(faultsAfter(plan -> plan.set(field, replaced)))
        .anySatisfy(fault -> assertThat(fault).contains(words));
  }

  @Test
  void tenTreatmentsAreRefusedAndSoAreTenOnEightPlots() {
    List<String> faults =
        faultsAfter(
            plan -> {
              ArrayNode arms = plan.putArray("arms");
              ArrayNode layout = plan.putArray("allowedLayouts").addArray();
              for (int i = 0; i < 10; i++) {
                arms.addObject().put("name", "t" + i);
                if (i < 8) {
                  layout.add("t" + i);
                }
              }
              plan.put("design", "listed");
              plan.remove("sides");
              plan.putArray("contrasts").addArray().add("t1").add("t0");
            });
    assertThat(faults)
        .anySatisfy(fault -> assertThat(fault).contains("there are 10; give 2 to 8 treatments"))
        .anySatisfy(fault -> assertThat(fault).contains("10 treatments cannot stand on 8 plots"));
  }

  @Test
  void aListOfLayoutsNamesWhatIsWrongInIt() {
    Consumer<ObjectNode> listed =
        plan -> {
          plan.put("design", "listed");
          plan.remove("sides");
          while (plan.get("lawns").size() > 2) {
            ((ArrayNode) plan.get("lawns")).remove(2);
          }
          plan.set(
              "allowedLayouts",
              JSON.valueToTree(
                  List.of(
                      List.of("collected", "returned", "returned", "collected"),
                      List.of("collected", "returned", "collected", "returned"))));
        };
    ObjectNode good = example();
    listed.accept(good);
    assertThat(read(good).arrangement().blocks()).isEqualTo(2);
    assertThat(
            faultsAfter(
                plan -> {
                  listed.accept(plan);
                  ArrayNode first = (ArrayNode) plan.get("allowedLayouts").get(0);
                  first.set(0, "mown");
                  first.set(3, "mown");
                }))
        .anySatisfy(fault -> assertThat(fault).contains("layout 1", "\"mown\""))
        .anySatisfy(fault -> assertThat(fault).contains("no plot of \"collected\""));
    assertThat(
            faultsAfter(
                plan -> {
                  listed.accept(plan);
                  ((ArrayNode) plan.get("allowedLayouts"))
                      .set(0, plan.get("allowedLayouts").get(1));
                }))
        .anySatisfy(
            fault ->
                assertThat(fault).contains("layout 2 stands in the list already, as layout 1"));
  }
}
