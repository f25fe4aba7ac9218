package leafturn.records;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

/** The example files and schemas of the documentation against the readers. */
class ExamplesTest {
  private static final Path SCHEMAS = Path.of("..", "docs", "schemas");

  @Test
  void everyLawnOfTheRoundAndItsLogCanBeRead() {
    RoundFile.Round round = RoundFile.read(Examples.file("round.json"));
    assertThat(round.lawns())
        .hasSize(6)
        .allSatisfy(
            lawn -> {
              assertThat(LawnFile.read(Examples.file(lawn.description())).lawn()).isNotNull();
              List<LogEntry> log = LogFile.read(Examples.file(lawn.log())).entries();
              assertThat(log).isNotEmpty();
              assertThat(log)
                  .allSatisfy(
                      entry ->
                          assertThat(entry.day()).isBetween(LocalDate.of(2015, 1, 1), round.day()));
            });
    assertThat(round.standing()).contains("invented");
  }

  @Test
  void theRoundHasFiveGrassesAndItsWeatherReachesItsDay() {
    RoundFile.Round round = RoundFile.read(Examples.file("round.json"));
    assertThat(round.lawns())
        .extracting(lawn -> LawnFile.read(Examples.file(lawn.description())).lawn())
        .extracting(lawn -> lawn.ground().grass())
        .contains(
            Species.TALL_FESCUE,
            Species.KENTUCKY_BLUEGRASS,
            Species.PERENNIAL_RYEGRASS,
            Species.BERMUDAGRASS,
            Species.FINE_FESCUE);
    WeatherReading weather =
        WeatherFile.read(Examples.file(round.weather()), WeatherFile.Choice.ONLY_SITE);
    assertThat(weather.series().indexOf(round.day())).isBetween(0, weather.series().days() - 1);
  }

  @Test
  void theSingleLawnAndItsLogCanBeRead() {
    assertThat(LawnFile.read(Examples.file("lawn.json")).lawn().parameters())
        .containsEntry("gmax", 19.0);
    assertThat(LogFile.read(Examples.file("log.csv")).entries()).hasSizeGreaterThan(5);
  }

  @Test
  void theLawnSchemaNamesTheFieldsTheReaderKnows() throws IOException {
    JsonNode schema = schema("lawn.schema.json");
    assertThat(fields(schema)).containsExactlyInAnyOrderElementsOf(knownFields(""));
    for (String section : List.of("site", "soil", "mowing", "irrigation", "mower", "known")) {
      assertThat(fields(schema.at("/properties/" + section)))
          .as(section)
          .containsExactlyInAnyOrderElementsOf(knownFields(section));
    }
    List<String> grasses = new ArrayList<>();
    schema.at("/properties/grass/enum").forEach(name -> grasses.add(name.textValue()));
    assertThat(grasses)
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(Species.values()).map(Species::commonName).toList());
    List<String> textures = new ArrayList<>();
    schema
        .at("/properties/soil/properties/texture/enum")
        .forEach(name -> textures.add(name.textValue()));
    assertThat(textures).isEqualTo(SoilTexture.all().stream().map(SoilTexture::name).toList());
  }

  @Test
  void theSchemasLimitsAreThoseOfTheReader() throws IOException {
    JsonNode schema = schema("lawn.schema.json");
    for (String section : List.of("site", "soil", "mowing", "irrigation", "mower")) {
      schema
          .at("/properties/" + section + "/properties")
          .properties()
          .forEach(
              field -> {
                JsonNode high = field.getValue().get("maximum");
                if (high != null) {
                  String range =
                      Numbers.range(
                          field.getValue().get("minimum").doubleValue(), high.doubleValue());
                  assertThat(faults("\"%s\": {\"%s\": 1e7}".formatted(section, field.getKey())))
                      .as("%s.%s", section, field.getKey())
                      .anySatisfy(fault -> assertThat(fault).contains(field.getKey(), range));
                }
              });
    }
  }

  /** A name nobody could have meant makes the reader list the valid ones. */
  private static List<String> knownFields(String section) {
    String nobodys = "\"qqqqqqqqqqqqqqqqqqqqqqqq\": 1";
    String field = section.isEmpty() ? nobodys : "\"%s\": {%s}".formatted(section, nobodys);
    String fault =
        faults(field).stream()
            .filter(f -> f.contains("qqq: there is no such field; valid names are"))
            .findFirst()
            .orElseThrow();
    String names = fault.substring(fault.indexOf("valid names are ") + 16, fault.length() - 1);
    return List.of(names.split(", "));
  }

  private static List<String> faults(String field) {
    return Examples.faultsOf(
        () ->
            LawnFile.read(
                new SourceText("LAWN.json", "{\"grass\": \"bermudagrass\", " + field + "}")));
  }

  private static JsonNode schema(String name) throws IOException {
    return new ObjectMapper().readTree(SCHEMAS.resolve(name).toFile());
  }

  private static List<String> fields(JsonNode schema) {
    List<String> names = new ArrayList<>();
    schema.get("properties").fieldNames().forEachRemaining(names::add);
    return names;
  }
}
