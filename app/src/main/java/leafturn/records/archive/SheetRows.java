package leafturn.records.archive;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leafturn.records.book.BookWriting;
import leafturn.records.book.SheetDigest;
import leafturn.records.book.StoredVersion;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** Writes the rows of sheets with all their versions, many at a time, in the order given. */
final class SheetRows {
  private static final int ROWS_AT_A_TIME = 500;
  private static final Set<Kind<?>> PLACES = Set.of(Kind.PROPERTY, Kind.LAWN, Kind.STATION);

  private final BookWriting book;
  private final PreparedBatch latest;
  private final PreparedBatch before;
  private final PreparedBatch places;
  private final Set<String> there = new HashSet<>();
  private final List<SheetLine<?>> belongToLater = new ArrayList<>();

  SheetRows(BookWriting book) {
    this.book = book;
    this.latest =
        book.handle()
            .prepareBatch(
                "insert into sheet (id, kind, property, lawn, on_day, address, version, withdrawn,"
                    + " written_at, written_by, content, digest) values (:id, :kind, :property,"
                    + " :lawn, :day, :address, :version, :withdrawn, :at, :by, :content, :digest)");
    this.before =
        book.handle()
            .prepareBatch(
                "insert into sheet_before (id, version, withdrawn, written_at, written_by, content,"
                    + " digest) values (:id, :version, :withdrawn, :at, :by, :content, :digest)");
    this.places =
        book.handle().prepareBatch("insert into revision (place, number) values (:place, 1)");
  }

  /** Adds a sheet as the next in the order of entry. */
  <C extends Content> void add(SheetLine<C> sheet) {
    int last = sheet.versions().size();
    for (int version = 1; version < last; version++) {
      bind(before, sheet, version).add();
    }
    C content = sheet.content();
    bind(latest, sheet, last)
        .bind("kind", sheet.kind().name())
        .bind("property", ifThere(content.property()))
        .bind("lawn", ifThere(content.lawn()))
        .bind("day", content.day())
        .bind("address", content.address())
        .add();
    if (isAhead(content.property()) || isAhead(content.lawn())) {
      belongToLater.add(sheet);
    }
    if (PLACES.contains(sheet.kind())) {
      places.bind("place", sheet.id()).add();
    }
    there.add(sheet.id());
    if (latest.size() >= ROWS_AT_A_TIME || before.size() >= ROWS_AT_A_TIME) {
      flush();
    }
  }

  /** Writes what is left, and what could not be written before its place was there. */
  void finish() {
    flush();
    for (SheetLine<?> sheet : belongToLater) {
      book.handle()
          .execute(
              "update sheet set property = ?, lawn = ? where id = ?",
              sheet.content().property(),
              sheet.content().lawn(),
              sheet.id());
    }
  }

  private void flush() {
    for (PreparedBatch batch : List.of(latest, before, places)) {
      if (batch.size() > 0) {
        batch.execute();
      }
    }
  }

  private boolean isAhead(@Nullable String id) {
    return id != null && !there.contains(id);
  }

  private @Nullable String ifThere(@Nullable String id) {
    return isAhead(id) ? null : id;
  }

  private static <C extends Content> PreparedBatch bind(
      PreparedBatch batch, SheetLine<C> sheet, int number) {
    SheetLine.Version<C> version = sheet.versions().get(number - 1);
    StoredVersion row =
        new StoredVersion(
            sheet.kind().name(),
            sheet.id(),
            number,
            version.withdrawn(),
            version.writtenAt(),
            version.writtenBy(),
            sheet.kind().write(version.content()));
    return batch
        .bind("id", row.id())
        .bind("version", number)
        .bind("withdrawn", row.withdrawn())
        .bind("at", row.writtenAt().atOffset(ZoneOffset.UTC))
        .bind("by", row.writtenBy())
        .bind("content", row.document())
        .bind("digest", SheetDigest.of(row));
  }
}
