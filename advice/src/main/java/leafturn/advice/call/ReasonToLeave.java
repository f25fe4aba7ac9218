package leafturn.advice.call;

import leafturn.advice.call.Weighing.Weighed;

/** The rule that is told where a lawn is left alone, and the day it is told of. */
record ReasonToLeave(Prospect prospect, Weighing weighing) {

  /** A pass that would cut next to nothing is told as that, on the day it could be made. */
  CallRule rule(CallRule rule) {
    return nothingToCut(rule) ? CallRule.LEAST_GROWTH : rule;
  }

  /** The day a rule speaks against: for one that leaves no day, that of the least bad plan. */
  int day(CallRule rule) {
    if (nothingToCut(rule)) {
      return nextPass();
    }
    Weighed best = weighing.best();
    boolean heaviest = !best.broken().isEmpty() && best.broken().get(0) == rule;
    return heaviest && rule != CallRule.SEASON ? best.plan().day() : 0;
  }

  private boolean nothingToCut(CallRule rule) {
    return rule == CallRule.DUE && weighing.returnedOn(nextPass()).breaks(CallRule.LEAST_GROWTH);
  }

  /** Today where somebody can come, else the next visit. */
  private int nextPass() {
    return Math.max(0, prospect.nextVisit(0));
  }
}
