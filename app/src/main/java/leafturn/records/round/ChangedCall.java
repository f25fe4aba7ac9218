package leafturn.records.round;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.Reason;

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

  /** Reasons that are told then and not now, or that speak otherwise or by another limit. */
  public List<Reason> come() {
    return without(then.call().reasons(), now.call().reasons());
  }

  /** Reasons that are told now and no longer then. */
  public List<Reason> gone() {
    Set<String> told =
        then.call().reasons().stream().map(Reason::ruleId).collect(Collectors.toSet());
    return now.call().reasons().stream().filter(reason -> !told.contains(reason.ruleId())).toList();
  }

  private static List<Reason> without(List<Reason> all, List<Reason> others) {
    return all.stream()
        .filter(reason -> others.stream().noneMatch(other -> alike(reason, other)))
        .toList();
  }

  private static boolean alike(Reason one, Reason other) {
    return one.ruleId().equals(other.ruleId())
        && one.against() == other.against()
        && one.threshold().equals(other.threshold());
  }

  private boolean differs() {
    return !now.call().sentence().equals(then.call().sentence())
        || !Objects.equals(now.call().mowOn(), then.call().mowOn());
  }
}
