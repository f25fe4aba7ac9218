package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.function.ToDoubleFunction;
import leafturn.advice.call.DaysAhead.Season;

/**
 * What the weather of a day rules out, over the possible seasons: frost, soil full of water, soft
 * ground and heat. More than half of the seasons rule a day out.
 */
record DayWeather(Prospect prospect) {

  /** True when a rule of the weather holds on a day in more than half of the possible seasons. */
  boolean inMost(CallRule rule, int day) {
    return prospect.inMost(season -> holds(rule, prospect.seasons().get(season), day));
  }

  /** True when grass may be frozen on a day, or was seen to be; not once it was seen free of it. */
  boolean frostPossible(int day) {
    return day == 0
        ? prospect.known().frostAt().isPresent() || (inMost(CallRule.FROST, 0) && !seenThawed())
        : inMost(CallRule.FROST, day);
  }

  /** True when frost is possible on a day, and does not leave while it is light. */
  boolean frostLasts(int day) {
    double thawC = prospect.rules().threshold(CallRule.THAW);
    return frostPossible(day)
        && prospect.inMost(season -> prospect.seasons().get(season).maximumC()[day] <= thawC);
  }

  /** True when somebody found it free of frost today, at an hour at which it is reckoned so too. */
  boolean seenThawed() {
    return prospect
        .known()
        .frostFreeAt()
        .anyMatch(at -> 2 * prospect.hours().day(0).frostFraction(at.getHour()) < 1);
  }

  private double fraction(CallRule rule, int day) {
    long count = prospect.seasons().stream().filter(season -> holds(rule, season, day)).count();
    return (double) count / prospect.seasons().size();
  }

  private boolean holds(CallRule rule, Season season, int day) {
    double value = quantity(rule, day).applyAsDouble(season);
    return switch (rule) {
      case FROST -> value <= prospect.rules().threshold(rule);
      case SATURATED -> value >= prospect.rules().threshold(rule) && filled(season, day);
      case SOFT_GROUND -> value > prospect.rules().threshold(softRule());
      default -> value >= prospect.rules().threshold(rule);
    };
  }

  /** Rain fills soil beyond what it holds against gravity; watering to need does not. */
  private boolean filled(Season season, int day) {
    double waterMm = season.waterMm(day) + season.waterOfThreeDaysBeforeMm(day);
    return waterMm >= prospect.rules().threshold(CallRule.SATURATED_WATER);
  }

  /** What a rule of the weather is judged by on a day. */
  ToDoubleFunction<Season> quantity(CallRule rule, int day) {
    return switch (rule) {
      case FROST -> season -> season.minimumC()[day];
      case SATURATED -> season -> season.soilWaterFraction()[day];
      case SOFT_GROUND -> season -> season.waterOfThreeDaysBeforeMm(day);
      case HEAT -> season -> season.maximumC()[day];
      default -> throw new IllegalArgumentException(rule.id() + " is no rule of the weather");
    };
  }

  /** True when it is the same in all possible seasons: measured, or told by a forecast. */
  private boolean known(CallRule rule, int day) {
    Spread spread = prospect.spreadOf(quantity(rule, day));
    return spread.low() == spread.high();
  }

  /** True where a rule is one of these, and nobody knows yet whether it will hold on a day. */
  boolean unsure(CallRule rule, int day) {
    return switch (rule) {
      case FROST, SATURATED, SOFT_GROUND, HEAT -> !known(rule, day);
      default -> false;
    };
  }

  /** In how many possible seasons a rule holds on a day; empty where it is known. */
  String ofSeasons(CallRule rule, int day) {
    if (!unsure(rule, day)) {
      return "";
    }
    double fraction = fraction(rule, day);
    return say(
        " That is so in %s%s.",
        Words.ofSeasons(fraction), fraction == 1 ? "" : "; it counts where more than half say so");
  }

  /** Soil under seedlings counts as soft sooner. */
  CallRule softRule() {
    return prospect.known().newlySeeded() ? CallRule.SEEDLING_GROUND : CallRule.SOFT_GROUND;
  }
}
