package leafturn.records.round;

import java.util.Objects;
import java.util.stream.Stream;
import leafturn.advice.call.LawnOnRound;

/**
 * A lawn whose call would be another one.
 *
 * @param now as it is called
 * @param then as it would be called
 */
public record ChangedCall(LawnOnRound now, LawnOnRound then) {

  /** The change between two outcomes; none where the sentence and its reason stay as they are. */
  static Stream<ChangedCall> between(LawnOutcome now, LawnOutcome then) {
    if (now instanceof LawnOutcome.Called before && then instanceof LawnOutcome.Called after) {
      ChangedCall change = new ChangedCall(before.lawn(), after.lawn());
      return change.differs() ? Stream.of(change) : Stream.empty();
    }
    return Stream.empty();
  }

  private boolean differs() {
    return !now.call().sentence().equals(then.call().sentence())
        || !Objects.equals(now.call().mowOn(), then.call().mowOn());
  }
}
