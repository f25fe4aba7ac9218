package leafturn.advice.call;

import java.time.LocalDate;
import java.util.function.Function;
import leafturn.model.Parameters;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.Keeper;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnParameters;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ProgrammeKeeper;

/**
 * A lawn's run through days on which one programme may follow another: each waters by its own
 * irrigation.
 */
final class KeptRun {
  private final Lawn lawn;
  private final DailyTerms terms;
  private final Function<Parameters, LawnEquations> equations;
  private Programme programme;
  private LawnRun run;

  /**
   * @param equations the lawn's equations from its parameters
   * @param from the day of its state
   */
  KeptRun(
      Lawn lawn,
      DailyTerms terms,
      Function<Parameters, LawnEquations> equations,
      LawnState state,
      LocalDate from) {
    this.lawn = lawn;
    this.terms = terms;
    this.equations = equations;
    this.programme = lawn.programmeOn(from);
    this.run = begun(state);
  }

  /** The parameters of a lawn while a programme holds. */
  static Parameters parameters(Lawn lawn, Programme programme) {
    return LawnParameters.withCutQuality(lawn.keptBy(programme));
  }

  private LawnRun begun(LawnState state) {
    return new LawnRun(equations.apply(parameters(lawn, programme)), state, terms);
  }

  /** Lives through days of the terms, the last one excluded. */
  void live(int from, int to, Keeper keeper, DayListener listener) {
    int day = from;
    while (day < to) {
      turnTo(lawn.programmeOn(terms.date(day)));
      int next = day + 1;
      while (next < to && lawn.programmeOn(terms.date(next)) == programme) {
        next++;
      }
      run.live(day, next, keeper, listener);
      day = next;
    }
  }

  private void turnTo(Programme next) {
    if (next != programme) {
      programme = next;
      run = begun(run.state());
    }
  }

  /** The run as it is kept from a day on, whose weather may not be known yet. */
  LawnRun on(LocalDate day) {
    Programme holds = lawn.programmeOn(day);
    if (holds != programme) {
      turnTo(holds);
      ProgrammeKeeper.turnHeight(run, holds.mowing().heights().on(day));
    }
    return run;
  }

  /** The run as it is. */
  LawnRun run() {
    return run;
  }
}
