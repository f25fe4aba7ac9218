package leafturn.web.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.NewLawn;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;
import org.jspecify.annotations.Nullable;

/**
 * A further lawn of a property as it is entered, with how it is kept. What the property's first
 * lawn has is filled in, and each such field says so.
 */
public final class NewLawnForm extends LawnForm {
  private static final String MOWING = "programme.mowing.";
  private static final String ALIKE = "programme." + NewLawn.ALIKE;

  private final @Nullable LawnSheet first;
  private final @Nullable ProgrammeSheet programme;

  /**
   * @param first the first lawn of the property, or null when it has none
   * @param programme how that is kept, or null
   */
  public NewLawnForm(@Nullable LawnSheet first, @Nullable ProgrammeSheet programme) {
    this.first = first;
    this.programme = programme;
  }

  /** How the first lawn is kept, or null. */
  public @Nullable ProgrammeSheet programme() {
    return programme;
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    List<Group> groups = new ArrayList<>(super.shape(setting, document).groups());
    groups.add(keeping(setting));
    Form filled = Form.of(new FormShape(groups), setting.units(), defaults().toString());
    return new FormShape(groups.stream().map(group -> telling(group, filled)).toList());
  }

  @Override
  public Form begun(Setting setting) {
    if (first == null) {
      return super.begun(setting).with(MOWING + "clippings.returnedShare", "1");
    }
    return Form.of(shape(setting, "{}"), setting.units(), defaults().toString());
  }

  private Group keeping(Setting setting) {
    List<Field> fields = new ArrayList<>();
    fields.add(
        Field.number(MOWING + "heightMm", "Cut height", Measure.HEIGHT)
            .hint("Left empty: the usual one of the grass."));
    fields.add(
        Field.number(MOWING + "trigger.everyDays", "Mown every so many days", "")
            .hint(ProgrammeForm.usualTrigger(setting.third())));
    fields.add(
        Field.number(
                MOWING + "clippings.returnedShare", ProgrammeForm.shareLabel(setting.units()), "")
            .hint(
                "From 0, none, to 1, all of them: what was done so far sets the soil and thatch the"
                    + " model starts from. Left empty: all, the model's default."));
    if (first != null && programme != null) {
      fields.add(
          Field.flag(ALIKE, "Feeding, watering, who mows and on which days: as for " + first.name())
              .hint("Its months with a height of their own and its mowing season too."));
    }
    return new Group("How it is kept", "", fields);
  }

  private Group telling(Group group, Form filled) {
    LawnSheet from = first;
    if (from == null) {
      return group;
    }
    List<Field> fields =
        group.fields().stream()
            .map(
                field ->
                    filled.value(field.path()).isEmpty()
                        ? field
                        : field.hint(
                            ("Filled in: as for " + from.name() + ". " + field.hint()).strip()))
            .toList();
    return new Group(group.legend(), group.more(), fields, group.row(), group.folded());
  }

  /** What the first lawn has and a second one of the property is likely to have too. */
  private ObjectNode defaults() {
    ObjectNode defaults = JsonNodeFactory.instance.objectNode();
    if (first == null) {
      return defaults;
    }
    JsonNode lawn = Rows.parsed(Kind.LAWN.write(first));
    defaults.put("grass", first.grass());
    copy(lawn.path("soil"), "texture", defaults.withObject("/soil"));
    if (lawn.has("mower")) {
      defaults.set("mower", lawn.get("mower"));
    }
    if (programme != null) {
      JsonNode mowing = Rows.parsed(Kind.PROGRAMME.write(programme)).path("mowing");
      ObjectNode kept = defaults.withObject("/programme");
      kept.put(NewLawn.ALIKE, true);
      copy(mowing, "heightMm", kept.withObject("/mowing"));
      copy(mowing, "trigger", kept.withObject("/mowing"));
      copy(mowing, "clippings", kept.withObject("/mowing"));
    }
    return defaults;
  }

  private static void copy(JsonNode from, String name, ObjectNode to) {
    if (from.has(name)) {
      to.set(name, from.get(name));
    }
  }
}
