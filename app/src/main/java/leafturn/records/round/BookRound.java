package leafturn.records.round;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.BookReading;
import leafturn.records.round.Workers.Urgency;
import org.jspecify.annotations.Nullable;

/**
 * The round of a book: the call for each lawn on its day. A call is kept as long as nothing it
 * rests on has changed, and is never given once something has: each look at the round compares the
 * revisions of the book. Safe for use from several threads.
 */
public final class BookRound implements AutoCloseable {
  private static final String REGISTER = "register";
  private static final String RULES = "rules";
  private static final Duration AS_LONG_AS_IT_TAKES = Duration.ofDays(1);

  /** Whoever looks at a lawn while many others do is told soon that its advice is under way. */
  private static final Duration IN_A_CROWD = Duration.ofMillis(120);

  private final Book book;
  private final Duration inACrowd;
  private final RoundDays days;
  private final LawnCalls calls;
  private final Workers workers = new Workers();
  private final Map<Wanted, Made> made = new ConcurrentHashMap<>();
  private final Set<Units> readers = ConcurrentHashMap.newKeySet();
  private final AtomicInteger lookingAtOne = new AtomicInteger();
  private @Nullable Known known;

  /** The register with the revision it was read at. */
  private record Known(long revision, Register register) {}

  /** What a call rests on: the day, and the revisions of all that enters it. */
  private record Basis(LocalDate on, long lawn, long property, long station, long rules) {}

  /** A lawn's call in the words of one kind of reader. */
  private record Wanted(String lawn, Units units) {}

  private record Made(PlacedLawn lawn, Basis basis, CallWork work) {}

  /** A look at the book: its register and the revisions it had then, or earlier ones. */
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
    this(book, clock, IN_A_CROWD);
  }

  /**
   * @param inACrowd how long whoever looks at a lawn waits while many others do
   */
  BookRound(Book book, Clock clock, Duration inACrowd) {
    this.book = book;
    this.inACrowd = inACrowd;
    this.days = new RoundDays(clock);
    this.calls = new LawnCalls(book, new Climates());
    readers.add(Units.METRIC);
  }

  /**
   * What the book holds now.
   *
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public Register register() {
    return look().register();
  }

  /** The day it is at a lawn. */
  public LocalDate dayOf(PlacedLawn lawn) {
    return days.of(register(), lawn);
  }

  /** The round of all lawns today, in metric units; waits until every call is made. */
  public RoundOfLawns today() {
    return today(UnaryOperator.identity(), Units.METRIC, AS_LONG_AS_IT_TAKES);
  }

  /**
   * The round of some lawns today. A lawn whose call is not made when the patience ends stands
   * among those without one.
   *
   * @param choice picks properties and lawns from the register
   * @param units the units of the reader
   * @param patience how long to wait for all the calls together
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public RoundOfLawns today(UnaryOperator<Register> choice, Units units, Duration patience) {
    readers.add(units);
    long end = System.nanoTime() + patience.toNanos();
    Look look = look();
    Register chosen = choice.apply(look.register());
    Urgency urgency = chosen.lawns().size() == 1 ? Urgency.ONE_LAWN : Urgency.ROUND;
    List<Made> wanted =
        chosen.lawns().stream().map(lawn -> made(lawn, units, look, urgency)).toList();
    return round(
        chosen, wanted.stream().map(one -> outcome(one, end - System.nanoTime())).toList());
  }

  private RoundOfLawns round(Register chosen, List<LawnOutcome> outcomes) {
    List<LawnOnRound> called = new ArrayList<>();
    List<LawnWithoutCall> notCalled = new ArrayList<>();
    for (LawnOutcome outcome : outcomes) {
      if (outcome instanceof LawnOutcome.Called done) {
        called.add(done.lawn());
      } else if (outcome instanceof LawnOutcome.NotCalled not) {
        notCalled.add(not.lawn());
      }
    }
    return new RoundOfLawns(
        chosen.title().adviser(),
        days.of(chosen),
        String.join("; ", chosen.weatherOrigins()),
        chosen.title().standing(),
        called,
        notCalled);
  }

  /**
   * The round of one lawn, for somebody who looks at it. Whoever comes while as many others look at
   * a lawn as calls can be made at once waits for a moment only, so that a page is always soon
   * there.
   *
   * @param patience how long to wait for the call when few others do
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public RoundOfLawns ofLawn(UnaryOperator<Register> choice, Units units, Duration patience) {
    boolean crowd = lookingAtOne.incrementAndGet() > Workers.COUNT;
    try {
      return today(choice, units, crowd ? inACrowd : patience);
    } finally {
      lookingAtOne.decrementAndGet();
    }
  }

  /**
   * The round of some lawns on another day; nothing is kept. A day that is past is called by what
   * the log holds up to it; for a day to come it is the call of today where that day alone is left
   * for a first cut.
   *
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public RoundOfLawns onDay(UnaryOperator<Register> choice, Units units, LocalDate day) {
    Look look = look();
    Register chosen = choice.apply(look.register());
    return round(
        chosen, chosen.lawns().stream().map(lawn -> onDay(lawn, units, day, look)).toList());
  }

  private LawnOutcome onDay(PlacedLawn lawn, Units units, LocalDate day, Look look) {
    LocalDate today = days.of(look.register(), lawn);
    long revision = look.revision(lawn.station() == null ? null : lawn.station().id());
    return day.isAfter(today)
        ? calls.of(lawn, today, units, revision, LawnCalls.Otherwise.firstOn(day))
        : calls.of(lawn, day, units, revision);
  }

  /**
   * The lawns that would be called otherwise by other thresholds; nothing is kept.
   *
   * @param choice picks properties and lawns from the register
   * @param thresholds thresholds that differ from the standard rules, by rule name
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public List<ChangedCall> tried(
      UnaryOperator<Register> choice, Units units, Map<String, Double> thresholds) {
    Look look = look();
    Register chosen = choice.apply(look.register());
    return chosen.lawns().parallelStream()
        .flatMap(
            lawn -> {
              Made now = made(lawn, units, look, Urgency.ROUND);
              LawnOutcome then =
                  calls.of(
                      lawn,
                      now.basis().on(),
                      units,
                      now.basis().station(),
                      LawnCalls.Otherwise.byRules(reading -> LawnCalls.rules(thresholds)));
              return ChangedCall.between(outcome(now, AS_LONG_AS_IT_TAKES.toNanos()), then);
            })
        .toList();
  }

  /**
   * Has every call made that is not made yet, or rests on something that has changed; returns at
   * once.
   *
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public void prepare() {
    Look look = look();
    for (Units units : readers) {
      look.register().lawns().forEach(lawn -> made(lawn, units, look, Urgency.AHEAD));
    }
    Set<String> there =
        look.register().lawns().stream().map(lawn -> lawn.lawn().id()).collect(Collectors.toSet());
    made.keySet().removeIf(wanted -> !there.contains(wanted.lawn()));
  }

  private Look look() {
    return book.read(
        reading -> {
          // The revisions first: what is read after them is of their time or later, never earlier.
          Map<String, Long> revisions = reading.revisions();
          return new Look(register(reading, revisions.getOrDefault(REGISTER, 0L)), revisions);
        });
  }

  /** One thread reads it, the others wait: it is the longest reading of all. */
  private synchronized Register register(BookReading reading, long revision) {
    Known before = known;
    if (before != null && before.revision() == revision) {
      return before.register();
    }
    Register register = Register.of(reading);
    known = new Known(revision, register);
    return register;
  }

  private Made made(PlacedLawn lawn, Units units, Look look, Urgency urgency) {
    String station = lawn.station() == null ? null : lawn.station().id();
    Basis basis =
        new Basis(
            days.of(look.register(), lawn),
            look.revision(lawn.lawn().id()),
            look.revision(lawn.property().id()),
            look.revision(station),
            look.revision(RULES));
    Made current =
        made.compute(
            new Wanted(lawn.lawn().id(), units),
            (wanted, before) ->
                before != null && before.basis().equals(basis) && !failed(before)
                    ? before
                    : new Made(lawn, basis, work(lawn, units, basis)));
    workers.ask(current.work(), urgency);
    return current;
  }

  private CallWork work(PlacedLawn lawn, Units units, Basis basis) {
    return new CallWork(() -> calls.of(lawn, basis.on(), units, basis.station()));
  }

  private static boolean failed(Made before) {
    return before.work().outcome().isCompletedExceptionally();
  }

  private static LawnOutcome outcome(Made made, long patienceNanos) {
    try {
      return made.work().outcome().get(Math.max(0, patienceNanos), TimeUnit.NANOSECONDS);
    } catch (TimeoutException underWay) {
      return LawnOutcome.underWay(made.lawn());
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new CompletionException(failure.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return LawnOutcome.notCalled(made.lawn(), "Its advice was given up: the program is ending.");
    }
  }

  /** Stops working; calls that are not begun yet are given up. */
  @Override
  public void close() {
    workers.close();
  }
}
