package leafturn.model.lawn;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import leafturn.model.weather.WeatherSeries;

/** Runs lawns over a weather record. */
public final class LawnModel {
  private LawnModel() {}

  /**
   * Runs a lawn by its programme over a whole record, after its spin-up years.
   *
   * @param lawn its description
   * @param weather daily record of its site
   * @return the account of the record's years
   * @throws IllegalArgumentException when the description and the record do not go together
   */
  public static SeasonAccount run(Lawn lawn, WeatherSeries weather) {
    return run(lawn, weather, DayListener.NONE);
  }

  /**
   * As {@link #run(Lawn, WeatherSeries)}, with a listener to the record's days.
   *
   * @param listener hears each day after the spin-up
   */
  public static SeasonAccount run(Lawn lawn, WeatherSeries weather, DayListener listener) {
    SiteClimate climate = new SiteClimate(weather, lawn.site());
    DailyTerms terms = SpinUp.terms(climate, lawn.spinUpYears(), weather.days());
    return run(lawn, terms, SpinUp.days(weather, lawn.spinUpYears()), listener);
  }

  /**
   * Runs many lawns of one site, split over threads; the result does not depend on their number.
   *
   * @param lawns all with the same spin-up years
   * @param terms spin-up and reported days, shared by all
   * @param firstReported first day of the terms that is reported
   * @param threads 1 or more
   */
  public static List<SeasonAccount> runAll(
      List<Lawn> lawns, DailyTerms terms, int firstReported, int threads) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<SeasonAccount>> runs = new ArrayList<>();
      for (Lawn lawn : lawns) {
        runs.add(pool.submit(() -> run(lawn, terms, firstReported, DayListener.NONE)));
      }
      List<SeasonAccount> accounts = new ArrayList<>(lawns.size());
      for (Future<SeasonAccount> run : runs) {
        accounts.add(run.get());
      }
      return accounts;
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the run was interrupted", interrupted);
    } catch (ExecutionException failed) {
      throw new IllegalStateException("a lawn could not be run: " + failed.getMessage(), failed);
    } finally {
      pool.shutdownNow();
    }
  }

  /** The state in which a lawn's run begins. */
  public static LawnState startState(Lawn lawn, LawnEquations equations) {
    return startState(equations, lawn.programme().mowing().heightMm());
  }

  /** The state in which a run of these equations begins, cut at a height, mm. */
  public static LawnState startState(LawnEquations equations, double cutHeightMm) {
    return new LawnState(StartState.of(equations, cutHeightMm), Double.NaN);
  }

  private static SeasonAccount run(
      Lawn lawn, DailyTerms terms, int firstReported, DayListener listener) {
    LawnEquations equations = new LawnEquations(LawnParameters.of(lawn));
    LawnRun run = new LawnRun(equations, startState(lawn, equations), terms);
    Keeper keeper = new ProgrammeKeeper(lawn.programme(), equations);
    run.live(0, firstReported, keeper, DayListener.NONE);
    YearBook book = new YearBook();
    book.open(run);
    run.live(
        firstReported,
        terms.days(),
        keeper,
        today -> {
          book.dayDone(today);
          listener.dayDone(today);
        });
    double[] worst = run.worstBalanceErrors();
    return new SeasonAccount(
        book.years(),
        new SeasonAccount.BalanceErrors(worst[4], worst[0], worst[1], worst[2], worst[3]),
        run.state());
  }
}
