package leafturn.model.lawn;

import java.util.List;

/**
 * What is done to a lawn year after year.
 *
 * @param mowing when and how it is mown
 * @param feedings fertiliser, every year on the same days
 * @param irrigationShareOfDemand share of the water demand that the irrigation programme gives
 *     back, 0 (none) to 1.5
 */
public record Programme(Mowing mowing, List<Feeding> feedings, double irrigationShareOfDemand) {
  public Programme {
    feedings = List.copyOf(feedings);
    within("irrigation.shareOfDemand", irrigationShareOfDemand, 0, 1.5);
  }

  /**
   * @param heights cut heights through the year
   * @param everyDays interval between cuts, days, 1 to 366; 0 stands for the one-third rule
   * @param from first day of the mowing season
   * @param to last day; before {@code from} when the season goes over the new year
   * @param clippings what becomes of the clippings
   */
  public record Mowing(
      CutHeights heights,
      int everyDays,
      CalendarDay from,
      CalendarDay to,
      ReturnPractice clippings) {
    public Mowing {
      within("mowing.trigger.everyDays", everyDays, 0, 366);
    }

    /** One height all year, and one share of the clippings returned at every mowing. */
    public Mowing(
        double heightMm, int everyDays, CalendarDay from, CalendarDay to, double returnedShare) {
      this(CutHeights.always(heightMm), everyDays, from, to, ReturnPractice.always(returnedShare));
    }

    /** Cut height of every month without one of its own, mm. */
    public double heightMm() {
      return heights.usualMm();
    }

    /** Share of the clippings returned where no rule decides at the mowing, 0 to 1. */
    public double returnedShare() {
      return clippings.share();
    }

    /** True when a cut is due as soon as it would take the share of the one-third rule. */
    public boolean byOneThirdRule() {
      return everyDays == 0;
    }
  }

  /**
   * Fertiliser, elements in g/m2, 0 to 100 each.
   *
   * @param fastNGPerM2 N that dissolves within days
   * @param slowNGPerM2 N released over months
   */
  public record Feeding(
      CalendarDay on, double fastNGPerM2, double slowNGPerM2, double pGPerM2, double kGPerM2) {
    public Feeding {
      within("fastNGPerM2", fastNGPerM2, 0, 100);
      within("slowNGPerM2", slowNGPerM2, 0, 100);
      within("pGPerM2", pGPerM2, 0, 100);
      within("kGPerM2", kGPerM2, 0, 100);
    }
  }

  private static void within(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          "%s is %s, but must lie from %s to %s".formatted(name, value, low, high));
    }
  }
}
