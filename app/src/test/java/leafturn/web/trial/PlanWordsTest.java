package leafturn.web.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import leafturn.quantity.Units;
import leafturn.web.sheet.Line;
import org.junit.jupiter.api.Test;

class PlanWordsTest {
  private static JsonNode plan() throws IOException {
    return new ObjectMapper().readTree("{\"plots\": {\"lengthM\": 2.5, \"edgeM\": 1}}");
  }

  @Test
  void distancesAreToldInTheReadersUnitsAndNoFinerThanTheyMatter() throws IOException {
    assertThat(new PlanWords(plan(), Units.METRIC).lines())
        .map(Line::words)
        .contains("2.5 m long, 1 m from the edge");
    assertThat(new PlanWords(plan(), Units.US).lines())
        .map(Line::words)
        .contains("8.2 ft long, 3.28 ft from the edge");
  }
}
