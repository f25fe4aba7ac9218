package leafturn.reports.trial;

import java.util.Locale;
import leafturn.quantity.DisplayNumber;
import leafturn.trials.analysis.paired.PairedDifference.Interval;
import leafturn.trials.design.Outcome;

/**
 * Numbers of an outcome as people read them: differences in its unit, on the log scale ratios, and
 * never a percentage of a rating.
 */
public final class EffectWords {
  private final Outcome outcome;

  /**
   * @param outcome whose numbers they are
   */
  public EffectWords(Outcome outcome) {
    this.outcome = outcome;
  }

  /** The name of an outcome in a sentence: a column's underscores are blanks. */
  public static String name(Outcome outcome) {
    return name(outcome.name());
  }

  /** A name of an outcome, or several, as people read it. */
  public static String name(String key) {
    return key.replace('_', ' ');
  }

  /** Whether differences are told as ratios. */
  public boolean isRatio() {
    return outcome.scale() == Outcome.Scale.LOG;
  }

  /**
   * The unit of differences; empty where there is none. Of shares in per cent they are percentage
   * points, for "6 % above" reads as a ratio.
   */
  public String unit() {
    String unit =
        outcome.kind() == Outcome.Kind.RATING
            ? "points"
            : outcome.unit().equals("%") ? "percentage points" : outcome.unit();
    boolean perDay = outcome.summary() == Outcome.Summary.SLOPE && !isRatio();
    return perDay ? (unit.isEmpty() ? "a day" : unit + " a day") : unit;
  }

  /** A difference or ratio without its unit, to the decimals that its error bears. */
  public String number(double onScale, double se) {
    return new EffectNumbers(isRatio()).number(onScale, se);
  }

  /** With its unit: "0.41 points", on the log scale "1.12". */
  public String difference(double onScale, double se) {
    return isRatio() ? number(onScale, se) : withUnit(number(onScale, se));
  }

  /** An interval without unit: "0.13 to 0.69". */
  public String interval(Interval interval, double se) {
    return new EffectNumbers(isRatio()).interval(interval.lower(), interval.upper(), se);
  }

  /** The season of a plot: its amount, on the log scale the geometric mean. */
  public String amount(double onScale) {
    if (!Double.isFinite(onScale)) {
      return "–";
    }
    return DisplayNumber.significant(isRatio() ? Math.exp(onScale) : onScale, 4);
  }

  /** The margin: "±0.5 points", on the log scale "a ratio of 1.2 either way"; empty without one. */
  public String margin() {
    Double margin = outcome.margin();
    if (margin == null) {
      return "";
    }
    String plain = DisplayNumber.plain(margin);
    return isRatio() ? "a ratio of %s either way".formatted(plain) : "±" + withUnit(plain);
  }

  /** A probability: "p = 0.0085", "p < 0.0001". */
  public static String p(double p) {
    if (Double.isNaN(p)) {
      return "p is not known";
    }
    return p < 1e-4 ? "p < 0.0001" : "p = " + plainP(p);
  }

  /** The same for a column of p. */
  public static String plainP(double p) {
    if (Double.isNaN(p)) {
      return "–";
    }
    if (p < 1e-4) {
      return "< 0.0001";
    }
    return String.format(Locale.ROOT, p < 0.1 ? "%.4f" : "%.3f", p);
  }

  private String withUnit(String number) {
    return unit().isEmpty() ? number : number + "\u00a0" + unit();
  }
}
