package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import leafturn.quantity.Property;
import leafturn.records.Examples;
import leafturn.records.Sha256;
import leafturn.records.sheet.AnySheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Schema;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.PackedTrial;
import leafturn.records.trial.TrialPackageFile;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.observation.MeasuredReading;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The data of a trial as a zip that describes itself, and its way back. */
class TrialPackageTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final LocalDate DAY = LocalDate.of(2026, 4, 20);
  private static final List<String> TEXTS =
      List.of(
          "plain",
          "=SUM(A1)",
          "'=quoted",
          "-4 below",
          "+3",
          "@home",
          "a, b; \"c\"",
          "two\nlines",
          "Größe €");

  private static TrialSheet sheet(long seed, TrialSheet.@Nullable Frozen frozen) {
    try {
      ObjectNode plan =
          (ObjectNode) JSON.readTree(Files.readString(Examples.file("split-yards.trial.json")));
      plan.put("seed", seed);
      return new TrialSheet(plan, List.of(), frozen, null, null, null, null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(PackedTrial trial) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TrialLayout layout = TrialLayout.of(BookPlan.of(trial.trial()));
    try {
      new TrialPackage(trial, layout, null, "leafturn").writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static PackedTrial example() {
    Reading rated = Reading.own("B1-1", DAY, "quality", "7", "Ada, \"the\" rater");
    Reading soil = potassium("<2", "ppm K2O", 2);
    return new PackedTrial(sheet(7, null), List.of(), List.of(rated, soil));
  }

  private static Map<String, byte[]> members() throws IOException {
    return members(example());
  }

  private static Map<String, byte[]> members(PackedTrial trial) throws IOException {
    Map<String, byte[]> members = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes(trial)))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        members.put(entry.getName(), zip.readAllBytes());
      }
    }
    return members;
  }

  private static Reading potassium(String value, String unit, int duplicate) {
    return MeasuredReading.of("B1-2", DAY, "soil_potassium", value, unit)
        .duplicate(duplicate)
        .reading();
  }

  @Test
  void aMeanWithALimitInItTellsHowMuchOfItStandsIn() throws IOException {
    PackedTrial trial =
        new PackedTrial(
            sheet(7, null),
            List.of(),
            List.of(potassium("<20", "mg/kg", 1), potassium("23", "mg/kg", 2)));
    String values =
        members(trial).entrySet().stream()
            .filter(member -> member.getKey().contains("soil_potassium"))
            .map(member -> new String(member.getValue(), StandardCharsets.UTF_8))
            .findFirst()
            .orElseThrow();
    assertThat(values.lines().toList().get(0)).endsWith("soil_potassium,of_which_half_limits");
    assertThat(values.lines().toList().get(1)).endsWith(",16.5,5.0");
  }

  private static String text(String member) throws IOException {
    return new String(
        Objects.requireNonNull(members().get(member), member), StandardCharsets.UTF_8);
  }

  @Test
  void equalTrialsGiveEqualBytes() {
    assertThat(bytes(example())).isEqualTo(bytes(example()));
  }

  @Test
  void theDescriptorHoldsTheDigestOfEveryMemberAndEveryColumn() throws IOException {
    Map<String, byte[]> members = members();
    JsonNode descriptor = JSON.readTree(members.get("datapackage.json"));
    assertThat(descriptor.get("resources")).hasSize(members.size() - 1);
    for (JsonNode resource : descriptor.get("resources")) {
      String path = resource.get("path").asText();
      byte[] member = Objects.requireNonNull(members.get(path));
      assertThat(resource.get("hash").asText()).isEqualTo("sha256:" + Sha256.of(member));
      assertThat(resource.get("bytes").asInt()).isEqualTo(member.length);
      if (path.endsWith(".csv")) {
        List<String> columns = new ArrayList<>();
        resource.at("/schema/fields").forEach(field -> columns.add(field.get("name").asText()));
        assertThat(text(path).lines().findFirst()).contains(String.join(",", columns));
      }
    }
    assertThat(descriptor.toString()).contains("it may differ from row to row");
  }

  private static JsonNode schema(PackedTrial trial, String path) throws IOException {
    JsonNode descriptor = JSON.readTree(members(trial).get("datapackage.json"));
    for (JsonNode resource : descriptor.get("resources")) {
      if (resource.get("path").asText().equals(path)) {
        return resource.get("schema");
      }
    }
    throw new AssertionError(path + " is not there");
  }

  private static List<String> key(PackedTrial trial, String path) throws IOException {
    List<String> key = new ArrayList<>();
    schema(trial, path).path("primaryKey").forEach(column -> key.add(column.asText()));
    return key;
  }

  @Test
  void theTablesTellTheirKeysAndWhatTheirCellsKeepTo() throws IOException {
    assertThat(key(example(), "readings.csv")).containsExactly("plot", "date", "outcome");
    assertThat(key(example(), "values-3-soil_potassium.csv")).containsExactly("plot", "date");
    Reading one = potassium("<20", "mg/kg", 1);
    PackedTrial twice =
        new PackedTrial(sheet(7, null), List.of(), List.of(one, potassium("23", "mg/kg", 2)));
    assertThat(key(twice, "readings.csv"))
        .containsExactly("plot", "date", "outcome", "rater", "sample", "duplicate");
    PackedTrial alike = new PackedTrial(sheet(7, null), List.of(), List.of(one, one));
    assertThat(key(alike, "readings.csv")).isEmpty();
    JsonNode fields = schema(example(), "readings.csv").get("fields");
    assertThat(fields.at("/0/constraints/required").asBoolean()).isTrue();
    assertThat(fields.at("/2/constraints/enum").toString())
        .isEqualTo("[\"quality\",\"tissue_potassium\",\"soil_potassium\"]");
    JsonNode quality = schema(example(), "values-1-quality.csv").get("fields").get(9);
    assertThat(quality.get("type").asText()).isEqualTo("number");
    assertThat(quality.at("/constraints/minimum").asDouble()).isEqualTo(1);
    assertThat(quality.at("/constraints/maximum").asDouble()).isEqualTo(9);
  }

  /** A package of before keys and constraints were told is read as well. */
  @Test
  void theDescriptorsTablesAreNoPartOfTheWayBack() throws IOException {
    Map<String, byte[]> members = members();
    ObjectNode descriptor = (ObjectNode) JSON.readTree(members.get("datapackage.json"));
    descriptor.get("resources").forEach(resource -> ((ObjectNode) resource).remove("schema"));
    members.put("datapackage.json", descriptor.toString().getBytes(StandardCharsets.UTF_8));
    ByteArrayOutputStream old = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(old)) {
      for (Map.Entry<String, byte[]> member : members.entrySet()) {
        zip.putNextEntry(new ZipEntry(member.getKey()));
        zip.write(member.getValue());
      }
    }
    assertThat(TrialPackageFile.open("old.zip", old.toByteArray()).read().readings()).hasSize(2);
  }

  @Test
  void readingsStandAsTheyWereGivenAndValuesInTheUnitOfThePlan() throws IOException {
    assertThat(text("readings.csv"))
        .startsWith("plot,date,outcome,value,unit,")
        .contains("B1-1,2026-04-20,quality,7,,,,,,\"Ada, \"\"the\"\" rater\",,,\r\n")
        .contains("B1-2,2026-04-20,soil_potassium,<2,ppm K2O,");
    assertThat(text("values-3-soil_potassium.csv"))
        .startsWith("plot,unit,arm,")
        .containsPattern("B1-2,\"Linden House, front\",\\w+,,1,2,2026-04-20,,,<1\\.66");
    assertThat(text("plots.csv")).contains("B1-1,\"Linden House, front\",");
    assertThat(members()).doesNotContainKey("results.json");
  }

  private static @Nullable String textOrNone(SplittableRandom random) {
    return random.nextBoolean() ? null : TEXTS.get(random.nextInt(TEXTS.size()));
  }

  private static List<Reading> readings(SplittableRandom random, TrialLayout layout) {
    List<Reading> readings = new ArrayList<>();
    layout
        .plots()
        .forEach(
            plot -> {
              LocalDate date = DAY.plusDays(random.nextInt(60));
              String value = (random.nextInt(4) == 0 ? "<" : "") + random.nextInt(1, 900) / 10.0;
              readings.add(
                  new Reading(
                      plot.code(),
                      date,
                      random.nextBoolean() ? "soil_potassium" : "tissue_potassium",
                      value,
                      "%",
                      textOrNone(random),
                      textOrNone(random),
                      random.nextBoolean() ? null : random.nextDouble(),
                      textOrNone(random),
                      textOrNone(random),
                      textOrNone(random),
                      random.nextBoolean() ? null : random.nextInt(1, 20),
                      textOrNone(random)));
            });
    return readings;
  }

  @Test
  void whatIsWrittenIsReadBackTheSame() {
    Property.forAll(
        20261129,
        8,
        random -> {
          AnySheet any = new AnySheet(random.nextLong());
          TrialSheet.Frozen frozen = any.of(Kind.TRIAL).frozen();
          TrialSheet trial = sheet(random.nextInt(1_000_000), frozen);
          List<TrialEventSheet> events =
              List.of(any.of(Kind.TRIAL_EVENT), any.of(Kind.TRIAL_EVENT));
          TrialLayout layout = TrialLayout.of(BookPlan.of(trial));
          PackedTrial packed = new PackedTrial(trial, events, readings(random, layout));
          byte[] zip = bytes(packed);
          PackedTrial back = TrialPackageFile.open("trial.zip", zip).read();
          assertThat(back).isEqualTo(packed);
          assertThat(bytes(back)).isEqualTo(zip);
          Schema schema = new Schema();
          Schema.Place root = schema.root("trial-record.schema.json");
          assertThat(schema.faults("", root, packed.record())).isEmpty();
        });
  }
}
