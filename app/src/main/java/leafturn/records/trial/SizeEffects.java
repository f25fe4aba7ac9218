package leafturn.records.trial;

import leafturn.records.Choice;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import org.jspecify.annotations.Nullable;

/** Reads the differences that matter: as differences, or as ratios on the scale of logarithms. */
final class SizeEffects {
  private static final double MOST_RATIO = 1000;

  private final JsonObject root;
  private final boolean log;

  /** What is to be found or shown, on the scale of the variances. */
  record Effects(@Nullable Double difference, @Nullable Double margin, double trueDifference) {}

  /**
   * @param relative whether the outcome's spread is a share of itself; null where it is not known
   */
  SizeEffects(JsonObject root, @Nullable Boolean relative) {
    this.root = root;
    String scale = Choice.read(root, "scale", new String[] {"identity", "log"}, word -> word);
    if (relative != null && scale != null && relative != scale.equals("log")) {
      root.fault(
          "scale",
          relative
              ? "the starting values of this outcome are shares of itself; leave scale out, or give log."
              : "the starting values of this outcome are in its own unit; leave scale out, or give identity.");
    }
    this.log = isLog(root, relative);
  }

  /** Whether a file speaks of logarithms: its outcome's own scale, else what it says. */
  static boolean isLog(JsonObject root, @Nullable Boolean relative) {
    if (relative != null) {
      return relative;
    }
    JsonValue scale = root.take("scale");
    return scale == null
        ? root.has("ratio") || root.has("marginRatio") || root.has("cv")
        : "log".equals(scale.content());
  }

  boolean isLog() {
    return log;
  }

  Effects read(int arms) {
    for (String name : new String[] {"difference", "ratio"}) {
      if (root.has(name) && SizeFile.refersToResults(root.take(name))) {
        root.fault(name, SizeFile.noPowerFromResults());
        return new Effects(null, null, 0);
      }
    }
    Double difference = effect("difference", "ratio", "the difference that matters");
    if (root.has("betweenVariance")) {
      SizeFields.onlyOne(root, "betweenVariance", "difference", "ratio");
      Double between =
          SizeFields.above0(root, "betweenVariance", SizeFields.LARGEST, "a variance of arm means");
      difference = between == null ? null : Math.sqrt(2 * (arms - 1) * between);
    }
    Double margin = effect("margin", "marginRatio", "the margin within which it does not matter");
    double truth = truth();
    if (margin != null && margin <= Math.abs(truth)) {
      root.fault(
          log ? "trueRatio" : "trueDifference",
          "it is not smaller than the margin, so equivalence is not true; give a smaller one, usually none.");
    }
    if (difference == null && margin == null && !root.has("units") && !wasTried()) {
      root.missing(
          log ? "ratio" : "difference",
          "the %s that matters, a margin, or the number of units"
              .formatted(log ? "ratio" : "difference"));
    }
    return new Effects(difference, margin, truth);
  }

  /** Whether a difference or a margin stands there, right or wrong. */
  boolean wasTried() {
    return root.has("difference")
        || root.has("ratio")
        || root.has("margin")
        || root.has("marginRatio")
        || root.has("betweenVariance");
  }

  private @Nullable Double effect(String difference, String ratio, String what) {
    if (!log) {
      refuse(ratio, difference, "a ratio needs the log scale");
      return SizeFields.above0(root, difference, SizeFields.LARGEST, what + ",");
    }
    refuse(difference, ratio, "this outcome is compared by ratios");
    Double value = SizeFields.above0(root, ratio, MOST_RATIO, "a ratio");
    if (value != null && value == 1) {
      root.fault(ratio, "1 is no difference; give a ratio such as 1.2.");
      return null;
    }
    return value == null ? null : Math.abs(Math.log(value));
  }

  private double truth() {
    if (!log) {
      refuse("trueRatio", "trueDifference", "a ratio needs the log scale");
      Double value = root.number("trueDifference", -SizeFields.LARGEST, SizeFields.LARGEST, "");
      return value == null ? 0 : value;
    }
    refuse("trueDifference", "trueRatio", "this outcome is compared by ratios");
    Double value = SizeFields.above0(root, "trueRatio", MOST_RATIO, "a ratio");
    return value == null ? 0 : Math.log(value);
  }

  private void refuse(String wrong, String right, String why) {
    if (root.has(wrong)) {
      root.fault(wrong, "%s; give %s instead.".formatted(why, right));
    }
  }
}
