package leafturn.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leafturn.advice.call.Call;
import leafturn.advice.call.Call.Today;
import leafturn.advice.call.DryHours;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.Option;
import leafturn.advice.call.Outlook.PastDay;
import leafturn.advice.call.OwnGrowth;
import leafturn.advice.call.Reason;
import leafturn.advice.call.Spread;
import leafturn.quantity.DisplayNumber;
import leafturn.reports.ClippingsFate;
import leafturn.reports.DayWords;
import leafturn.reports.OutcomeWords;
import leafturn.reports.ShortAnswer;
import leafturn.reports.UnitWords;
import leafturn.reports.figure.SeasonFigure;
import leafturn.reports.figure.SeasonFormat;
import leafturn.reports.figure.TurfSketch;
import leafturn.web.sheet.NoteWords;
import org.jspecify.annotations.Nullable;

/** One lawn's call and season, in words and figures. */
public final class LawnPage {
  private static final int LONG_ANSWER = 60;

  private final LawnOnRound lawn;
  private final ChoiceTables choices;
  private final ChoiceTables waits;

  LawnPage(LawnOnRound lawn) {
    this.lawn = lawn;
    choices = new ChoiceTables(lawn, bestFirst(lawn.call().options()));
    waits = new ChoiceTables(lawn, lawn.call().waits());
  }

  private static List<Option> bestFirst(List<Option> options) {
    return options.stream().sorted(Comparator.comparing(option -> !option.best())).toList();
  }

  /** True where a reason speaks against returning, on a day on which returning is a question. */
  public boolean speaksAgainst(Reason reason) {
    return reason.against() && lawn.needsDecision();
  }

  public LawnOnRound lawn() {
    return lawn;
  }

  public Call call() {
    return lawn.call();
  }

  /** What to do in short, and the rest of the answer. */
  public ShortAnswer answer() {
    return ShortAnswer.of(call().sentence());
  }

  /** True where what to do takes more than a line or two of large type. */
  public boolean longAnswer() {
    return answer().headline().length() > LONG_ANSWER;
  }

  /** Quantities in the units of this page's reader. */
  public UnitWords units() {
    return new UnitWords(call().units());
  }

  public String sketch() {
    Today today = call().today();
    double tallest = Math.max(today.heightMm(), today.cutHeightMm());
    return new TurfSketch(330, 210, tallest).drawLabelled(today, units());
  }

  public ChoiceTable cut() {
    return choices.cut();
  }

  /** Returning on one of the next days, for those who want another day. */
  public ChoiceTable waits() {
    return waits.cut();
  }

  public ChoiceTable nutrients() {
    return choices.nutrients();
  }

  public ChoiceTable lasting() {
    return choices.lasting();
  }

  /** Today and tomorrow by the hour, or null where none were reckoned. */
  public @Nullable HoursTable hours() {
    DryHours hours = call().particulars().byTheHour();
    return hours == null ? null : new HoursTable(hours, call().units());
  }

  /** Past cuts that have not broken down, a line each. */
  public List<String> lying() {
    return call().particulars().lying().stream()
        .map(cut -> OutcomeWords.lying(cut, units()))
        .toList();
  }

  /** How the lawn grew against what was expected of it. */
  public OwnGrowth growth() {
    return call().outlook().growth();
  }

  /** The height that was expected of a reading, with its range. */
  public String expected(OwnGrowth.PastHeight height) {
    Spread range = height.expectedMm();
    return units().height(range.middle())
        + " ("
        + units().heightNumber(range.low())
        + "–"
        + units().heightNumber(range.high())
        + ")";
  }

  public boolean hasSeason() {
    return !call().outlook().past().isEmpty();
  }

  /** The season figure in one of its shapes; the style sheet shows the one that fits. */
  public String season(SeasonFormat format) {
    return SeasonFigure.draw(call(), format);
  }

  /** Where a reason's limit comes from, and how far it can be trusted. */
  public String basis(Reason reason) {
    List<String> parts = new ArrayList<>();
    for (String part : List.of(reason.threshold(), reason.source(), reason.status())) {
      if (!part.isBlank() && !parts.contains(part)) {
        parts.add(part);
      }
    }
    return String.join(" · ", parts);
  }

  /** What happened on a day beside growth: "mown from 98 mm, returned", or nothing. */
  public String mowing(PastDay day) {
    if (Double.isNaN(day.heightBeforeCutMm())) {
      return "";
    }
    return "mown from "
        + units().height(day.heightBeforeCutMm())
        + ", "
        + ClippingsFate.words(day.returned(), units().units());
  }

  /** What the model filled in or does not know, in the words of the forms. */
  public List<String> notes() {
    NoteWords words = new NoteWords(units().units());
    return call().notes().stream().map(words::of).toList();
  }

  /** The lawn in a line: grass, area. */
  public String kind() {
    Double area = lawn.description().areaM2();
    String grass = lawn.description().grass();
    return area == null ? grass : grass + ", " + units().area(area);
  }

  /** The clump index above which clumps are likely, as this call's rules have it. */
  public String clumpLimit() {
    return DisplayNumber.plain(call().limits().clumpIndex());
  }

  /** How the spreads are to be read. */
  public String howToRead() {
    return SeasonsWords.howToRead(call().possibleSeasons());
  }

  public String day(PastDay day) {
    return DayWords.shortDay(day.day());
  }
}
