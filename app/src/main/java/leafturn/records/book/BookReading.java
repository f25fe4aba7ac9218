package leafturn.records.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leafturn.records.SourceText;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** Reads the sheets of a book within one transaction. */
public class BookReading {
  private static final String COLUMNS =
      "select id, kind, version, withdrawn, written_at, written_by, content from sheet ";
  private static final String IN_ORDER = " order by on_day, entered";

  private final Handle handle;

  BookReading(Handle handle) {
    this.handle = handle;
  }

  /** The connection, for the stores of other things than sheets. */
  public final Handle handle() {
    return handle;
  }

  /** A sheet by its id, whatever its kind, withdrawn or not. */
  public final Optional<Sheet<?>> find(String id) {
    return handle
        .createQuery(COLUMNS + "where id = :id")
        .bind("id", id)
        .map((row, context) -> sheet(kindOf(row), row))
        .findOne()
        .map(sheet -> sheet);
  }

  /** The ids of all sheets, withdrawn or not. */
  public final Set<String> ids() {
    return handle.createQuery("select id from sheet").mapTo(String.class).set();
  }

  /** A sheet of a kind by its id; empty when there is none of that kind. */
  public final <C extends Content> Optional<Sheet<C>> find(Kind<C> kind, String id) {
    return one(kind, "where kind = :kind and id = :id", Map.of("id", id));
  }

  /** A property's or lawn's sheet by its name in addresses, withdrawn or not. */
  public final <C extends Content> Optional<Sheet<C>> at(Kind<C> kind, String address) {
    return one(kind, "where kind = :kind and address = :address", Map.of("address", address));
  }

  /** All sheets of a kind that were not withdrawn, by day and then as they were entered. */
  public final <C extends Content> List<Sheet<C>> all(Kind<C> kind) {
    return list(kind, "where kind = :kind and not withdrawn" + IN_ORDER, Map.of());
  }

  /** The sheets of a kind that tell of a day or one after it, and count. */
  public final <C extends Content> List<Sheet<C>> allSince(Kind<C> kind, LocalDate from) {
    return list(
        kind,
        "where kind = :kind and on_day >= cast(:from as date) and not withdrawn" + IN_ORDER,
        Map.of("from", from.toString()));
  }

  /** The sheets of a kind that belong to a property and were not withdrawn. */
  public final <C extends Content> List<Sheet<C>> ofProperty(Kind<C> kind, String property) {
    return list(
        kind,
        "where property = :property and kind = :kind and not withdrawn" + IN_ORDER,
        Map.of("property", property));
  }

  /** As {@link #ofProperty}, with those that were withdrawn. */
  public final <C extends Content> List<Sheet<C>> everOfProperty(Kind<C> kind, String property) {
    return list(
        kind,
        "where property = :property and kind = :kind" + IN_ORDER,
        Map.of("property", property));
  }

  /** The sheets of a kind that belong to a lawn and were not withdrawn. */
  public final <C extends Content> List<Sheet<C>> ofLawn(Kind<C> kind, String lawn) {
    return list(
        kind,
        "where lawn = :lawn and kind = :kind and not withdrawn" + IN_ORDER,
        Map.of("lawn", lawn));
  }

  /** Of each lawn with sheets of a kind that tell of a day after another and count: the last. */
  public final Map<String, LocalDate> latestDays(Kind<?> kind, LocalDate after) {
    Map<String, LocalDate> days = new HashMap<>();
    handle
        .createQuery(
            "select lawn, max(on_day) from sheet where kind = :kind and not withdrawn"
                + " and on_day > cast(:after as date) and lawn is not null group by lawn")
        .bind("kind", kind.name())
        .bind("after", after.toString())
        .map((row, context) -> Map.entry(row.getString(1), row.getObject(2, LocalDate.class)))
        .forEach(entry -> days.put(entry.getKey(), entry.getValue()));
    return days;
  }

  /** The sheets of a kind that belong to a lawn, tell of a day or one after it, and count. */
  public final <C extends Content> List<Sheet<C>> ofLawnSince(
      Kind<C> kind, String lawn, LocalDate from) {
    return list(
        kind,
        "where lawn = :lawn and kind = :kind and on_day >= cast(:from as date) and not withdrawn"
            + IN_ORDER,
        Map.of("lawn", lawn, "from", from.toString()));
  }

  /** As {@link #ofLawn}, with those that were withdrawn. */
  public final <C extends Content> List<Sheet<C>> everOfLawn(Kind<C> kind, String lawn) {
    return list(kind, "where lawn = :lawn and kind = :kind" + IN_ORDER, Map.of("lawn", lawn));
  }

  /**
   * The sheets of a kind that belong to a trial and were not withdrawn, by day and then as they
   * were entered. The trial has no column of its own; it stands first in their documents.
   */
  public final <C extends Content> List<Sheet<C>> ofTrial(Kind<C> kind, String trial) {
    return list(
        kind,
        "where kind = :kind and content like :beginning and not withdrawn" + IN_ORDER,
        Map.of("beginning", "{\"trial\":\"" + trial + "\"%"));
  }

  /** As {@link #ofTrial}, of those that were withdrawn. */
  public final <C extends Content> List<Sheet<C>> withdrawnOfTrial(Kind<C> kind, String trial) {
    return list(
        kind,
        "where kind = :kind and content like :beginning and withdrawn" + IN_ORDER,
        Map.of("beginning", "{\"trial\":\"" + trial + "\"%"));
  }

  /** All versions of a sheet, the latest first; empty when there is no such sheet. */
  public final <C extends Content> List<Sheet<C>> history(Kind<C> kind, String id) {
    List<Sheet<C>> versions = new ArrayList<>();
    find(kind, id).ifPresent(versions::add);
    versions.addAll(
        handle
            .createQuery(
                "select id, version, withdrawn, written_at, written_by, content from sheet_before"
                    + " where id = :id order by version desc")
            .bind("id", id)
            .map((row, context) -> sheet(kind, row))
            .list());
    return versions;
  }

  /** How often the sheets of each place have changed: what rests on an older number is stale. */
  public final Map<String, Long> revisions() {
    Map<String, Long> numbers = new HashMap<>();
    handle
        .createQuery("select place, number from revision")
        .map((row, context) -> Map.entry(row.getString(1), row.getLong(2)))
        .forEach(entry -> numbers.put(entry.getKey(), entry.getValue()));
    return numbers;
  }

  private <C extends Content> Optional<Sheet<C>> one(
      Kind<C> kind, String where, Map<String, String> values) {
    return list(kind, where, values).stream().findFirst();
  }

  private <C extends Content> List<Sheet<C>> list(
      Kind<C> kind, String where, Map<String, String> values) {
    Query query = handle.createQuery(COLUMNS + where).bind("kind", kind.name());
    values.forEach(query::bind);
    return query.map((row, context) -> sheet(kind, row)).list();
  }

  private static Kind<?> kindOf(ResultSet row) throws SQLException {
    String name = row.getString("kind");
    return Kind.named(name)
        .orElseThrow(() -> new IllegalStateException("the book holds an unknown kind, " + name));
  }

  private static <C extends Content> Sheet<C> sheet(Kind<C> kind, ResultSet row)
      throws SQLException {
    String id = row.getString("id");
    return new Sheet<>(
        id,
        kind,
        row.getInt("version"),
        row.getBoolean("withdrawn"),
        row.getObject("written_at", OffsetDateTime.class).toInstant(),
        row.getString("written_by"),
        kind.read(new SourceText(kind.name() + " " + id, row.getString("content"))));
  }
}
