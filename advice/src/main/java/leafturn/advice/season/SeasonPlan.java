package leafturn.advice.season;

import java.util.List;

/**
 * Programmes of a lawn compared on the same possible seasons.
 *
 * @param programmes the programme of now first, then those given, then those of the search
 * @param basis what was run
 */
public record SeasonPlan(List<Result> programmes, Basis basis) {
  public SeasonPlan {
    programmes = List.copyOf(programmes);
  }

  /** A programme and what it does. */
  public record Result(PlannedProgramme planned, ProgrammeOutcome outcome) {}

  /**
   * @param seasons possible seasons of a year
   * @param seed they are drawn by
   * @param recordYears years of the record they are drawn from
   * @param presentYears years in which the lawn was kept as now before a programme began
   * @param settlingYears years a programme was kept before the year that is reported
   * @param longRuns possible seasons of several years, for thatch
   * @param feedSeasons possible seasons in which the feed for equal growth was searched
   */
  public record Basis(
      int seasons,
      long seed,
      List<Integer> recordYears,
      int presentYears,
      int settlingYears,
      int longRuns,
      int feedSeasons) {
    public Basis {
      recordYears = List.copyOf(recordYears);
    }
  }

  /** How the lawn is kept now. */
  public Result present() {
    return programmes.get(0);
  }
}
