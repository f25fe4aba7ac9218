package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import leafturn.records.Examples;
import leafturn.records.LawnFile;
import leafturn.records.LawnReading;
import leafturn.records.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A lawn description taken apart into sheets and composed again is the same lawn. */
class LawnDocumentTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String ID = "00000000-0000-4000-8000-000000000001";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lawn.json",
        "heron-bank-play.lawn.json",
        "heron-bank-verge.lawn.json",
        "linden-house-back.lawn.json",
        "linden-house-front.lawn.json",
        "mill-race-orchard.lawn.json",
        "quarry-cottage-terrace.lawn.json"
      })
  void composesTheLawnItWasTakenApartFrom(String example) throws IOException {
    LawnReading expected = LawnFile.read(Examples.file(example));
    JsonNode file = JSON.readTree(Examples.file(example).toFile());

    SourceText composed =
        LawnDocument.compose(property(file), station(file), lawn(file), programme(file));

    LawnReading actual = LawnFile.read(composed);
    assertThat(composed.name()).isEqualTo("the-lawn");
    if (file.path("site").has("timeZone")) {
      assertThat(actual.lawn()).isEqualTo(expected.lawn());
    } else {
      assertThat(actual.lawn().ground()).isEqualTo(expected.lawn().ground());
      assertThat(actual.lawn().programme()).isEqualTo(expected.lawn().programme());
    }
    assertThat(actual.notes()).isEqualTo(expected.notes());
  }

  @Test
  void composesADescriptionThatCanBeReadFromSheetsOfAnyKind() {
    for (long seed = 0; seed < 300; seed++) {
      AnySheet any = new AnySheet(seed);
      LawnSheet lawn = any.of(Kind.LAWN);
      SourceText composed =
          LawnDocument.compose(
              any.of(Kind.PROPERTY), any.of(Kind.STATION), lawn, any.of(Kind.PROGRAMME));
      assertThat(LawnFile.read(composed).lawn().ground().areaM2())
          .as("seed %d", seed)
          .isEqualTo(lawn.surfaceM2());
    }
  }

  private static Property property(JsonNode file) {
    ObjectNode json = ((ObjectNode) file.path("site").deepCopy()).without("windHeightM");
    json.put("name", "The property").put("address", "the-property");
    if (!json.has("timeZone")) {
      json.put("timeZone", "UTC");
    }
    return Kind.PROPERTY.read(text(json));
  }

  private static WeatherStation station(JsonNode file) {
    ObjectNode json = JSON.createObjectNode().put("name", "S").put("origin", "made for this test");
    json.set("windHeightM", file.path("site").path("windHeightM"));
    return Kind.STATION.read(text(json));
  }

  private static LawnSheet lawn(JsonNode file) {
    ObjectNode json = file.deepCopy();
    json.without(List.of("site", "mowing", "feeding", "irrigation"));
    json.put("property", ID).put("name", "The lawn").put("address", "the-lawn");
    json.put("habit", "Mown when somebody finds the time.").put("slopePercent", 4);
    if (json.has("mower")) {
      ((ObjectNode) json.get("mower"))
          .put("deckType", "rear bag")
          .put("lastSharpened", "2015-04-01");
    }
    return Kind.LAWN.read(text(json));
  }

  private static ProgrammeSheet programme(JsonNode file) {
    ObjectNode json = JSON.createObjectNode().put("lawn", ID).put("from", "2015-01-01");
    for (String name : List.of("mowing", "feeding", "irrigation")) {
      if (file.has(name)) {
        json.set(name, file.get(name));
      }
    }
    json.putArray("mowingDays").add("friday").add("saturday");
    json.put("mownBy", "Ines");
    return Kind.PROGRAMME.read(text(json));
  }

  private static SourceText text(JsonNode json) {
    return new SourceText("sheet", json.toString());
  }
}
