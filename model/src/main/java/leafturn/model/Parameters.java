package leafturn.model;

import java.util.HashMap;
import java.util.Map;
import leafturn.model.grass.Species;

/** Parameter values for one lawn: a species' defaults with changes on top. */
public final class Parameters {
  private final Map<String, Double> values;

  private Parameters(Map<String, Double> values) {
    this.values = values;
  }

  /** The defaults of a species. */
  public static Parameters of(Species species) {
    Map<String, Double> values = new HashMap<>();
    for (Parameter row : ParameterTable.rows()) {
      if (row.species() == null || row.species() == species) {
        values.put(row.name(), row.value());
      }
    }
    return new Parameters(values);
  }

  /**
   * These values with some changed.
   *
   * @param changes new values by short name
   * @throws IllegalArgumentException naming a short name that does not exist
   */
  public Parameters with(Map<String, Double> changes) {
    Map<String, Double> changed = new HashMap<>(values);
    changes.forEach(
        (name, value) -> {
          if (!changed.containsKey(name)) {
            throw new IllegalArgumentException(
                "there is no parameter named " + name + "; 'leafturn sources' lists them");
          }
          changed.put(name, value);
        });
    return new Parameters(changed);
  }

  /**
   * The value of a parameter.
   *
   * @throws IllegalArgumentException if there is no such parameter
   */
  public double get(String name) {
    Double value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("there is no parameter named " + name);
    }
    return value;
  }
}
