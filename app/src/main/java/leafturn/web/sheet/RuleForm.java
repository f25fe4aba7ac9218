package leafturn.web.sheet;

import leafturn.records.sheet.Kind;
import leafturn.records.sheet.RuleSheet;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;

/** A rule's threshold as it is told and corrected. */
final class RuleForm extends SheetForm<RuleSheet> {
  RuleForm() {
    super(Kind.RULE, "threshold of a rule");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    return FormShape.of(
        Field.number("threshold", "Threshold", "the rule's unit").needed(),
        Field.text("reason", "Why it was set").needed());
  }

  @Override
  public String title(RuleSheet content, Setting setting) {
    return "Threshold of " + content.rule();
  }
}
