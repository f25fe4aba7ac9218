package leafturn.advice.call;

import java.util.Locale;

/** The rules and figures of the call by name; {@code rules.tsv} says what each one means. */
public enum CallRule {
  SEASON,
  LEAST_GROWTH,
  FROST,
  SATURATED,
  SOFT_GROUND,
  HEAT,
  HALF,
  ONE_THIRD,
  CLUMPS_HEAVY,
  LENGTH,
  CLUMPS,
  DUE,
  WET,
  CARRY,
  SECOND_CUT,
  DELAY,
  WET_YESTERDAY,
  ONE_THIRD_TOLERANCE,
  HARDLY_GROWING,
  DRY_SOIL,
  CLUMP_LIMIT_DRY,
  CLUMP_LIMIT_WET,
  DECK_FACTOR,
  SHORT_PIECES,
  CUT_TWICE_DAYS,
  DRY_SHARE_OF_FRESH,
  DRY_G_PER_LITRE,
  PASS_OVERLAP,
  BAG_MINUTES,
  NITROGEN_FREED,
  NITROGEN_TIED_UP,
  BREAKDOWN,
  NITROGEN;

  /** The name in files, commands and reasons, for instance {@code one-third}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
