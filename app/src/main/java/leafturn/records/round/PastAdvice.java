package leafturn.records.round;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.AdviceSheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Sight;
import org.jspecify.annotations.Nullable;

/**
 * The advice that was given for a lawn, whether it was followed, and what happened. Advice that
 * stayed the same from day to day is one piece. Followed is what was mown within its window, from
 * the day before the one advised to two days after it or to the middle of the days on which a third
 * would come off, whichever is later, its clippings left or taken and its height left as advised.
 *
 * @param pieces the latest first
 */
public record PastAdvice(List<Piece> pieces) {
  private static final int EARLY_DAYS = 1;
  private static final int LATE_DAYS = 2;

  /** So long after a cut what is seen on the turf is taken to be of that cut. */
  private static final int SEEN_AFTER_DAYS = 21;

  private static final double HALF = 0.5;

  /** So far from the height advised a deck is set otherwise, mm; our judgement. */
  private static final double ANOTHER_HEIGHT_MM = 6;

  public PastAdvice {
    pieces = List.copyOf(pieces);
  }

  /** What became of a piece of advice. */
  public enum Outcome {
    FOLLOWED,
    /** Mown before its window or after it. */
    ANOTHER_DAY,
    /** Mown in its window, but collected for returned or the other way round. */
    CLIPPINGS_OTHERWISE,
    /** Mown in its window, the clippings as advised, but to another height. */
    HEIGHT_OTHERWISE,
    /** Its window has passed without a mowing. */
    NOT_MOWN,
    /** Mown though nothing was to be cut. */
    MOWN_ALL_THE_SAME,
    /** Nothing was to be cut, and nothing was. */
    LEFT_ALONE,
    /** Newer advice came before its window had passed. */
    REPLACED,
    /** Its window has not passed. */
    OPEN;

    /** True for advice to mow that was put to the test. */
    public boolean counts() {
      return this != MOWN_ALL_THE_SAME && this != LEFT_ALONE && this != REPLACED && this != OPEN;
    }
  }

  /**
   * A piece of advice.
   *
   * @param firstDay the first day it was given for
   * @param advice as it was given last
   * @param outcome what became of it
   * @param mown the mowing that followed it while it stood, or null
   * @param forecastOn the day of the height forecast, or null where there is none
   * @param forecast height forecast for the day of that mowing, by the earliest advice of the piece
   *     that looked so far ahead, or null
   * @param seenAfter looks at what its clippings left on the turf, the earliest first
   */
  public record Piece(
      LocalDate firstDay,
      AdviceSheet advice,
      Outcome outcome,
      @Nullable LogSheet mown,
      @Nullable LocalDate forecastOn,
      AdviceSheet.@Nullable Range forecast,
      List<LogSheet> seenAfter) {
    public Piece {
      seenAfter = List.copyOf(seenAfter);
    }

    /** True where the height of another day was foretold, and not only that of the day itself. */
    public boolean foretold() {
      return mown != null && forecastOn != null && forecastOn.isBefore(mown.day());
    }

    /** The mowing itself, or null. */
    public Done.@Nullable Mown cut() {
      return mown != null && mown.done() instanceof Done.Mown cut ? cut : null;
    }
  }

  /** How many pieces of advice to mow were put to the test. */
  public long tested() {
    return pieces.stream().filter(piece -> piece.outcome().counts()).count();
  }

  /** How many of them had some outcome. */
  public long with(Outcome outcome) {
    return pieces.stream().filter(piece -> piece.outcome() == outcome).count();
  }

  /**
   * Reads it.
   *
   * @param since the first day to look at
   * @param today the day it is at the lawn
   */
  public static PastAdvice of(BookReading reading, String lawn, LocalDate since, LocalDate today) {
    return of(
        reading.ofLawnSince(Kind.ADVICE, lawn, since),
        reading.ofLawnSince(Kind.LOG, lawn, since).stream()
            .map(sheet -> entered(reading, sheet))
            .toList(),
        today);
  }

  private static Entered entered(BookReading reading, Sheet<LogSheet> sheet) {
    List<Sheet<LogSheet>> versions =
        sheet.version() == 1 ? List.of(sheet) : reading.history(Kind.LOG, sheet.id());
    return new Entered(sheet.content(), versions.get(versions.size() - 1).writtenAt());
  }

  /** An entry of the log with the moment at which it was first entered. */
  record Entered(LogSheet entry, Instant at) {
    boolean isMowing() {
      return entry.done() instanceof Done.Mown;
    }
  }

  /** Advice that stayed the same, as it was given first and last. */
  private record Standing(Sheet<AdviceSheet> first, Sheet<AdviceSheet> last) {
    AdviceSheet advice() {
      return last.content();
    }

    LocalDate firstDay() {
      return first.content().day();
    }

    /** True when somebody who mowed had been given it; what is logged today may come after it. */
    boolean before(Entered mowing) {
      LocalDate mown = mowing.entry().day();
      return firstDay().isBefore(mown)
          || firstDay().equals(mown) && first.writtenAt().isBefore(mowing.at());
    }

    boolean saysTheSameAs(AdviceSheet next) {
      return Objects.equals(advice().mowOn(), next.mowOn())
          && Objects.equals(advice().returned(), next.returned())
          && advice().choice().equals(next.choice());
    }

    LocalDate windowBegins(LocalDate mowOn) {
      return mowOn.minusDays(EARLY_DAYS);
    }

    LocalDate windowEnds(LocalDate mowOn) {
      AdviceSheet.Range mowBy = advice().mowBy();
      LocalDate late = mowOn.plusDays(LATE_DAYS);
      LocalDate third =
          mowBy == null ? late : advice().day().plusDays((long) Math.floor(mowBy.middle()));
      return third.isAfter(late) ? third : late;
    }
  }

  /** What became of given advice, by the log. */
  static PastAdvice of(List<Sheet<AdviceSheet>> given, List<Entered> log, LocalDate today) {
    List<Standing> standing = new ArrayList<>();
    List<Entered> mowings = log.stream().filter(Entered::isMowing).toList();
    for (Sheet<AdviceSheet> sheet : given) {
      Standing last = standing.isEmpty() ? null : standing.get(standing.size() - 1);
      if (last != null
          && last.saysTheSameAs(sheet.content())
          && mowings.stream()
              .noneMatch(
                  mown ->
                      last.before(mown) && mown.entry().day().isBefore(sheet.content().day()))) {
        standing.set(standing.size() - 1, new Standing(last.first(), sheet));
      } else {
        standing.add(new Standing(sheet, sheet));
      }
    }
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < standing.size(); i++) {
      Standing next = i + 1 < standing.size() ? standing.get(i + 1) : null;
      pieces.add(piece(standing.get(i), next, log, today));
    }
    Collections.reverse(pieces);
    return new PastAdvice(pieces);
  }

  private static Piece piece(
      Standing one, @Nullable Standing next, List<Entered> log, LocalDate today) {
    Entered mown =
        log.stream()
            .filter(Entered::isMowing)
            .filter(one::before)
            .filter(entry -> next == null || !next.before(entry))
            .findFirst()
            .orElse(null);
    LogSheet entry = mown == null ? null : mown.entry();
    AdviceSheet foretelling = entry == null ? null : foretelling(one, entry.day());
    return new Piece(
        one.firstDay(),
        one.advice(),
        entry == null ? withoutMowing(one, next, today) : withMowing(one, entry),
        entry,
        foretelling == null ? null : foretelling.day(),
        foretelling == null || entry == null ? null : height(foretelling, entry.day()),
        mown == null ? List.of() : seenAfter(mown, log));
  }

  private static Outcome withMowing(Standing one, LogSheet mown) {
    LocalDate mowOn = one.advice().mowOn();
    if (mowOn == null) {
      return Outcome.MOWN_ALL_THE_SAME;
    }
    if (mown.day().isBefore(one.windowBegins(mowOn)) || mown.day().isAfter(one.windowEnds(mowOn))) {
      return Outcome.ANOTHER_DAY;
    }
    Done.Mown cut = (Done.Mown) mown.done();
    Boolean advised = one.advice().returned();
    if (advised != null && advised != cut.returnedShare() >= HALF) {
      return Outcome.CLIPPINGS_OTHERWISE;
    }
    AdviceSheet.Expected expected = one.advice().expected();
    Double advisedMm = expected == null ? null : expected.cutToMm();
    Double leftMm = cut.heightAfterMm();
    return advisedMm != null && leftMm != null && Math.abs(leftMm - advisedMm) > ANOTHER_HEIGHT_MM
        ? Outcome.HEIGHT_OTHERWISE
        : Outcome.FOLLOWED;
  }

  private static Outcome withoutMowing(Standing one, @Nullable Standing next, LocalDate today) {
    LocalDate mowOn = one.advice().mowOn();
    if (mowOn == null) {
      return next == null && !today.isAfter(one.advice().day()) ? Outcome.OPEN : Outcome.LEFT_ALONE;
    }
    LocalDate end = one.windowEnds(mowOn);
    if (next != null && !next.firstDay().isAfter(end)) {
      return Outcome.REPLACED;
    }
    return today.isAfter(end) ? Outcome.NOT_MOWN : Outcome.OPEN;
  }

  private static @Nullable AdviceSheet foretelling(Standing one, LocalDate mownOn) {
    return Stream.of(one.first().content(), one.advice())
        .filter(advice -> height(advice, mownOn) != null)
        .findFirst()
        .orElse(null);
  }

  private static AdviceSheet.@Nullable Range height(AdviceSheet advice, LocalDate on) {
    return advice.forecast().on(on.toEpochDay() - advice.day().toEpochDay());
  }

  /** Looks at the turf after a mowing and before the next one. */
  private static List<LogSheet> seenAfter(Entered mown, List<Entered> log) {
    List<LogSheet> found = new ArrayList<>();
    for (Entered entry : log.subList(log.indexOf(mown) + 1, log.size())) {
      boolean late = entry.entry().day().isAfter(mown.entry().day().plusDays(SEEN_AFTER_DAYS));
      if (entry.isMowing() || late) {
        break;
      }
      if (entry.entry().done() instanceof Done.Observed seen && tellsOfClippings(seen)) {
        found.add(entry.entry());
      }
    }
    return found;
  }

  private static boolean tellsOfClippings(Done.Observed seen) {
    return List.of(Sight.CLUMPS, Sight.CLIPPINGS_STILL_SEEN).stream()
        .anyMatch(sight -> seen.things().contains(sight) || seen.notThere().contains(sight));
  }
}
