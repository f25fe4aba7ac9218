package leafturn.reports.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRule;
import leafturn.advice.call.Choice;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.Spread;
import leafturn.quantity.ShareWords;
import leafturn.reports.DayWords;
import leafturn.reports.LastSafeDay;
import leafturn.reports.MowBy;
import org.jspecify.annotations.Nullable;

/** The days by which lawns want mowing, as a calendar to subscribe to. */
public final class MowByCalendar {
  private static final LocalDate FIRST_DAY = LocalDate.of(2000, 1, 1);

  private final Instant madeAt;
  private final List<DayEvent> events = new ArrayList<>();

  /**
   * @param madeAt when the calls were made
   */
  public MowByCalendar(Instant madeAt) {
    this.madeAt = madeAt;
  }

  /**
   * Adds a lawn, unless no day is in sight by which it wants mowing. A lawn to be left alone has a
   * day only within its mowing season, and only one that is still to come: else the same event
   * would stand on every day anew.
   *
   * @param id UUID of the lawn: the event of a lawn stays the same one when its day moves
   * @param revision never falls, and rises whenever something that the call rests on was changed
   */
  public MowByCalendar add(String id, long revision, LawnOnRound lawn) {
    Call call = lawn.call();
    Spread mowBy = call.mowBy();
    if (mowBy != null && wantsMowing(call, mowBy)) {
      LocalDate safe = safeDay(call);
      LocalDate day = safe == null ? DayWords.after(call.on(), mowBy.middle()) : safe;
      // A call changes with what was entered, and with each day that passes.
      long sequence = revision + Math.max(0, call.on().toEpochDay() - FIRST_DAY.toEpochDay());
      events.add(new DayEvent(id, sequence, madeAt, day, summary(lawn), description(call)));
    }
    return this;
  }

  /**
   * The last safe day, as the lawn's page tells it: by the day in half of the possible seasons too
   * much would come off in the other half. Null where there is none, and where it is past for a
   * lawn that is left alone.
   */
  private static @Nullable LocalDate safeDay(Call call) {
    LocalDate day = call.particulars().lastSafeDay();
    boolean past = day != null && !day.isAfter(call.on());
    return past && call.choice() == Choice.LEAVE_ALONE ? null : day;
  }

  private static boolean wantsMowing(Call call, Spread mowBy) {
    return call.choice() != Choice.LEAVE_ALONE
        || (DayWords.after(call.on(), mowBy.middle()).isAfter(call.on())
            && call.reasons().stream()
                .noneMatch(reason -> reason.ruleId().equals(CallRule.SEASON.id())));
  }

  /** The calendar as iCalendar text. */
  public String text() {
    return CalendarText.of("Mow-by days", events);
  }

  private static String summary(LawnOnRound lawn) {
    String share = ShareWords.of(lawn.call().limits().heightTakenFraction());
    String what = share + " of the height would come off";
    if (safeDay(lawn.call()) != null) {
      what = "mow by this day, the last safe one";
    } else if (lawn.call().choice() != Choice.LEAVE_ALONE) {
      what = "mow by this day";
    }
    return lawn.lawnName() + ", " + lawn.propertyName() + ": " + what;
  }

  private static String description(Call call) {
    return call.sentence()
        + "\n"
        + (safeDay(call) == null ? "" : LastSafeDay.words(call) + ".\n")
        + MowBy.explained(call)
        + "; reckoned over "
        + call.possibleSeasons().count()
        + " possible seasons.\nAn estimate of a daily model, made for "
        + DayWords.dayAndYear(call.on())
        + "; it moves with the weather and with what is logged.";
  }
}
