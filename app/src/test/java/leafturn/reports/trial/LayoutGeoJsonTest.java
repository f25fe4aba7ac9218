package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.trials.design.layout.TrialLayout;
import org.junit.jupiter.api.Test;

/** The file of a layout for maps. */
class LayoutGeoJsonTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @Test
  void eachLawnIsThereWithItsHolesBeforeItsPlots() throws IOException {
    ObjectNode plan = StandingWordsTest.plan(0.5);
    for (JsonNode lawn : plan.path("lawns")) {
      ObjectNode outline = ((ObjectNode) lawn).remove(List.of("keepOut")).putObject("outline");
      outline.put("type", "Polygon");
      outline.set(
          "coordinates",
          JSON.readTree(
              "[[[10,50],[10.0004,50],[10.0004,50.0002],[10,50.0002],[10,50]],"
                  + "[[10.0001,50.0001],[10.0001,50.00012],[10.00013,50.0001],[10.0001,50.0001]]]"));
    }
    TrialLayout layout = TrialLayout.of(BookPlan.of(TrialSheet.planned(plan, List.of())));
    JsonNode features = JSON.readTree(LayoutGeoJson.of(layout)).path("features");
    List<String> kinds = features.findValuesAsText("kind");
    assertThat(kinds).startsWith("lawn", "plot", "measured");
    assertThat(kinds.stream().filter("lawn"::equals)).hasSize(plan.path("lawns").size());
    JsonNode lawn = features.get(0);
    assertThat(lawn.at("/properties/lawn").asText()).isEqualTo("Linden House, front");
    assertThat(lawn.at("/geometry/type").asText()).isEqualTo("Polygon");
    assertThat(lawn.at("/geometry/coordinates")).as("outline and hole").hasSize(2);
    assertThat(lawn.at("/geometry/coordinates/1")).hasSize(4);
  }
}
