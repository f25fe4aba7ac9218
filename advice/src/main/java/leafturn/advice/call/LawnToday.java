package leafturn.advice.call;

import java.time.LocalDate;
import java.util.List;
import leafturn.model.Stores;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.LogKeeper.Correction;
import org.jspecify.annotations.Nullable;

/**
 * A lawn as its record of weather and its log leave it on the day of a call.
 *
 * @param on the day of the call
 * @param weatherKnown true when the record holds that day; the state is then that of its evening,
 *     else that of the evening before with what was logged for the day
 * @param state the lawn's state
 * @param equations of the lawn
 * @param past the days shown, the last one that of the state
 * @param recentWaterMm rain and logged watering of the last {@link #RECENT_DAYS} days of the
 *     record, in order
 * @param minimumC minimum air temperature of the day, °C, NaN when not known
 * @param maximumC maximum air temperature of the day, °C, NaN when not known
 * @param lastMown day of the last mowing, or null
 * @param corrections measured heights the model was set to
 * @param growth what is known of the lawn's own growth
 * @param ownGrowth the same for a reader
 * @param fallen clippings returned in the past months
 */
record LawnToday(
    LocalDate on,
    boolean weatherKnown,
    LawnState state,
    LawnEquations equations,
    List<Outlook.PastDay> past,
    double[] recentWaterMm,
    double minimumC,
    double maximumC,
    @Nullable LocalDate lastMown,
    List<Correction> corrections,
    GrowthFactor growth,
    OwnGrowth ownGrowth,
    FallenCuts fallen) {
  static final int RECENT_DAYS = 4;

  private static final int WEEK = 7;

  /** First day that is not known and has to come from a possible season. */
  LocalDate firstDayToCome() {
    return weatherKnown ? on.plusDays(1) : on;
  }

  double heightMm() {
    return equations.heightMm(state.stores());
  }

  /** Water in the root zone over its capacity, 0-1. */
  double soilWaterFraction() {
    double heldFraction = equations.parameters().get("fc") - equations.parameters().get("wp");
    double heldMm = 1000 * heldFraction * equations.parameters().get("zr");
    return 1 - state.store(Stores.DEPLETION_MM) / heldMm;
  }

  /** Water that would fill the root zone, mm. */
  double soilWaterMissingMm() {
    return Math.max(0, state.store(Stores.DEPLETION_MM));
  }

  /** Days from the last mowing to the day of the call. */
  double daysSinceMowing() {
    return on.equals(lastMown) ? 0 : state.store(Stores.DAYS_SINCE_MOWING) + (weatherKnown ? 0 : 1);
  }

  /** Mean leaf growth of the last seven days, g/m2 and day. */
  double recentGrowthGPerM2() {
    return past.subList(Math.max(0, past.size() - WEEK), past.size()).stream()
        .mapToDouble(Outlook.PastDay::growthGPerM2)
        .average()
        .orElse(0);
  }
}
