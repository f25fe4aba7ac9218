package leafturn.web;

import leafturn.records.round.PlacedLawn;
import leafturn.reports.UnitWords;
import org.jspecify.annotations.Nullable;

/** A lawn's season plan as its page shows it. */
public final class SeasonPage {
  private final PlacedLawn placed;
  private final @Nullable PlanJob job;
  private final PlanWeights look;
  private final UnitWords units;
  private final boolean mayAdopt;
  private final String sinceThen;
  private final String missing;

  SeasonPage(
      PlacedLawn placed,
      @Nullable PlanJob job,
      PlanWeights look,
      UnitWords units,
      boolean mayAdopt,
      String sinceThen,
      String missing) {
    this.placed = placed;
    this.job = job;
    this.look = look;
    this.units = units;
    this.mayAdopt = mayAdopt;
    this.sinceThen = sinceThen;
    this.missing = missing;
  }

  public String lawnName() {
    return placed.lawn().content().name() + ", " + placed.property().content().name();
  }

  public String address() {
    return "/lawns/" + placed.address();
  }

  public boolean mayAdopt() {
    return mayAdopt;
  }

  public boolean underWay() {
    return job != null && !job.state().ended();
  }

  public int done() {
    return job == null ? 0 : job.done();
  }

  /** Programmes to run, at least 1 so that a bar can be drawn. */
  public int all() {
    return job == null ? 1 : Math.max(1, job.all());
  }

  /** What became of a plan without an answer; empty else. */
  public String ending() {
    if (job == null) {
      return "";
    }
    String ending =
        switch (job.state()) {
          case STOPPED -> "The plan was stopped.";
          case FAILED -> job.fault();
          default -> "";
        };
    return ending.isEmpty() || job.made() == null
        ? ending
        : ending + " What stands here is the plan made before it.";
  }

  /** The plan with all that is shown of it, or null as long as there is none. */
  public @Nullable SeasonAnswer answer() {
    PlanJob.Made made = job == null ? null : job.made();
    return made == null ? null : new SeasonAnswer(made, look, units);
  }

  /** How the lawn has come to be kept otherwise since the plan was made; empty where it has not. */
  public String sinceThen() {
    return sinceThen;
  }

  /** What must be given before a plan can be made; empty where nothing is missing. */
  public String missing() {
    return missing;
  }

  /** The lawn's name in addresses. */
  public String slug() {
    return placed.address();
  }

  /** The property's name in addresses. */
  public String property() {
    return placed.property().content().address();
  }

  public String propertyName() {
    return placed.property().content().name();
  }

  /** Id of the station of its weather; empty where none was chosen. */
  public String station() {
    return placed.station() == null ? "" : placed.station().id();
  }
}
