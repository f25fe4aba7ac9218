package leafturn.records.archive;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.book.SheetDigest;
import leafturn.records.book.StoredSheet;
import leafturn.records.book.StoredVersion;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import org.jspecify.annotations.Nullable;

/** Checks one sheet of a book in all its versions. */
final class SheetCheck<C extends Content> {
  private final Kind<C> kind;
  private final StoredSheet sheet;
  private final List<String> damages;

  SheetCheck(Kind<C> kind, StoredSheet sheet, List<String> damages) {
    this.kind = kind;
    this.sheet = sheet;
    this.damages = damages;
  }

  /** What to call it: "log 0b1f...". */
  String name() {
    return kind + " " + sheet.id();
  }

  /** Tells its damages; what it says, when that can be read. */
  Optional<C> run() {
    C content = null;
    for (int i = 0; i < sheet.versions().size(); i++) {
      StoredVersion version = sheet.versions().get(i);
      if (version.version() != i + 1) {
        damages.add(
            "%s: its versions do not run from 1 without holes; version %d stands where %d should."
                .formatted(name(), version.version(), i + 1));
        return Optional.empty();
      }
      content = version(version, sheet.digests().get(i));
    }
    if (content != null) {
      columns(content);
    }
    return Optional.ofNullable(content);
  }

  private @Nullable C version(StoredVersion version, String digest) {
    String which = "%s, version %d".formatted(name(), version.version());
    if (!SheetDigest.of(version).equals(digest)) {
      damages.add(which + ": it was changed from outside or is damaged; its digest does not fit.");
    }
    try {
      return kind.read(new SourceText(which, version.document()));
    } catch (InputException e) {
      damages.add(which + ": its content cannot be read: " + e.faults().get(0));
      return null;
    }
  }

  private void columns(C content) {
    column("property", sheet.columns().property(), content.property());
    column("lawn", sheet.columns().lawn(), content.lawn());
    column("day", sheet.columns().day(), content.day());
    column("address", sheet.columns().address(), content.address());
  }

  private void column(String what, @Nullable Object row, @Nullable Object content) {
    if (!Objects.equals(row, content)) {
      damages.add(
          "%s: the %s of its row, %s, is not that of its content, %s."
              .formatted(name(), what, row, content));
    }
  }
}
