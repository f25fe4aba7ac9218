package leafturn.model.lawn;

import static leafturn.model.Flows.*;
import static leafturn.model.Stores.AMMONIUM_N;
import static leafturn.model.Stores.CLIPPING_THATCH_N;
import static leafturn.model.Stores.FAST_FERTILISER_N;
import static leafturn.model.Stores.FRESH_N;
import static leafturn.model.Stores.HUMUS_N;
import static leafturn.model.Stores.METABOLIC_N;
import static leafturn.model.Stores.MICROBE_N;
import static leafturn.model.Stores.NITRATE_N;
import static leafturn.model.Stores.PLANT_N;
import static leafturn.model.Stores.SLOW_FERTILISER_N;
import static leafturn.model.Stores.STRUCTURAL_N;
import static leafturn.model.Stores.THATCH_N;

import java.util.ArrayList;
import java.util.List;

/**
 * One move of nitrogen within a day.
 *
 * @param from store it leaves, or {@link #OUTSIDE}
 * @param to store it enters, or {@link #OUTSIDE}
 * @param flow the day's flow that tells its amount
 * @param less flows that are part of that flow but other moves
 * @param label of what comes from outside
 */
record NitrogenMove(int from, int to, int flow, int[] less, NitrogenLabel label) {
  static final int OUTSIDE = -1;

  private static final int[] DECAYING = {
    METABOLIC_N, STRUCTURAL_N, CLIPPING_THATCH_N, THATCH_N, FRESH_N
  };

  /** All moves of a day in the order of the daily step. */
  static final List<NitrogenMove> OF_A_DAY = inOrder();

  private static List<NitrogenMove> inOrder() {
    List<NitrogenMove> moves = new ArrayList<>();
    moves.add(in(FAST_FERTILISER_N, NitrogenLabel.FERTILISER, FAST_FED_N));
    moves.add(in(SLOW_FERTILISER_N, NitrogenLabel.FERTILISER, FERTILISER_N, FAST_FED_N));
    moves.add(in(NITRATE_N, NitrogenLabel.SOIL, DEPOSITION_N));
    moves.add(move(FAST_FERTILISER_N, OUTSIDE, FAST_VOLATILISED_N));
    moves.add(move(FAST_FERTILISER_N, AMMONIUM_N, FAST_TO_AMMONIUM_N));
    moves.add(move(SLOW_FERTILISER_N, AMMONIUM_N, SLOW_TO_AMMONIUM_N));
    for (int pool = 0; pool < DECAYING.length; pool++) {
      moves.addAll(decay(pool));
    }
    moves.add(move(STRUCTURAL_N, CLIPPING_THATCH_N, INCORPORATED_N));
    moves.add(move(MICROBE_N, HUMUS_N, MICROBES_TO_HUMUS_N));
    moves.add(move(MICROBE_N, AMMONIUM_N, MICROBES_TO_AMMONIUM_N));
    moves.add(move(HUMUS_N, AMMONIUM_N, HUMUS_TO_AMMONIUM_N));
    moves.add(move(AMMONIUM_N, NITRATE_N, NITRIFIED_N));
    moves.add(move(NITRATE_N, OUTSIDE, DENITRIFIED_N));
    moves.add(move(PLANT_N, THATCH_N, PLANT_TO_THATCH_N));
    moves.add(move(PLANT_N, FRESH_N, PLANT_TO_FRESH_N));
    moves.add(move(AMMONIUM_N, PLANT_N, AMMONIUM_UPTAKE_N));
    moves.add(move(NITRATE_N, PLANT_N, UPTAKE_N, AMMONIUM_UPTAKE_N));
    moves.add(move(NITRATE_N, OUTSIDE, LEACHED_N));
    moves.add(in(PLANT_N, NitrogenLabel.SOIL, CORRECTION_N));
    moves.add(move(PLANT_N, METABOLIC_N, TO_METABOLIC_N));
    moves.add(move(PLANT_N, STRUCTURAL_N, TO_STRUCTURAL_N));
    moves.add(move(PLANT_N, OUTSIDE, COLLECTED_N));
    return List.copyOf(moves);
  }

  private static List<NitrogenMove> decay(int pool) {
    int from = DECAYING[pool];
    return List.of(
        move(from, MICROBE_N, TO_MICROBES_N + pool),
        move(from, OUTSIDE, DECAY_VOLATILISED_N + pool),
        move(from, AMMONIUM_N, DECAYED_N + pool, TO_MICROBES_N + pool, DECAY_VOLATILISED_N + pool),
        move(AMMONIUM_N, MICROBE_N, AMMONIUM_TIED_UP_N + pool),
        move(NITRATE_N, MICROBE_N, NITRATE_TIED_UP_N + pool));
  }

  private static NitrogenMove in(int to, NitrogenLabel label, int flow, int... less) {
    return new NitrogenMove(OUTSIDE, to, flow, less, label);
  }

  private static NitrogenMove move(int from, int to, int flow, int... less) {
    return new NitrogenMove(from, to, flow, less, NitrogenLabel.SOIL);
  }

  /** N moved on the present day of a run, g/m2. */
  double amount(LawnRun run) {
    double amount = run.flow(flow);
    for (int part : less) {
      amount -= run.flow(part);
    }
    return amount;
  }
}
