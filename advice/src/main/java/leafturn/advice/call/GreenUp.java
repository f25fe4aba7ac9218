package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.IntStream;
import leafturn.advice.call.DaysAhead.Season;
import leafturn.model.grass.Species;

/**
 * Straw of a warm-season grass at green-up: creeping grasses with runners below the ground are
 * lowered once, St. Augustinegrass never is.
 */
record GreenUp(Prospect prospect) {
  private static final Set<Species> LOWERED = EnumSet.of(Species.BERMUDAGRASS, Species.ZOYSIAGRASS);
  private static final double LOWEST_MM = 10;

  /** Days of the mowing season in which grass that was not mown is winter's; our judgement. */
  private static final int SPRING_DAYS = 120;

  /** Height that straw is lowered to, mm. */
  static double lowMm(Prospect prospect) {
    double lowMm = prospect.rules().threshold(CallRule.LOWER_ONCE) * prospect.cutHeightMm();
    return Math.max(LOWEST_MM, Math.round(lowMm));
  }

  /** True when straw stands that was seen to turn green. */
  boolean greening() {
    return prospect.known().seen(Sight.GREENING_UP) && straw();
  }

  /** True when winter's straw may still stand: no mowing is logged and spring is not over. */
  private boolean straw() {
    LocalDate on = prospect.today().on();
    LocalDate start = prospect.mowingSeason().startBefore(on);
    boolean early = ChronoUnit.DAYS.between(start, on) <= SPRING_DAYS;
    return prospect.warmSeasonGrass()
        && prospect.known().unmownThisYear()
        && (early || !prospect.mowingSeason().contains(on));
  }

  /** True when nobody has looked whether straw that would be lowered turns green. */
  boolean unseen() {
    return species() && prospect.known().look(Sight.GREENING_UP).isEmpty() && straw();
  }

  /** True for grasses that stand being lowered. */
  boolean species() {
    return LOWERED.contains(prospect.grass());
  }

  /** True when straw stands that is to be lowered once frost is past. */
  boolean toBeLowered() {
    return greening() && species();
  }

  /** True when the straw may be lowered on a day. */
  boolean mayBeLowered(int day) {
    return toBeLowered() && frostPast(day);
  }

  /** True when enough possible seasons bring no more frost in the days that are looked ahead. */
  boolean frostPast(int day) {
    return 1 - frostFraction(day) >= prospect.rules().threshold(CallRule.GREEN_UP_FREE);
  }

  /** Days that are looked ahead for frost. */
  int lookDays() {
    return (int) prospect.rules().threshold(CallRule.GREEN_UP_DAYS);
  }

  /** Share of the possible seasons with a frost in the days ahead of a day, 0-1. */
  double frostFraction(int day) {
    long frosty = prospect.seasons().stream().filter(season -> frost(season, day)).count();
    return (double) frosty / prospect.seasons().size();
  }

  private boolean frost(Season season, int day) {
    int from = day == 0 && prospect.weather().seenThawed() ? 1 : day; // tonight's is tomorrow's
    double harmfulC = prospect.rules().threshold(CallRule.GREEN_UP_FROST);
    double[] minimumC = season.minimumC();
    int end = Math.min(minimumC.length, day + lookDays());
    return IntStream.range(from, end).anyMatch(each -> minimumC[each] <= harmfulC);
  }

  /** What speaks against lowering it on an earlier visit; empty where frost does not. */
  String whyNotBefore(int day) {
    int sooner = day - 1;
    while (sooner >= 0 && (!prospect.visit(sooner) || frostPast(sooner))) {
      sooner--;
    }
    return sooner < 0
        ? ""
        : say(
            " Not sooner: lowered %s, frost of %s or less could still harm it in %s.",
            new DayNames(prospect.today().on()).when(sooner),
            prospect.reader().temperatureLimit(prospect.rules().threshold(CallRule.GREEN_UP_FROST)),
            Words.ofSeasons(frostFraction(sooner)));
  }

  /** First day from today on, on which frost is past; -1 when none is in sight. */
  int firstDayPastFrost() {
    return DaysAhead.first(day -> day + lookDays() <= WeatherToCome.DAYS && frostPast(day));
  }
}
