package leafturn.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import io.javalin.http.Header;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.DrawWords;
import leafturn.records.trial.TrialPlanText;
import leafturn.records.trial.TrialShelf;
import leafturn.records.trial.TrialState;
import leafturn.reports.TapeWords;
import leafturn.reports.figure.TrialMapFile;
import leafturn.reports.paper.Paper;
import leafturn.reports.trial.FieldSheets;
import leafturn.reports.trial.LayoutGeoJson;
import leafturn.reports.trial.LayoutPaper;
import leafturn.reports.trial.SampleLabels;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.TrialLayout;
import org.jspecify.annotations.Nullable;

/** The layout of a trial, drawn from its plan and seed, and its files. */
final class TrialLayoutRoom implements Room {
  private static final int KEPT = 16;

  /** Files that name plots and no arms. */
  private static final Set<String> WITHOUT_ARMS = Set.of("field-sheets.pdf", "labels.pdf");

  private final Desk desk;

  /** Layouts drawn lately, by the digest of their plan: drawing takes a moment. */
  private final Map<String, TrialLayout> lately =
      new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, TrialLayout> eldest) {
          return size() > KEPT;
        }
      };

  private record Found(
      Sheet<TrialSheet> trial, @Nullable Integer draws, boolean mayDraw, boolean mayKnowArms) {}

  TrialLayoutRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/trials/{id}/layout", Right.READ, this::show);
    routes.read("/trials/{id}/layout/{file}", Right.READ, this::file);
    routes.write("/trials/{id}/layout", Right.CHANGE, Intake.FORM, this::draw);
  }

  private Found found(Context context) {
    Visitor visitor = Guest.visitor(context);
    String id = context.pathParam("id");
    return desk.book().read(reading -> found(reading, visitor, id));
  }

  private static Found found(BookReading reading, Visitor visitor, String id) {
    TrialShelf shelf = new TrialShelf(reading, visitor);
    Sheet<TrialSheet> trial = shelf.find(id).orElseThrow(Refusal::notFound);
    boolean mayDraw = shelf.mayChange() && shelf.state(trial) == TrialState.PLANNED;
    return new Found(trial, shelf.draws(trial), mayDraw, shelf.mayKnowArms(trial.content()));
  }

  private void show(Context context) {
    Found found = found(context);
    String id = found.trial().id();
    String name = found.trial().content().name();
    if (!found.mayKnowArms()) {
      Map<String, Object> blind = Map.of("id", id, "name", name, "here", "layout");
      desk.show(context, "trialblind.jte", name + ": layout", blind);
      return;
    }
    Units units = Guest.visitor(context).person().units();
    TrialLayoutPage page;
    try {
      page =
          TrialLayoutPage.of(
              id,
              layout(found.trial().content()),
              DrawWords.of(found.draws(), found.trial().content().frozen() != null),
              found.mayDraw(),
              units);
    } catch (InputException | NoRoomException none) {
      page =
          TrialLayoutPage.without(
              id, name, new TapeWords(units).sentence(String.valueOf(none.getMessage())));
    }
    desk.show(context, "triallayout.jte", name + ": layout", Map.of("page", page));
  }

  private TrialLayout layout(TrialSheet trial) {
    TrialPlan plan = BookPlan.of(trial);
    String digest = TrialPlanText.sha256(plan);
    synchronized (lately) {
      TrialLayout known = lately.get(digest);
      if (known != null) {
        return known;
      }
    }
    TrialLayout drawn = TrialLayout.of(plan);
    synchronized (lately) {
      lately.put(digest, drawn);
    }
    return drawn;
  }

  private void file(Context context) {
    Found found = found(context);
    String file = context.pathParam("file");
    if (!found.mayKnowArms() && !WITHOUT_ARMS.contains(file)) {
      throw Refusal.notAllowed();
    }
    TrialLayout layout;
    try {
      layout = layout(found.trial().content());
    } catch (InputException | NoRoomException none) {
      throw Refusal.notFound();
    }
    Units units = Guest.visitor(context).person().units();
    switch (file) {
      case "map.svg" -> send(context, file, "image/svg+xml", TrialMapFile.of(layout, units));
      case "layout.geojson" -> send(context, file, "application/geo+json", geoJson(layout));
      case "layout.pdf" -> send(context, file, LayoutPaper.of(layout, units));
      case "field-sheets.pdf" -> send(context, file, FieldSheets.of(layout, units));
      case "labels.pdf" -> send(context, file, SampleLabels.of(layout));
      default -> throw Refusal.notFound();
    }
  }

  private static String geoJson(TrialLayout layout) {
    try {
      return LayoutGeoJson.of(layout);
    } catch (InputException nowhere) {
      throw Refusal.notFound();
    }
  }

  private static void send(Context context, String file, Paper paper) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      paper.writePdf(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    send(context, file, "application/pdf", out.toByteArray());
  }

  private static void send(Context context, String file, String mediaType, String text) {
    send(context, file, mediaType, text.getBytes(StandardCharsets.UTF_8));
  }

  private static void send(Context context, String file, String mediaType, byte[] bytes) {
    context
        .header(Header.CACHE_CONTROL, "private, no-cache")
        .header("Content-Disposition", "attachment; filename=\"%s\"".formatted(file))
        .contentType(mediaType)
        .result(bytes);
  }

  /** Draws anew from a seed that is kept with the plan; a frozen plan keeps its own. */
  private void draw(Context context) {
    Visitor visitor = Guest.visitor(context);
    String id = context.pathParam("id");
    long seed = Seeds.drawn();
    desk.book()
        .write(
            visitor.person().name(),
            writing -> {
              Found found = found(writing, visitor, id);
              if (!found.mayDraw()) {
                throw new Refusal(
                    409,
                    "This plan is frozen, and its layout with it.",
                    "Change the plan, with a reason, if it cannot stand.");
              }
              TrialSheet now = found.trial().content();
              ObjectNode plan = now.plan().deepCopy();
              plan.put("seed", seed);
              TrialSheet changed = now.with(plan, now.lawns());
              return writing.revise(
                  Kind.TRIAL, id, found.trial().version(), Kind.TRIAL.checked(changed));
            });
    Answers.goTo(context, "/trials/" + id + "/layout");
  }
}
