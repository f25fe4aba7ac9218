package leafturn.records.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TablesTest {
  @TempDir Path folder;

  @Test
  void theNewestMigrationIsTheOneThatIsLookedFor() throws Exception {
    URI migrations = Objects.requireNonNull(Tables.class.getResource("migrations")).toURI();
    try (Stream<Path> files = Files.list(Path.of(migrations))) {
      assertThat(
              files
                  .map(file -> file.getFileName().toString().replaceAll("^V(\\d+)__.*", "$1"))
                  .max(Comparator.comparingInt(Integer::parseInt)))
          .contains(Tables.NEWEST);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aPlaceWithoutTablesIsNotUpToDate(Engine engine) {
    BookPlace place = engine.newPlace(folder);
    try (BookPool pool = new BookPool(place, place.url())) {
      assertThat(Tables.areUpToDate(pool.source())).isFalse();
      Tables.bringUpToDate(pool.source());
      assertThat(Tables.areUpToDate(pool.source())).isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource
  void aHistoryThatEndsBeforeTheNewestOrInAFailureIsNotUpToDate(Engine engine) throws Exception {
    BookPlace place = engine.newPlace(folder);
    Book.open(place, InstantSource.system()).close();
    try (BookPool pool = new BookPool(place, place.url());
        Connection connection = pool.openConnection();
        Statement statement = connection.createStatement()) {
      assertThat(Tables.areUpToDate(pool.source())).isTrue();
      String newest = " where \"version\" = '%s'".formatted(Tables.NEWEST);

      statement.execute("update \"flyway_schema_history\" set \"success\" = false" + newest);
      assertThat(Tables.areUpToDate(pool.source())).isFalse();

      statement.execute("delete from \"flyway_schema_history\"" + newest);
      assertThat(Tables.areUpToDate(pool.source())).isFalse();
    }
  }
}
