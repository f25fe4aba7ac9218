package leafturn.advice.evidence;

import static leafturn.model.Stores.CLIPPING_THATCH_C;
import static leafturn.model.Stores.CLIPPING_THATCH_N;
import static leafturn.model.Stores.METABOLIC_C;
import static leafturn.model.Stores.METABOLIC_N;
import static leafturn.model.Stores.STRUCTURAL_C;
import static leafturn.model.Stores.STRUCTURAL_N;

import java.time.LocalDate;
import java.util.List;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnRun;
import leafturn.model.soil.DecayModifiers;
import leafturn.model.soil.Decomposition;

/**
 * A bag of clippings laid in the turf on 1 June and lifted after 16 weeks. What passed into thatch
 * is still in the bag. Mineral N is ample, as in a fed lawn.
 */
final class LitterBag implements DayListener {
  private static final int DAYS = 112;
  private static final double CARBON_G = 10;
  private static final double NITROGEN_G = 1;
  private static final double AMPLE_N = 1000;

  private final Decomposition decomposition;
  private final double[] bag = new double[Stores.COUNT];
  private final double[] flows = new double[Flows.COUNT];
  private double warmMoistDays;
  private int days;

  private LitterBag(Parameters parameters) {
    double fast = parameters.get("fm");
    this.decomposition = new Decomposition(parameters);
    bag[METABOLIC_C] = fast * CARBON_G;
    bag[STRUCTURAL_C] = (1 - fast) * CARBON_G;
    bag[METABOLIC_N] = fast * NITROGEN_G;
    bag[STRUCTURAL_N] = (1 - fast) * NITROGEN_G;
    bag[Stores.AMMONIUM_N] = AMPLE_N;
  }

  static List<Measured> on(TrialGround ground) {
    LitterBag laid = new LitterBag(Parameters.of(Plot.TALL_FESCUE.grass()));
    ground.run(Plot.TALL_FESCUE, Treatment.collected(147), 1, laid);
    double carbon = laid.left(METABOLIC_C, STRUCTURAL_C, CLIPPING_THATCH_C) / CARBON_G;
    double nitrogen = laid.left(METABOLIC_N, STRUCTURAL_N, CLIPPING_THATCH_N) / NITROGEN_G;
    return List.of(
        Measured.of("bag.c", 100 * carbon, "%.0f days at 20 °C and moist", laid.warmMoistDays),
        Measured.of("bag.n", 100 * nitrogen, ""),
        Measured.of("bag.ratio", carbon / nitrogen, ""));
  }

  @Override
  public void dayDone(LawnRun run) {
    LocalDate today = run.terms().date(run.day());
    boolean laid = !today.isBefore(LocalDate.of(today.getYear(), 6, 1));
    if (!laid || days == DAYS) {
      return;
    }
    days++;
    double air = DecayModifiers.rothCTemperatureFraction(run.terms().meanC(run.day()));
    double soil = DecayModifiers.rothCTemperatureFraction(run.soilC());
    double moisture = run.flow(Flows.DECAY_MOISTURE);
    warmMoistDays += air * moisture;
    decomposition.step(bag, flows, air, soil, moisture);
  }

  private double left(int... stores) {
    double sum = 0;
    for (int store : stores) {
      sum += bag[store];
    }
    return sum;
  }
}
