package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The data package of a trial by commands: written, read back, written again, analysed. */
class TrialPackageCommandTest {
  private static final String PLAN = Examples.file("split-yards.trial.json").toString();
  private static final String READINGS = Examples.file("split-yards.readings.csv").toString();

  @TempDir private Path folder;

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void thereAndBackGivesTheSameBytesAndTablesToAnalyse() throws IOException {
    Ran packed = Ran.of("trial", "package", PLAN, READINGS, at("one.zip"), "--on", "2026-11-30");
    assertThat(packed.exitCode()).as(packed.err()).isZero();
    assertThat(packed.out()).contains("230 readings", "never frozen", "No verdict");
    Ran unpacked = Ran.of("trial", "unpack", at("one.zip"), at("files"));
    assertThat(unpacked.exitCode()).as(unpacked.err()).isZero();
    Ran again =
        Ran.of(
            "trial",
            "package",
            at("files/plan.json"),
            at("files/readings.csv"),
            at("two.zip"),
            "--record",
            at("files/record.json"),
            "--on",
            "2026-11-30");
    assertThat(again.exitCode()).as(again.err()).isZero();
    assertThat(folder.resolve("two.zip")).hasSameBinaryContentAs(folder.resolve("one.zip"));
    Files.writeString(
        folder.resolve("model.json"),
        """
        {"response": "soil_potassium", "scale": "log", "factors": ["unit", "arm", "date"],
         "fixed": ["arm", "date"], "random": [{"within": ["unit"]}, {"within": ["unit", "arm"]}]}
        """);
    Ran analysed =
        Ran.of("trial", "analyse", at("files/values-3-soil_potassium.csv"), at("model.json"));
    assertThat(analysed.exitCode()).as(analysed.err()).isZero();
    assertThat(analysed.out()).contains("64 observations");
  }

  /** A plan may get a date, and bags more of a plot, when results under its codes are in. */
  @Test
  void readingsUnderPrintedCodesAreReadAlikeWhenThePlanHasGotADateAndBags() throws IOException {
    String longer =
        Files.readString(Path.of(PLAN))
            .replace("\"2026-10-12\"]", "\"2026-10-12\", \"2026-10-26\"]")
            .replace("\"composites\": 2", "\"composites\": 3");
    assertThat(longer).contains("2026-10-26").contains("\"composites\": 3");
    Path plan = Files.writeString(folder.resolve("longer.json"), longer);
    String byCode = readings(line -> line.replaceFirst("^B.*?,.*?,(.*,[2-9A-Z]{7},,.*)", ",,$1"));
    assertThat(Path.of(byCode)).content().contains("\n,,soil_potassium");
    List<String> rows = new ArrayList<>();
    for (String readings : List.of(READINGS, byCode)) {
      String file = "after" + rows.size();
      Ran packed = Ran.of("trial", "package", plan.toString(), readings, at(file + ".zip"));
      assertThat(packed.exitCode()).as(packed.err()).isZero();
      Ran unpacked = Ran.of("trial", "unpack", at(file + ".zip"), at(file));
      assertThat(unpacked.exitCode()).as(unpacked.err()).isZero();
      rows.add(Files.readString(folder.resolve(file).resolve("readings.csv")));
    }
    assertThat(Ran.of("trial", "package", PLAN, READINGS, at("before.zip")).exitCode()).isZero();
    assertThat(Ran.of("trial", "unpack", at("before.zip"), at("before")).exitCode()).isZero();
    assertThat(rows).containsOnly(Files.readString(folder.resolve("before/readings.csv")));
  }

  @Test
  void faultsOfAllFilesAreToldAndNothingIsWritten() throws IOException {
    Path wrong =
        Files.writeString(
            folder.resolve("r.csv"),
            "plot,date,outcome,value,unit\nB1-1,2026-04-20,quality,good,1-9\n"
                + "B9-1,2026-04-20,quality,7,1-9\n");
    Ran ran = Ran.of("trial", "package", PLAN, wrong.toString(), at("x.zip"));
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("line 2", "'good' is no number", "line 3", "no plot");
    Ran none = Ran.of("trial", "package", at("no.json"), at("no.csv"), at("x.zip"));
    assertThat(none.exitCode()).isEqualTo(2);
    assertThat(none.err()).contains("no.json", "no.csv", "no such file");
    assertThat(folder.resolve("x.zip")).doesNotExist();
    Ran unpacked = Ran.of("trial", "unpack", wrong.toString(), at("out"));
    assertThat(unpacked.exitCode()).isEqualTo(2);
    assertThat(unpacked.err()).contains("cannot be read as a zip file");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void semicolonsAndDecimalCommasAreRead() throws IOException {
    Path german =
        Files.writeString(
            folder.resolve("r.csv"),
            "plot;date;outcome;value;unit;note, if any\n"
                + "B1-1;2026-04-20;tissue_potassium;2,25;%;\n"
                + "B1-2;2026-04-20;tissue_potassium;<1,5;%;dry, brown\n");
    Ran ran = Ran.of("trial", "package", PLAN, german.toString(), at("g.zip"));
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(Ran.of("trial", "unpack", at("g.zip"), at("g")).exitCode()).isZero();
    assertThat(folder.resolve("g/readings.csv"))
        .content()
        .contains("tissue_potassium,2.25,%", "tissue_potassium,<1.5,%");
    Files.writeString(
        german,
        "plot;date;outcome;value;unit\nB1-1;2026-04-20;tissue_potassium;2,25;%\n"
            + "B1-2;2026-04-20;tissue_potassium;1.234;%\n");
    Ran mixed = Ran.of("trial", "package", PLAN, german.toString(), at("m.zip"));
    assertThat(mixed.exitCode()).isEqualTo(2);
    assertThat(mixed.err()).contains("line 3", "decimal commas and decimal points");
    Files.writeString(
        german, "plot,date,outcome,value,unit\nB1-1,2026-04-20,soil_potassium,\"1,234\",mg/kg\n");
    Ran quoted = Ran.of("trial", "package", PLAN, german.toString(), at("m.zip"));
    assertThat(quoted.err())
        .contains("write 1234 if it parts thousands, 1.234 if it is a decimal comma");
  }

  /** The readings of the example with each line changed. */
  private String readings(java.util.function.UnaryOperator<String> change) throws IOException {
    String text =
        Files.readString(Path.of(READINGS))
            .lines()
            .map(change)
            .collect(java.util.stream.Collectors.joining("\n", "", "\n"));
    return Files.writeString(folder.resolve("changed.csv"), text).toString();
  }

  @Test
  void whatTheChecksFindIsToldInThePackageAndBesideIt() throws IOException {
    String changed =
        readings(
            line ->
                line.contains(",soil_potassium,") && line.contains("2026-10-12")
                    ? line.replace("Mehlich-3", "Olsen")
                    : line);
    Files.writeString(
        folder.resolve("record.json"),
        """
        {"events": [{"day": "2026-07-01", "what": "mown", "plots": ["B1-1"]}]}
        """);
    Ran ran =
        Ran.of(
            "trial",
            "package",
            PLAN,
            changed,
            at("c.zip"),
            "--on",
            "2026-11-30",
            "--record",
            at("record.json"));
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(Ran.of("trial", "unpack", at("c.zip"), at("c")).exitCode()).isZero();
    String olsen = "soil_potassium was measured by Mehlich-3 and Olsen, which are not one quantity";
    String half = "On 2026-07-01 a part of a unit was mown";
    assertThat(ran.err()).contains("No such analysis: " + olsen, "Take care: " + half);
    assertThat(folder.resolve("c/README.md"))
        .content()
        .contains("No such analysis: " + olsen, "Take care: " + half);
    assertThat(folder.resolve("c/results.json"))
        .content()
        .contains("\"remarks\"", "\"refused\"", olsen, half);
  }

  @Test
  void aPartInAnotherUnitIsTold() throws IOException {
    String changed =
        readings(
            line ->
                line.contains(",soil_potassium,") && line.contains("B8-")
                    ? line.replace(",mg/kg,", ",mg K2O/kg,")
                    : line);
    Ran ran = Ran.of("trial", "package", PLAN, changed, at("u.zip"), "--on", "2026-06-01");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    String told = "in mg K2O/kg. They were converted to mg/kg; look whether the units are so";
    assertThat(ran.err()).contains("soil_potassium came in 2 units from Fen Laboratory", told);
    assertThat(Ran.of("trial", "unpack", at("u.zip"), at("u")).exitCode()).isZero();
    assertThat(folder.resolve("u/results.json")).content().contains(told);
    Ran right = Ran.of("trial", "package", PLAN, READINGS, at("r.zip"), "--on", "2026-06-01");
    assertThat(right.err()).doesNotContain("units from");
  }

  @Test
  void aMistypedCodeOnABagIsTold() throws IOException {
    List<String> changedOnce = new ArrayList<>();
    String changed =
        readings(
            line -> {
              String sample = line.split(",", -1)[10];
              if (!changedOnce.isEmpty() || sample.length() != 7 || sample.contains("sample")) {
                return line;
              }
              String wrong = sample.substring(0, 6) + (sample.endsWith("2") ? "3" : "2");
              changedOnce.add(wrong);
              return line.replace(sample, wrong);
            });
    Ran ran = Ran.of("trial", "package", PLAN, changed, at("w.zip"), "--on", "2026-06-01");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.err())
        .contains("has the code " + changedOnce.get(0) + ", and its check character does not fit");
    Ran right = Ran.of("trial", "package", PLAN, READINGS, at("r.zip"), "--on", "2026-06-01");
    assertThat(right.err()).doesNotContain("check character", "as if a part were", "are outside");
  }
}
