package leafturn.web.sheet;

import java.util.List;
import java.util.Map;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Limits;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;

/**
 * How the sheets of one kind are entered and told.
 *
 * @param <C> the content
 */
public abstract class SheetForm<C extends Content> {
  private final Kind<C> kind;
  private final String noun;

  /**
   * @param noun what a sheet of this kind is called, for instance "soil test"
   */
  SheetForm(Kind<C> kind, String noun) {
    this.kind = kind;
    this.noun = noun;
  }

  /** The kind. */
  public Kind<C> kind() {
    return kind;
  }

  /** What a sheet of this kind is called, for instance "soil test". */
  public String noun() {
    return noun;
  }

  /**
   * The fields.
   *
   * @param document the sheet's document, so that every row of its lists has its fields
   */
  public abstract FormShape shape(Setting setting, String document);

  /** What a sheet says in a line, for headings and lists. */
  public abstract String title(C content, Setting setting);

  /** A new form with its defaults filled in. */
  public Form begun(Setting setting) {
    return Form.blank(shape(setting, "{}"), setting.units());
  }

  /** A form as it was sent, without what only looks filled in. */
  public Form tidied(Form sent) {
    return sent.closedUp();
  }

  /**
   * A new form that is shown again with its faults: what {@link #begun} offered is there again.
   *
   * @param sent the form as it was sent, before it was tidied
   */
  public Form offeredAgain(Form faulty, Form sent) {
    return faulty;
  }

  /** What follows from a sheet and does not stand in it. */
  public List<Line> findings(C content, Setting setting) {
    return List.of();
  }

  /**
   * A row of a list in a line.
   *
   * @param fields the words of its fields, by the last part of their paths
   * @param labels their labels
   */
  String row(Map<String, String> fields, Map<String, String> labels) {
    return String.join(
        ", ",
        fields.entrySet().stream()
            .map(field -> labels.getOrDefault(field.getKey(), "") + " " + field.getValue())
            .toList());
  }

  /** Anything to remember. */
  static Field note() {
    return Field.longText("note", "Note")
        .hint("Anything to remember, up to %d characters.".formatted(Limits.NOTE));
  }
}
