package leafturn.trials.design.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leafturn.trials.design.Arm;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialMower;
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
    TrialMower mower = lawn.mower();
    if (mower.discharge().isSideways()) {
      words.add(
          thrown(mower)
              + (plots.size() == 2
                  ? besideTheGuard(mower.discharge(), frame, left.get(0), collected.get(0))
                  : "on strips where clippings stay, drive the outer passes so that it throws"
                      + " towards the middle of the strip."));
    }
    return words;
  }

  private static String thrown(TrialMower mower) {
    String side = mower.discharge().word();
    return mower.assumed()
        ? ("Nobody has said where the mower throws; this assumes to the %s, and if yours throws"
                + " elsewhere, say so on the lawn's page before you mow: ")
            .formatted(side)
        : "The mower throws to the %s: ".formatted(side);
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
    return "on %s, drive the passes beside the guard strip towards %s, so that it throws away from %s."
        .formatted(left.code(), Compass.words(bearing), collected.code());
  }
}
