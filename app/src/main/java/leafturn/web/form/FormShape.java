package leafturn.web.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fields of a form in their groups.
 *
 * @param groups in the order of the page
 */
public record FormShape(List<Group> groups) {
  /**
   * @param legend what the fields have in common; empty for a form that needs no groups
   * @param more what a person should know of them; may be empty
   * @param fields in order
   * @param row true when the fields are one row of a list and stand side by side where there is
   *     room
   * @param folded under which words it waits folded up, with its neighbours of the same words,
   *     until somebody opens it; empty as a rule
   */
  public record Group(String legend, String more, List<Field> fields, boolean row, String folded) {
    public Group {
      fields = List.copyOf(fields);
    }

    /** Fields that are seen. */
    public Group(String legend, String more, List<Field> fields, boolean row) {
      this(legend, more, fields, row, "");
    }

    /** This group folded up under some words. */
    public Group folded(String words) {
      return new Group(legend, more, fields, row, words);
    }

    /** Fields one under the other. */
    public Group(String legend, String more, List<Field> fields) {
      this(legend, more, fields, false);
    }

    /** One row of a list. */
    public static Group row(String legend, Field... fields) {
      return new Group(legend, "", List.of(fields), true);
    }
  }

  /**
   * Groups that are seen or folded up together.
   *
   * @param folded the words they wait under; empty where they are seen
   */
  public record Part(String folded, List<Group> groups) {}

  public FormShape {
    groups = List.copyOf(groups);
  }

  /** A form of one group without a legend. */
  public static FormShape of(Field... fields) {
    return new FormShape(List.of(new Group("", "", List.of(fields))));
  }

  /** The groups in order, neighbours that are folded up together in one part. */
  public List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    for (Group group : groups) {
      Part last = parts.isEmpty() ? null : parts.get(parts.size() - 1);
      if (last != null && last.folded().equals(group.folded())) {
        last.groups().add(group);
      } else {
        parts.add(new Part(group.folded(), new ArrayList<>(List.of(group))));
      }
    }
    return parts;
  }

  /** All fields in order. */
  public List<Field> fields() {
    return groups.stream().flatMap(group -> group.fields().stream()).toList();
  }

  /**
   * What a field is called where it stands without its group: with the group's legend before it
   * where several fields have the same label.
   */
  public String fullLabel(Field field) {
    boolean alone = fields().stream().filter(one -> one.label().equals(field.label())).count() < 2;
    return groups.stream()
        .filter(group -> !alone && group.fields().contains(field) && !group.legend().isEmpty())
        .findFirst()
        .map(group -> group.legend() + ", " + field.label())
        .orElse(field.label());
  }

  /** The field of a path. */
  public Optional<Field> field(String path) {
    return fields().stream().filter(field -> field.path().equals(path)).findFirst();
  }
}
