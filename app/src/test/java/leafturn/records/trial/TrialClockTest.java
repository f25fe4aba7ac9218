package leafturn.records.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Sheet;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.TrialSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The days of a trial are those of the place where it lies. */
class TrialClockTest {
  @Test
  void daysAreThoseOfTheFirstLawnsProperty(@TempDir Path folder) {
    Clock night = Clock.fixed(Instant.parse("2026-04-21T02:00:00Z"), ZoneOffset.UTC);
    try (Book book = Book.open(BookPlace.of(folder), night)) {
      DemoBook.write(book);
      book.read(
          reading -> {
            Sheet<TrialSheet> demo = reading.all(Kind.TRIAL).get(0);
            Sheet<LawnSheet> lawn =
                reading.find(Kind.LAWN, demo.content().lawns().get(0)).orElseThrow();
            String zone =
                reading
                    .find(Kind.PROPERTY, lawn.content().property())
                    .orElseThrow()
                    .content()
                    .timeZone();
            TrialClock clock = new TrialClock(reading, night);
            assertThat(clock.zone(demo.content()))
                .isEqualTo(ZoneId.of(zone))
                .isNotEqualTo(ZoneOffset.UTC);
            TrialSheet elsewhere = demo.content().with(demo.content().plan(), List.of());
            assertThat(clock.zone(elsewhere)).isEqualTo(ZoneOffset.UTC);
            assertThat(clock.today(demo.content()))
                .as("the demonstration has a day of its own")
                .isEqualTo(LocalDate.of(2015, 5, 28));
            return true;
          });
    }
  }
}
