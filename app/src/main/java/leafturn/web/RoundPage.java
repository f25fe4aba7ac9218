package leafturn.web;

import java.time.LocalDate;
import java.util.List;
import leafturn.advice.call.Call;
import leafturn.advice.call.DryHours;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.Outlook;
import leafturn.advice.call.Outlook.DayToCome;
import leafturn.advice.call.Outlook.PastDay;
import leafturn.advice.call.Reason;
import leafturn.advice.call.RoundOfLawns;
import leafturn.advice.call.Spread;
import leafturn.reports.DayWords;
import leafturn.reports.UnitWords;
import leafturn.reports.figure.RangeMark;
import leafturn.reports.figure.TurfSketch;

/** The round in words: which lawns need a decision, and the rain before and after today. */
public final class RoundPage {
  private static final int DAYS = 7;
  private static final List<String> COUNTS =
      List.of("No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten");

  /** So many lawns are shown in full; a page of more would be slow to load and to read. */
  private static final int MOST_IN_FULL = 12;

  private final RoundOfLawns round;
  private final List<LawnOnRound> toDecide;
  private final List<LawnOnRound> toLeave;
  private final double tallestMm;

  RoundPage(RoundOfLawns round) {
    this.round = round;
    List<LawnOnRound> ordered = round.mostUrgentFirst();
    this.toDecide = ordered.stream().filter(LawnOnRound::needsDecision).toList();
    this.toLeave = ordered.stream().filter(lawn -> !lawn.needsDecision()).toList();
    this.tallestMm =
        toDecide.stream()
            .map(LawnOnRound::call)
            .map(Call::today)
            .mapToDouble(today -> Math.max(today.heightMm(), today.cutHeightMm()))
            .max()
            .orElse(1);
  }

  /** The lawns that need a decision soonest, most urgent first. */
  public List<LawnOnRound> toDecide() {
    return toDecide.subList(0, Math.min(MOST_IN_FULL, toDecide.size()));
  }

  /** Further lawns that need a decision, most urgent first. */
  public List<LawnOnRound> toDecideToo() {
    return toDecide.subList(toDecide().size(), toDecide.size());
  }

  /** The lawns on which nothing is to be decided today. */
  public List<LawnOnRound> toLeave() {
    return toLeave;
  }

  /** The lawns for which no call could be made. */
  public List<LawnWithoutCall> withoutCall() {
    return round.withoutCall().stream().filter(lawn -> !lawn.underWay()).toList();
  }

  /** How many calls are still being worked out, in a sentence; empty when none is. */
  public String underWay() {
    long count = round.withoutCall().stream().filter(LawnWithoutCall::underWay).count();
    return count == 0
        ? ""
        : count == 1
            ? "The advice for one lawn is being worked out."
            : "The advice for %d lawns is being worked out.".formatted(count);
  }

  /** Whose round it is, and the day. */
  public String place() {
    String day = DayWords.dayAndYear(round.today());
    return round.adviserName().isEmpty()
        ? "The round · " + day
        : round.adviserName() + "’s round · " + day;
  }

  public String headline() {
    int count = toDecide.size();
    String soFar = underWay().isEmpty() ? "" : " so far";
    if (soFar.isEmpty() && round.lawns().isEmpty() && !withoutCall().isEmpty()) {
      return "No advice can be given today.";
    }
    if (count == 0) {
      return "Nothing needs a decision today" + soFar + ".";
    }
    String number = count < COUNTS.size() ? COUNTS.get(count) : Integer.toString(count);
    return number
        + (count == 1 ? " lawn needs" : " lawns need")
        + " a decision today"
        + soFar
        + ".";
  }

  /** The grass to scale; every lawn of the round on the same scale. */
  public String sketch(LawnOnRound lawn) {
    return new TurfSketch(180, 96, tallestMm).draw(lawn.call().today());
  }

  /** Today's hours of a lawn in a few words; empty where none were reckoned. */
  public String hours(LawnOnRound lawn) {
    DryHours hours = lawn.call().particulars().byTheHour();
    return hours == null ? "" : "Today " + hours.days().get(0).words();
  }

  /** Whether there is any weather to show. */
  public boolean hasWeather() {
    return !round.lawns().isEmpty() && !outlook().toCome().isEmpty();
  }

  /** The rain of the last seven days on record, in a sentence. */
  public String rainSoFar() {
    if (!outlook().measured()) {
      return "Nobody has measured the rain of the last seven days; days of other years stand in.";
    }
    List<PastDay> past = outlook().past();
    List<PastDay> week = past.subList(Math.max(0, past.size() - DAYS), past.size());
    double sum = week.stream().mapToDouble(PastDay::rainMm).sum();
    if (sum < 0.5) {
      return "The last seven days brought no rain.";
    }
    PastDay most = week.get(0);
    for (PastDay day : week) {
      most = day.rainMm() > most.rainMm() ? day : most;
    }
    return "The last seven days brought "
        + units().water(sum)
        + " of rain, most of it on "
        + DayWords.day(most.day())
        + " ("
        + units().water(most.rainMm())
        + ").";
  }

  /** Whose weather is told where lawns have different weather; empty where they share it. */
  public String whoseWeather() {
    long kinds =
        round.lawns().stream()
            .map(lawn -> lawn.call().outlook().rainNextSevenDaysMm())
            .distinct()
            .limit(2)
            .count();
    return kinds < 2
        ? ""
        : "This is the weather of "
            + round.lawns().get(0).propertyName()
            + "; other properties of the round have their own.";
  }

  /** What joins a reason's headline to its meaning: nothing where the meaning goes on from it. */
  public String stop(Reason reason) {
    String meaning = reason.meaning();
    return !meaning.isEmpty() && Character.isLowerCase(meaning.charAt(0)) ? "" : ".";
  }

  /** The rain of the next seven days over the possible seasons. */
  private String rainToCome() {
    Spread rain = outlook().rainNextSevenDaysMm();
    return units().water(rain).inLine();
  }

  /** What is known of the next seven days, with the rain they may bring, in a sentence or two. */
  public String nextSevenDays() {
    LocalDate until = call().possibleSeasons().forecastUntil();
    return until == null
        ? "Of the next seven days this round knows nothing yet. Possible seasons bring %s: no forecast, but what may come."
            .formatted(rainToCome())
        : "The next seven days follow a forecast until %s, less by the day. Possible seasons along it bring %s."
            .formatted(DayWords.date(until), rainToCome());
  }

  /** How the rain to come is to be read. */
  public String howToRead() {
    return SeasonsWords.howToRead(call().possibleSeasons());
  }

  /** In how many of the possible seasons a day is wet: "8 of 29". */
  public String wet(DayToCome day) {
    int count = call().possibleSeasons().count();
    return Math.round(day.wetDayFraction() * count) + " of " + count;
  }

  public List<DayToCome> comingDays() {
    List<DayToCome> all = outlook().toCome();
    return all.subList(0, Math.min(DAYS, all.size()));
  }

  /** The mark for a coming day's rain, on one scale for all of them. */
  public String rainMark(DayToCome day) {
    List<Spread> rain = comingDays().stream().map(DayToCome::rainMm).toList();
    return RangeMark.over(rain, Double.NaN, "of-water").draw(day.rainMm());
  }

  /** The rain of a coming day: most days may stay dry, so the upper end is what matters. */
  public String rain(DayToCome day) {
    Spread rain = day.rainMm();
    if (rain.high() < 0.5) {
      return "dry";
    }
    return units().water(rain).range();
  }

  /** Quantities in the units of this page's reader. */
  public UnitWords units() {
    return new UnitWords(call().units());
  }

  private Call call() {
    return round.lawns().get(0).call();
  }

  private Outlook outlook() {
    return call().outlook();
  }
}
