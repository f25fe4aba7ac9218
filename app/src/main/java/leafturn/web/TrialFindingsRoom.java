package leafturn.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.records.InputException;
import leafturn.records.ProgramVersion;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookFindings;
import leafturn.records.trial.BookFindings.Basis;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.TrialClock;
import leafturn.records.trial.TrialShelf;
import leafturn.reports.trial.FindingsDocument;
import leafturn.reports.trial.FindingsView;
import leafturn.reports.trial.TrialPackage;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Findings;
import org.jspecify.annotations.Nullable;

/** What a trial of the book has found, as a page and on paper. */
final class TrialFindingsRoom implements Room {
  private static final String PAGE = "/trials/{id}/findings";

  /** Trials whose findings are kept at a time. */
  private static final int KEPT = 4;

  private final Desk desk;
  private final Map<Basis, Findings> kept =
      Collections.synchronizedMap(
          new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Basis, Findings> eldest) {
              return size() > KEPT;
            }
          });

  TrialFindingsRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read(PAGE, Right.READ, this::show);
    routes.read("/trials/{id}/findings.pdf", Right.READ, this::paper);
    routes.read("/trials/{id}/data.zip", Right.READ, this::data);
  }

  /** What findings rest on; empty for who is not to know the arms. */
  private Optional<Basis> basis(Context context) {
    Visitor visitor = Guest.visitor(context);
    String id = context.pathParam("id");
    return desk.book()
        .read(
            reading -> {
              TrialShelf shelf = new TrialShelf(reading, visitor);
              Sheet<TrialSheet> trial = shelf.find(id).orElseThrow(Refusal::notFound);
              if (!shelf.mayKnowArms(trial.content())) {
                return Optional.empty();
              }
              TrialClock clock = new TrialClock(reading, desk.clock());
              LocalDate today = clock.today(trial.content());
              return Optional.of(
                  BookFindings.basis(shelf, trial, today, clock.zone(trial.content())));
            });
  }

  private Basis allowed(Context context) {
    return basis(context).orElseThrow(Refusal::notAllowed);
  }

  private Findings findings(Basis basis) {
    return kept.computeIfAbsent(basis, BookFindings::of);
  }

  private void show(Context context) {
    Map<String, Object> content = new HashMap<>();
    String id = context.pathParam("id");
    content.put("id", id);
    String title = "Findings";
    try {
      Optional<Basis> known = basis(context);
      if (known.isEmpty()) {
        Map<String, Object> blind = Map.of("id", id, "name", "This trial", "here", "findings");
        desk.show(context, "trialblind.jte", title, blind);
        return;
      }
      Basis basis = known.get();
      Findings findings = findings(basis);
      title = "Findings: " + basis.trial().name();
      content.put("view", new FindingsView(findings));
      content.put("faults", List.of());
    } catch (TrialFaultException nothing) {
      content.put("faults", nothing.faults());
      content.put("packed", true);
    } catch (InputException wrong) {
      content.put("faults", wrong.faults());
    }
    desk.show(context, "trialfindings.jte", title, content);
  }

  private void paper(Context context) {
    FindingsDocument document;
    try {
      String made = "Worked out by " + ProgramVersion.name() + ".";
      document = new FindingsDocument(findings(allowed(context)), null, List.of(made));
    } catch (TrialFaultException | InputException nothing) {
      throw Refusal.notFound();
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      document.paper().writePdf(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    context.header("Content-Disposition", "inline; filename=\"findings.pdf\"");
    context.contentType("application/pdf");
    context.result(out.toByteArray());
  }

  /** Plan and readings are given away whether or not something can be found from them yet. */
  private void data(Context context) {
    TrialPackage data;
    try {
      Basis basis = allowed(context);
      data =
          new TrialPackage(
              basis.packed(),
              TrialLayout.of(BookPlan.of(basis.trial())),
              findingsOrNull(basis),
              ProgramVersion.name());
    } catch (InputException | NoRoomException wrong) {
      throw Refusal.notFound();
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      data.writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    context.header("Content-Disposition", "attachment; filename=\"trial.zip\"");
    context.contentType("application/zip");
    context.result(out.toByteArray());
  }

  private @Nullable Findings findingsOrNull(Basis basis) {
    try {
      return findings(basis);
    } catch (TrialFaultException nothing) {
      return null;
    }
  }
}
