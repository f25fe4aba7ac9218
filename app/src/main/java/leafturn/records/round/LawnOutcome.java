package leafturn.records.round;

import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;

/** What came of calling a lawn: its call, or why there is none. */
sealed interface LawnOutcome {
  /** A lawn with its call. */
  record Called(LawnOnRound lawn) implements LawnOutcome {}

  /** A lawn without one. */
  record NotCalled(LawnWithoutCall lawn) implements LawnOutcome {}

  /** A lawn without a call, and why. */
  static LawnOutcome notCalled(PlacedLawn placed, String why) {
    return new NotCalled(
        new LawnWithoutCall(
            placed.address(),
            placed.property().content().name(),
            placed.lawn().content().name(),
            why,
            false));
  }

  /** A lawn whose call is being made. */
  static LawnOutcome underWay(PlacedLawn placed) {
    return new NotCalled(
        new LawnWithoutCall(
            placed.address(),
            placed.property().content().name(),
            placed.lawn().content().name(),
            "Its advice is being worked out; look again soon.",
            true));
  }
}
