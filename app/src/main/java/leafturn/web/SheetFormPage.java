package leafturn.web;

import java.util.List;
import java.util.Map;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.sheet.Change;

/**
 * A page with the form of a sheet.
 *
 * @param headline what is done here
 * @param more what a person should know of it; may be empty
 * @param place where the sheet belongs
 * @param form the form
 * @param action where it is sent
 * @param hidden what goes with it unseen, by name
 * @param button what the button says
 * @param leave what the way out says
 * @param leaveTo where it leads
 * @param theirs what somebody else saved meanwhile beside what was typed here; empty as a rule
 */
public record SheetFormPage(
    String headline,
    String more,
    SheetPlace place,
    Form form,
    String action,
    Map<String, String> hidden,
    String button,
    String leave,
    String leaveTo,
    List<Change> theirs) {
  public SheetFormPage {
    hidden = Map.copyOf(hidden);
    theirs = List.copyOf(theirs);
  }

  /** The photographs that one of its fields offers, each with the words it is offered under. */
  public List<Field.Choice> pictures() {
    return form.shape().fields().stream()
        .filter(field -> field.path().endsWith("].photograph"))
        .findFirst()
        .map(Field::choices)
        .orElse(List.of());
  }

  /** Whether a file may come with it. */
  public boolean takesFile() {
    return form.shape().fields().stream().anyMatch(field -> field.type() == Field.Type.OUTLINE);
  }
}
