package leafturn.model;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leafturn.model.grass.Species;
import leafturn.quantity.DataTable;
import org.jspecify.annotations.Nullable;

/** All parameters of the daily model with value, range, source and status. */
public final class ParameterTable {
  private static final List<Parameter> ROWS = read();

  private ParameterTable() {}

  /** Every parameter row in the order of the file. */
  public static List<Parameter> rows() {
    return ROWS;
  }

  /** Every short name in the order of the file. */
  public static Set<String> names() {
    Set<String> names = new LinkedHashSet<>();
    ROWS.forEach(row -> names.add(row.name()));
    return names;
  }

  /** The row of a short name for a species, if there is such a parameter. */
  public static Optional<Parameter> find(String name, Species species) {
    return ROWS.stream()
        .filter(row -> row.name().equals(name))
        .filter(row -> row.species() == null || row.species() == species)
        .findFirst();
  }

  private static List<Parameter> read() {
    List<Parameter> rows = new ArrayList<>();
    for (DataTable.Row row : DataTable.ofResource(ParameterTable.class, "parameters.tsv").rows()) {
      rows.add(
          new Parameter(
              row.text("name"),
              species(row.text("species")),
              row.number("value"),
              row.text("unit"),
              row.number("low"),
              row.number("high"),
              row.text("meaning"),
              row.text("used"),
              row.text("source"),
              row.text("reference").isEmpty()
                  ? List.of()
                  : List.of(row.text("reference").split(" ")),
              row.text("status")));
    }
    return List.copyOf(rows);
  }

  private static @Nullable Species species(String name) {
    if (name.isEmpty()) {
      return null;
    }
    return Species.named(name)
        .orElseThrow(
            () -> new IllegalStateException("parameters.tsv names the unknown grass " + name));
  }
}
