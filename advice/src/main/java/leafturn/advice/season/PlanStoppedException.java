package leafturn.advice.season;

/** A plan that was stopped before its answer. */
public final class PlanStoppedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  PlanStoppedException() {
    super("the plan was stopped");
  }
}
