package leafturn.records;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Programme;
import org.jspecify.annotations.Nullable;

/** Mowing, feeding and irrigation of a lawn description. */
final class ProgrammeSection {
  private static final int FIRST_MOWING_DAY_OF_YEAR = 75;
  private static final int LAST_MOWING_DAY_OF_YEAR = 345;
  private static final int ONE_THIRD_RULE = 0;
  private static final Pattern MONTH_DAY = Pattern.compile("(\\d{2})-(\\d{2})");
  private static final String CALENDAR_DAY = "give \"MM-DD\" or a day of the year from 1 to 366.";

  private final JsonObject root;
  private final double usualHeightMm;
  private final List<String> notes;

  ProgrammeSection(JsonObject root, double usualHeightMm, List<String> notes) {
    this.root = root;
    this.usualHeightMm = usualHeightMm;
    this.notes = notes;
  }

  /** The programme, or null when a feeding has no day, which was then reported. */
  @Nullable Programme read() {
    Programme.Mowing mowing = mowing(root.object("mowing"));
    List<Programme.Feeding> feedings = new ArrayList<>();
    boolean complete = true;
    for (JsonObject feeding : root.objects("feeding")) {
      Programme.Feeding read = feeding(feeding);
      if (read == null) {
        complete = false;
      } else {
        feedings.add(read);
      }
    }
    double irrigation = irrigationShareOfDemand();
    return complete ? new Programme(mowing, feedings, irrigation) : null;
  }

  private Programme.Mowing mowing(JsonObject section) {
    Defaults defaults = new Defaults("mowing");
    double height =
        defaults.number(section.number("heightMm", 3, 200, "mm"), usualHeightMm, "heightMm", "mm");
    int everyDays =
        defaults.value(trigger(section), ONE_THIRD_RULE, "trigger by the one-third rule");
    CalendarDay from =
        defaults.value(
            calendarDay(section, "from"),
            CalendarDay.ofYear(FIRST_MOWING_DAY_OF_YEAR),
            "from day " + FIRST_MOWING_DAY_OF_YEAR);
    CalendarDay to =
        defaults.value(
            calendarDay(section, "to"),
            CalendarDay.ofYear(LAST_MOWING_DAY_OF_YEAR),
            "to day " + LAST_MOWING_DAY_OF_YEAR);
    JsonObject clippings = section.object("clippings");
    double returned =
        defaults.number(
            clippings.number("returnedShare", 0, 1, ""), 1, "clippings.returnedShare", "");
    clippings.refuseOthers();
    section.refuseOthers();
    notes.addAll(defaults.notes());
    return new Programme.Mowing(height, everyDays, from, to, returned);
  }

  /** Days between cuts, 0 for the one-third rule, or null when it is missing or wrong. */
  private static @Nullable Integer trigger(JsonObject mowing) {
    JsonObject trigger = mowing.object("trigger");
    if (!mowing.holdsObject("trigger")) {
      return null;
    }
    Integer everyDays = trigger.wholeNumber("everyDays", 1, 366, "days");
    Boolean oneThird = trigger.flag("oneThird");
    trigger.refuseOthers();
    boolean byInterval = trigger.has("everyDays");
    boolean byRule = trigger.has("oneThird");
    if (byInterval && byRule) {
      trigger.fault("oneThird", "it stands beside everyDays; keep one of them.");
    } else if (!byInterval && !byRule) {
      trigger.missing("everyDays", "{\"everyDays\": 7} or {\"oneThird\": true}");
    } else if (oneThird != null && !oneThird) {
      trigger.fault("oneThird", "false is no trigger; give true, or everyDays instead.");
    } else if (oneThird != null) {
      return ONE_THIRD_RULE;
    }
    return everyDays;
  }

  private static Programme.@Nullable Feeding feeding(JsonObject feeding) {
    CalendarDay day = feedingDay(feeding);
    double fast = amount(feeding, "fastNGPerM2");
    double slow = amount(feeding, "slowNGPerM2");
    double phosphorus = amount(feeding, "pGPerM2");
    double potassium = amount(feeding, "kGPerM2");
    feeding.refuseOthers();
    return day == null ? null : new Programme.Feeding(day, fast, slow, phosphorus, potassium);
  }

  private static @Nullable CalendarDay feedingDay(JsonObject feeding) {
    Integer dayOfYear = feeding.wholeNumber("dayOfYear", 1, 366, "day of the year");
    CalendarDay date = calendarDay(feeding, "on");
    boolean byNumber = feeding.has("dayOfYear");
    boolean byDate = feeding.has("on");
    if (byNumber && byDate) {
      feeding.fault("on", "it stands beside dayOfYear; keep one of them.");
      return null;
    }
    if (!byNumber && !byDate) {
      feeding.missing("dayOfYear", "a day of the year from 1 to 366, or on with \"MM-DD\"");
    }
    return dayOfYear == null ? date : CalendarDay.ofYear(dayOfYear);
  }

  /** Nothing of an element is what most products give, so a missing amount is 0 without a note. */
  private static double amount(JsonObject feeding, String name) {
    Double amount = feeding.number(name, 0, 100, "g/m2");
    return amount == null ? 0 : amount;
  }

  private double irrigationShareOfDemand() {
    Defaults defaults = new Defaults("irrigation");
    JsonObject irrigation = root.object("irrigation");
    double share =
        defaults.number(irrigation.number("shareOfDemand", 0, 1.5, ""), 0, "shareOfDemand", "");
    irrigation.refuseOthers();
    notes.addAll(defaults.notes());
    return share;
  }

  private static @Nullable CalendarDay calendarDay(JsonObject section, String name) {
    JsonValue value = section.take(name);
    if (value == null) {
      return null;
    }
    if (value.content() instanceof Double) {
      Integer dayOfYear = section.wholeNumber(name, 1, 366, "day of the year");
      return dayOfYear == null ? null : CalendarDay.ofYear(dayOfYear);
    }
    Matcher parts = MONTH_DAY.matcher(value.content() instanceof String text ? text : "");
    if (parts.matches()) {
      try {
        int month = Integer.parseInt(parts.group(1));
        return CalendarDay.on(MonthDay.of(month, Integer.parseInt(parts.group(2))));
      } catch (DateTimeException e) {
        section.fault(name, value.shown() + " is not a day of any year; " + CALENDAR_DAY);
        return null;
      }
    }
    section.fault(name, value.shown() + " is not a day; " + CALENDAR_DAY);
    return null;
  }
}
