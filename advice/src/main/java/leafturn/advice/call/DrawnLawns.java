package leafturn.advice.call;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.model.Parameters;
import leafturn.model.RandomStream;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;

/**
 * A lawn's equations once per possible season, with parameters drawn within the ranges of the
 * parameter table: half of the draws lie below a parameter's value and half above, likeliest near
 * it and none beyond the range. Growth as a whole is drawn from what is known of the lawn's own
 * growth factor. What was set for the lawn stays as it was set. Not drawn is what today's state
 * already rests on (soil, nitrogen fractions, sward density): it would have to be drawn with the
 * lawn's whole past.
 */
final class DrawnLawns {
  /** Drawn for what they do within weeks: growth, leaf death, uptake, quality and decay of cuts. */
  private static final List<String> DRAWN =
      List.of(
          "gp_to", "gp_var", "rep", "lue", "wg", "u", "ksen", "dsen", "km", "ks", "lig0", "ligAge",
          "ligDeep", "stalk", "nAge", "lenExp");

  /** The place of a stream's numbers that parameters take, far from any day's. */
  private static final long PLACE = Long.MAX_VALUE;

  private DrawnLawns() {}

  /**
   * Equations for each of some possible seasons; the same seed and number draw alike for every
   * lawn.
   *
   * @param parameters of the lawn, with the middle of its own growth already in them
   */
  static List<LawnEquations> of(
      Lawn lawn, Parameters parameters, GrowthFactor growth, SeasonsAsked asked, int count) {
    List<Parameter> rows = rows(lawn, parameters);
    List<LawnEquations> drawn = new ArrayList<>(count);
    for (int season = 0; season < count; season++) {
      RandomStream random = new RandomStream(asked.seed(), season).at(PLACE);
      Map<String, Double> changes = new HashMap<>();
      changes.put(
          GrowthFactor.CEILING,
          parameters.get(GrowthFactor.CEILING) * growth.drawnOverMiddle(random.normal()));
      for (Parameter row : rows) {
        double value = parameters.get(row.name());
        changes.put(row.name(), random.around(row.low(), value, row.high()));
      }
      drawn.add(new LawnEquations(parameters.with(changes)));
    }
    return drawn;
  }

  private static List<Parameter> rows(Lawn lawn, Parameters parameters) {
    Set<String> set = lawn.parameters().keySet();
    return DRAWN.stream()
        .filter(name -> !set.contains(name))
        .map(name -> ParameterTable.find(name, lawn.ground().grass()))
        .flatMap(Optional::stream)
        .filter(row -> row.plausible(parameters.get(row.name())))
        .toList();
  }
}
