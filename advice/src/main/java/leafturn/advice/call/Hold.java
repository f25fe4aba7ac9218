package leafturn.advice.call;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A treatment whose clippings may not be used elsewhere yet. The label wins; where it is silent or
 * nobody has read it, what extension texts give for such products.
 *
 * @param treatment the product
 * @param mowingsLeft mowings that still have to be returned first, 0 where none
 * @param daysLeft days that are still to pass as well, 0 where none
 * @param byLabel true when the label says so, false when practice does
 */
record Hold(Treatment treatment, int mowingsLeft, long daysLeft, boolean byLabel) {

  /**
   * All treatments that hold clippings on a day, the one that does longest first.
   *
   * @param mowings days of all mowings up to that day
   */
  static List<Hold> on(
      LocalDate day, List<Treatment> treatments, List<LocalDate> mowings, CallRules rules) {
    return treatments.stream()
        .filter(treatment -> !treatment.on().isAfter(day))
        .map(treatment -> of(treatment, day, mowings, rules))
        .filter(hold -> hold.mowingsLeft() > 0 || hold.daysLeft() > 0)
        .sorted(
            Comparator.comparingLong(Hold::daysLeft).thenComparing(Hold::mowingsLeft).reversed())
        .toList();
  }

  private static Hold of(
      Treatment treatment, LocalDate day, List<LocalDate> mowings, CallRules rules) {
    Treatment.Label label = treatment.label();
    long passed = ChronoUnit.DAYS.between(treatment.on(), day);
    if (label.neverUse() || treatment.group() == Treatment.Group.PYRIDINE_ACID) {
      long days =
          Math.max(
              Math.round(rules.threshold(CallRule.PYRIDINE_DAYS)), orNone(label.daysBeforeUse()));
      return new Hold(treatment, 0, Math.max(0, days - passed), label.neverUse());
    }
    int since = (int) mowings.stream().filter(mown -> mown.isAfter(treatment.on())).count();
    boolean byLabel = label.mowingsBeforeUse() != null || label.daysBeforeUse() != null;
    boolean herbicide = treatment.kind() == Treatment.Kind.HERBICIDE;
    int mowingsAsked =
        byLabel || !herbicide
            ? orNone(label.mowingsBeforeUse())
            : (int) Math.round(rules.threshold(CallRule.HERBICIDE_MOWINGS));
    long daysAsked =
        byLabel || herbicide
            ? orNone(label.daysBeforeUse())
            : Math.round(rules.threshold(CallRule.PRODUCT_DAYS));
    return new Hold(
        treatment, Math.max(0, mowingsAsked - since), Math.max(0, daysAsked - passed), byLabel);
  }

  private static int orNone(@Nullable Integer number) {
    return number == null ? 0 : number;
  }

  /** True for products whose clippings leave the lawn for no heap, bed or animal at all. */
  boolean lasting() {
    return treatment.label().neverUse() || treatment.group() == Treatment.Group.PYRIDINE_ACID;
  }
}
