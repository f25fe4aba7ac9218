package leafturn.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.book.StaleSheetException;
import leafturn.records.round.BookRules;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.web.SheetDesk.Found;
import leafturn.web.form.Form;
import leafturn.web.sheet.Change;
import leafturn.web.sheet.Setting;
import leafturn.web.sheet.SheetLines;

/** One sheet of the book: what it says and has said, and where it is corrected and withdrawn. */
final class SheetRoom implements Room {
  private static final int CONFLICT = 409;
  private static final int UNUSABLE = 422;
  private static final String OTHER_LAWN =
      " If it belongs to another lawn, withdraw it on its own page and log it at that lawn.";
  private static final String VERSION = "version";

  private final Desk desk;
  private final SheetDesk sheets;

  SheetRoom(Desk desk, SheetDesk sheets) {
    this.desk = desk;
    this.sheets = sheets;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/sheets/{id}", Right.READ, this::showSheet);
    routes.read(
        "/sheets/{id}/correct", Right.LOG, context -> correct(context, context.pathParam("id")));
    routes.write("/sheets/{id}", Right.LOG, Intake.SHAPE, context -> save(context, open(context)));
    routes.read(
        "/sheets/{id}/withdraw",
        Right.LOG,
        context -> {
          open(context);
          showWithdraw(context);
        });
    routes.write(
        "/sheets/{id}/withdraw",
        Right.LOG,
        Intake.FORM,
        context -> turn(context, open(context), true));
    routes.write(
        "/sheets/{id}/restore",
        Right.LOG,
        Intake.FORM,
        context -> turn(context, open(context), false));
  }

  private Found<?> open(Context context) {
    return sheets.toChange(context, context.pathParam("id"));
  }

  private void showWithdraw(Context context) {
    SheetPage page = SheetPage.of(sheets.found(context), desk.clock().getZone());
    desk.show(context, "withdraw.jte", "Withdraw: " + page.title(), Map.of("page", page));
  }

  private void showSheet(Context context) {
    Found<?> found = sheets.found(context);
    SheetPage page = SheetPage.of(found, desk.clock().getZone());
    desk.show(context, "sheet.jte", page.title(), Map.of("page", page, "doubt", doubt(found)));
  }

  /** That an entry of the log may tell of work that another one tells too; empty for all else. */
  private String doubt(Found<?> found) {
    String id = found.sheet().id();
    return found.kind() != Kind.LOG || found.sheet().withdrawn()
        ? ""
        : desk.book()
            .read(
                reading ->
                    reading
                        .find(Kind.LOG, id)
                        .map(sheet -> SavedEntry.twice(reading, sheet, found.setting().units()))
                        .orElse(""));
  }

  /** Shows the form of a sheet as it stands. */
  void correct(Context context, String id) {
    correct(context, sheets.toChange(context, id));
  }

  private <C extends Content> void correct(Context context, Found<C> found) {
    show(context, found, filled(found, found.document()), found.sheet().version());
  }

  private static Form filled(Found<?> found, String document) {
    Setting setting = found.setting();
    return Form.of(found.form().shape(setting, found.document()), setting.units(), document);
  }

  private <C extends Content> void save(Context context, Found<C> found) {
    Form form = sent(context, found);
    int version = version(context);
    try {
      C content = found.kind().read(form.document(found.form().noun(), found.document()));
      if (form.faulty()) {
        // What else is wrong is told at once with it.
        desk.book().read(reading -> checked(reading, found, content));
        context.status(UNUSABLE);
        show(context, found, form, version);
        return;
      }
      Answers.goTo(context, after(found, write(context, found, content, version)));
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, found, form.faulted(faults), version);
    } catch (StaleSheetException stale) {
      context.status(CONFLICT);
      conflict(context, found, form, version);
    }
  }

  private static Form sent(Context context, Found<?> found) {
    return DayCheck.told(
        SentForm.of(context, found.form(), found.setting(), found.document()),
        found.kind(),
        found.setting().today(),
        found.place().word());
  }

  private <C extends Content> Sheet<C> write(
      Context context, Found<C> found, C content, int version) {
    String id = found.sheet().id();
    return desk.book()
        .write(
            Guest.visitor(context).person().name(),
            writing -> {
              C checked = checked(writing, found, content);
              return fitting(writing, writing.revise(found.kind(), id, version, checked));
            });
  }

  private static <C extends Content> C checked(BookReading reading, Found<C> found, C content) {
    SheetCheck.together(reading, found.sheet().id(), content);
    if (content instanceof LogSheet entry) {
      new LogCheck(reading, found.setting().today(), found.setting().units())
          .check(found.sheet().id(), entry);
    }
    return content;
  }

  /** A sheet as it was written, which may take part in setting the rules of the whole book. */
  private static <C extends Content> Sheet<C> fitting(BookReading reading, Sheet<C> written) {
    if (written.kind() == Kind.RULE) {
      BookRules.check(reading);
    }
    return written;
  }

  /** A property or lawn has a page of its own, where its new facts are seen. */
  private static <C extends Content> String after(Found<C> found, Sheet<C> saved) {
    String address = saved.content().address();
    if (address == null || saved.withdrawn()) {
      return found.address();
    }
    return (saved.kind() == Kind.PROPERTY ? "/properties/" : "/lawns/") + address;
  }

  private <C extends Content> void turn(Context context, Found<C> found, boolean withdraw) {
    int version = version(context);
    String id = found.sheet().id();
    desk.book()
        .write(
            Guest.visitor(context).person().name(),
            writing ->
                fitting(
                    writing,
                    withdraw
                        ? writing.withdraw(found.kind(), id, version)
                        : restored(writing, found, version)));
    Answers.goTo(context, found.address());
  }

  private static <C extends Content> Sheet<C> restored(
      BookWriting writing, Found<C> found, int version) {
    Sheet<C> sheet = writing.restore(found.kind(), found.sheet().id(), version);
    if (sheet.content() instanceof ProgrammeSheet programme) {
      SheetCheck.beginsAlone(writing, sheet.id(), programme);
    }
    if (sheet.content() instanceof LogSheet entry) {
      new LogCheck(writing, found.setting().today(), found.setting().units())
          .restored(sheet.id(), entry);
    }
    return sheet;
  }

  private static int version(Context context) {
    String sent = context.formParam(VERSION);
    return sent != null && sent.matches("\\d{1,9}") ? Integer.parseInt(sent) : 0;
  }

  private <C extends Content> void show(Context context, Found<C> found, Form form, int version) {
    String title = found.form().title(found.sheet().content(), found.setting());
    page(
        context,
        new SheetFormPage(
            "Correct: " + title,
            "What it said before is kept, with who changed it and when."
                + (found.kind() == Kind.LOG ? OTHER_LAWN : ""),
            found.place(),
            form,
            found.address(),
            Map.of(VERSION, Integer.toString(version)),
            "Save the correction",
            "Leave it as it is",
            found.address(),
            List.of()));
  }

  /**
   * Both states side by side; what was changed stands in the form as it was typed, the rest as it
   * now is, to be saved over the other.
   */
  private <C extends Content> void conflict(
      Context context, Found<C> stale, Form typed, int version) {
    @SuppressWarnings("unchecked") // the kind of a sheet never changes
    Found<C> now = (Found<C>) sheets.toChange(context, stale.sheet().id());
    Sheet<C> theirs = now.sheet();
    Form form =
        now.documentOf(version)
            .map(before -> typed.rebased(filled(now, before), filled(now, now.document())))
            .orElse(typed);
    String mine = form.document(now.form().noun(), now.document()).text();
    String more =
        (theirs.withdrawn()
                ? "%s withdrew this sheet, %s, while you were working on it, so it no longer counts."
                    + " Saved over it, yours is kept but stays withdrawn until it is restored on its"
                    + " page."
                : "%s changed this sheet, %s, while you were working on it.")
            + " Nothing of yours is saved yet, and nothing is lost: here is theirs beside yours, and"
            + " below your form. What you did not change stands there as it now is.";
    page(
        context,
        new SheetFormPage(
            "Somebody else was quicker",
            more.formatted(
                theirs.writtenBy(),
                Moments.words(theirs.writtenAt(), now.place().zone(desk.clock().getZone()))),
            now.place(),
            form,
            now.address(),
            Map.of(VERSION, Integer.toString(theirs.version())),
            theirs.withdrawn() ? "Save mine over it, still withdrawn" : "Save mine over it",
            theirs.withdrawn() ? "Leave it withdrawn" : "Keep theirs",
            now.address(),
            differences(now, mine)));
  }

  private static <C extends Content> List<Change> differences(Found<C> now, String mine) {
    return new SheetLines(now.form(), now.setting()).between(now.document(), mine);
  }

  private void page(Context context, SheetFormPage page) {
    desk.show(context, "sheetform.jte", page.headline(), Map.of("page", page));
  }
}
