package leafturn.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.VisitSheet;
import leafturn.records.sheet.VisitSheet.FixedPoint;

/** Takes a photograph from a fixed point on the page of a visit. */
final class VisitPhotographRoom implements Room {
  private static final int UNUSABLE = 422;

  private final Desk desk;
  private final SheetDesk sheets;

  VisitPhotographRoom(Desk desk, SheetDesk sheets) {
    this.desk = desk;
    this.sheets = sheets;
  }

  @Override
  public void open(Routes routes) {
    routes.write("/sheets/{id}/photographs", Right.CHANGE, Intake.PHOTOGRAPH, this::add);
  }

  private void add(Context context) {
    SheetDesk.Found<?> found = sheets.toChange(context, context.pathParam("id"));
    if (!(found.sheet().content() instanceof VisitSheet) || found.sheet().withdrawn()) {
      throw Refusal.notFound();
    }
    String id = found.sheet().id();
    String point = Objects.requireNonNullElse(context.formParam("point"), "").strip();
    try {
      SentPhotograph photograph = SentPhotograph.of(context, id);
      if (photograph == null) {
        throw new InputException("No photograph was chosen; choose one.");
      }
      if (point.isEmpty()) {
        throw new InputException("The point has no name; name it, the same each year.");
      }
      String by = Guest.visitor(context).person().name();
      desk.book().write(by, writing -> added(writing, id, point, photograph));
      Answers.goTo(context, found.address());
    } catch (InputException fault) {
      SheetPage page = SheetPage.of(found, desk.clock().getZone());
      String told = String.join(" ", fault.faults());
      context.status(UNUSABLE);
      desk.show(
          context, "sheet.jte", page.title(), Map.of("page", page, "fault", told, "point", point));
    }
  }

  /** The visit with it; unchanged when it has this photograph already. */
  private static Sheet<VisitSheet> added(
      BookWriting writing, String id, String point, SentPhotograph photograph) {
    Sheet<VisitSheet> sheet = writing.find(Kind.VISIT, id).orElseThrow(Refusal::notFound);
    VisitSheet visit = sheet.content();
    if (visit.photographs().stream().anyMatch(one -> one.photograph().equals(photograph.id()))) {
      return sheet;
    }
    List<FixedPoint> points = new ArrayList<>(visit.photographs());
    points.add(new FixedPoint(point, photograph.id()));
    VisitSheet with = visit.with(points);
    Kind.VISIT.read(new SourceText("The visit", Kind.VISIT.write(with)));
    photograph.write(writing, visit.lawn(), visit.day(), point);
    return writing.revise(Kind.VISIT, id, sheet.version(), with);
  }
}
