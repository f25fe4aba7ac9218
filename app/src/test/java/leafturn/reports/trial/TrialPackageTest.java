package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import leafturn.records.archive.Sha256;
import leafturn.trials.observation.Reading;
import org.junit.jupiter.api.Test;

/** The data of a trial as a zip that describes itself. */
class TrialPackageTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final LocalDate DAY = LocalDate.of(2026, 4, 20);
  private static final List<Reading> READINGS =
      List.of(
          Reading.own("1r", DAY, "quality", "7", "Ada, \"the\" rater"),
          Reading.own("1c", DAY, "potassium", "<2", null));

  private static byte[] bytes() throws IOException {
    GeneratedTrial trial = GeneratedTrial.of(new SplittableRandom(3), 4, false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new TrialPackage(trial.findings(), "{}", "{}", READINGS, "leafturn").writeTo(out);
    return out.toByteArray();
  }

  private static Map<String, byte[]> members() throws IOException {
    Map<String, byte[]> members = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes()))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        members.put(entry.getName(), zip.readAllBytes());
      }
    }
    return members;
  }

  @Test
  void equalTrialsGiveEqualBytes() throws IOException {
    assertThat(bytes()).isEqualTo(bytes());
  }

  @Test
  void theDescriptorHoldsTheDigestOfEveryMember() throws IOException {
    Map<String, byte[]> members = members();
    JsonNode descriptor = JSON.readTree(members.get("datapackage.json"));
    assertThat(descriptor.get("resources")).hasSize(members.size() - 1);
    for (JsonNode resource : descriptor.get("resources")) {
      byte[] member = Objects.requireNonNull(members.get(resource.get("path").asText()));
      assertThat(resource.get("hash").asText()).isEqualTo("sha256:" + Sha256.of(member));
      assertThat(resource.get("bytes").asInt()).isEqualTo(member.length);
    }
  }

  @Test
  void readingsStandAsTheyWereGivenAndTheirPlotsAreKnown() throws IOException {
    Map<String, byte[]> members = members();
    String readings = new String(members.get("readings.csv"), StandardCharsets.UTF_8);
    assertThat(readings)
        .startsWith("plot,date,outcome,value,unit,")
        .contains("1r,2026-04-20,quality,7,,,,,,\"Ada, \"\"the\"\" rater\",,,\r\n")
        .contains("1c,2026-04-20,potassium,<2,");
    assertThat(new String(members.get("plots.csv"), StandardCharsets.UTF_8))
        .contains("1r,yard 1,returned");
    JsonNode results = JSON.readTree(members.get("results.json"));
    assertThat(results.get("reach").asText()).isEqualTo("nothing yet");
  }
}
