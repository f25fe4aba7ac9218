package leafturn.records.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import leafturn.records.Examples;
import leafturn.records.InputException;
import leafturn.records.Sha256;
import leafturn.reports.trial.TrialPackage;
import leafturn.trials.observation.MeasuredReading;
import leafturn.trials.observation.Reading;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Packages that are damaged, changed or hostile: refused with a sentence, nothing written. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TrialPackageFileTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Map<String, byte[]> whole = new LinkedHashMap<>();
  private byte[] zip = new byte[0];

  @BeforeAll
  void pack() throws IOException {
    PackedTrial trial =
        PackedTrial.read(
            Examples.file("split-yards.trial.json"),
            Examples.file("split-yards.readings.csv"),
            null);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TrialPackage.of(trial, LocalDate.of(2026, 6, 1), ZoneOffset.UTC).writeTo(out);
    zip = out.toByteArray();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        whole.put(entry.getName(), in.readAllBytes());
      }
    }
  }

  private static byte[] zipOf(Map<String, byte[]> members) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream writing = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> member : members.entrySet()) {
        writing.putNextEntry(new ZipEntry(member.getKey()));
        writing.write(member.getValue());
        writing.closeEntry();
      }
    }
    return out.toByteArray();
  }

  private static List<String> faults(byte[] zip) {
    InputException wrong =
        catchThrowableOfType(
            InputException.class, () -> TrialPackageFile.open("t.zip", zip).read());
    assertThat(wrong).isNotNull();
    return wrong.faults();
  }

  /** The members with one changed, and a descriptor that tells its digest. */
  private Map<String, byte[]> changed(String member, String text) throws IOException {
    Map<String, byte[]> members = new LinkedHashMap<>(whole);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    members.put(member, bytes);
    ObjectNode descriptor = (ObjectNode) JSON.readTree(whole.get("datapackage.json"));
    descriptor
        .get("resources")
        .forEach(
            resource -> {
              if (resource.get("path").asText().equals(member)) {
                ((ObjectNode) resource).put("hash", "sha256:" + Sha256.of(bytes));
              }
            });
    members.put("datapackage.json", descriptor.toString().getBytes(StandardCharsets.UTF_8));
    return members;
  }

  private String text(String member) {
    return new String(whole.getOrDefault(member, new byte[0]), StandardCharsets.UTF_8);
  }

  @Test
  void theExampleIsReadBack(@TempDir Path folder) {
    PackedTrial back = TrialPackageFile.open("t.zip", zip).read();
    assertThat(back.readings()).hasSize(230);
    Path into = folder.resolve("new");
    TrialPackageFile.open("t.zip", zip).unpack(into);
    assertThat(into).isDirectoryContaining(file -> file.endsWith("readings.csv"));
    InputException again =
        catchThrowableOfType(
            InputException.class, () -> TrialPackageFile.open("t.zip", zip).unpack(into));
    assertThat(again.faults().get(0)).contains("not empty", "give a new one");
  }

  /** Readings of a book may have been typed with a comma. */
  @Test
  void decimalCommasAreReadBackAsPoints() throws IOException {
    PackedTrial example = TrialPackageFile.open("t.zip", zip).read();
    LocalDate day = LocalDate.of(2026, 4, 20);
    Reading below = MeasuredReading.of("B1-2", day, "soil_potassium", "< 6,5", "mg/kg").reading();
    List<Reading> typed = List.of(Reading.own("B1-1", day, "quality", "6,5", "Ada"), below);
    PackedTrial own = new PackedTrial(example.trial(), List.of(), typed);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TrialPackage.of(own, LocalDate.of(2026, 6, 1), ZoneOffset.UTC).writeTo(out);
    PackedTrial back = TrialPackageFile.open("t.zip", out.toByteArray()).read();
    assertThat(back.readings()).extracting(Reading::value).containsExactly("6.5", "< 6.5");
  }

  @Test
  void whatIsNoPackageIsRefused() throws IOException {
    assertThat(faults("no zip".getBytes(StandardCharsets.UTF_8)).get(0))
        .contains("t.zip", "cannot be read as a zip file");
    assertThat(faults(java.util.Arrays.copyOf(zip, zip.length / 2)).get(0))
        .contains("cannot be read as a zip file");
    assertThat(faults(zipOf(Map.of("README.md", new byte[3]))).get(0))
        .contains("datapackage.json is missing");
    assertThat(faults(new byte[TrialPackageFile.LIMIT_BYTES + 1]).get(0))
        .contains("too large", "10 MB");
  }

  @Test
  void aPathThatLeadsElsewhereIsRefused() throws IOException {
    for (String path : List.of("../readings.csv", "/etc/passwd", "a/plan.json", "values-1-..csv")) {
      assertThat(faults(zipOf(Map.of(path, new byte[3]))))
          .satisfiesExactly(each -> assertThat(each).contains(path, "does not belong"));
    }
  }

  @Test
  void aZipThatUnpacksWithoutEndIsRefused() throws IOException {
    byte[] bomb = zipOf(Map.of("readings.csv", new byte[200_000_000]));
    assertThat(bomb).hasSizeLessThan(300_000);
    assertThat(faults(bomb))
        .satisfiesExactly(
            each -> assertThat(each).contains("readings.csv unpacks to more than 20 MB"));
    Map<String, byte[]> many = new LinkedHashMap<>();
    for (int i = 0; i < 40; i++) {
      many.put("values-%d-x.csv".formatted(i), new byte[10_000_000]);
    }
    assertThat(faults(zipOf(many)))
        .satisfiesExactly(each -> assertThat(each).contains("it unpacks to more than 60 MB"));
  }

  @Test
  void aMemberThatStandsTwiceIsRefused() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(stored("plan.json", "{}"));
    out.write(stored("plan.json", "{}"));
    assertThat(faults(out.toByteArray()).get(0)).contains("plan.json stands in it twice");
  }

  /** A local header and its bytes, as a zip holds them one after the other. */
  private static byte[] stored(String name, String text) {
    byte[] title = name.getBytes(StandardCharsets.UTF_8);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    CRC32 crc = new CRC32();
    crc.update(bytes);
    java.nio.ByteBuffer header =
        java.nio.ByteBuffer.allocate(30 + title.length + bytes.length)
            .order(java.nio.ByteOrder.LITTLE_ENDIAN);
    header.putInt(0x04034b50).putShort((short) 10).putShort((short) 0).putShort((short) 0);
    header.putInt(0).putInt((int) crc.getValue()).putInt(bytes.length).putInt(bytes.length);
    header.putShort((short) title.length).putShort((short) 0).put(title).put(bytes);
    return header.array();
  }

  @Test
  void whatWasChangedOrIsMissingIsTold() throws IOException {
    Map<String, byte[]> other = new LinkedHashMap<>(whole);
    other.put("readings.csv", "plot\n".getBytes(StandardCharsets.UTF_8));
    other.remove("plan.json");
    assertThat(faults(zipOf(other)))
        .satisfiesExactlyInAnyOrder(
            each -> assertThat(each).contains("readings.csv is not what datapackage.json says"),
            each -> assertThat(each).contains("plan.json", "is missing"));
  }

  @Test
  void everyFaultOfItsPartsIsTold() throws IOException {
    String readings =
        text("readings.csv").replaceFirst("quality,7.0", "quality,good").replaceFirst("%", "acre");
    assertThat(faults(zipOf(changed("readings.csv", readings))))
        .hasSize(2)
        .anySatisfy(each -> assertThat(each).contains("readings.csv", "line 2", "good"))
        .anySatisfy(each -> assertThat(each).contains("Acre cannot be turned into %"));
    String record = "{\"frozen\": {\"at\": \"once\"}, \"events\": [{\"what\": \"rain\"}, 3]}";
    assertThat(faults(zipOf(changed("record.json", record))))
        .anySatisfy(each -> assertThat(each).contains("record.json", "once"))
        .anySatisfy(each -> assertThat(each).contains("events[0]", "rain"))
        .anySatisfy(each -> assertThat(each).contains("events[1]", "give an object"));
    String layout = text("layout.json").replaceFirst("\"layoutSha256\" *: *\"..", "$0ff");
    assertThat(faults(zipOf(changed("layout.json", layout))))
        .satisfiesExactly(each -> assertThat(each).contains("not the layout that its plan"));
    String plan = text("plan.json").replaceFirst("\"seed\" : 20260401", "\"seed\" : -1");
    assertThat(faults(zipOf(changed("plan.json", plan))).get(0)).contains("plan.json", "seed");
  }
}
