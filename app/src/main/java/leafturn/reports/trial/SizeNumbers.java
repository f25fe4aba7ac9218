package leafturn.reports.trial;

import leafturn.quantity.DisplayNumber;
import leafturn.records.trial.SizeDocument;
import leafturn.trials.power.Layout;
import org.jspecify.annotations.Nullable;

/** Numbers of a trial's size as they stand in sentences. */
final class SizeNumbers {
  private final SizeDocument document;

  SizeNumbers(SizeDocument document) {
    this.document = document;
  }

  String truth() {
    double truth = document.size().trueDifference();
    if (truth == 0) {
      return "none";
    }
    return document.log() ? "a ratio of " + number(Math.exp(truth)) : number(truth);
  }

  String effect(@Nullable Double difference) {
    return difference == null ? "a difference" : effect(difference.doubleValue());
  }

  String effect(double difference) {
    return document.log()
        ? "a ratio of " + number(Math.exp(difference))
        : "a difference of " + number(difference);
  }

  String detectable(double difference) {
    return document.log() ? effect(difference) : number(difference);
  }

  /** What several samples of a plot on one date are. */
  String samples() {
    return "visual rating".equals(document.outcome()) ? "ratings" : "cores";
  }

  String margin(@Nullable Double margin) {
    return margin == null ? "the margin" : margin(margin.doubleValue());
  }

  String margin(double margin) {
    return document.log()
        ? "a ratio of %s either way".formatted(number(Math.exp(margin)))
        : "±" + number(margin);
  }

  String count(int units) {
    if (units == 0) {
      return "more than a million " + layout().units();
    }
    return "%s %s"
        .formatted(
            DisplayNumber.decimals(units, 0), units == 1 ? layout().unit() : layout().units());
  }

  static String percent(double fraction) {
    if (fraction > 0.995) {
      return "over 99\u00a0%";
    }
    double percent = 100 * fraction;
    return (percent < 1
            ? DisplayNumber.significant(percent, 2)
            : DisplayNumber.decimals(percent, 0))
        + "\u00a0%";
  }

  /** A share that somebody chose, as it was chosen. */
  static String chosen(double fraction) {
    return DisplayNumber.plain(Math.round(1e8 * fraction) / 1e6) + "\u00a0%";
  }

  /** A power that falls short of what is wanted is not rounded up to it. */
  static String power(double power, double wanted) {
    String rounded = percent(power);
    return power < wanted && rounded.equals(percent(wanted))
        ? "just under " + chosen(wanted)
        : rounded;
  }

  /** A number to three digits, without zeros at its end. */
  static String number(double value) {
    String digits = DisplayNumber.significant(value, 3);
    return digits.contains(".") ? digits.replaceAll("\\.?0+$", "") : digits;
  }

  static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private Layout layout() {
    return document.size().design().layout();
  }
}
