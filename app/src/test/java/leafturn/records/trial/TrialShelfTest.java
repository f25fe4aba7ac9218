package leafturn.records.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import leafturn.quantity.Units;
import leafturn.records.Examples;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.observation.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a book knows of when a trial's readings were entered. */
class TrialShelfTest {
  private static final String TRIAL = "5f0c0a52-1d0b-4f0e-9c61-2f3b7a7c9d10";
  private static final Instant CAME = Instant.parse("2026-11-30T09:00:00Z");

  private static TrialReadingsSheet readings(String plot) {
    Reading read = Reading.own(plot, LocalDate.of(2026, 5, 4), "quality", "6", "Ada");
    return new TrialReadingsSheet(TRIAL, null, null, null, List.of(read), null);
  }

  /** An hour after a package came, on the same day, somebody types in more. */
  @Test
  void whatIsTypedInOnTheDayOfAPackageWasEnteredHere(@TempDir Path folder) throws Exception {
    AtomicReference<Instant> now = new AtomicReference<>(CAME);
    var plan = new ObjectMapper().readTree(Examples.file("split-yards.trial.json").toFile());
    TrialSheet.Frozen seal =
        new TrialSheet.Frozen("2026-04-01T08:00:00Z", "Ada", "0123456789abcdef".repeat(4), null);
    TrialSheet trial = TrialSheet.planned(plan, List.of()).frozenAs(seal);
    Person person =
        new Person(Person.LOCAL_OWNER, "Olga", Role.OWNER, Units.METRIC, false, false, 1);
    Visitor owner = new Visitor(person, true, Set.of());
    try (Book book = Book.open(BookPlace.of(folder), now::get)) {
      book.write(
          "Olga",
          writing -> {
            writing.add(Kind.TRIAL, TRIAL, trial);
            return writing.add(
                Kind.TRIAL_READINGS, "6f0c0a52-1d0b-4f0e-9c61-2f3b7a7c9d11", readings("B1-1"));
          });
      now.set(CAME.plusSeconds(3600));
      book.write(
          "Olga",
          writing ->
              writing.add(
                  Kind.TRIAL_READINGS, "7f0c0a52-1d0b-4f0e-9c61-2f3b7a7c9d12", readings("B2-1")));
      TrialPast past =
          book.read(
              reading -> {
                TrialShelf shelf = new TrialShelf(reading, owner);
                return shelf.past(shelf.find(TRIAL).orElseThrow(), ZoneOffset.UTC);
              });
      assertThat(past.entered())
          .containsExactly(
              new TrialPast.Entered(
                  LocalDate.of(2026, 11, 30),
                  "quality",
                  LocalDate.of(2026, 5, 4),
                  List.of("B2-1")));
      assertThat(book.<Boolean>read(reading -> new TrialShelf(reading, owner).cameFrozen(TRIAL)))
          .isTrue();
    }
  }
}
