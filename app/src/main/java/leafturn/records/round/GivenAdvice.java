package leafturn.records.round;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Option;
import leafturn.advice.call.Outlook.DayToCome;
import leafturn.advice.call.Particulars;
import leafturn.advice.call.Reason;
import leafturn.advice.call.Spread;
import leafturn.records.Choice;
import leafturn.records.ProgramVersion;
import leafturn.records.Sha256;
import leafturn.records.sheet.AdviceSheet;
import leafturn.records.sheet.AdviceSheet.Expected;
import leafturn.records.sheet.AdviceSheet.Forecast;
import leafturn.records.sheet.AdviceSheet.Ground;
import leafturn.records.sheet.AdviceSheet.Hours;
import leafturn.records.sheet.AdviceSheet.Range;
import leafturn.records.sheet.AdviceSheet.Way;
import org.jspecify.annotations.Nullable;

/** A call as it is kept when it was given to somebody. */
final class GivenAdvice {
  /** Days of the height forecast that are kept. */
  private static final int FORECAST_DAYS = 14;

  /** A digest of so many figures tells the tables of rules of a book apart. */
  private static final int DIGEST_FIGURES = 8;

  private GivenAdvice() {}

  /**
   * The sheet of a call.
   *
   * @param lawn id of the lawn
   * @param thresholds those of the book that differ from the standard rules, by rule
   */
  static AdviceSheet of(String lawn, Call call, Way way, Map<String, Double> thresholds) {
    Option.Outcome cut =
        call.options().stream()
            .filter(option -> option.best() && call.mowOn() != null)
            .map(Option::outcome)
            .findFirst()
            .orElse(null);
    return new AdviceSheet(
        lawn,
        call.on(),
        way,
        call.units(),
        Choice.word(call.choice()),
        call.mowOn(),
        cut == null ? null : cut.nutrientsStay(),
        call.sentence(),
        call.reasons().stream().map(GivenAdvice::ground).toList(),
        range(call.mowBy()),
        forecast(call),
        cut == null ? null : expected(cut, call),
        rules(thresholds),
        thresholds,
        ProgramVersion.name());
  }

  private static Ground ground(Reason reason) {
    boolean limited = !reason.threshold().isBlank() && !reason.threshold().equals("no limit");
    return new Ground(reason.ruleId(), reason.headline(), limited ? reason.threshold() : null);
  }

  private static Forecast forecast(Call call) {
    List<DayToCome> days = call.outlook().toCome().stream().limit(FORECAST_DAYS).toList();
    return new Forecast(
        rounded(call.today().heightMm()),
        heights(days, Spread::low),
        heights(days, Spread::middle),
        heights(days, Spread::high));
  }

  private static List<Double> heights(List<DayToCome> days, ToDoubleFunction<Spread> of) {
    return days.stream().map(day -> rounded(of.applyAsDouble(day.heightMm()))).toList();
  }

  private static Expected expected(Option.Outcome outcome, Call call) {
    List<Particulars.Cut> cuts = call.particulars().cuts();
    return new Expected(
        cuts.isEmpty() ? null : rounded(cuts.get(0).toMm()),
        range(outcome.heightTakenFraction()),
        range(outcome.freshLitres()),
        range(outcome.bags()),
        range(outcome.minutes()),
        range(outcome.clumpIndex()),
        outcome.inSight() == null ? null : range(outcome.inSight().days()),
        hours(call));
  }

  /** The dry hours of the day to mow; null for a day without hours. */
  private static @Nullable Hours hours(Call call) {
    for (Particulars.Hours day : call.particulars().hours()) {
      Integer from = day.from();
      Integer to = day.to();
      if (day.day().equals(call.mowOn()) && from != null && to != null) {
        return new Hours(from, to);
      }
    }
    return null;
  }

  private static @Nullable Range range(@Nullable Spread spread) {
    return spread == null
        ? null
        : new Range(fine(spread.low()), fine(spread.middle()), fine(spread.high()));
  }

  /** To a tenth of a millimetre. */
  private static double rounded(double heightMm) {
    return Math.round(heightMm * 10) / 10.0;
  }

  private static double fine(double value) {
    return Math.round(value * 1000) / 1000.0;
  }

  /** Names the table of rules with these thresholds: a digest of every rule and its number. */
  static String rules(Map<String, Double> thresholds) {
    String table =
        Stream.of(CallRules.standard().with(thresholds))
            .flatMap(rules -> rules.entries().stream())
            .map(entry -> entry.rule().id() + "=" + entry.threshold())
            .collect(Collectors.joining("\n"));
    return Sha256.of(table).substring(0, DIGEST_FIGURES);
  }
}
