package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import leafturn.advice.call.Weighing.Weighed;

/** Why clippings are collected or the deck is raised, as the sentence of an answer ends. */
record CauseWords(Prospect prospect) {

  /** Why the deck is raised and the first clippings are collected. */
  String whyRaise(Plan plan, Weighed returnThatDay) {
    boolean tooMuch = returnThatDay.breaks(CallRule.ONE_THIRD);
    if (prospect.foreignSeed() && tooMuch) {
      return say("%s, and more than %s would come off at once", inSeed(), prospect.rules().third());
    }
    if (returnThatDay.breaks(CallRule.HALF)) {
      return say("more than %s of the height would come off at once", prospect.rules().half());
    }
    if (tooMuch) {
      return say(
          "%s of the height%s is too much at once",
          Words.percent(plan.wholeFraction(prospect)),
          returnThatDay.breaks(CallRule.STEMMY) ? ", long and stemmy," : "");
    }
    return whyCollect(plan, returnThatDay);
  }

  /** Why the clippings are collected. */
  String whyCollect(Plan plan, Weighed returnThatDay) {
    Known known = prospect.known();
    if (known.leafCoverFraction() > prospect.rules().threshold(CallRule.LEAF_COVER)) {
      return "fallen leaves hide the turf; they are brown stock for the heap";
    }
    if (returnThatDay.breaks(CallRule.SEED_HEADS)) {
      return inSeed() + ". " + seedsGo();
    }
    if (returnThatDay.breaks(CallRule.NO_CLIPPINGS)) {
      return say(
          "the client wants none carried in, and %s would be seen; keep them on the property",
          new SeenClippings(prospect, plan.day()).words());
    }
    if (returnThatDay.breaks(CallRule.HALF)) {
      return say(
          "more than %s of the height comes off%s",
          prospect.rules().half(),
          plan.inSteps()
              ? "; step the height down over several mowings"
              : ", too much to leave lying");
    }
    return tooMuch(plan, returnThatDay);
  }

  private String tooMuch(Plan plan, Weighed returnThatDay) {
    if (returnThatDay.breaks(CallRule.STEMMY)) {
      return say(
          "%s of the height comes off, long and stemmy",
          Words.percent(plan.wholeFraction(prospect)));
    }
    if (returnThatDay.breaks(CallRule.LENGTH)) {
      return "too long to fall between the leaves";
    }
    if (returnThatDay.breaks(CallRule.CLUMPS)) {
      return "too much for the turf to take up without clumps";
    }
    return MowingHours.has(plan.day())
        ? "wet clippings cling and clump, and no dry hours are in sight"
            + (plan.day() > 0 && !prospect.wet(0) ? " that day" : "")
        : "wet clippings cling and clump, and the leaves are likely wet that day";
  }

  private String inSeed() {
    return prospect.known().seedHeads().basis() == SeedHeads.Basis.SEEN
        ? "annual bluegrass is in seed"
        : "annual bluegrass is likely in seed";
  }

  /** Where clippings with seeds may go. */
  private String seedsGo() {
    String heap =
        switch (prospect.known().facts().wishes().heapHeat()) {
          case LOGGED -> "the heap, whose heat is logged, may take them";
          case COLD -> "the heap is cold, so send them away";
          case NOT_KNOWN -> "a heap only with logged heat, else away";
        };
    return "Not to beds; " + heap + "; the benefit is modest";
  }
}
