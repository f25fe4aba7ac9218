package leafturn.records.round;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.UnaryOperator;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * The round of a book: the call for each lawn on its day. A call is kept as long as nothing it
 * rests on has changed, and is never given once something has: each look at the round compares the
 * revisions of the book. Safe for use from several threads.
 */
public final class BookRound implements AutoCloseable {
  private static final String REGISTER = "register";
  private static final String RULES = "rules";

  private final Book book;
  private final Clock clock;
  private final LawnCalls calls;
  private final ExecutorService workers;
  private final Map<Wanted, Made> made = new ConcurrentHashMap<>();
  private volatile @Nullable Known known;

  /** The register with the revision it was read at. */
  private record Known(long revision, Register register) {}

  /** What a call rests on: the day, and the revisions of all that enters it. */
  private record Basis(LocalDate on, long lawn, long property, long station, long rules) {}

  /** A lawn's call in the words of one kind of reader. */
  private record Wanted(String lawn, Units units) {}

  private record Made(Basis basis, CompletableFuture<LawnOutcome> outcome) {}

  /** A look at the book: its register and the revisions it had then, or later ones. */
  private record Look(Register register, Map<String, Long> revisions) {
    long revision(@Nullable String place) {
      return place == null ? 0 : revisions.getOrDefault(place, 0L);
    }
  }

  /**
   * @param clock tells the day, by the time zone of each property; its own zone is that of a book
   *     without properties
   */
  public BookRound(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
    this.calls = new LawnCalls(book, new Climates());
    this.workers =
        Executors.newFixedThreadPool(
            Runtime.getRuntime().availableProcessors(), BookRound::workerThread);
  }

  private static Thread workerThread(Runnable work) {
    Thread thread = new Thread(work, "calls");
    thread.setDaemon(true);
    return thread;
  }

  /** What the book holds now. */
  public Register register() {
    return look().register();
  }

  /** The round of all lawns today, in metric units; waits until every call is made. */
  public RoundOfLawns today() {
    return today(UnaryOperator.identity(), Units.METRIC);
  }

  /**
   * The round of some lawns today; waits until every call is made.
   *
   * @param choice picks the properties and lawns from the register
   * @param units the units of the reader
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public RoundOfLawns today(UnaryOperator<Register> choice, Units units) {
    Look look = look();
    Register chosen = choice.apply(look.register());
    List<Made> wanted = chosen.lawns().stream().map(lawn -> made(lawn, look, units)).toList();
    List<LawnOnRound> called = new ArrayList<>();
    List<LawnWithoutCall> notCalled = new ArrayList<>();
    for (Made one : wanted) {
      LawnOutcome outcome = finished(one.outcome());
      if (outcome instanceof LawnOutcome.Called done) {
        called.add(done.lawn());
      } else if (outcome instanceof LawnOutcome.NotCalled not) {
        notCalled.add(not.lawn());
      }
    }
    return new RoundOfLawns(
        chosen.title().adviser(),
        day(chosen),
        origins(chosen),
        chosen.title().standing(),
        called,
        notCalled);
  }

  /** The day it is in a book, by the time zone of its first property. */
  private LocalDate day(Register register) {
    return register.properties().stream()
        .findFirst()
        .map(property -> day(register, ZoneId.of(property.content().timeZone())))
        .orElseGet(() -> day(register, clock.getZone()));
  }

  private LocalDate day(Register register, ZoneId zone) {
    LocalDate fixed = register.title().fixedDay();
    return fixed == null ? LocalDate.ofInstant(clock.instant(), zone) : fixed;
  }

  private static String origins(Register register) {
    List<String> origins = new ArrayList<>();
    for (PlacedLawn lawn : register.lawns()) {
      Sheet<WeatherStation> station = lawn.station();
      if (station != null && !origins.contains(station.content().origin())) {
        origins.add(station.content().origin());
      }
    }
    return String.join("; ", origins);
  }

  private Look look() {
    return book.read(
        reading -> {
          Map<String, Long> revisions = reading.revisions();
          long revision = revisions.getOrDefault(REGISTER, 0L);
          Known before = known;
          if (before != null && before.revision() == revision) {
            return new Look(before.register(), revisions);
          }
          Register register = Register.of(reading);
          known = new Known(revision, register);
          return new Look(register, revisions);
        });
  }

  private Made made(PlacedLawn lawn, Look look, Units units) {
    String station = lawn.station() == null ? null : lawn.station().id();
    LocalDate on = day(look.register(), ZoneId.of(lawn.property().content().timeZone()));
    Basis basis =
        new Basis(
            on,
            look.revision(lawn.lawn().id()),
            look.revision(lawn.property().id()),
            look.revision(station),
            look.revision(RULES));
    return made.compute(
        new Wanted(lawn.lawn().id(), units),
        (id, before) ->
            before != null && before.basis().equals(basis) && !failed(before)
                ? before
                : new Made(
                    basis,
                    CompletableFuture.supplyAsync(
                        () -> calls.of(lawn, on, units, basis.station()), workers)));
  }

  private static boolean failed(Made before) {
    return before.outcome().isCompletedExceptionally();
  }

  private static LawnOutcome finished(CompletableFuture<LawnOutcome> outcome) {
    try {
      return outcome.join();
    } catch (CompletionException failure) {
      if (failure.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw failure;
    }
  }

  /** Stops working; calls that are not made yet are given up. */
  @Override
  public void close() {
    workers.shutdownNow();
  }
}
