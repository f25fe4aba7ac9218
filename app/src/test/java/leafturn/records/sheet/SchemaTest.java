package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leafturn.records.InputException;
import leafturn.records.Numbers;
import leafturn.records.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schemas of the documentation say what the readers of the book take. */
class SchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int CONTENTS = 300;

  static List<Kind<?>> kinds() {
    return Kind.all();
  }

  private static String file(Kind<?> kind) {
    return "sheet-%s.schema.json".formatted(kind.name());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <C extends Content> void allowsEverythingThatIsWrittenAndNamesNoOtherField(Kind<C> kind)
      throws IOException {
    Schema schema = new Schema();
    Schema.Place root = schema.root(file(kind));
    for (long seed = 0; seed < CONTENTS; seed++) {
      JsonNode document = JSON.readTree(kind.write(new AnySheet(seed).of(kind)));
      assertThat(schema.faults("", root, document)).as("seed %d: %s", seed, document).isEmpty();
    }
    Set<String> named = new LinkedHashSet<>();
    collect(schema, root, "", named);
    assertThat(schema.fieldsMet()).containsExactlyInAnyOrderElementsOf(named);
  }

  private static void collect(Schema schema, Schema.Place place, String path, Set<String> named) {
    Schema.Place resolved = schema.resolved(place);
    resolved
        .schema()
        .path("properties")
        .properties()
        .forEach(
            field -> {
              String fieldPath = path.isEmpty() ? field.getKey() : path + "." + field.getKey();
              named.add(fieldPath);
              Schema.Place member = new Schema.Place(resolved.file(), field.getValue());
              collect(schema, member, fieldPath, named);
            });
    JsonNode items = resolved.schema().path("items");
    if (items.isObject()) {
      collect(schema, new Schema.Place(resolved.file(), items), path + "[]", named);
    }
    for (JsonNode each : resolved.schema().path("oneOf")) {
      collect(schema, new Schema.Place(resolved.file(), each), path, named);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void hasTheLimitsAndTheNeedsOfTheReader(Kind<?> kind) throws IOException {
    Schema schema = new Schema();
    JsonNode root = schema.root(file(kind)).schema();
    ObjectNode document = (ObjectNode) JSON.readTree(write(kind, 1));
    for (JsonNode required : root.path("required")) {
      ObjectNode without = document.deepCopy();
      without.remove(required.textValue());
      assertThat(faultsOf(kind, without))
          .as("without %s", required)
          .anySatisfy(fault -> assertThat(fault).contains(required.textValue(), "is missing"));
    }
    root.path("properties")
        .properties()
        .forEach(
            field -> {
              Schema.Place place = new Schema.Place(file(kind), field.getValue());
              checkHighest(kind, document, field.getKey(), schema.resolved(place).schema());
            });
  }

  /** One more than the schema's maximum, which the reader must refuse with the same limits. */
  private static void checkHighest(
      Kind<?> kind, ObjectNode document, String name, JsonNode property) {
    if (!property.has("maximum") || kind == Kind.LOG && !document.has(name)) {
      return;
    }
    double highest = property.get("maximum").doubleValue();
    ObjectNode beyond = document.deepCopy().put(name, highest + 1);
    String range = Numbers.range(property.get("minimum").doubleValue(), highest);
    assertThat(faultsOf(kind, beyond))
        .as("%s beyond %s", name, highest)
        .anySatisfy(fault -> assertThat(fault).contains(name, range));
  }

  private static <C extends Content> String write(Kind<C> kind, long seed) {
    return kind.write(new AnySheet(seed).of(kind));
  }

  private static List<String> faultsOf(Kind<?> kind, JsonNode document) {
    try {
      kind.read(new SourceText("sheet", document.toString()));
      return List.of();
    } catch (InputException e) {
      return e.faults();
    }
  }

  @Test
  void isListedForEveryKind() throws IOException {
    String list = Files.readString(Path.of("..", "docs", "schemas", "README.md"));
    assertThat(Kind.all())
        .hasSize(19)
        .allSatisfy(kind -> assertThat(list).contains("(%s)".formatted(file(kind))));
  }
}
