package leafturn.web;

import java.time.LocalDate;
import java.util.concurrent.atomic.AtomicBoolean;
import leafturn.advice.season.NoPlanException;
import leafturn.advice.season.PlanProgress;
import leafturn.advice.season.PlanRequest;
import leafturn.advice.season.PlanStoppedException;
import leafturn.advice.season.SeasonPlan;
import leafturn.advice.season.SeasonPlanner;
import leafturn.records.round.LawnToPlan;
import leafturn.web.form.Form;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One season plan that somebody asked for: waiting, under way or ended. */
final class PlanJob implements PlanProgress, Runnable {
  private static final Logger LOG = LoggerFactory.getLogger(PlanJob.class);
  private static final String BROKEN = "The plan failed; this is a fault of the program.";

  /** How far it is. */
  enum State {
    WAITING,
    RUNNING,
    DONE,
    STOPPED,
    FAILED;

    /** True when no answer is to come any more, or it is there. */
    boolean ended() {
      return compareTo(DONE) >= 0;
    }
  }

  private final LawnToPlan subject;
  private final PlanRequest request;
  private final Form form;
  private final LocalDate day;
  private final AtomicBoolean stop = new AtomicBoolean();
  private volatile State state = State.WAITING;
  private volatile int done;
  private volatile int all;
  private volatile String fault = "";
  private volatile @Nullable Made made;

  /**
   * A plan that is made.
   *
   * @param subject the lawn as it was when the plan was asked for
   * @param day on which it was asked for
   */
  record Made(SeasonPlan plan, LawnToPlan subject, LocalDate day) {}

  /**
   * @param day today where the lawn is
   */
  PlanJob(LawnToPlan subject, PlanRequest request, Form form, LocalDate day) {
    this.subject = subject;
    this.request = request;
    this.form = form;
    this.day = day;
  }

  @Override
  public void run() {
    if (stop.get()) {
      state = State.STOPPED;
      return;
    }
    state = State.RUNNING;
    try {
      made = new Made(SeasonPlanner.plan(request, 1, this), subject, day);
      state = State.DONE;
    } catch (PlanStoppedException stopped) {
      state = State.STOPPED;
    } catch (NoPlanException impossible) {
      fault = "No plan can be made: " + impossible.getMessage() + ".";
      state = State.FAILED;
    } catch (RuntimeException broken) {
      LOG.error("a season plan failed: {}", broken, broken);
      fault = BROKEN;
      state = State.FAILED;
    } finally {
      if (!state.ended()) { // memory ran out: the thread ends, and a plan can be asked for again
        fault = BROKEN;
        state = State.FAILED;
      }
    }
  }

  @Override
  public void done(int programmes, int ofProgrammes) {
    done = Math.max(done, programmes);
    all = ofProgrammes;
  }

  @Override
  public boolean stopped() {
    return stop.get() || Thread.currentThread().isInterrupted();
  }

  /** Ends it at the next programme. */
  void stop() {
    stop.set(true);
    if (state == State.WAITING) {
      state = State.STOPPED;
    }
  }

  State state() {
    return state;
  }

  /** Programmes that have been run. */
  int done() {
    return done;
  }

  /** Programmes to run; 0 as long as it waits. */
  int all() {
    return all;
  }

  /** Why there is no plan; empty unless it failed. */
  String fault() {
    return fault;
  }

  /** The plan, or the one made before as long as this one is not, or null where there is none. */
  @Nullable Made made() {
    return made;
  }

  /** Keeps what was made before, until this one is made too. */
  void keep(@Nullable Made before) {
    made = before;
  }

  /** The form by which it was asked for. */
  Form form() {
    return form;
  }
}
