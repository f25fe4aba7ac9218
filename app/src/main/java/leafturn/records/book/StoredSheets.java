package leafturn.records.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/** Goes through all sheets of a book with all their versions, holding one sheet at a time. */
public final class StoredSheets {
  private static final int ROWS_AT_A_TIME = 500;

  private static final String VERSIONS =
      """
      select s.entered as entered, s.kind as kind, s.id as id, s.property as property,
          s.lawn as lawn, s.on_day as on_day, s.address as address, 1 as latest,
          s.version as version, s.withdrawn as withdrawn, s.written_at as written_at,
          s.written_by as written_by, s.content as content, s.digest as digest
        from sheet s where s.kind = :kind
      union all
      select s.entered, s.kind, s.id, null, null, null, null, 0,
          b.version, b.withdrawn, b.written_at, b.written_by, b.content, b.digest
        from sheet_before b join sheet s on s.id = b.id where s.kind = :kind
      order by entered, latest, version
      """;

  private StoredSheets() {}

  private record Row(
      long entered, StoredSheet.Columns columns, StoredVersion version, String digest) {}

  /** The names of the kinds that have sheets, whether this program knows them or not. */
  public static List<String> kinds(BookReading reading) {
    return reading
        .handle()
        .createQuery("select distinct kind from sheet order by kind")
        .mapTo(String.class)
        .list();
  }

  /** Hands over every sheet of a kind in the order of entry, withdrawn ones too. */
  public static void forEach(BookReading reading, String kind, Consumer<StoredSheet> use) {
    long[] order = order(reading);
    List<Row> ofOneSheet = new ArrayList<>();
    reading
        .handle()
        .createQuery(VERSIONS)
        .bind("kind", kind)
        .setFetchSize(ROWS_AT_A_TIME)
        .map((row, context) -> row(row))
        .forEach(
            row -> {
              if (!ofOneSheet.isEmpty() && ofOneSheet.get(0).entered() != row.entered()) {
                use.accept(sheet(ofOneSheet, order));
                ofOneSheet.clear();
              }
              ofOneSheet.add(row);
            });
    if (!ofOneSheet.isEmpty()) {
      use.accept(sheet(ofOneSheet, order));
    }
  }

  /** The numbers under which all sheets of the book were entered, in order. */
  private static long[] order(BookReading reading) {
    return reading
        .handle()
        .createQuery("select entered from sheet order by entered")
        .setFetchSize(ROWS_AT_A_TIME)
        .map((row, context) -> row.getLong(1)) // 0 where a damaged file has lost the number
        .stream()
        .mapToLong(Long::longValue)
        .toArray();
  }

  /** The rows come with the earlier versions first and the one that counts last. */
  private static StoredSheet sheet(List<Row> rows, long[] order) {
    return new StoredSheet(
        Arrays.binarySearch(order, rows.get(0).entered()) + 1,
        rows.get(rows.size() - 1).columns(),
        rows.stream().map(Row::version).toList(),
        rows.stream().map(Row::digest).toList());
  }

  private static Row row(ResultSet row) throws SQLException {
    return new Row(
        row.getLong("entered"),
        new StoredSheet.Columns(
            row.getString("property"),
            row.getString("lawn"),
            row.getObject("on_day", LocalDate.class),
            row.getString("address")),
        new StoredVersion(
            row.getString("kind"),
            row.getString("id"),
            row.getInt("version"),
            row.getBoolean("withdrawn"),
            row.getObject("written_at", OffsetDateTime.class).toInstant(),
            row.getString("written_by"),
            row.getString("content")),
        row.getString("digest"));
  }
}
