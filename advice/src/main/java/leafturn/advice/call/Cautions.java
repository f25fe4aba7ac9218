package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.ArrayList;
import java.util.List;

/**
 * The usual cautions of the trade, where a call gives rise to them. Common practice, no source; the
 * machine's handbook, the product's label and local codes come first.
 */
final class Cautions {
  /** 15 degrees, where the handbooks of many mowers stop; common practice, no source. */
  private static final double TOO_STEEP_PERCENT = 27;

  private final Prospect prospect;
  private final Known known;
  private final CallRules rules;

  Cautions(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.rules = prospect.rules();
  }

  /** Cautions for a plan on its day. */
  List<String> of(Plan plan) {
    List<String> cautions = new ArrayList<>();
    treated(cautions);
    longGrass(plan, cautions);
    if (slippery(0) || slippery(plan.day())) {
      cautions.add(
          "Wet grass is slippery: stay off wet slopes, and take no ride-on mower onto them; the machine's handbook gives its limits.");
    } else if (known.steep()) {
      cautions.add(
          say(
              "A slope of %s %%: never mow it wet, push across it, drive up and down; the machine's handbook gives its limits.",
              Words.figure(known.facts().place().slopePercent())));
    }
    if (known.facts().place().slopePercent() > TOO_STEEP_PERCENT) {
      cautions.add(
          say(
              "Handbooks of many mowers stop at 15 degrees, %s %% (common practice, no source): where yours does, this slope is work for a trimmer from firm footing, or for somebody with the machine for it.",
              Words.figure(TOO_STEEP_PERCENT)));
    }
    cautions.add(
        "Walk the lawn first: stones, toys and wire leave the deck as missiles. Keep children, other people and pets well away while the blade turns.");
    cautions.add(
        "Engine off, and plug or battery out, before you clear the chute or empty a stuck bag; the blade runs on after the engine stops. Let a hot engine cool before you refuel, and keep dry grass off it.");
    sharp(cautions);
    if (known.seen(Sight.CLUMPS)) {
      cautions.add(
          "Clumps were seen: spread them with a rake or a second pass before they smother the grass (common practice, no source).");
    }
    if (known.disease().isPresent()) {
      cautions.add("Mow the diseased lawn last, and clean the deck and your shoes afterwards.");
    }
    cautions.add(
        "Sweep clippings off paving and out of gutters, and keep them away from drains and open water.");
    if (!plan.returned()) {
      cautions.add(
          "Feed no clippings to horses or other livestock: they ferment, and may carry residues.");
      if (known.facts().treatments().isEmpty()) {
        cautions.add(
            "Treated lawn: keep to the label's interval before clippings are composted or used as mulch.");
      }
    }
    return cautions;
  }

  /** Cautions where the lawn is left alone. */
  List<String> whenLeft(CallRule rule) {
    List<String> cautions = new ArrayList<>();
    treated(cautions);
    if (rule == CallRule.DORMANT || rule == CallRule.HARDLY_GROWING) {
      cautions.add(
          known.wilting().isPresent()
              ? "Keep feet, wheels and play off wilted grass: its leaves bruise and stay down."
              : "Keep feet, wheels and play off grass at rest: its crowns break.");
    }
    if (rule == CallRule.FROST || prospect.frostPossible(0)) {
      cautions.add("Keep off while there is frost: frozen leaves break underfoot.");
    }
    return cautions;
  }

  private void treated(List<String> cautions) {
    if (!known.facts().treatments().isEmpty()) {
      cautions.add(
          "The label of what was applied is the law: it comes before everything here, and so do local rules.");
      if (known.holds(prospect.today().on()).any()) {
        cautions.add(
            "No clippings of this lawn to compost, mulch, horses or other livestock while they are held.");
      }
    }
  }

  private void longGrass(Plan plan, List<String> cautions) {
    if (longAbsence(plan)) {
      cautions.add(
          "Long grass hides animals: walk it before you mow, and leave nests, young hares and hedgehogs their corner until they have gone.");
    }
    if (aboveAnyDeck(plan, prospect)) {
      cautions.add(
          say(
              "Few decks go above %s: where yours does not, take grass this tall down with a scythe, a trimmer or a mower made for it, rake it off, and see its handbook about thrown stones.",
              prospect.reader().height(DeckHeights.HIGHEST_MM)));
    }
  }

  /** True when a plan has a cut higher than decks go. */
  static boolean aboveAnyDeck(Plan plan, Prospect prospect) {
    double usualMm = Math.max(DeckHeights.HIGHEST_MM, prospect.cutHeightMm());
    return plan.cuts().stream().anyMatch(cut -> cut.toMm() > usualMm);
  }

  private boolean longAbsence(Plan plan) {
    long unmown = known.daysUnmown().orElse(0L) + plan.day();
    double taken = Prospect.takenFraction(prospect.heightMm(plan.day()), prospect.cutHeightMm());
    return unmown >= rules.threshold(CallRule.ANIMALS_DAYS) && taken > prospect.thirdAndTolerance();
  }

  private void sharp(List<String> cautions) {
    if (known.newlySeeded()) {
      cautions.add("Use a sharp blade on seedlings, turn wide, and stay off soft soil.");
    } else if (known.seen(Sight.OWN_STALKS)) {
      cautions.add("Use a sharp blade: a dull one tears stalks instead of cutting them.");
    }
  }

  private boolean slippery(int day) {
    return prospect.wet(day) || prospect.soft(day) || prospect.saturated(day);
  }
}
