package leafturn.records.book;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** The tables of a book, which migrations bring up to date. */
final class Tables {
  /** The version that the newest migration leaves. */
  static final String NEWEST = "4";

  private static final String MIGRATIONS = "classpath:leafturn/records/book/migrations";
  private static final String HISTORY =
      "select \"version\", \"success\" from \"flyway_schema_history\" order by \"installed_rank\"";

  private Tables() {}

  /**
   * Brings the tables of a book up to date, making them where there are none. Where nothing is to
   * be done the migrations are not so much as read, which would take a third of a start.
   *
   * @throws RuntimeException when the database does not let it
   */
  static void bringUpToDate(DataSource source) {
    if (!areUpToDate(source)) {
      Flyway.configure().dataSource(source).locations(MIGRATIONS).load().migrate();
    }
  }

  /** False also when the database cannot tell; the migrations then say what is wrong. */
  static boolean areUpToDate(DataSource source) {
    try (Connection connection = source.getConnection();
        Statement statement = connection.createStatement();
        ResultSet history = statement.executeQuery(HISTORY)) {
      boolean newest = false;
      while (history.next()) {
        if (!history.getBoolean("success")) {
          return false;
        }
        newest = NEWEST.equals(history.getString("version"));
      }
      return newest;
    } catch (SQLException e) {
      return false;
    }
  }
}
