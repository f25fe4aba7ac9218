package leafturn.advice.call;

import java.util.EnumSet;
import java.util.Set;
import leafturn.model.grass.Species;

/**
 * Straw of a warm-season grass at green-up: creeping grasses with runners below the ground are
 * lowered once, St. Augustinegrass never is.
 */
record GreenUp(Prospect prospect) {
  private static final Set<Species> LOWERED = EnumSet.of(Species.BERMUDAGRASS, Species.ZOYSIAGRASS);
  private static final double LOWEST_MM = 10;
  private static final int FROST_LOOK_DAYS = 14;

  /** A frost that would harm what has turned green, °C in the air. */
  private static final double KILLING_FROST_C = 0;

  /** Height that straw is lowered to, mm. */
  static double lowMm(Prospect prospect) {
    double lowMm = prospect.rules().threshold(CallRule.LOWER_ONCE) * prospect.cutHeightMm();
    return Math.max(LOWEST_MM, Math.round(lowMm));
  }

  /** True when straw stands that was seen to turn green. */
  boolean greening() {
    return prospect.warmSeasonGrass()
        && prospect.known().seen(Sight.GREENING_UP)
        && prospect.known().unmownThisYear();
  }

  /** True for grasses that stand being lowered. */
  boolean species() {
    return LOWERED.contains(prospect.grass());
  }

  /** True when the straw may be lowered on a day. */
  boolean mayBeLowered(int day) {
    return greening() && species() && frostPast(day);
  }

  /** True when most possible seasons bring no more frost for two weeks. */
  boolean frostPast(int day) {
    return prospect.inMost(
        season -> {
          double[] minimumC = prospect.seasons().get(season).minimumC();
          for (int next = day; next < Math.min(minimumC.length, day + FROST_LOOK_DAYS); next++) {
            if (minimumC[next] <= KILLING_FROST_C) {
              return false;
            }
          }
          return true;
        });
  }
}
