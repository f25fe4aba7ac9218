package leafturn.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.OutputFile;
import leafturn.records.trial.TrialPlanFile;
import leafturn.reports.JsonReport;
import leafturn.reports.figure.TrialMapFile;
import leafturn.reports.trial.FieldSheets;
import leafturn.reports.trial.LayoutGeoJson;
import leafturn.reports.trial.LayoutPaper;
import leafturn.reports.trial.LayoutReport;
import leafturn.reports.trial.SampleLabels;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.TrialLayout;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws and randomises the layout of a trial. */
@Command(
    name = "lay",
    description = {
      "Draws and randomises the layout of a trial on the real shape of its lawns, from a seed.",
      ""
    },
    footer = {
      "",
      "The same plan and seed give the same layout, always.",
      "Example: leafturn trial lay split-yards.trial.json --map layout.svg --paper layout.pdf"
    })
final class TrialLayCommand implements Callable<Integer> {
  @Parameters(paramLabel = "TRIAL", description = "Plan of the trial, a JSON file.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path planFile;

  @Option(
      names = "--seed",
      paramLabel = "S",
      description = "Seed to draw from instead of the plan's, a whole number from 0.")
  private @Nullable Long seed;

  @Option(names = "--map", paramLabel = "OUT.svg", description = "Writes the maps of all lawns.")
  private @Nullable Path map;

  @Option(
      names = "--geojson",
      paramLabel = "OUT.geojson",
      description = "Writes plots, corners and cores as GeoJSON.")
  private @Nullable Path geoJson;

  @Option(
      names = "--paper",
      paramLabel = "OUT.pdf",
      description = "Writes the layout on paper, with its treatments, for those who mow.")
  private @Nullable Path paper;

  @Option(
      names = "--sheets",
      paramLabel = "OUT.pdf",
      description = "Writes field sheets in walking order, without treatments.")
  private @Nullable Path sheets;

  @Option(
      names = "--labels",
      paramLabel = "OUT.pdf",
      description = "Writes labels for sample bags, with their blind codes.")
  private @Nullable Path labels;

  @Option(names = "--json", description = "Prints one JSON document.")
  private boolean json;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    Inputs inputs = new Inputs();
    for (Path file : wanted()) {
      inputs.read(
          () -> {
            OutputFile.check(file);
            return file;
          });
    }
    Optional<TrialPlan> plan = inputs.read(this::plan);
    inputs.throwIfAny();
    Optional<TrialLayout> laid = inputs.read(() -> layout(plan.orElseThrow()));
    inputs.read(() -> onEarth(plan.orElseThrow()));
    inputs.throwIfAny();
    TrialLayout layout = laid.orElseThrow();
    files(layout).forEach(OutputFile::write);
    print(LayoutReport.of(layout));
    return ExitCode.DONE;
  }

  private List<Path> wanted() {
    List<Path> files = new ArrayList<>();
    for (Path file : new @Nullable Path[] {map, geoJson, paper, sheets, labels}) {
      if (file != null) {
        files.add(file);
      }
    }
    return files;
  }

  private TrialPlan plan() {
    TrialPlan plan = TrialPlanFile.read(planFile);
    Long other = seed;
    if (other == null) {
      return plan;
    }
    if (other < 0 || other > TrialPlan.MOST_SEED) {
      throw new InputException(
          "--seed: %d is out of range; give a whole number from 0 to %d."
              .formatted(other, TrialPlan.MOST_SEED));
    }
    return plan.withSeed(other);
  }

  private TrialLayout layout(TrialPlan plan) {
    try {
      return TrialLayout.of(plan);
    } catch (NoRoomException none) {
      throw new InputException(planFile + ": " + none.getMessage());
    }
  }

  private TrialPlan onEarth(TrialPlan plan) {
    List<String> nowhere = LayoutGeoJson.nowhere(plan);
    if (geoJson != null && !nowhere.isEmpty()) {
      throw new InputException(
          "%s, lawns: --geojson needs longitude and latitude, and these lawns have none: %s; give their outlines as GeoJSON, or with an anchor."
              .formatted(planFile, String.join("; ", nowhere)));
    }
    return plan;
  }

  /** Everything is made before anything is written. */
  private Map<Path, OutputFile.Content> files(TrialLayout layout) {
    Map<Path, OutputFile.Content> files = new LinkedHashMap<>();
    Path places = geoJson;
    if (places != null) {
      files.put(places, text(LayoutGeoJson.of(layout)));
    }
    Path drawing = map;
    if (drawing != null) {
      files.put(drawing, text(TrialMapFile.of(layout, Units.METRIC)));
    }
    Path mowing = paper;
    if (mowing != null) {
      files.put(mowing, LayoutPaper.of(layout, Units.METRIC)::writePdf);
    }
    Path rating = sheets;
    if (rating != null) {
      files.put(rating, FieldSheets.of(layout, Units.METRIC)::writePdf);
    }
    Path bags = labels;
    if (bags != null) {
      files.put(bags, SampleLabels.of(layout)::writePdf);
    }
    return files;
  }

  private static OutputFile.Content text(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return out -> out.write(bytes);
  }

  private void print(LayoutReport report) {
    PrintWriter writer = spec.commandLine().getOut();
    if (json) {
      writer.println(JsonReport.of(report));
    } else {
      report.lines().forEach(writer::println);
    }
  }
}
