package leafturn.advice.evidence;

import java.util.Map;
import leafturn.model.Flows;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnRun;

/** The mean cut of the seasons a plot is mown through, each cut counting by its mass. */
final class MeanCut implements DayListener {
  /** Each cut has its own quality. */
  static final Map<String, Double> OWN_QUALITY = Map.of("qual", 1.0);

  private double mass;
  private final double[] sums = new double[Flows.COUNT];

  /** The mean cut of a plot whose cuts each have their own quality. */
  static MeanCut of(TrialGround ground, Plot plot, Treatment treatment, int years) {
    MeanCut mean = new MeanCut();
    ground.run(plot.with(OWN_QUALITY), treatment, years, mean);
    return mean;
  }

  @Override
  public void dayDone(LawnRun run) {
    double cut = run.flow(Flows.CLIPPINGS_G);
    mass += cut;
    for (int flow = Flows.CUT_FAST_FRACTION; flow <= Flows.CUT_STALK_FRACTION; flow++) {
      sums[flow] += cut * run.flow(flow);
    }
  }

  /** A read-out of cuts in {@link Flows}, over all of them. */
  double of(int flow) {
    return sums[flow] / mass;
  }
}
