package leafturn.trials.design.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leafturn.trials.design.Arm;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialMower.Discharge;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.ground.Frame;

/**
 * How the plots of a lawn are mown so that no clippings fly where they are collected: common
 * practice, no source.
 */
final class MowingWords {
  private MowingWords() {}

  static List<String> of(TrialPlan plan, TrialLawn lawn, Frame frame, List<LaidPlot> plots) {
    List<LaidPlot> collected = with(plan, plots, true);
    List<LaidPlot> left = with(plan, plots, false);
    if (collected.isEmpty() || left.isEmpty()) {
      return List.of();
    }
    List<String> words = new ArrayList<>();
    if (plan.protocol().collectedFirst()) {
      words.add("Mow %s first: clippings are collected there.".formatted(codes(collected)));
    }
    Discharge discharge = lawn.mower().discharge();
    if (discharge.isSideways()) {
      words.add(
          plots.size() == 2
              ? besideTheGuard(discharge, frame, left.get(0), collected.get(0))
              : ("The mower throws to the %s: on strips where clippings stay, drive the outer passes"
                      + " so that it throws towards the middle of the strip.")
                  .formatted(discharge.word()));
    }
    return words;
  }

  private static List<LaidPlot> with(TrialPlan plan, List<LaidPlot> plots, boolean collected) {
    return plots.stream()
        .filter(
            plot -> {
              Optional<Arm> arm =
                  plan.treatments().arms().stream()
                      .filter(each -> each.name().equals(plot.unit().arm()))
                      .findFirst();
              Arm.Clippings clippings = arm.map(Arm::clippings).orElse(null);
              return clippings != null && (clippings == Arm.Clippings.COLLECTED) == collected;
            })
        .toList();
  }

  private static String codes(List<LaidPlot> plots) {
    return String.join(", ", plots.stream().map(LaidPlot::code).toList());
  }

  /** The direction in which the thrown clippings fall on the half where they stay. */
  private static String besideTheGuard(
      Discharge discharge, Frame frame, LaidPlot left, LaidPlot collected) {
    boolean staysLeft = left.unit().column() < collected.unit().column();
    boolean along = staysLeft == (discharge == Discharge.LEFT);
    double bearing = along ? frame.bearingDeg() : frame.bearingDeg() + 180;
    return ("The mower throws to the %s: on %s, drive the passes beside the guard strip towards %s,"
            + " so that it throws away from %s.")
        .formatted(discharge.word(), left.code(), Compass.words(bearing), collected.code());
  }
}
