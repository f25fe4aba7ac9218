package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.InputException;
import leafturn.records.book.BookWriting;
import leafturn.records.exchange.Column;
import leafturn.records.exchange.Preview;
import leafturn.records.exchange.Reading;
import leafturn.records.exchange.Reading.DateOrder;
import leafturn.records.people.Secret;
import leafturn.records.sheet.Kind;
import leafturn.records.table.TableFile;
import org.jspecify.annotations.Nullable;

/**
 * Where past logs, properties, weather and trials come in from files: a file is sent, looked at,
 * and then imported whole or not at all.
 */
final class ImportRoom implements Room {
  private static final int CONFLICT = 409;
  private static final int UNUSABLE = 422;
  private static final int LONGEST_NAME = 120;
  private static final String HERE = "/import";

  private final Desk desk;
  private final KeptFiles files;

  ImportRoom(Desk desk) {
    this.desk = desk;
    this.files = new KeptFiles(desk.clock());
  }

  @Override
  public void open(Routes routes) {
    routes.read(HERE, Right.CHANGE, this::begin);
    routes.write(HERE, Right.CHANGE, Intake.IMPORT, this::send);
    routes.read("/import/{key}", Right.CHANGE, context -> look(context, kept(context)));
    routes.write("/import/{key}/columns", Right.CHANGE, Intake.FORM, this::choose);
    routes.write("/import/{key}/add", Right.CHANGE, Intake.FORM, this::add);
  }

  private void begin(Context context) {
    begin(context, context::queryParam, null, List.of());
  }

  private void begin(
      Context context,
      Function<String, @Nullable String> asked,
      @Nullable ImportKind refused,
      List<String> faults) {
    ImportStart page = desk.book().read(reading -> ImportStart.of(reading, asked, refused, faults));
    desk.show(context, "import.jte", "Import", Map.of("page", page));
  }

  /** Shows where an import begins with what is wrong with a file. */
  private void refuse(Context context, KeptFile file, InputException faults) {
    context.status(UNUSABLE);
    begin(
        context,
        name -> name.equals(file.kind().target()) ? file.target() : null,
        file.kind(),
        faults.faults());
  }

  private void send(Context context) {
    Map<String, List<String>> form = Body.form(context);
    ImportKind kind = Choice.of(first(form, "kind"), ImportKind.class);
    try {
      KeptFile file = sent(context, kind, form);
      // What cannot be read at all is told at once, and not kept.
      desk.book().read(lookAt(context, file)::preview);
      files.keep(session(context), file);
      Answers.goTo(context, HERE + "/" + file.key());
    } catch (InputException e) {
      context.status(UNUSABLE);
      begin(context, name -> first(form, name), kind, e.faults());
    }
  }

  private KeptFile sent(
      Context context, @Nullable ImportKind kind, Map<String, List<String>> form) {
    if (kind == null) {
      throw new InputException("Choose what the file holds.");
    }
    UploadedFile upload = context.uploadedFile("file");
    if (upload == null || upload.size() == 0) {
      throw new InputException("Choose a file that is not empty.");
    }
    String target = target(kind, form);
    String laboratory = laboratory(kind, first(form, "laboratory"));
    String name = Body.fileName(upload, LONGEST_NAME);
    try (InputStream content = upload.content()) {
      return KeptFile.of(
              Secret.fresh(),
              kind,
              name.isEmpty() ? "file" : name,
              content.readNBytes(TableFile.LIMIT_BYTES + 1),
              target)
          .readBy(laboratory);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Id of what the file is for; an invented one is refused, here or when it is looked at. */
  private String target(ImportKind kind, Map<String, List<String>> form) {
    String id = kind.target().isEmpty() ? "" : first(form, kind.target());
    return switch (kind) {
      case PROPERTIES, TRIAL, READINGS -> id;
      case WEATHER ->
          kept(
              Kind.STATION,
              id,
              "Choose the station whose record the file belongs to; add it first where it is new.");
      case LOG ->
          id.isEmpty()
              ? ""
              : kept(Kind.LAWN, id, "Choose the lawn, or that the file names it in each row.");
    };
  }

  private String kept(Kind<?> kind, String id, String otherwise) {
    boolean there =
        desk.book()
            .read(
                reading ->
                    reading
                        .find(id)
                        .filter(sheet -> sheet.kind() == kind && !sheet.withdrawn())
                        .isPresent());
    if (!there) {
      throw new InputException(otherwise);
    }
    return id;
  }

  private @Nullable String laboratory(ImportKind kind, String id) {
    if (kind != ImportKind.READINGS || id.isEmpty()) {
      return null;
    }
    return kept(Kind.LABORATORY, id, "Choose the laboratory, or that each row holds one reading.");
  }

  private void look(Context context, KeptFile file) {
    if (file.isImported()) {
      ImportDone page = desk.book().read(reading -> ImportDone.of(reading, file));
      desk.show(context, "importdone.jte", "Imported", Map.of("page", page));
      return;
    }
    try {
      Preview preview = desk.book().read(lookAt(context, file)::preview);
      show(context, file, preview, "");
    } catch (InputException e) {
      refuse(context, file, e);
    }
  }

  private void show(Context context, KeptFile file, Preview preview, String changed) {
    String target = desk.book().read(reading -> ImportStart.nameOf(reading, file));
    ImportPage page = page(context, file, target, preview, changed);
    desk.show(context, "importlook.jte", "Import " + file.name(), Map.of("page", page));
  }

  private static ImportPage page(
      Context context, KeptFile file, String target, Preview preview, String changed) {
    return new ImportPage(file, target, preview, changed, units(context));
  }

  private ImportLook lookAt(Context context, KeptFile file) {
    return new ImportLook(file, desk.clock(), desk.grounds(), units(context));
  }

  private static Units units(Context context) {
    return Guest.visitor(context).person().units();
  }

  private void choose(Context context) {
    KeptFile file = kept(context);
    Map<String, List<String>> form = Body.form(context);
    String sheet = first(form, "sheet");
    String shown = first(form, "shown-sheet");
    KeptFile chosen =
        sheet.isEmpty() || sheet.equals(shown)
            ? file.reading(picks(file, form), !first(form, "replace").isEmpty())
            : file.onSheet(sheet);
    try {
      desk.book().read(lookAt(context, chosen)::preview);
    } catch (InputException e) {
      refuse(context, file, e);
      return;
    }
    files.keep(session(context), chosen);
    Answers.goTo(context, HERE + "/" + chosen.key());
  }

  private static Map<Integer, Reading.Pick> picks(KeptFile file, Map<String, List<String>> form) {
    Map<Integer, Reading.Pick> picks = new HashMap<>();
    for (int place = 0; place < TableFile.MOST_COLUMNS; place++) {
      String name = first(form, "column-" + place);
      Units units = Choice.of(first(form, "units-" + place), Units.class);
      DateOrder dates = Choice.of(first(form, "dates-" + place), DateOrder.class);
      Optional<Column> column =
          file.kind().columns().stream().filter(each -> each.name().equals(name)).findFirst();
      if (column.isPresent()) {
        picks.put(
            place,
            new Reading.Pick(
                column.get(),
                units == null ? Units.METRIC : units,
                dates == null ? DateOrder.YEAR_FIRST : dates));
      }
    }
    return picks;
  }

  private void add(Context context) {
    KeptFile file = kept(context);
    if (!file.isImported()) {
      String seen = first(Body.form(context), "seen");
      String by = Guest.visitor(context).person().name();
      ImportLook look = lookAt(context, file);
      Preview preview = desk.book().write(by, writing -> addIfSeen(writing, look, seen));
      if (!isSeen(preview, seen)) {
        context.status(CONFLICT);
        show(
            context,
            file,
            preview,
            "The book has changed since you looked. Nothing was imported; this is what would be"
                + " imported now.");
        return;
      }
      files.keep(session(context), file.imported(page(context, file, "", preview, "").arrivals()));
    }
    Answers.goTo(context, HERE + "/" + file.key());
  }

  private static Preview addIfSeen(BookWriting writing, ImportLook look, String seen) {
    Preview preview = look.preview(writing);
    if (isSeen(preview, seen)) {
      preview.arrivals().write(writing);
    }
    return preview;
  }

  /** Only what somebody has seen is imported. */
  private static boolean isSeen(Preview preview, String seen) {
    return preview.ready() && preview.arrivals().digest().equals(seen);
  }

  private KeptFile kept(Context context) {
    return files
        .find(session(context), context.pathParam("key"))
        .orElseThrow(
            () ->
                new Refusal(
                    404,
                    "This file is no longer here.",
                    "Files wait half an hour to be imported. Nothing of it was imported by"
                        + " waiting; send it again."));
  }

  /** Known to this browser alone, as long as it is signed in. */
  private static String session(Context context) {
    return Guest.of(context).token();
  }

  private static String first(Map<String, List<String>> form, String name) {
    List<String> values = form.getOrDefault(name, List.of());
    return values.isEmpty() ? "" : values.get(0).strip();
  }
}
