package leafturn.advice.season;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import leafturn.advice.call.CallRule;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.SeasonPlan.Result;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.LawnParameters;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.ProgrammeKeeper;
import org.jspecify.annotations.Nullable;

/** Compares programmes on common weather; the answer does not depend on the number of threads. */
public final class SeasonPlanner {
  private final PlanRequest request;
  private final PlanProgress progress;
  private final PlanWeather weather;
  private final LawnState present;
  private final List<PlannedProgramme> programmes = new ArrayList<>();
  private final AtomicInteger done = new AtomicInteger();

  private SeasonPlanner(PlanRequest asked, PlanProgress progress) {
    this.request = asked.with(eachCutItsOwn(asked.lawn()));
    this.progress = progress;
    Lawn lawn = request.lawn();
    this.weather = PlanWeather.like(request.climate(), lawn.spinUpYears(), request.draws());
    this.present = present(request, weather);
    programmes.add(new PlannedProgramme("", Origin.PRESENT, lawn.programme()));
    programmes.addAll(request.given());
    if (request.search()) {
      programmes.addAll(ProgrammeGrid.round(lawn));
    }
  }

  /**
   * Makes a plan.
   *
   * @param threads to run programmes on, 1 or more
   * @throws NoPlanException when the record is too short or a programme is never mown
   * @throws PlanStoppedException when the progress says so
   */
  public static SeasonPlan plan(PlanRequest request, int threads, PlanProgress progress) {
    return new SeasonPlanner(request, progress).run(threads);
  }

  /**
   * The lawn with a quality of its own for each cut, unless its description says otherwise: how
   * often one mows tells in thatch only so.
   */
  private static Lawn eachCutItsOwn(Lawn lawn) {
    Map<String, Double> parameters = new HashMap<>(lawn.parameters());
    parameters.putIfAbsent("qual", 1.0);
    return new Lawn(lawn.site(), lawn.ground(), lawn.programme(), lawn.spinUpYears(), parameters);
  }

  /** The lawn after years of being kept as now. */
  private static LawnState present(PlanRequest request, PlanWeather weather) {
    Lawn lawn = request.lawn();
    LawnEquations equations = new LawnEquations(LawnParameters.of(lawn));
    DailyTerms before = weather.before();
    LawnRun run = new LawnRun(equations, LawnModel.startState(lawn, equations), before);
    ProgrammeKeeper keeper =
        new ProgrammeKeeper(
            lawn.programme(), equations, request.rules().threshold(CallRule.ONE_THIRD));
    run.live(0, weather.presentDays(), keeper, DayListener.NONE);
    return run.state();
  }

  private SeasonPlan run(int threads) {
    progress.done(0, programmes.size());
    ProgrammeComparison comparison = new ProgrammeComparison(request, weather, present);
    List<Callable<@Nullable Result>> tasks = new ArrayList<>();
    for (PlannedProgramme planned : programmes) {
      tasks.add(() -> result(comparison, planned));
    }
    List<Result> results = new ArrayList<>();
    for (Result result : lived(tasks, threads)) {
      if (result != null) {
        results.add(result);
      }
    }
    SeasonPlan.Basis basis =
        new SeasonPlan.Basis(
            request.draws(),
            request.rules().third(),
            request.lawn().ground().grass(),
            weather.source().recordYears(),
            notes(results),
            request.lawn().spinUpYears(),
            PlanWeather.SETTLING_YEARS,
            PlanWeather.LONG_RUNS,
            ProgrammeComparison.FEED_SEASONS,
            weather.presentDays() + comparison.livedDays());
    return new SeasonPlan(results, basis);
  }

  /** What the weather wants said, and which programmes are not proposed. */
  private List<String> notes(List<Result> results) {
    List<String> notes = new ArrayList<>(weather.source().notes());
    ProgrammeOutcome now = results.get(0).outcome();
    for (Result result : results) {
      boolean given = result.planned().origin() == Origin.GIVEN;
      if (given && !result.outcome().keepsALawn(now)) {
        notes.add(
            "The programme \"%s\" mows fewer than %d times a year: that keeps a meadow and no lawn, so it is not proposed as nearest to the aims."
                .formatted(result.planned().name(), ProgrammeOutcome.FEWEST_MOWINGS));
      }
    }
    return notes;
  }

  /** What a programme does, or null for one of the search that is never mown. */
  private @Nullable Result result(ProgrammeComparison comparison, PlannedProgramme planned) {
    if (progress.stopped()) {
      throw new PlanStoppedException();
    }
    ProgrammeOutcome outcome = comparison.outcome(planned.programme());
    progress.done(done.incrementAndGet(), programmes.size());
    if (outcome.mowings().high() > 0) {
      return new Result(planned, outcome);
    }
    if (planned.origin() == Origin.SEARCH) {
      return null;
    }
    boolean own = planned.origin() == Origin.PRESENT;
    throw new NoPlanException(
        own ? NoPlanException.Where.LAWN : NoPlanException.Where.PROGRAMMES,
        "%s is not mown in any possible season; lower its cut height, shorten its interval or widen its mowing season"
            .formatted(
                own ? "the lawn's own programme" : "the programme \"" + planned.name() + "\""));
  }

  private static List<@Nullable Result> lived(List<Callable<@Nullable Result>> tasks, int threads) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<@Nullable Result>> runs = new ArrayList<>();
      for (Callable<@Nullable Result> task : tasks) {
        runs.add(pool.submit(task));
      }
      List<@Nullable Result> results = new ArrayList<>();
      for (Future<@Nullable Result> run : runs) {
        results.add(run.get());
      }
      return results;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new PlanStoppedException();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException("a programme could not be run", failed);
    } finally {
      pool.shutdownNow();
    }
  }
}
