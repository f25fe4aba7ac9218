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
   * @param heightMm cut height, mm, 3 to 200
   * @param everyDays interval between cuts, days, 1 to 366; 0 stands for the one-third rule
   * @param from first day of the mowing season
   * @param to last day; before {@code from} when the season goes over the new year
   * @param returnedShare share of the clippings returned to the turf, 0 to 1
   */
  public record Mowing(
      double heightMm, int everyDays, CalendarDay from, CalendarDay to, double returnedShare) {
    public Mowing {
      within("mowing.heightMm", heightMm, 3, 200);
      within("mowing.trigger.everyDays", everyDays, 0, 366);
      within("mowing.clippings.returnedShare", returnedShare, 0, 1);
    }

    /** True when a cut is due as soon as it would take a third of the height. */
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
