package leafturn.model.lawn;

import static leafturn.model.lawn.NitrogenMove.OUTSIDE;

import leafturn.model.Flows;
import leafturn.model.Stores;

/**
 * Follows nitrogen through a lawn by labels, as an isotope would: each move takes the labels of the
 * store it leaves, in that store's proportion; what falls as clippings is labelled anew. A listener
 * to a run's days, so that runs which do not ask pay nothing.
 */
public final class NitrogenTracer implements DayListener {
  private static final int LABELS = NitrogenLabel.values().length;
  private static final int SOIL = NitrogenLabel.SOIL.ordinal();
  private static final int CLIPPINGS = NitrogenLabel.CLIPPINGS.ordinal();

  /** By store of the nitrogen block, then by label, g/m2. */
  private final double[][] held = new double[Stores.PHOSPHORUS - Stores.NITROGEN][LABELS];

  private final double[] uptake = new double[LABELS];
  private final double[] leached = new double[LABELS];
  private final double[] moved = new double[LABELS];

  /**
   * Begins to trace: all N the lawn holds now counts as the soil's.
   *
   * @param start state before the first day to come
   */
  public NitrogenTracer(LawnState start) {
    for (int store = Stores.NITROGEN; store < Stores.PHOSPHORUS; store++) {
      held[store - Stores.NITROGEN][SOIL] = start.store(store);
    }
  }

  @Override
  public void dayDone(LawnRun run) {
    for (NitrogenMove move : NitrogenMove.OF_A_DAY) {
      double amount = move.amount(run);
      if (amount != 0) {
        follow(move, amount);
      }
    }
  }

  private void follow(NitrogenMove move, double amount) {
    if (move.from() == OUTSIDE) {
      add(move.to(), move.label().ordinal(), amount);
      return;
    }
    take(move.from(), amount);
    if (move.to() == Stores.METABOLIC_N || move.to() == Stores.STRUCTURAL_N) {
      add(move.to(), CLIPPINGS, amount);
      return;
    }
    for (int label = 0; label < LABELS; label++) {
      add(move.to(), label, moved[label]);
      if (move.to() == Stores.PLANT_N) {
        uptake[label] += moved[label];
      } else if (move.flow() == Flows.LEACHED_N) {
        leached[label] += moved[label];
      }
    }
  }

  /** Takes an amount out of a store and leaves its labels in {@link #moved}. */
  private void take(int store, double amount) {
    double[] labels = held[store - Stores.NITROGEN];
    double all = 0;
    for (double label : labels) {
      all += label;
    }
    double share = all > 0 ? amount / all : 0;
    for (int label = 0; label < LABELS; label++) {
      moved[label] = share * labels[label];
      labels[label] -= moved[label];
    }
  }

  private void add(int store, int label, double amount) {
    if (store != OUTSIDE) {
      held[store - Stores.NITROGEN][label] += amount;
    }
  }

  /** From now on counts what a label marks as the soil's own, in every store. */
  public void countAsSoil(NitrogenLabel label) {
    for (double[] labels : held) {
      double amount = labels[label.ordinal()];
      labels[label.ordinal()] = 0;
      labels[SOIL] += amount;
    }
  }

  /**
   * N of a label in a store now, g/m2.
   *
   * @param store index of a nitrogen store in {@link Stores}
   */
  public double held(int store, NitrogenLabel label) {
    return held[store - Stores.NITROGEN][label.ordinal()];
  }

  /** N of a label taken up by the grass since tracing began, g/m2. */
  public double uptake(NitrogenLabel label) {
    return uptake[label.ordinal()];
  }

  /** N of a label leached since tracing began, g/m2. */
  public double leached(NitrogenLabel label) {
    return leached[label.ordinal()];
  }
}
