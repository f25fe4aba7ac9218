package leafturn.web.sheet;

import leafturn.advice.call.CallRules;
import leafturn.advice.call.RuleEntry;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.RuleSheet;
import leafturn.reports.TableUnit;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;

/** A rule's threshold as it is told and corrected. */
public final class RuleForm extends SheetForm<RuleSheet> {
  RuleForm() {
    super(Kind.RULE, "threshold of a rule");
  }

  /** The threshold of a rule, in the unit of its reader. */
  public static Field threshold(RuleEntry entry) {
    TableUnit unit = new TableUnit(entry.unit());
    Measure measure = unit.measure();
    Field threshold =
        measure == null
            ? Field.number("threshold", "Threshold", unit.symbol(Units.METRIC))
            : Field.number("threshold", "Threshold", measure);
    return threshold.needed();
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    Field threshold =
        CallRules.named(Rows.parsed(document).path("rule").asText())
            .map(rule -> threshold(CallRules.standard().entry(rule)))
            .orElseGet(() -> Field.number("threshold", "Threshold", "").needed());
    return FormShape.of(threshold, Field.text("reason", "Why it was set").needed());
  }

  @Override
  public String title(RuleSheet content, Setting setting) {
    return "Threshold of " + content.rule();
  }
}
