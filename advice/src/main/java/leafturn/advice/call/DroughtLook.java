package leafturn.advice.call;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether grass on soil that is reckoned dry is looked at before it is mown: the model has no rest
 * in drought, and only a look tells whether grass suffers.
 */
record DroughtLook(Prospect prospect) {

  /**
   * True when the soil is reckoned that dry, nobody looked today, and no rain is likely before.
   *
   * @param mown days until the lawn is mown
   */
  private boolean wanted(int mown) {
    Known known = prospect.known();
    return !prospect.standsIn()
        && !known.newlySeeded()
        && !known.seen(Sight.GREENING_UP)
        && prospect.today().soilWaterFraction() < limit()
        && Stream.of(Sight.WILTING, Sight.DORMANT)
            .allMatch(sight -> known.facts().last(sight, prospect.today().on(), 0).isEmpty())
        && (mown == 0 || !new WateringAdvice(prospect).likelyToDo());
  }

  private double limit() {
    return prospect.rules().threshold(CallRule.DROUGHT_LOOK);
  }

  /** What the answer says of it; empty where no look is wanted. */
  String sentence(Plan plan) {
    return wanted(plan.day())
        ? " But look first, for by what is reckoned the soil holds hardly any water: where footprints stay or leaves fold, do not mow, and keep off."
        : "";
  }

  /** The finding behind it. */
  Optional<Reason> reason(Plan plan) {
    return Optional.of(plan)
        .filter(each -> wanted(each.day()))
        .map(
            each ->
                Reason.of(
                    prospect.rules().entry(CallRule.DROUGHT_LOOK),
                    Words.percent(prospect.today().soilWaterFraction()) + " of the soil's water",
                    "is what the root zone is reckoned to hold today, of all that it can. Whether the grass suffers, only a look tells: the model has no rest in drought.",
                    "looked at below " + Words.percent(limit()),
                    false));
  }

  /** What a look would change. */
  Optional<String> change(Plan plan) {
    return wanted(plan.day())
        ? Optional.of(
            "If footprints stay or leaves fold: do not mow, keep off, and log what you see.")
        : Optional.empty();
  }
}
