package leafturn.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.InputException;
import leafturn.records.book.Sheet;
import leafturn.records.book.StaleSheetException;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LaboratorySheet;
import leafturn.web.form.Form;
import leafturn.web.trial.LaboratoryForm;
import org.jspecify.annotations.Nullable;

/** Laboratories, and how the tables of each are read. */
final class LaboratoryRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int CONFLICT = 409;
  private static final String HERE = "/laboratories";
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Desk desk;

  LaboratoryRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read(HERE, Right.CHANGE, this::list);
    routes.read(HERE + "/new", Right.CHANGE, context -> show(context, null, blank(context)));
    routes.write(HERE + "/new", Right.CHANGE, Intake.FORM, this::add);
    routes.read(HERE + "/{id}", Right.CHANGE, this::one);
    routes.write(HERE + "/{id}", Right.CHANGE, Intake.FORM, this::save);
  }

  private void list(Context context) {
    List<Sheet<LaboratorySheet>> all = desk.book().read(reading -> reading.all(Kind.LABORATORY));
    desk.show(context, "laboratories.jte", "Laboratories", Map.of("laboratories", all));
  }

  private static Form blank(Context context) {
    return Form.blank(LaboratoryForm.shape(parsed("{}")), Guest.visitor(context).person().units())
        .with("dates", "year first")
        .with("duplicates", "repeated rows");
  }

  private void add(Context context) {
    Form form = sent(context, "{}");
    try {
      LaboratorySheet sheet = Kind.LABORATORY.read(form.document("laboratory"));
      String id = UUID.randomUUID().toString();
      desk.book().write(name(context), writing -> writing.add(Kind.LABORATORY, id, sheet));
      Answers.goTo(context, HERE);
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, null, form.faulted(faults));
    }
  }

  private void one(Context context) {
    Sheet<LaboratorySheet> found = found(context);
    String document = Kind.LABORATORY.write(found.content());
    Form form =
        Form.of(
            LaboratoryForm.shape(parsed(document)),
            Guest.visitor(context).person().units(),
            document);
    show(context, found, form);
  }

  private void save(Context context) {
    Sheet<LaboratorySheet> found = found(context);
    String before = Kind.LABORATORY.write(found.content());
    Form form = sent(context, before);
    String version = context.formParam("version");
    try {
      LaboratorySheet sheet = Kind.LABORATORY.read(form.document("laboratory"));
      int basedOn = version != null && version.matches("\\d{1,9}") ? Integer.parseInt(version) : 0;
      desk.book()
          .write(name(context), book -> book.revise(Kind.LABORATORY, found.id(), basedOn, sheet));
      Answers.goTo(context, HERE);
    } catch (StaleSheetException stale) {
      context.status(CONFLICT);
      show(
          context,
          found,
          form.faulted(
              "", "Somebody else has saved this meanwhile; saving again replaces theirs."));
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, found, form.faulted(faults));
    }
  }

  private static Form sent(Context context, String before) {
    return Form.sent(
            LaboratoryForm.shape(parsed(before)),
            Guest.visitor(context).person().units(),
            context.formParamMap())
        .closedUp();
  }

  private Sheet<LaboratorySheet> found(Context context) {
    return desk.book()
        .read(reading -> reading.find(Kind.LABORATORY, context.pathParam("id")))
        .orElseThrow(Refusal::notFound);
  }

  private static String name(Context context) {
    return Guest.visitor(context).person().name();
  }

  private static JsonNode parsed(String document) {
    try {
      return JSON.readTree(document);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the document of a sheet is not JSON", e);
    }
  }

  private void show(Context context, @Nullable Sheet<LaboratorySheet> found, Form form) {
    String title = found == null ? "A laboratory to add" : found.content().name();
    desk.show(
        context,
        "laboratory.jte",
        title,
        Map.of(
            "headline",
            title,
            "form",
            form,
            "action",
            found == null ? HERE + "/new" : HERE + "/" + found.id(),
            "version",
            found == null ? "" : Integer.toString(found.version())));
  }
}
