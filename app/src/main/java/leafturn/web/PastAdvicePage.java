package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import leafturn.advice.call.CallRules;
import leafturn.quantity.ClockHour;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Units;
import leafturn.records.round.PastAdvice;
import leafturn.records.round.PastAdvice.Outcome;
import leafturn.records.round.PastAdvice.Piece;
import leafturn.records.sheet.AdviceSheet;
import leafturn.records.sheet.AdviceSheet.Range;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.reports.DayWords;
import leafturn.reports.LogEntryWords;
import leafturn.reports.QuantityWords;
import leafturn.reports.UnitWords;
import org.jspecify.annotations.Nullable;

/** The advice that was given for a lawn, in words: whether it was followed, and what happened. */
public final class PastAdvicePage {
  /** So many pieces are shown; the archive of the book holds them all. */
  private static final int MOST_SHOWN = 120;

  private final String lawnName;
  private final String address;
  private final LocalDate since;
  private final PastAdvice past;
  private final UnitWords units;

  /**
   * One piece of advice.
   *
   * @param days the days it was given for
   * @param sentence the advice
   * @param asGiven that its words are in other units than its reader's; else empty
   * @param reasons why, in a line each
   * @param outcome what became of it, in a few words
   * @param followed true where it was followed
   * @param happened what was done and seen
   * @param measured forecasts beside what was measured
   * @param madeBy rules and program it was made by
   */
  public record Row(
      String days,
      String sentence,
      String asGiven,
      List<String> reasons,
      String outcome,
      boolean followed,
      List<String> happened,
      List<String> measured,
      String madeBy) {}

  PastAdvicePage(
      String lawnName, String address, LocalDate since, PastAdvice past, UnitWords units) {
    this.lawnName = lawnName;
    this.address = address;
    this.since = since;
    this.past = past;
    this.units = units;
  }

  public String lawnName() {
    return lawnName;
  }

  public String address() {
    return address;
  }

  /** The first day looked at. */
  public String since() {
    return DayWords.dayAndYear(since);
  }

  public List<Row> rows() {
    return past.pieces().stream().limit(MOST_SHOWN).map(this::row).toList();
  }

  /** How many older pieces there are than are shown. */
  public int olderPieces() {
    return Math.max(0, past.pieces().size() - MOST_SHOWN);
  }

  /** How much of the advice to mow was followed, in a sentence; empty before any could be. */
  public String followed() {
    return PastAdviceWords.followed(past);
  }

  /** How heights measured before a cut lay beside their forecasts; empty before there are any. */
  public String heights() {
    List<Piece> foretold =
        past.pieces().stream().filter(Piece::foretold).filter(p -> heightMm(p) != null).toList();
    if (foretold.isEmpty()) {
      return "";
    }
    long within = foretold.stream().filter(PastAdvicePage::within).count();
    double errorMm =
        foretold.stream().mapToDouble(PastAdvicePage::aboveForecastMm).average().orElse(0);
    String stood =
        "it stood %s %s than the middle of the forecast on average"
            .formatted(units.height(Math.abs(errorMm)), errorMm < 0 ? "lower" : "higher");
    return "Of %d %s measured before a cut, %d lay within the forecast; %s."
        .formatted(foretold.size(), foretold.size() == 1 ? "height" : "heights", within, stood);
  }

  private static @Nullable Double heightMm(Piece piece) {
    Done.Mown cut = piece.cut();
    return cut == null ? null : cut.heightBeforeMm();
  }

  private static boolean within(Piece piece) {
    Range forecast = Objects.requireNonNull(piece.forecast());
    double measured = Objects.requireNonNull(heightMm(piece));
    return measured >= forecast.low() && measured <= forecast.high();
  }

  private static double aboveForecastMm(Piece piece) {
    return Objects.requireNonNull(heightMm(piece))
        - Objects.requireNonNull(piece.forecast()).middle();
  }

  private Row row(Piece piece) {
    AdviceSheet advice = piece.advice();
    LocalDate last = advice.day();
    return new Row(
        piece.firstDay().equals(last)
            ? DayWords.dayAndYear(last)
            : DayWords.date(piece.firstDay()) + " to " + DayWords.dayAndYear(last),
        advice.sentence(),
        asGiven(advice),
        advice.reasons().stream().map(PastAdvicePage::reason).toList(),
        PastAdviceWords.outcome(piece.outcome()),
        piece.outcome() == Outcome.FOLLOWED,
        happened(piece),
        measured(piece),
        madeBy(advice));
  }

  /** Advice is kept word for word, and so are its units. */
  private String asGiven(AdviceSheet advice) {
    return advice.units() == units.units()
        ? ""
        : "as given, in " + (advice.units() == Units.US ? "inches" : "mm");
  }

  private static String reason(AdviceSheet.Ground reason) {
    return reason.limit() == null
        ? reason.headline()
        : reason.headline() + " (" + reason.limit() + ")";
  }

  private List<String> happened(Piece piece) {
    List<String> words = new ArrayList<>();
    LogSheet mown = piece.mown();
    Done.Mown cut = piece.cut();
    if (mown != null && cut != null) {
      words.add(PastAdviceWords.mown(piece, mown, cut, units));
    }
    for (LogSheet seen : piece.seenAfter()) {
      words.add(
          LogEntryWords.headline(seen, units.units()).replaceFirst("^Observed", "Seen")
              + " on "
              + DayWords.date(seen.day()));
    }
    return words;
  }

  private List<String> measured(Piece piece) {
    List<String> words = new ArrayList<>();
    Range forecast = piece.forecast();
    Double heightMm = heightMm(piece);
    if (forecast != null && piece.mown() != null) {
      String measured = heightMm == null ? "not measured" : units.height(heightMm) + " measured";
      String when =
          piece.foretold() && piece.forecastOn() != null
              ? " forecast on " + DayWords.date(piece.forecastOn())
              : " by that day’s advice";
      words.add("Height: " + heights(forecast) + when + ", " + measured);
    }
    AdviceSheet.Expected expected = piece.advice().expected();
    Done.Mown cut = piece.cut();
    if (expected != null && cut != null) {
      beside(words, "Bags", expected.bags(), cut.bags());
      beside(words, "Minutes", expected.minutes(), cut.minutes());
      hours(words, expected.hours(), piece.mown());
      if (expected.daysInSight() != null) {
        words.add(PastAdviceWords.inSight(expected.daysInSight()));
      }
    }
    return words;
  }

  private void hours(
      List<String> words, AdviceSheet.@Nullable Hours hours, @Nullable LogSheet mown) {
    if (hours == null) {
      return;
    }
    String told =
        "Dry from about %s to %s by forecast"
            .formatted(
                ClockHour.shown(hours.from(), units.units()),
                ClockHour.shown(hours.to(), units.units()));
    words.add(mown == null || mown.time() == null ? told : told + ", mown at " + mown.time());
  }

  private String heights(Range forecast) {
    return forecast.low() == forecast.high()
        ? units.height(forecast.middle())
        : "%s (%s to %s)"
            .formatted(
                units.height(forecast.middle()),
                units.heightNumber(forecast.low()),
                units.heightNumber(forecast.high()));
  }

  private static void beside(
      List<String> words, String what, @Nullable Range forecast, @Nullable Double logged) {
    if (forecast != null && logged != null) {
      words.add(
          "%s: %s forecast, %s logged"
              .formatted(what, PastAdviceWords.plain(forecast), QuantityWords.plain(logged)));
    }
  }

  /** "Standard rules (3fa2c1d0), leafturn 0.1.0". */
  private String madeBy(AdviceSheet advice) {
    String own =
        advice.thresholds().entrySet().stream()
            .map(rule -> rule.getKey() + " " + threshold(rule.getKey(), rule.getValue()))
            .collect(Collectors.joining(", "));
    return "%s (%s), %s"
        .formatted(
            own.isEmpty() ? "Standard rules" : "Rules with " + own,
            advice.rules(),
            advice.madeBy());
  }

  /** A threshold in the reader's unit; of a rule that is no more, the bare number. */
  private String threshold(String rule, double threshold) {
    return CallRules.named(rule)
        .map(known -> CallRules.standard().entry(known))
        .map(entry -> RulesPage.threshold(entry, threshold, units.units()))
        .orElseGet(() -> DisplayNumber.plain(threshold));
  }
}
