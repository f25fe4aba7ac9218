package leafturn.records.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The daily weather that the book holds for its stations. */
public final class StationDays {
  private static final Map<Quantity, String> COLUMNS = columns();
  private static final String NAMES = COLUMNS.values().stream().collect(Collectors.joining(", "));

  private StationDays() {}

  private static Map<Quantity, String> columns() {
    Map<Quantity, String> columns = new EnumMap<>(Quantity.class);
    columns.put(Quantity.MINIMUM_C, "minimum_c");
    columns.put(Quantity.MAXIMUM_C, "maximum_c");
    columns.put(Quantity.RAIN_MM, "rain_mm");
    columns.put(Quantity.WIND_M_PER_S, "wind_m_s");
    columns.put(Quantity.HUMIDITY_MAXIMUM_PERCENT, "humidity_maximum_percent");
    columns.put(Quantity.HUMIDITY_MINIMUM_PERCENT, "humidity_minimum_percent");
    columns.put(Quantity.DEW_POINT_C, "dew_point_c");
    columns.put(Quantity.RADIATION_MJ_PER_M2, "radiation_mj_m2");
    return columns;
  }

  /** A station's days in order; days without a row were not measured. */
  public static List<StationDay> of(BookReading reading, String station) {
    return reading
        .handle()
        .createQuery(
            "select on_day, "
                + NAMES
                + " from station_day where station = :station order by on_day")
        .bind("station", station)
        .setFetchSize(2000)
        .map((row, context) -> day(row))
        .list();
  }

  /** What a station measured on a day. */
  public static Optional<StationDay> on(BookReading reading, String station, LocalDate day) {
    return reading
        .handle()
        .createQuery(
            "select on_day, " + NAMES + " from station_day where station = ? and on_day = ?")
        .bind(0, station)
        .bind(1, day)
        .map((row, context) -> day(row))
        .findOne();
  }

  /** Puts days into a station's record; a day that is there already is replaced. */
  public static void put(BookWriting writing, String station, Collection<StationDay> days) {
    remove(writing, station, days.stream().map(StationDay::day).toList());
    if (!days.isEmpty()) {
      PreparedBatch batch =
          writing
              .handle()
              .prepareBatch(
                  "insert into station_day (station, on_day, "
                      + NAMES
                      + ") values (?, ?"
                      + ", ?".repeat(COLUMNS.size())
                      + ")");
      days.forEach(day -> add(batch, station, day));
      batch.execute();
    }
    writing.raise(station);
  }

  private static void remove(BookWriting writing, String station, List<LocalDate> days) {
    if (days.isEmpty()) {
      return;
    }
    PreparedBatch batch =
        writing.handle().prepareBatch("delete from station_day where station = ? and on_day = ?");
    days.forEach(day -> batch.bind(0, station).bind(1, day).add());
    batch.execute();
  }

  private static void add(PreparedBatch batch, String station, StationDay day) {
    batch.bind(0, station).bind(1, day.day());
    int place = 2;
    for (Quantity quantity : COLUMNS.keySet()) {
      batch.bind(place++, day.values().get(quantity));
    }
    batch.add();
  }

  private static StationDay day(ResultSet row) throws SQLException {
    Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
    for (Map.Entry<Quantity, String> column : COLUMNS.entrySet()) {
      double value = row.getDouble(column.getValue());
      if (!row.wasNull()) {
        values.put(column.getKey(), value);
      }
    }
    return new StationDay(row.getObject("on_day", LocalDate.class), values);
  }
}
