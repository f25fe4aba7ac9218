package leafturn.trials.observation;

import java.util.List;
import java.util.regex.Pattern;

/** Whether power is asked for from the difference that a trial has shown. */
public final class PowerFromResults {
  /** Fields by which it is asked for. */
  public static final List<String> FIELDS =
      List.of(
          "observedDifference",
          "observedRatio",
          "observedEffect",
          "observedMean",
          "observedP",
          "observed",
          "fromResults",
          "results",
          "postHoc");

  private static final Pattern WORDS =
      Pattern.compile("(?i).*(observ|result|post.?hoc|found|measured).*");

  private PowerFromResults() {}

  /** Whether a text given in place of a difference asks for what was observed. */
  public static boolean isAskedBy(String text) {
    return WORDS.matcher(text).matches();
  }

  /** Why it is refused, and what to read instead. */
  public static Remark refusal() {
    return Remark.refused(
        "power from an observed difference only says its p value again and proves nothing; read the interval of the difference and the minimum detectable difference instead, and plan with the difference that matters.");
  }
}
