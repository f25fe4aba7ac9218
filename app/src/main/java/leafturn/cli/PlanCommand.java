package leafturn.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leafturn.advice.season.NoPlanException;
import leafturn.advice.season.PlanRequest;
import leafturn.advice.season.Ranking;
import leafturn.advice.season.SeasonPlan;
import leafturn.advice.season.SeasonPlanner;
import leafturn.model.lawn.SiteClimate;
import leafturn.records.InputException;
import leafturn.records.LawnReading;
import leafturn.records.ProgrammesFile;
import leafturn.records.ProgrammesFile.Programmes;
import leafturn.records.WeatherReading;
import leafturn.reports.plan.PlanReport;
import leafturn.reports.plan.PlanText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Compares yearly programmes of a lawn. */
@Command(
    name = "plan",
    description = {
      "Compares yearly programmes of a lawn over many possible seasons and says which no other"
          + " beats, what each choice trades, and which comes nearest to your aims.",
      ""
    },
    footer = {
      "",
      "Example: leafturn plan linden-house-front.lawn.json --weather new-york-2012-2015.csv"
          + " --programmes linden-house-front.programmes.json"
    })
final class PlanCommand implements Callable<Integer> {
  private static final int USUAL_MEMBERS = 100;

  @Mixin private final LawnOptions files = new LawnOptions();

  @Option(
      names = "--programmes",
      paramLabel = "FILE",
      description =
          "Programmes to compare and the weights of your aims, a JSON file; without it programmes"
              + " round the lawn's own are searched by the usual aims.")
  private @Nullable Path programmesFile;

  @Option(
      names = "--members",
      paramLabel = "N",
      description = "Number of possible seasons, 10 to 2000; 100 when left out.")
  private int members = USUAL_MEMBERS;

  @Option(
      names = "--seed",
      paramLabel = "S",
      description = "Seed of the possible seasons, a whole number; 1 when left out.")
  private int seed = 1;

  @Option(
      names = "--adopt",
      paramLabel = "NUMBER",
      description = "Prints the fields of this programme instead of the one nearest your aims.")
  private @Nullable Integer adopt;

  @Mixin private final Printing printing = new Printing();

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    Inputs inputs = new Inputs();
    Optional<PlanRequest.Draws> draws = inputs.read(this::draws);
    Optional<LawnReading> lawnRead = inputs.read(files::read);
    Optional<WeatherReading> weatherRead = inputs.read(files::readWeather);
    Optional<Programmes> programmesRead = lawnRead.flatMap(lawn -> programmes(inputs, lawn));
    inputs.throwIfAny();
    LawnReading lawn = lawnRead.orElseThrow();
    WeatherReading record = weatherRead.orElseThrow();
    Programmes programmes = programmesRead.orElseThrow();
    SeasonPlan plan = planned(lawn, record, programmes, draws.orElseThrow());
    List<String> notes = new ArrayList<>(lawn.notes());
    notes.addAll(record.notes());
    print(plan, programmes, notes);
    return ExitCode.DONE;
  }

  private Optional<Programmes> programmes(Inputs inputs, LawnReading lawn) {
    Path file = programmesFile;
    return inputs.read(
        () ->
            file == null ? Programmes.none() : ProgrammesFile.read(file, lawn.lawn().programme()));
  }

  private PlanRequest.Draws draws() {
    try {
      return new PlanRequest.Draws(members, seed);
    } catch (IllegalArgumentException wrong) {
      throw new InputException("--members: " + wrong.getMessage() + ".");
    }
  }

  private SeasonPlan planned(
      LawnReading lawn, WeatherReading record, Programmes programmes, PlanRequest.Draws draws) {
    PlanRequest request =
        new PlanRequest(
            lawn.lawn(),
            new SiteClimate(record.series(), lawn.lawn().site()),
            programmes.programmes(),
            programmes.search(),
            draws,
            programmes.rules());
    int threads = Runtime.getRuntime().availableProcessors();
    try (ProgressLine progress =
        ProgressLine.on(System.console() == null ? null : err(), "programmes")) {
      return SeasonPlanner.plan(request, threads, progress);
    } catch (NoPlanException impossible) {
      throw new InputException(
          impossible.about(
              files.weatherFile().toString(),
              files.file().toString(),
              programmesFile == null ? "" : programmesFile.toString()));
    }
  }

  private PrintWriter err() {
    return spec.commandLine().getErr();
  }

  private void print(SeasonPlan plan, Programmes programmes, List<String> notes) {
    Ranking ranking = Ranking.of(plan, programmes.weights());
    Integer wanted = adopt;
    int number = wanted == null ? ranking.best() : wanted;
    if (number < 0 || number >= plan.programmes().size()) {
      throw new InputException(
          "--adopt: there is no programme %d; their numbers go from 0 to %d."
              .formatted(number, plan.programmes().size() - 1));
    }
    printing.print(
        () -> PlanReport.of(plan, ranking, programmes.weights(), notes),
        () -> PlanText.of(plan, ranking, programmes.weights(), notes, number));
  }
}
