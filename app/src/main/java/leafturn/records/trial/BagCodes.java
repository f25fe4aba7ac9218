package leafturn.records.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leafturn.records.exchange.TrialGround;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.layout.BlindCodes;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.Remark;

/** Whether the codes that stand beside laboratory values are those of the right bags. */
final class BagCodes {
  private BagCodes() {}

  /** A remark for each code that no bag has, or whose bag holds something else. */
  static List<Remark> remarks(TrialGround ground, List<Reading> readings) {
    Map<String, String> wrong = new TreeMap<>();
    Map<String, String> unknown = new TreeMap<>();
    boolean ours = false;
    for (Reading reading : readings) {
      String code = reading.sample();
      TrialGround.Bag bag = code == null ? null : ground.bag(code);
      if (code != null && bag == null) {
        unknown.putIfAbsent(code, unknown(reading, code));
      } else if (code != null && bag != null) {
        ours = true;
        ground
            .outcome(reading.outcome())
            .filter(outcome -> isOther(outcome.kind(), bag.holds()))
            .ifPresent(outcome -> wrong.putIfAbsent(code, other(reading, code, bag.holds())));
      }
    }
    List<String> sentences = new ArrayList<>(wrong.values());
    if (ours) { // else somebody numbers bags in a way of their own
      sentences.addAll(unknown.values());
    }
    return sentences.stream().map(text -> new Remark(Remark.Weight.WARNING, text)).toList();
  }

  private static boolean isOther(Outcome.Kind measured, Outcome.Kind holds) {
    return measured != holds && (measured == Outcome.Kind.SOIL || measured == Outcome.Kind.TISSUE);
  }

  private static String other(Reading reading, String code, Outcome.Kind holds) {
    return "%s: bag %s holds %s; look whether value or code belongs to another bag."
        .formatted(
            said(reading),
            code,
            holds == Outcome.Kind.TISSUE ? "leaves, not soil" : "soil, not leaves");
  }

  private static String unknown(Reading reading, String code) {
    return "%s: no bag of this trial has the code %s%s; look whether the value belongs to another plot."
        .formatted(
            said(reading),
            code,
            BlindCodes.isCode(code)
                ? ""
                : ", and its check character does not fit, so it is mistyped");
  }

  private static String said(Reading reading) {
    return "%s of plot %s on %s".formatted(reading.outcome(), reading.plot(), reading.date());
  }
}
