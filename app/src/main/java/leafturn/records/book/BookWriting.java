package leafturn.records.book;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.ForecastSheet;
import leafturn.records.sheet.Kind;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Writes sheets of a book within one transaction. What was written once is never lost. */
public final class BookWriting extends BookReading {
  private static final Set<String> PLACES = Set.of("property", "lawn", "station");

  private final String by;
  private final Instant now;

  /** Kinds and ids that were found in the book; nothing ever leaves it. */
  private final Set<String> there = new HashSet<>();

  /** Places that were marked: once is enough for all that is written together. */
  private final Set<String> raised = new HashSet<>();

  BookWriting(Handle handle, String by, Instant now) {
    super(handle);
    this.by = by;
    this.now = now.truncatedTo(ChronoUnit.MICROS);
  }

  /** Who writes. */
  public String by() {
    return by;
  }

  /** The same transaction, for what was written down at another moment before it came in here. */
  public BookWriting at(Instant moment) {
    return new BookWriting(handle(), by, moment);
  }

  /** When this is written. */
  public Instant now() {
    return now;
  }

  /**
   * Adds a sheet. Adding the same again under the same id changes nothing and succeeds, so that
   * whoever does not know whether an entry arrived can send it again.
   *
   * @param id UUID in lower case, made by whoever enters it
   * @return the sheet as it now stands
   * @throws StaleSheetException when the id is taken by something else
   * @throws InputException when its address is taken or it belongs to nothing
   */
  public <C extends Content> Sheet<C> add(Kind<C> kind, String id, C content) {
    Optional<Sheet<?>> taken = find(id);
    if (taken.isPresent()) {
      List<Sheet<C>> versions = taken.get().kind().equals(kind) ? history(kind, id) : List.of();
      if (!versions.isEmpty() && versions.get(versions.size() - 1).content().equals(content)) {
        return versions.get(0);
      }
      throw new StaleSheetException(taken.get());
    }
    checkPlace(id, content);
    Sheet<C> sheet = new Sheet<>(id, kind, 1, false, now, by, content);
    insert(sheet);
    if (PLACES.contains(kind.name())) {
      handle().execute("insert into revision (place, number) values (?, 0)", id);
    }
    raise(sheet, content);
    return sheet;
  }

  /**
   * Replaces what a sheet says; what it said before is kept.
   *
   * @param basedOn the version the change was made from
   * @throws StaleSheetException when it has another version by now
   */
  public <C extends Content> Sheet<C> revise(Kind<C> kind, String id, int basedOn, C content) {
    Sheet<C> before = current(kind, id, basedOn);
    return replace(before, content, before.withdrawn());
  }

  /** Takes a sheet out of what counts; it can be restored. */
  public <C extends Content> Sheet<C> withdraw(Kind<C> kind, String id, int basedOn) {
    Sheet<C> before = current(kind, id, basedOn);
    return replace(before, before.content(), true);
  }

  /** Takes a sheet out of what counts, with what is said of it from then on. */
  public <C extends Content> Sheet<C> withdraw(Kind<C> kind, String id, int basedOn, C content) {
    return replace(current(kind, id, basedOn), content, true);
  }

  /** Lets a withdrawn sheet count again. */
  public <C extends Content> Sheet<C> restore(Kind<C> kind, String id, int basedOn) {
    Sheet<C> before = current(kind, id, basedOn);
    return replace(before, before.content(), false);
  }

  /** Marks a place as changed, for writers of other things than sheets. */
  public void raise(String place) {
    if (!raised.add(place)) {
      return;
    }
    handle().execute("update revision set number = number + 1 where place = ?", place);
  }

  private <C extends Content> Sheet<C> current(Kind<C> kind, String id, int basedOn) {
    Sheet<C> current =
        find(kind, id)
            .orElseThrow(() -> new InputException("There is no %s %s.".formatted(kind, id)));
    if (current.version() != basedOn) {
      throw new StaleSheetException(current);
    }
    return current;
  }

  private <C extends Content> Sheet<C> replace(Sheet<C> before, C content, boolean withdrawn) {
    if (content.equals(before.content()) && withdrawn == before.withdrawn()) {
      return before;
    }
    if (before.kind() == Kind.ADVICE) {
      throw new InputException("Advice is kept as it was given; it cannot be changed.");
    }
    checkPlace(before.id(), content);
    Sheet<C> after =
        new Sheet<>(before.id(), before.kind(), before.version() + 1, withdrawn, now, by, content);
    int kept =
        handle()
            .execute(
                "insert into sheet_before"
                    + " (id, version, withdrawn, written_at, written_by, content, digest)"
                    + " select id, version, withdrawn, written_at, written_by, content, digest"
                    + " from sheet where id = ? and version = ?",
                before.id(),
                before.version());
    int replaced = kept == 1 ? update(after) : 0;
    if (replaced != 1) {
      throw new StaleSheetException(find(before.id()).orElse(before));
    }
    raise(after, before.content());
    return after;
  }

  /** An address may be taken once, and what a sheet belongs to must be there. */
  private void checkPlace(String id, Content content) {
    String address = content.address();
    if (address != null) {
      Optional<String> holder =
          handle()
              .createQuery("select id from sheet where address = ?")
              .bind(0, address)
              .mapTo(String.class)
              .findOne();
      if (holder.isPresent() && !holder.get().equals(id)) {
        throw fault("address", Faults.quoted(address) + " is taken in this book; take another.");
      }
    }
    checkThere("property", content.property());
    checkThere("lawn", content.lawn());
  }

  private void checkThere(String kind, @Nullable String id) {
    if (id == null || there.contains(kind + id)) {
      return;
    }
    if (find(id).filter(sheet -> sheet.kind().name().equals(kind)).isEmpty()) {
      throw fault(kind, "there is no %s with this id in the book.".formatted(kind));
    }
    there.add(kind + id);
  }

  private static InputException fault(String field, String sentence) {
    return InputException.of(List.of(new Faults.Fault(field, sentence, field + ": " + sentence)));
  }

  private <C extends Content> void insert(Sheet<C> sheet) {
    String document = sheet.kind().write(sheet.content());
    handle()
        .createUpdate(
            "insert into sheet (id, kind, property, lawn, on_day, address, version, withdrawn,"
                + " written_at, written_by, content, digest) values (:id, :kind, :property, :lawn,"
                + " :day, :address, 1, false, :at, :by, :content, :digest)")
        .bind("id", sheet.id())
        .bind("kind", sheet.kind().name())
        .bind("property", sheet.content().property())
        .bind("lawn", sheet.content().lawn())
        .bind("day", sheet.content().day())
        .bind("address", sheet.content().address())
        .bind("at", now.atOffset(ZoneOffset.UTC))
        .bind("by", by)
        .bind("content", document)
        .bind("digest", SheetDigest.of(sheet, document))
        .execute();
  }

  private <C extends Content> int update(Sheet<C> sheet) {
    String document = sheet.kind().write(sheet.content());
    return handle()
        .createUpdate(
            "update sheet set property = :property, lawn = :lawn, on_day = :day, address = :address,"
                + " version = :version, withdrawn = :withdrawn, written_at = :at, written_by = :by,"
                + " content = :content, digest = :digest where id = :id and version = :version - 1")
        .bind("id", sheet.id())
        .bind("property", sheet.content().property())
        .bind("lawn", sheet.content().lawn())
        .bind("day", sheet.content().day())
        .bind("address", sheet.content().address())
        .bind("version", sheet.version())
        .bind("withdrawn", sheet.withdrawn())
        .bind("at", now.atOffset(ZoneOffset.UTC))
        .bind("by", by)
        .bind("content", document)
        .bind("digest", SheetDigest.of(sheet, document))
        .execute();
  }

  private static String placeOf(Content content) {
    if (content instanceof ForecastSheet forecast) {
      return forecast.station();
    }
    String lawn = content.lawn();
    String property = content.property();
    return lawn != null ? lawn : property != null ? property : "register";
  }

  /** Marks what the sheet belongs to as changed, and what it belonged to before. */
  private void raise(Sheet<?> sheet, Content before) {
    if (sheet.kind() == Kind.ADVICE) {
      return; // nothing is computed from it
    }
    Set<String> places = new LinkedHashSet<>();
    for (Content content : List.of(before, sheet.content())) {
      places.add(placeOf(content));
    }
    if (PLACES.contains(sheet.kind().name())) {
      places.add(sheet.id());
      places.add("register");
    }
    if (sheet.kind().name().equals("rule")) {
      places.add("rules");
    }
    places.stream().sorted().forEach(this::raise);
  }
}
