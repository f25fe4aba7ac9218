package leafturn.web;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.RuleEntry;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.book.StaleSheetException;
import leafturn.records.people.Visitor;
import leafturn.records.round.BookRules;
import leafturn.records.round.ChangedCall;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.RuleSheet;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.sheet.RuleForm;
import org.jspecify.annotations.Nullable;

/** The rules a call is made by, and where their thresholds are set. */
final class RulesRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int CONFLICT = 409;
  private static final String VERSION = "_version";

  private final Desk desk;

  RulesRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/rules", Right.READ, this::rules);
    routes.read("/rules/{rule}", Right.CHANGE_RULES, this::rule);
    routes.write("/rules/{rule}", Right.CHANGE_RULES, Intake.FORM, this::sent);
  }

  private void rules(Context context) {
    RulesPage page = page(context);
    String saved =
        CallRules.named(String.valueOf(context.queryParam("saved"))).map(page::saved).orElse("");
    desk.show(context, "rules.jte", "Rules", Map.of("page", page, "saved", saved));
  }

  private RulesPage page(Context context) {
    Units units = Guest.visitor(context).person().units();
    return desk.book()
        .read(
            reading -> {
              Map<String, Sheet<RuleSheet>> set =
                  reading.all(Kind.RULE).stream()
                      .collect(
                          Collectors.toMap(sheet -> sheet.content().rule(), Function.identity()));
              return new RulesPage(BookRules.of(reading), set, units);
            });
  }

  private void rule(Context context) {
    RuleEntry entry = entry(context);
    Units units = Guest.visitor(context).person().units();
    Form form = desk.book().read(reading -> filled(reading, entry, units));
    show(context, entry, form, null);
  }

  private static Form filled(BookReading reading, RuleEntry entry, Units units) {
    return Form.of(shape(entry), units, counting(reading, entry));
  }

  /** The threshold that counts, with all its digits, as the document of a sheet. */
  private static String counting(BookReading reading, RuleEntry entry) {
    String reason =
        BookRules.sheet(reading, entry.rule().id())
            .filter(set -> !set.withdrawn())
            .map(set -> set.content().reason())
            .orElse("");
    double threshold = BookRules.of(reading).entry(entry.rule()).threshold();
    return Kind.RULE.write(new RuleSheet(entry.rule().id(), threshold, reason));
  }

  private static FormShape shape(RuleEntry entry) {
    return FormShape.of(
        Field.hidden("rule"),
        RuleForm.threshold(entry),
        Field.text("reason", "Why").hint("A sentence for whoever reads this rule later.").needed());
  }

  /** Looks at what would change, saves, or goes back to the standard. */
  private void sent(Context context) {
    RuleEntry entry = entry(context);
    Visitor visitor = Guest.visitor(context);
    Units units = visitor.person().units();
    Form form = Form.sent(shape(entry), units, context.formParamMap());
    String step = String.valueOf(context.formParam("step"));
    try {
      if (step.equals("standard")) {
        unset(visitor, entry, basedOn(context));
      } else {
        boolean looking = !step.equals("save");
        // Whoever only looks need not say why yet.
        Form read = looking && form.value("reason").isEmpty() ? form.with("reason", "-") : form;
        String before = desk.book().read(reading -> counting(reading, entry));
        RuleSheet set = Kind.RULE.read(read.document("rule", before));
        if (looking) {
          show(context, entry, form, tried(visitor, set));
          return;
        }
        save(visitor, set, basedOn(context));
      }
      Answers.goTo(context, "/rules?saved=" + entry.rule().id());
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, entry, form.faulted(faults), null);
    } catch (StaleSheetException stale) {
      context.status(CONFLICT);
      show(context, entry, form.faulted("", told(stale, units)), null);
    }
  }

  private static String told(StaleSheetException stale, Units units) {
    String theirs =
        stale.current().content() instanceof RuleSheet set && !stale.current().withdrawn()
            ? "It was set to "
                + RulesPage.threshold(standard(set), set.threshold(), units)
                + ": "
                + set.reason()
            : "The standard threshold counts again";
    return stale.getMessage() + " " + theirs + ". Save again to put yours in its place.";
  }

  private static RuleEntry standard(RuleSheet set) {
    return CallRules.standard().entry(CallRules.named(set.rule()).orElseThrow());
  }

  private TriedRule tried(Visitor visitor, RuleSheet set) {
    Map<String, Double> thresholds = desk.book().read(reading -> BookRules.with(reading, set));
    BookRules.check(thresholds);
    Units units = visitor.person().units();
    List<ChangedCall> changes =
        desk.rounds().tried(register -> register.only(visitor::mayRead), units, thresholds);
    RuleEntry counts = desk.book().read(BookRules::of).entry(standard(set).rule());
    return new TriedRule(
        RulesPage.threshold(counts, counts.threshold(), units),
        RulesPage.threshold(counts, set.threshold(), units),
        changes);
  }

  private void save(Visitor visitor, RuleSheet set, int basedOn) {
    desk.book()
        .write(
            visitor.person().name(),
            writing -> {
              BookRules.set(writing, set, basedOn);
              return set;
            });
  }

  private void unset(Visitor visitor, RuleEntry entry, int basedOn) {
    desk.book()
        .write(
            visitor.person().name(),
            writing -> {
              BookRules.unset(writing, entry.rule().id(), basedOn);
              return entry;
            });
  }

  private static int basedOn(Context context) {
    String version = context.formParam(VERSION);
    if (version == null || !version.matches("\\d{1,9}")) {
      throw Refusal.unreadable();
    }
    return Integer.parseInt(version);
  }

  private static RuleEntry entry(Context context) {
    return CallRules.named(context.pathParam("rule"))
        .map(rule -> CallRules.standard().entry(rule))
        .filter(RuleEntry::editable)
        .orElseThrow(Refusal::notFound);
  }

  private void show(Context context, RuleEntry entry, Form form, @Nullable TriedRule tried) {
    int version =
        desk.book()
            .read(reading -> BookRules.sheet(reading, entry.rule().id()))
            .map(Sheet::version)
            .orElse(0);
    Map<String, Object> content = new HashMap<>();
    content.put("version", version);
    content.put("page", page(context));
    content.put("entry", entry);
    content.put("form", form);
    content.put("tried", tried);
    desk.show(context, "rule.jte", "A rule", content);
  }
}
