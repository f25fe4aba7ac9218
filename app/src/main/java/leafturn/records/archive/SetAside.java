package leafturn.records.archive;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.records.InputException;
import leafturn.records.Sha256;
import leafturn.records.SourceText;
import leafturn.records.book.BookReading;
import leafturn.records.book.SheetDigest;
import leafturn.records.book.StoredSheet;
import leafturn.records.book.StoredSheets;
import leafturn.records.book.StoredVersion;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;
import org.jspecify.annotations.Nullable;

/**
 * The sheets of a book that an archive cannot hold as sheets: those that are damaged, and those
 * that belong to one of these and could not be read in again without it.
 */
final class SetAside {
  private final Map<String, Sheet> sheets;
  private final long[] entries;

  /**
   * A sheet that is set aside.
   *
   * @param kind what it is
   * @param entry its place in the order of entry
   * @param why what is wrong with it, a sentence
   */
  record Sheet(Kind<?> kind, long entry, String why) {}

  private SetAside(Map<String, Sheet> sheets) {
    this.sheets = sheets;
    this.entries = sheets.values().stream().mapToLong(Sheet::entry).sorted().toArray();
  }

  /** Sets nothing aside. */
  static SetAside nothing() {
    return new SetAside(Map.of());
  }

  /** Finds what must be set aside of a book. */
  static SetAside of(BookReading book) {
    return new Search().run(book);
  }

  /** What is set aside, by its id. */
  Map<String, Sheet> sheets() {
    return sheets;
  }

  boolean holds(String id) {
    return sheets.containsKey(id);
  }

  /** The place of a sheet among those that stay. */
  long entry(long entry) {
    return entry + Arrays.binarySearch(entries, entry) + 1;
  }

  /** What a version says; null when it is damaged. */
  static <C extends Content> @Nullable C content(
      Kind<C> kind, StoredVersion stored, String digest) {
    if (!SheetDigest.of(stored).equals(digest)) {
      return null;
    }
    try {
      return kind.read(new SourceText(stored.id(), stored.document()));
    } catch (InputException e) {
      return null;
    }
  }

  /** One going through of a book. */
  private static final class Search {
    private final Map<String, Sheet> aside = new LinkedHashMap<>();
    private final Map<String, Sheet> sound = new LinkedHashMap<>();
    private final Map<String, List<References.Named>> belonging = new HashMap<>();
    private final Map<String, String> pictures = new HashMap<>();

    SetAside run(BookReading book) {
      List<String> kinds = StoredSheets.kinds(book);
      Kind.all().stream()
          .filter(kind -> kinds.contains(kind.name()))
          .forEach(kind -> StoredSheets.forEach(book, kind.name(), sheet -> look(kind, sheet)));
      for (String id : StoredPhotographs.ids(book)) {
        String sha256 = Sha256.of(StoredPhotographs.bytes(book, id));
        if (!sha256.equals(pictures.getOrDefault(id, sha256))) {
          move(id, "its picture is not the one it was");
        }
      }
      boolean more = !aside.isEmpty();
      while (more) {
        more = moveThoseOf(Set.copyOf(aside.keySet()));
      }
      return new SetAside(aside);
    }

    private void look(Kind<?> kind, StoredSheet stored) {
      Content latest = null;
      for (int i = 0; i < stored.versions().size(); i++) {
        StoredVersion version = stored.versions().get(i);
        latest = content(kind, version, stored.digests().get(i));
        if (latest == null || version.version() != i + 1) {
          String why = "version %d is damaged".formatted(version.version());
          aside.put(stored.id(), new Sheet(kind, stored.entry(), why));
          return;
        }
      }
      sound.put(stored.id(), new Sheet(kind, stored.entry(), ""));
      if (latest instanceof PhotographSheet photograph) {
        pictures.put(stored.id(), photograph.sha256());
      }
      if (latest != null) {
        belonging.put(stored.id(), References.belonging(latest));
      }
    }

    private void move(String id, String why) {
      Sheet sheet = sound.remove(id);
      if (sheet != null) {
        aside.put(id, new Sheet(sheet.kind(), sheet.entry(), why));
      }
    }

    private boolean moveThoseOf(Set<String> lost) {
      int before = aside.size();
      for (String id : List.copyOf(sound.keySet())) {
        belonging.getOrDefault(id, List.of()).stream()
            .filter(named -> lost.contains(named.id()))
            .findFirst()
            .ifPresent(
                named ->
                    move(
                        id,
                        "it belongs to the %s %s, which is set aside"
                            .formatted(named.kind(), named.id())));
      }
      return aside.size() > before;
    }
  }
}
