package leafturn.web;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Units;
import leafturn.records.book.Sheet;
import leafturn.records.shape.Outline;
import leafturn.records.sheet.BedSheet;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.PhotographSheet;
import leafturn.records.sheet.VisitSheet;
import leafturn.web.sheet.Change;
import leafturn.web.sheet.Line;
import leafturn.web.sheet.SheetForm;
import leafturn.web.sheet.SheetLines;
import org.jspecify.annotations.Nullable;

/**
 * A sheet with all it has said so far.
 *
 * @param id its id
 * @param noun what it is
 * @param title what it says in a line
 * @param place where it belongs
 * @param withdrawn whether it no longer counts
 * @param version its version
 * @param lines what it says, field by field
 * @param findings what follows from that
 * @param outline its outline, or null
 * @param units the reader's units
 * @param versions all versions, the latest first
 * @param mayChange whether this reader may change it
 * @param changesAdvice whether today's advice rests on it
 * @param photographs the photographs that belong to it, or its own where it is one
 * @param takesPhotographs whether this reader may add one from a fixed point
 */
public record SheetPage(
    String id,
    String noun,
    String title,
    SheetPlace place,
    boolean withdrawn,
    int version,
    List<Line> lines,
    List<Line> findings,
    @Nullable Outline outline,
    Units units,
    List<Version> versions,
    boolean mayChange,
    boolean changesAdvice,
    List<Picture> photographs,
    boolean takesPhotographs) {
  /**
   * A photograph.
   *
   * @param id its id
   * @param words its number and what it shows
   */
  public record Picture(String id, String words) {}

  /**
   * What became of a sheet once.
   *
   * @param words what was done, by whom and when
   * @param changes the fields that were changed
   */
  public record Version(String words, List<Change> changes) {}

  /** True for the page of a photograph, which stands there as large as there is room. */
  public boolean isPicture() {
    return photographs.stream().anyMatch(picture -> picture.id().equals(id));
  }

  static <C extends Content> SheetPage of(SheetDesk.Found<C> found, ZoneId otherZone) {
    Sheet<C> sheet = found.sheet();
    SheetForm<C> form = found.form();
    return new SheetPage(
        sheet.id(),
        form.noun(),
        form.title(sheet.content(), found.setting()),
        found.place(),
        sheet.withdrawn(),
        sheet.version(),
        new SheetLines(form, found.setting()).of(document(found)),
        form.findings(sheet.content(), found.setting()),
        outline(sheet.content()),
        found.setting().units(),
        versions(found, found.place().zone(otherZone)),
        found.mayChange(),
        changesAdvice(sheet),
        photographs(sheet),
        found.mayChange() && !sheet.withdrawn() && sheet.content() instanceof VisitSheet);
  }

  /** What is told in lines; the photographs of a visit stand below with their points. */
  private static String document(SheetDesk.Found<?> found) {
    return found.sheet().content() instanceof VisitSheet visit
        ? Kind.VISIT.write(visit.with(List.of()))
        : found.document();
  }

  private static List<Picture> photographs(Sheet<?> sheet) {
    List<Picture> pictures = new ArrayList<>();
    if (sheet.content() instanceof PhotographSheet photograph) {
      String caption = photograph.caption();
      pictures.add(new Picture(sheet.id(), caption == null ? "Photograph" : caption));
    } else if (sheet.content() instanceof LogSheet entry) {
      entry.photographs().forEach(id -> pictures.add(numbered(id, pictures, "")));
    } else if (sheet.content() instanceof VisitSheet visit) {
      visit
          .photographs()
          .forEach(one -> pictures.add(numbered(one.photograph(), pictures, ": " + one.point())));
    }
    return pictures;
  }

  private static Picture numbered(String id, List<Picture> before, String more) {
    return new Picture(id, "Photograph " + (before.size() + 1) + more);
  }

  private static @Nullable Outline outline(Content content) {
    if (content instanceof LawnSheet lawn) {
      return lawn.outline();
    }
    return content instanceof BedSheet bed ? bed.outline() : null;
  }

  private static boolean changesAdvice(Sheet<?> sheet) {
    return !sheet.withdrawn()
        && (sheet.content() instanceof LogSheet log && log.forModel().isPresent()
            || sheet.kind() == Kind.PROGRAMME
            || sheet.kind() == Kind.LAWN);
  }

  private static <C extends Content> List<Version> versions(SheetDesk.Found<C> found, ZoneId zone) {
    SheetLines lines = new SheetLines(found.form(), found.setting());
    List<Version> versions = new ArrayList<>();
    List<Sheet<C>> all = found.versions();
    for (int i = 0; i < all.size(); i++) {
      Sheet<C> after = all.get(i);
      Sheet<C> before = i + 1 < all.size() ? all.get(i + 1) : null;
      String words =
          "%s by %s, %s"
              .formatted(
                  deed(before, after), after.writtenBy(), Moments.words(after.writtenAt(), zone));
      List<Change> changes =
          before == null
              ? List.of()
              : lines.between(
                  found.kind().write(before.content()), found.kind().write(after.content()));
      versions.add(new Version(words, changes));
    }
    return versions;
  }

  private static String deed(@Nullable Sheet<?> before, Sheet<?> after) {
    if (before == null) {
      return "Entered";
    }
    if (before.withdrawn() == after.withdrawn()) {
      return "Corrected";
    }
    return after.withdrawn() ? "Withdrawn" : "Restored";
  }
}
