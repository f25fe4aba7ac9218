package leafturn.reports.trial;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import leafturn.records.ProgramVersion;
import leafturn.records.Sha256;
import leafturn.records.trial.BookFindings;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.PackedTrial;
import leafturn.records.trial.TrialChecks;
import leafturn.records.trial.TrialGrounds;
import leafturn.records.trial.TrialPackageFile;
import leafturn.records.trial.TrialValues;
import leafturn.reports.JsonReport;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Findings;
import leafturn.trials.observation.Remark;
import org.jspecify.annotations.Nullable;

/**
 * The data of a trial as a zip that describes itself by the Frictionless Data Package standard:
 * readings as they were given, values to analyse, plots, plan, layout and results. Equal trials
 * give equal bytes, and {@link TrialPackageFile} reads them back.
 *
 * @param layout drawn from the plan
 * @param findings null where there is nothing to analyse yet
 * @param program that writes it
 */
public record TrialPackage(
    PackedTrial trial, TrialLayout layout, @Nullable Findings findings, String program) {
  private static final String NOTHING = "There is nothing to analyse yet.";

  /** The first moment that zip can tell: when it was packed is no part of the trial. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  /**
   * The package of a trial.
   *
   * @param today decides whether its season is over
   * @param zone in which its days are counted
   * @throws leafturn.records.InputException where its readings or its plan have faults
   */
  public static TrialPackage of(PackedTrial trial, LocalDate today, ZoneId zone) {
    Findings findings;
    try {
      findings = BookFindings.of(BookFindings.basis(trial, today, zone));
    } catch (TrialFaultException nothing) {
      findings = null;
    }
    TrialLayout layout = TrialLayout.of(BookPlan.of(trial.trial()));
    return new TrialPackage(trial, layout, findings, ProgramVersion.name());
  }

  /** What is wrong or risky about the trial; nothing while nothing was read. */
  public List<Remark> remarks() {
    if (findings != null) {
      return findings.standing().remarks();
    }
    return trial.readings().isEmpty()
        ? List.of()
        : new TrialChecks(
                trial.trial(), TrialGrounds.of(layout), trial.readings(), trial.events(), false)
            .remarks();
  }

  /** What it holds and what was found, in a line. */
  public String summary() {
    return trial.summary() + (findings == null ? " " + NOTHING : " " + headline(findings));
  }

  private static String headline(Findings findings) {
    return new FindingsWords(findings).headline();
  }

  /** Writes the zip. */
  public void writeTo(OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    for (Map.Entry<String, String> member : members().entrySet()) {
      ZipEntry entry = new ZipEntry(member.getKey());
      entry.setTimeLocal(TIME);
      zip.putNextEntry(entry);
      zip.write(member.getValue().getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }
    zip.finish();
  }

  private Map<String, String> members() {
    Map<String, PackageTable> tables = new LinkedHashMap<>();
    tables.put(TrialPackageFile.READINGS, PackageTables.readings(layout.plan(), trial.readings()));
    tables.putAll(
        PackageTables.values(layout, TrialValues.of(layout, trial.events(), trial.readings())));
    tables.put(TrialPackageFile.PLOTS, PackageTables.plots(layout));
    Map<String, String> members = new LinkedHashMap<>();
    tables.forEach((name, table) -> members.put(name, table.csv()));
    members.put(TrialPackageFile.PLAN, trial.trial().plan().toPrettyString() + "\n");
    members.put(TrialPackageFile.RECORD, trial.record().toPrettyString() + "\n");
    members.put(TrialPackageFile.LAYOUT, JsonReport.of(LayoutReport.of(layout)) + "\n");
    if (findings != null) {
      members.put(
          TrialPackageFile.RESULTS,
          JsonReport.of(FindingsReport.of(findings, remarks(), program)) + "\n");
    }
    members.put(TrialPackageFile.READ_ME, readMe());
    Map<String, String> all = new LinkedHashMap<>();
    all.put(TrialPackageFile.DESCRIPTOR, JsonReport.of(descriptor(members, tables)) + "\n");
    all.putAll(members);
    return all;
  }

  private Map<String, Object> descriptor(
      Map<String, String> members, Map<String, PackageTable> tables) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("name", "trial");
    all.put("title", layout.plan().name());
    all.put("profile", "data-package");
    List<Map<String, Object>> resources = new ArrayList<>();
    members.forEach((name, text) -> resources.add(resource(name, text, tables.get(name))));
    all.put("resources", resources);
    return all;
  }

  private static Map<String, Object> resource(
      String path, String text, @Nullable PackageTable table) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Map<String, Object> resource = new LinkedHashMap<>();
    resource.put("name", path.substring(0, path.indexOf('.')).toLowerCase(Locale.ROOT));
    resource.put("path", path);
    resource.put("bytes", bytes.length);
    resource.put("hash", "sha256:" + Sha256.of(bytes));
    if (table != null) {
      resource.put("profile", "tabular-data-resource");
      resource.put("format", "csv");
      resource.put("mediatype", "text/csv");
      resource.put("encoding", "utf-8");
      resource.put("schema", table.schema(path.equals(TrialPackageFile.PLOTS)));
    }
    return resource;
  }

  private String checked() {
    List<Remark> remarks = remarks();
    return remarks.isEmpty()
        ? "The checks found nothing to tell."
        : remarks.stream()
            .map(remark -> "- " + told(remark))
            .collect(Collectors.joining("\n", "What the checks tell:\n\n", ""));
  }

  /** A remark in a line, with what it means before it. */
  public static String told(Remark remark) {
    return remark.weight().words() + ": " + remark.sentence();
  }

  private String readMe() {
    String found = findings == null ? NOTHING : headline(findings);
    return """
        # %s

        %s

        %s

        %s

        readings.csv: values as they were given. values-….csv: the values of each outcome in the unit of the plan, duplicates averaged, to analyse. plots.csv: plots with unit and arm. plan.json: the plan. record.json: when it was frozen and ended, what befell it, and what of plan and readings was changed and taken back. layout.json: where its plots lie, and the key to the codes on bags. results.json: what was found, by %s. datapackage.json describes the tables (Frictionless Data Package). Texts that begin like a formula have an apostrophe before them.
        """
        .formatted(layout.plan().name(), layout.plan().question(), found, checked(), program);
  }
}
