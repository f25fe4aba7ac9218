package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import leafturn.records.InputException;
import leafturn.records.archive.BookCheck;
import leafturn.records.archive.BookExport;
import leafturn.records.archive.CheckResult;
import leafturn.records.archive.Shelving;
import leafturn.records.book.ArchiveShelf;
import org.jspecify.annotations.Nullable;

/** Where owners take the whole book away, see its archives and have it checked. */
final class BookRoom implements Room {
  private static final int FAULTY = 422;
  private static final int NOT_FOUND = 404;
  private static final String ZIP = "application/zip";
  private static final double BYTES_PER_MB = 1e6;

  private final Desk desk;
  private volatile @Nullable Checked lastCheck;

  private record Checked(Instant at, CheckResult result) {}

  BookRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/book", Right.MANAGE_BOOK, context -> show(context, List.of()));
    routes.read("/book/archive", Right.MANAGE_BOOK, this::fresh);
    routes.read("/book/archives/{name}", Right.MANAGE_BOOK, this::kept);
    routes.write("/book/archives", Right.MANAGE_BOOK, Intake.FORM, this::write);
    routes.write("/book/check", Right.MANAGE_BOOK, Intake.FORM, this::check);
  }

  private void show(Context context, List<String> told) {
    List<BookPage.Archive> archives =
        shelf().map(ArchiveShelf::archives).orElse(List.of()).stream().map(this::archive).toList();
    Checked checked = lastCheck;
    BookPage page =
        new BookPage(
            shelf().isPresent(),
            archives,
            told,
            checked == null ? "" : moment(checked.at()) + ": " + checked.result().summary() + ".",
            checked == null ? List.of() : checked.result().damages());
    desk.show(context, "book.jte", "The book", Map.of("page", page));
  }

  private BookPage.Archive archive(ArchiveShelf.Kept kept) {
    return new BookPage.Archive(
        String.valueOf(kept.file().getFileName()), moment(kept.madeAt()), size(kept.bytes()));
  }

  private static String size(long bytes) {
    return bytes < BYTES_PER_MB
        ? String.format(Locale.ROOT, "%d\u202fkB", (bytes + 999) / 1000)
        : String.format(Locale.ROOT, "%.1f\u202fMB", bytes / BYTES_PER_MB);
  }

  private String moment(Instant at) {
    return Moments.words(at, desk.clock().getZone());
  }

  private Optional<ArchiveShelf> shelf() {
    return desk.book().place().shelf();
  }

  private void write(Context context) {
    Optional<ArchiveShelf> shelf = shelf();
    if (shelf.isEmpty()) {
      refuse(
          context, List.of("There is no folder for archives of this book; take its archive away."));
      return;
    }
    try {
      Optional<Path> written =
          Shelving.write(desk.book(), shelf.get(), desk.clock(), desk.clock().getZone());
      show(
          context,
          List.of(
              written.isPresent()
                  ? "The archive was written, and reads back whole."
                  : "Nothing has changed since the newest archive; it was read and is whole."));
    } catch (InputException fault) {
      refuse(context, fault.faults());
    }
  }

  private void check(Context context) {
    lastCheck = new Checked(desk.clock().instant(), BookCheck.run(desk.book()));
    Answers.goTo(context, "/book");
  }

  private void fresh(Context context) throws IOException {
    Path file = Files.createTempFile("leafturn-", ".zip");
    boolean sent = false;
    try {
      BookExport.write(desk.book(), file, desk.clock());
      send(
          context,
          ArchiveShelf.name(desk.clock().instant()),
          Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE));
      sent = true;
    } catch (InputException fault) {
      List<String> told = new ArrayList<>(fault.faults());
      told.add("Whatever is whole can be taken away with 'leafturn book export'.");
      refuse(context, told);
    } finally {
      if (!sent) {
        Files.deleteIfExists(file);
      }
    }
  }

  private void kept(Context context) throws IOException {
    String name = context.pathParam("name");
    Optional<Path> file =
        shelf().map(ArchiveShelf::archives).orElse(List.of()).stream()
            .map(ArchiveShelf.Kept::file)
            .filter(path -> path.getFileName().toString().equals(name))
            .findFirst();
    if (file.isEmpty()) {
      desk.tell(
          context,
          NOT_FOUND,
          "There is no such archive.",
          "Older ones go when newer ones have come: fourteen days and twelve months stay.");
      return;
    }
    send(context, name, Files.newInputStream(file.get()));
  }

  private static void send(Context context, String name, InputStream archive) {
    context.header(Header.CACHE_CONTROL, "private, no-store");
    context.header(Header.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"");
    context.contentType(ZIP).result(archive);
  }

  private void refuse(Context context, List<String> faults) {
    context.status(FAULTY);
    show(context, faults);
  }
}
