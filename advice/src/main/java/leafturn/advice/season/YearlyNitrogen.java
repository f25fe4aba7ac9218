package leafturn.advice.season;

import java.util.ArrayList;
import java.util.List;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.Programme.Feeding;

/** The N of a programme's feed plan, and the same plan with more or less of it. */
final class YearlyNitrogen {
  /** The usual days of feeding a cool-season lawn, a quarter of the year's N on each. */
  private static final int[] USUAL_DAYS = {110, 150, 245, 280};

  private static final int HALF_YEAR_DAYS = 182;
  private static final int YEAR_DAYS = 365;
  private static final double MG_PER_G = 1000;

  private YearlyNitrogen() {}

  /** N a year, g/m2. */
  static double gPerM2(List<Feeding> feedings) {
    return feedings.stream()
        .mapToDouble(feeding -> feeding.fastNGPerM2() + feeding.slowNGPerM2())
        .sum();
  }

  /**
   * A programme with another yearly N, given as it gives its own; without one of its own, as the
   * lawn is fed now, or else in the usual quarters.
   *
   * @param presentFeedings how the lawn is fed now
   * @param nGPerM2 N a year, g/m2
   */
  static Programme set(
      Programme programme, List<Feeding> presentFeedings, double nGPerM2, boolean southern) {
    List<Feeding> plan = programme.feedings();
    if (gPerM2(plan) == 0) {
      plan = new ArrayList<>(plan);
      plan.addAll(withoutOthers(presentFeedings));
    }
    if (gPerM2(plan) == 0) {
      plan = new ArrayList<>(programme.feedings());
      plan.addAll(quarters(southern));
    }
    double factor = nGPerM2 / gPerM2(plan);
    List<Feeding> fed = plan.stream().map(feeding -> times(feeding, factor)).toList();
    return new Programme(programme.mowing(), fed, programme.irrigationShareOfDemand());
  }

  private static List<Feeding> withoutOthers(List<Feeding> feedings) {
    return feedings.stream()
        .map(each -> new Feeding(each.on(), each.fastNGPerM2(), each.slowNGPerM2(), 0, 0))
        .toList();
  }

  private static List<Feeding> quarters(boolean southern) {
    List<Feeding> quarters = new ArrayList<>();
    for (int day : USUAL_DAYS) {
      int shifted = southern ? (day + HALF_YEAR_DAYS - 1) % YEAR_DAYS + 1 : day;
      quarters.add(new Feeding(CalendarDay.ofYear(shifted), 1, 0, 0, 0));
    }
    return quarters;
  }

  /** The same programme with doses to the mg/m2, as a person would write them down. */
  static Programme rounded(Programme programme) {
    List<Feeding> doses =
        programme.feedings().stream()
            .map(
                each ->
                    new Feeding(
                        each.on(),
                        rounded(each.fastNGPerM2()),
                        rounded(each.slowNGPerM2()),
                        each.pGPerM2(),
                        each.kGPerM2()))
            .toList();
    return new Programme(programme.mowing(), doses, programme.irrigationShareOfDemand());
  }

  private static double rounded(double gPerM2) {
    return Math.rint(gPerM2 * MG_PER_G) / MG_PER_G;
  }

  private static Feeding times(Feeding feeding, double factor) {
    return new Feeding(
        feeding.on(),
        factor * feeding.fastNGPerM2(),
        factor * feeding.slowNGPerM2(),
        feeding.pGPerM2(),
        feeding.kGPerM2());
  }
}
