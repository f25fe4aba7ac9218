package leafturn.advice.season;

import java.util.List;
import leafturn.advice.call.CallRules;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.SiteClimate;

/**
 * What a plan is asked.
 *
 * @param lawn with the programme of now
 * @param climate its record of weather
 * @param given programmes of the person who plans
 * @param search true when programmes round that of now are tried too
 * @param draws which possible seasons
 * @param rules thresholds for clippings left to the rules, and figures for volume and work
 */
public record PlanRequest(
    Lawn lawn,
    SiteClimate climate,
    List<PlannedProgramme> given,
    boolean search,
    Draws draws,
    CallRules rules) {
  public PlanRequest {
    given = List.copyOf(given);
  }

  /** The same asked of another lawn. */
  PlanRequest with(Lawn other) {
    return new PlanRequest(other, climate, given, search, draws, rules);
  }

  /**
   * @param seasons number of possible seasons, 10 to 2000
   * @param seed they are drawn by
   */
  public record Draws(int seasons, long seed) {
    /** Fewest possible seasons. */
    public static final int FEWEST = 10;

    /** Most possible seasons. */
    public static final int MOST = 2000;

    public Draws {
      if (seasons < FEWEST || seasons > MOST) {
        throw new IllegalArgumentException(
            "a plan is asked over %d possible seasons, but takes %d to %d"
                .formatted(seasons, FEWEST, MOST));
      }
    }
  }
}
