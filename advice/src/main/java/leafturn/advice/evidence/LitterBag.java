package leafturn.advice.evidence;

import static leafturn.model.Stores.CLIPPING_THATCH_C;
import static leafturn.model.Stores.CLIPPING_THATCH_N;
import static leafturn.model.Stores.METABOLIC_C;
import static leafturn.model.Stores.METABOLIC_N;
import static leafturn.model.Stores.STRUCTURAL_C;
import static leafturn.model.Stores.STRUCTURAL_N;

import java.time.LocalDate;
import java.util.ArrayList;
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
 * is still in the bag. Mineral N is ample, as in a fed lawn. One bag holds clippings of the common
 * kind, another the mean cut of seasons in which each cut has its own quality.
 */
final class LitterBag implements DayListener {
  private static final int DAYS = 112;
  private static final int YEARS = 4;
  private static final double CARBON_G = 10;
  private static final double COMMON_N_PER_CARBON = 0.1;
  private static final double AMPLE_N = 1000;

  private final Decomposition decomposition;
  private final double[] bag = new double[Stores.COUNT];
  private final double[] flows = new double[Flows.COUNT];
  private final double nitrogenG;
  private double warmMoistDays;
  private int days;

  private LitterBag(Parameters parameters, Filling filling) {
    double fast = filling.fastFraction();
    this.nitrogenG = filling.nitrogenPerCarbon() * CARBON_G;
    this.decomposition = new Decomposition(parameters);
    bag[METABOLIC_C] = fast * CARBON_G;
    bag[STRUCTURAL_C] = (1 - fast) * CARBON_G;
    bag[METABOLIC_N] = fast * nitrogenG;
    bag[STRUCTURAL_N] = (1 - fast) * nitrogenG;
    bag[Stores.AMMONIUM_N] = AMPLE_N;
  }

  /**
   * What the bag is filled with.
   *
   * @param fastFraction share in the fast pool
   * @param nitrogenPerCarbon N:C, g/g
   */
  private record Filling(double fastFraction, double nitrogenPerCarbon) {
    static Filling of(MeanCut cut, Parameters parameters) {
      return new Filling(
          cut.of(Flows.CUT_FAST_FRACTION), cut.of(Flows.CUT_N_FRACTION) / parameters.get("cC"));
    }
  }

  static List<Measured> on(TrialGround ground) {
    Parameters parameters = Parameters.of(Plot.TALL_FESCUE.grass());
    List<Measured> measured = new ArrayList<>();
    measured.addAll(
        laid(ground, parameters, new Filling(parameters.get("fm"), COMMON_N_PER_CARBON), "bag"));
    MeanCut season = mean(ground, Treatment.collected(147));
    measured.addAll(laid(ground, parameters, Filling.of(season, parameters), "bag.mean"));
    measured.add(kind("cut.days3", mean(ground, mownEvery(3))));
    measured.add(kind("cut.days7", season));
    measured.add(kind("cut.days14", mean(ground, mownEvery(14))));
    return measured;
  }

  private static Treatment mownEvery(int days) {
    Treatment.Mowing weekly = Treatment.Mowing.WEEKLY_PLOTS;
    return Treatment.collected(147)
        .mown(new Treatment.Mowing(days, weekly.from(), weekly.to(), weekly.leastGrowthMm()));
  }

  private static MeanCut mean(TrialGround ground, Treatment treatment) {
    return MeanCut.of(ground, Plot.TALL_FESCUE, treatment, YEARS);
  }

  private static Measured kind(String id, MeanCut cut) {
    return Measured.of(
        id,
        100 * cut.of(Flows.CUT_FAST_FRACTION),
        "%.1f %% lignin, %.1f %% N, leaf %.1f days old at 20 °C, pieces of %.0f mm",
        100 * cut.of(Flows.CUT_LIGNIN_FRACTION),
        100 * cut.of(Flows.CUT_N_FRACTION),
        cut.of(Flows.CUT_LEAF_AGE_DAYS),
        cut.of(Flows.CUT_LENGTH_MM));
  }

  private static List<Measured> laid(
      TrialGround ground, Parameters parameters, Filling filling, String id) {
    LitterBag laid = new LitterBag(parameters, filling);
    ground.run(Plot.TALL_FESCUE, Treatment.collected(147), 1, laid);
    double carbon = laid.left(METABOLIC_C, STRUCTURAL_C, CLIPPING_THATCH_C) / CARBON_G;
    double nitrogen = laid.left(METABOLIC_N, STRUCTURAL_N, CLIPPING_THATCH_N) / laid.nitrogenG;
    return List.of(
        Measured.of(id + ".c", 100 * carbon, "%.0f days at 20 °C and moist", laid.warmMoistDays),
        Measured.of(id + ".n", 100 * nitrogen, ""),
        Measured.of(id + ".ratio", carbon / nitrogen, ""));
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
