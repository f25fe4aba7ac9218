package leafturn.advice.call;

import java.time.LocalDate;
import java.util.Optional;
import leafturn.advice.call.Place.AnnualBluegrass;
import leafturn.model.grass.AnnualBluegrassSeedHeads;
import leafturn.model.grass.SeedHeadWindow;
import leafturn.model.lawn.SiteClimate;
import org.jspecify.annotations.Nullable;

/**
 * Whether annual bluegrass stands in seed on the day of a call. A look at the lawn outweighs the
 * warmth of the year.
 *
 * @param likelihood 0-1, where annual bluegrass grows; NaN when it cannot be told
 * @param basis where it comes from
 * @param lookedOn day of the look that decides, or null
 * @param warmthCd warmth since the start of the year, °C d; NaN when the record begins later
 * @param windowFraction the likelihood by warmth or calendar alone, whatever was seen, 0-1; NaN
 *     when it cannot be told
 */
record SeedHeads(
    double likelihood,
    Basis basis,
    @Nullable LocalDate lookedOn,
    double warmthCd,
    double windowFraction) {

  /** Where a likelihood comes from. */
  enum Basis {
    /** Someone saw them. */
    SEEN,
    /** Someone looked and saw none. */
    NOT_SEEN,
    /** The lawn has no annual bluegrass. */
    NONE_GROWS,
    /** Warmth of the year, in spring. */
    SPRING,
    /** Calendar, in a cool maritime autumn. */
    AUTUMN,
    /** The record begins after the start of the year. */
    NOT_KNOWN
  }

  /**
   * What the window is reckoned with; all our judgement.
   *
   * @param startDayOfYear day from which warmth is summed in the north, 1 to 366; half a year later
   *     in the south; the paper's own start is not known
   * @param seenDays days for which a look that saw them holds
   * @param notSeenDays days for which a look that saw none holds
   * @param autumnMost likelihood at the height of an autumn flush, 0-1
   */
  record Figures(int startDayOfYear, int seenDays, int notSeenDays, double autumnMost) {
    /** As the rules have them. */
    static Figures of(CallRules rules) {
      return new Figures(
          (int) Math.round(rules.threshold(CallRule.SEED_HEADS_START)),
          (int) Math.round(rules.threshold(CallRule.SEEN_DAYS)),
          (int) Math.round(rules.threshold(CallRule.SEED_HEADS_NONE)),
          rules.threshold(CallRule.AUTUMN_FLUSH));
    }
  }

  private static final int MONTHS = 12;
  private static final int HALF_YEAR_MONTHS = 6;

  /** The likelihood for a site and day. */
  static SeedHeads of(
      SiteClimate climate, Circumstances circumstances, LocalDate on, Figures figures) {
    double warmthCd = warmthCd(climate, on, figures.startDayOfYear());
    SeedHeads window = window(warmthCd, autumn(climate, on, figures));
    Optional<Sighting> look =
        circumstances.last(
            Sight.ANNUAL_BLUEGRASS_SEED_HEADS,
            on,
            Math.max(figures.seenDays(), figures.notSeenDays()));
    if (look.isPresent() && holds(look.get(), on, figures)) {
      boolean there = look.get().there();
      return window.overruled(there ? 1 : 0, there ? Basis.SEEN : Basis.NOT_SEEN, look.get().on());
    }
    return circumstances.place().annualBluegrass() == AnnualBluegrass.NONE
        ? window.overruled(0, Basis.NONE_GROWS, null)
        : window;
  }

  private static SeedHeads window(double warmthCd, double autumn) {
    double spring =
        Double.isNaN(warmthCd)
            ? Double.NaN
            : SeedHeadWindow.springFraction(warmthCd, SeedHeadWindow.WARMTH_SPREAD_FRACTION);
    if (autumn > 0 && !(spring >= autumn)) {
      return new SeedHeads(autumn, Basis.AUTUMN, null, warmthCd, autumn);
    }
    Basis basis = Double.isNaN(spring) ? Basis.NOT_KNOWN : Basis.SPRING;
    return new SeedHeads(spring, basis, null, warmthCd, spring);
  }

  private SeedHeads overruled(double seen, Basis by, @Nullable LocalDate lookedAt) {
    return new SeedHeads(seen, by, lookedAt, warmthCd, windowFraction);
  }

  /**
   * True when the window is open or near: the spread of the warmth at which lawns flower opens it
   * early and closes it late. Also where it cannot be told.
   */
  boolean near() {
    return !(windowFraction == 0);
  }

  /** What a likelihood rests on where nobody looked. */
  String likelyBy() {
    return basis == Basis.AUTUMN
        ? "calendar, for the second flush of cool maritime autumns"
        : "warmth of the year";
  }

  private static boolean holds(Sighting look, LocalDate on, Figures figures) {
    int days = look.there() ? figures.seenDays() : figures.notSeenDays();
    return !look.on().isBefore(on.minusDays(days));
  }

  private static double warmthCd(SiteClimate climate, LocalDate on, int startDayOfYear) {
    LocalDate start = on.withDayOfYear(1).plusDays(startDayOfYear - 1);
    if (climate.site().latitudeDeg() < 0) {
      start = start.plusMonths(HALF_YEAR_MONTHS);
    }
    start = start.isAfter(on) ? start.minusYears(1) : start;
    int first = climate.weather().indexOf(start);
    int last = Math.min(climate.weather().indexOf(on), climate.measuredDays() - 1);
    if (first < 0) {
      return Double.NaN;
    }
    double sum = 0;
    for (int day = first; day <= last; day++) {
      sum += AnnualBluegrassSeedHeads.degreeDaysCd(climate.meanC(day));
    }
    return sum;
  }

  private static double autumn(SiteClimate climate, LocalDate on, Figures figures) {
    double shape =
        SeedHeadWindow.autumnFraction(on.getDayOfYear(), climate.site().latitudeDeg() < 0);
    return shape > 0 && coolMaritime(climate, on) ? figures.autumnMost() * shape : 0;
  }

  /** By the record up to the day; false while it lacks a month of the year. */
  private static boolean coolMaritime(SiteClimate climate, LocalDate on) {
    double[] sumC = new double[MONTHS];
    int[] days = new int[MONTHS];
    int last = Math.min(climate.weather().indexOf(on), climate.measuredDays() - 1);
    for (int day = 0; day <= last; day++) {
      int month = climate.dayAt(day).getMonthValue() - 1;
      sumC[month] += climate.meanC(day);
      days[month]++;
    }
    for (int month = 0; month < MONTHS; month++) {
      if (days[month] == 0) {
        return false;
      }
      sumC[month] /= days[month];
    }
    return SeedHeadWindow.coolMaritime(sumC);
  }
}
