package leafturn.records.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.InputException;
import leafturn.records.archive.Keeping;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BookTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void lookingForABookBeginsNone(Engine engine) {
    BookPlace place = engine.newPlace(folder);
    assertThat(Book.begun(place)).isFalse();
    assertThatThrownBy(() -> Keeping.check(place, InstantSource.system()))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("there is no book");
    assertThat(Book.begun(place)).isFalse();
    Book.open(place, InstantSource.system()).close();
    assertThat(Book.begun(place)).isTrue();
  }

  @ParameterizedTest
  @EnumSource
  void whatIsWrittenIsThereAfterReopening(Engine engine) {
    BookPlace place = engine.newPlace(folder);
    Instant now = Instant.parse("2026-05-03T10:15:30.123456Z");
    try (Book book = Book.open(place, InstantSource.fixed(now))) {
      book.write("Ada", writing -> writing.add(Kind.PROPERTY, id(1), property("one")));
    }
    try (Book book = Book.open(place, InstantSource.system())) {
      assertThatList(book.read(reading -> reading.all(Kind.PROPERTY)))
          .containsExactly(
              new Sheet<>(id(1), Kind.PROPERTY, 1, false, now, "Ada", property("one")));
      assertThat(
              book.<List<Sheet<Property>>>read(r -> r.at(Kind.PROPERTY, "one").stream().toList()))
          .hasSize(1);
    }
  }

  @ParameterizedTest
  @EnumSource
  void addingTheSameAgainSucceedsAndChangesNothing(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      var first = book.write("Ada", w -> w.add(Kind.PROPERTY, id(1), property("one")));
      var again = book.write("Bo", w -> w.add(Kind.PROPERTY, id(1), property("one")));
      assertThat(again).isEqualTo(first);
      assertThatThrownBy(
              () -> book.write("Bo", w -> w.add(Kind.PROPERTY, id(1), property("other"))))
          .isInstanceOf(StaleSheetException.class);
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyVersionIsKeptWithWhoAndWhen(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      book.write("Ada", w -> w.add(Kind.PROPERTY, id(1), property("one")));
      book.write("Bo", w -> w.revise(Kind.PROPERTY, id(1), 1, property("two")));
      book.write("Cy", w -> w.withdraw(Kind.PROPERTY, id(1), 2));
      assertThatList(book.read(r -> r.all(Kind.PROPERTY))).isEmpty();
      book.write("Di", w -> w.restore(Kind.PROPERTY, id(1), 3));
      List<Sheet<Property>> history = book.read(r -> r.history(Kind.PROPERTY, id(1)));
      assertThat(history).extracting(Sheet::writtenBy).containsExactly("Di", "Cy", "Bo", "Ada");
      assertThat(history).extracting(Sheet::version).containsExactly(4, 3, 2, 1);
      assertThat(history).extracting(Sheet::withdrawn).containsExactly(false, true, false, false);
      assertThat(history)
          .extracting(sheet -> sheet.content().address())
          .containsExactly("two", "two", "two", "one");
    }
  }

  @ParameterizedTest
  @EnumSource
  void whoIsSecondIsToldAndLosesNothing(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      book.write("Ada", w -> w.add(Kind.PROPERTY, id(1), property("one")));
      book.write("Bo", w -> w.revise(Kind.PROPERTY, id(1), 1, property("two")));
      assertThatThrownBy(
              () -> book.write("Cy", w -> w.revise(Kind.PROPERTY, id(1), 1, property("three"))))
          .isInstanceOfSatisfying(
              StaleSheetException.class,
              stale -> assertThat(stale.current().content().address()).isEqualTo("two"))
          .hasMessageContaining("Bo changed this");
    }
  }

  @ParameterizedTest
  @EnumSource
  void ofManyWhoChangeTheSameVersionOneGetsThrough(Engine engine) throws Exception {
    try (Book book = engine.newBook(folder)) {
      book.write("Ada", w -> w.add(Kind.PROPERTY, id(1), property("one")));
      ExecutorService pool = Executors.newFixedThreadPool(4);
      List<Future<Sheet<Property>>> tries = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        Property mine = property("mine-" + i);
        tries.add(
            pool.submit(() -> book.write("Bo", w -> w.revise(Kind.PROPERTY, id(1), 1, mine))));
      }
      int through = 0;
      for (Future<Sheet<Property>> outcome : tries) {
        try {
          outcome.get();
          through++;
        } catch (ExecutionException told) {
          assertThat(told).hasCauseInstanceOf(StaleSheetException.class);
        }
      }
      pool.shutdown();
      assertThat(through).isEqualTo(1);
      assertThatList(book.read(r -> r.history(Kind.PROPERTY, id(1)))).hasSize(2);
    }
  }

  @ParameterizedTest
  @EnumSource
  void manyWhoSendTheSameNewSheetAllSucceedOnce(Engine engine) throws Exception {
    try (Book book = engine.newBook(folder)) {
      ExecutorService pool = Executors.newFixedThreadPool(4);
      List<Future<Sheet<Property>>> tries = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        tries.add(
            pool.submit(
                () -> book.write("Bo", w -> w.add(Kind.PROPERTY, id(7), property("seven")))));
      }
      for (Future<Sheet<Property>> outcome : tries) {
        assertThat(outcome.get().version()).isEqualTo(1);
      }
      pool.shutdown();
      assertThatList(book.read(r -> r.all(Kind.PROPERTY))).hasSize(1);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aFaultInTheMiddleLeavesNothingBehind(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      assertThatThrownBy(
              () ->
                  book.write(
                      "Ada",
                      w -> {
                        w.add(Kind.PROPERTY, id(1), property("one"));
                        return w.add(Kind.PROPERTY, id(2), property("one"));
                      }))
          .isInstanceOf(InputException.class)
          .hasMessageContaining("\"one\" is taken");
      assertThatList(book.read(r -> r.all(Kind.PROPERTY))).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void aChangeRaisesTheRevisionOfItsPlace(Engine engine) {
    try (Book book = engine.newBook(folder)) {
      book.write("Ada", w -> w.add(Kind.PROPERTY, id(1), property("one")));
      Map<String, Long> before = book.read(BookReading::revisions);
      book.write("Ada", w -> w.revise(Kind.PROPERTY, id(1), 1, property("two")));
      Map<String, Long> after = book.read(BookReading::revisions);
      assertThat(after.get(id(1))).isGreaterThan(before.get(id(1)));
      assertThat(after.get("rules")).isEqualTo(before.get("rules"));
    }
  }

  @ParameterizedTest
  @EnumSource
  void weatherIsKeptAsItWasMeasured(Engine engine) {
    StationDay first =
        new StationDay(
            LocalDate.of(2015, 5, 1),
            Map.of(Quantity.MINIMUM_C, 7.2, Quantity.MAXIMUM_C, 18.9, Quantity.RAIN_MM, 0.1));
    StationDay second =
        new StationDay(LocalDate.of(2015, 5, 3), Map.of(Quantity.RADIATION_MJ_PER_M2, 21.5));
    StationDay again = new StationDay(second.day(), Map.of(Quantity.RAIN_MM, 3.0));
    try (Book book = engine.newBook(folder)) {
      book.write("Ada", w -> w.add(Kind.PROPERTY, id(1), property("one")));
      for (List<StationDay> days : List.of(List.of(second, first), List.of(again))) {
        book.write(
            "Ada",
            w -> {
              StationDays.put(w, id(1), days);
              return days.size();
            });
      }
      assertThatList(book.read(r -> StationDays.of(r, id(1)))).containsExactly(first, again);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aClosedBookSaysThatItCannotBeReached(Engine engine) {
    Book book = engine.newBook(folder);
    book.close();
    assertThatThrownBy(() -> book.read(r -> r.all(Kind.PROPERTY)))
        .isInstanceOf(BookUnavailableException.class)
        .hasMessageContaining("cannot be read now");
  }

  private static String id(int number) {
    return new UUID(0x1234567812344567L, 0x8000000000000000L + number).toString();
  }

  private static Property property(String address) {
    return new Property("Linden House", address, 51.5, null, 20.0, "Europe/London", null, null);
  }
}
