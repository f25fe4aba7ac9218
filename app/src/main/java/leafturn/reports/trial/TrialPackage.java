package leafturn.reports.trial;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import leafturn.records.archive.Sha256;
import leafturn.reports.JsonReport;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.Plot;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;

/**
 * The data of a trial as a zip that describes itself by the Frictionless Data Package standard:
 * readings as they were given, plots, plan, layout and results. Equal trials give equal bytes.
 *
 * @param plan the document of the plan
 * @param layout the document of the layout that was drawn from it
 * @param readings as they were given
 */
public record TrialPackage(
    Findings findings, String plan, String layout, List<Reading> readings, String program) {
  /** The first moment that zip can tell: when it was packed is no part of the trial. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private static final List<String> READING_COLUMNS =
      List.of(
          "plot",
          "date",
          "outcome",
          "value",
          "unit",
          "laboratory",
          "method",
          "detection_limit",
          "batch",
          "rater",
          "sample",
          "duplicate",
          "note");
  private static final List<String> PLOT_COLUMNS =
      List.of("plot", "unit", "arm", "second_arm", "row", "column");

  public TrialPackage {
    readings = List.copyOf(readings);
  }

  /** Writes the zip. */
  public void writeTo(OutputStream out) throws IOException {
    Map<String, String> members = new LinkedHashMap<>();
    members.put("readings.csv", csv(READING_COLUMNS, readings.stream().map(this::row).toList()));
    members.put("plots.csv", csv(PLOT_COLUMNS, plots()));
    members.put("plan.json", plan + "\n");
    members.put("layout.json", layout + "\n");
    members.put("results.json", JsonReport.of(FindingsReport.of(findings, program)) + "\n");
    members.put("README.md", readMe());
    Map<String, String> all = new LinkedHashMap<>();
    all.put("datapackage.json", JsonReport.of(descriptor(members)) + "\n");
    all.putAll(members);
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    for (Map.Entry<String, String> member : all.entrySet()) {
      ZipEntry entry = new ZipEntry(member.getKey());
      entry.setTimeLocal(TIME);
      zip.putNextEntry(entry);
      zip.write(member.getValue().getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }
    zip.finish();
  }

  private List<String> row(Reading own) {
    return List.of(
        own.plot(),
        own.date().toString(),
        own.outcome(),
        own.value(),
        text(own.unit()),
        text(own.laboratory()),
        text(own.method()),
        text(own.detectionLimit()),
        text(own.batch()),
        text(own.rater()),
        text(own.sample()),
        text(own.duplicate()),
        text(own.note()));
  }

  private static String text(@Nullable Object value) {
    return Objects.toString(value, "");
  }

  private List<List<String>> plots() {
    List<List<String>> rows = new ArrayList<>();
    for (Plot plot : findings.outcomes().get(0).table().plots()) {
      rows.add(
          List.of(
              plot.code(),
              plot.unit(),
              plot.arm(),
              text(plot.secondArm()),
              text(plot.row()),
              text(plot.column())));
    }
    return rows;
  }

  /** RFC 4180, every cell with a comma, quote or line end in quotes. */
  private static String csv(List<String> header, List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    line(text, header);
    rows.forEach(row -> line(text, row));
    return text.toString();
  }

  private static void line(StringBuilder text, List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      boolean quoted = cell.matches("(?s).*[\",\r\n].*");
      text.append(i == 0 ? "" : ",");
      text.append(quoted ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell);
    }
    text.append("\r\n");
  }

  private Map<String, Object> descriptor(Map<String, String> members) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("name", "trial");
    all.put("title", findings.facts().name());
    all.put("profile", "data-package");
    List<Map<String, Object>> resources = new ArrayList<>();
    members.forEach((name, text) -> resources.add(resource(name, text)));
    all.put("resources", resources);
    return all;
  }

  private static Map<String, Object> resource(String path, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Map<String, Object> resource = new LinkedHashMap<>();
    resource.put("name", path.substring(0, path.indexOf('.')).toLowerCase(Locale.ROOT));
    resource.put("path", path);
    resource.put("bytes", bytes.length);
    resource.put("hash", "sha256:" + Sha256.of(bytes));
    if (path.endsWith(".csv")) {
      resource.put("profile", "tabular-data-resource");
      resource.put("format", "csv");
      resource.put("mediatype", "text/csv");
      resource.put("encoding", "utf-8");
      resource.put("schema", path.startsWith("plots") ? plotSchema() : readingSchema());
    }
    return resource;
  }

  private static Map<String, Object> plotSchema() {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("fields", PLOT_COLUMNS.stream().map(name -> field(name, "string")).toList());
    schema.put("missingValues", List.of(""));
    schema.put("primaryKey", List.of("plot"));
    return schema;
  }

  private static Map<String, Object> readingSchema() {
    List<Map<String, Object>> fields = new ArrayList<>();
    for (String name : READING_COLUMNS) {
      fields.add(
          field(
              name,
              switch (name) {
                case "date" -> "date";
                case "detection_limit" -> "number";
                case "duplicate" -> "integer";
                default -> "string";
              }));
    }
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("fields", fields);
    schema.put("missingValues", List.of(""));
    schema.put("foreignKeys", List.of(foreignKey()));
    return schema;
  }

  private static Map<String, Object> foreignKey() {
    Map<String, Object> reference = new LinkedHashMap<>();
    reference.put("resource", "plots");
    reference.put("fields", List.of("plot"));
    Map<String, Object> key = new LinkedHashMap<>();
    key.put("fields", List.of("plot"));
    key.put("reference", reference);
    return key;
  }

  private static Map<String, Object> field(String name, String type) {
    Map<String, Object> field = new LinkedHashMap<>();
    field.put("name", name);
    field.put("type", type);
    if (name.equals("value")) {
      field.put(
          "description",
          "As it was given, in the unit of its row; <2 is below a detection limit of 2.");
    }
    return field;
  }

  private String readMe() {
    return "# %s\n\n%s\n\n%s\n\nreadings.csv: values as they were given. plots.csv: plots with unit and arm. plan.json: the plan. layout.json: where its plots lie.\nresults.json: what was found, by %s. datapackage.json describes the tables (Frictionless Data Package).\n"
        .formatted(
            findings.facts().name(),
            findings.facts().question(),
            new FindingsWords(findings).headline(),
            program);
  }
}
