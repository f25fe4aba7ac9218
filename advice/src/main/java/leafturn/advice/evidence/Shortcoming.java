package leafturn.advice.evidence;

import java.util.List;
import leafturn.quantity.DataTable;

/**
 * Something the model is known to get wrong against published studies; {@link Evidence} says by how
 * much.
 *
 * @param name short name
 * @param title what is wrong, in one line
 * @param reason why, and what to make of it
 * @param sources the studies, or where their ranges come from
 */
public record Shortcoming(String name, String title, String reason, List<String> sources) {
  public Shortcoming {
    sources = List.copyOf(sources);
    if (sources.isEmpty()) {
      throw new IllegalArgumentException("misses.tsv: no target names " + name);
    }
  }

  /** All of them, in the order of the targets. */
  public static List<Shortcoming> all() {
    List<Target> targets = Target.all();
    return DataTable.ofResource(Shortcoming.class, "misses.tsv").rows().stream()
        .map(row -> of(row, targets))
        .toList();
  }

  private static Shortcoming of(DataTable.Row row, List<Target> targets) {
    String name = row.requiredText("name");
    return new Shortcoming(
        name,
        row.requiredText("title"),
        row.requiredText("reason"),
        targets.stream()
            .filter(target -> target.miss().equals(name))
            .map(target -> target.band().source())
            .distinct()
            .toList());
  }
}
