package leafturn.records;

import java.time.DateTimeException;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Programme;
import org.jspecify.annotations.Nullable;

/**
 * What is done to a lawn year after year as somebody described it; what was not given is null.
 *
 * @param mowing when and how it is mown
 * @param feeding fertiliser, every year on the same days
 * @param irrigation what is given back of the water demand
 */
public record ProgrammeFields(Mowing mowing, List<Feeding> feeding, Irrigation irrigation) {
  private static final Pattern MONTH_DAY = Pattern.compile("(\\d{2})-(\\d{2})");
  private static final String CALENDAR_DAY = "give \"MM-DD\" or a day of the year from 1 to 366.";

  public ProgrammeFields {
    feeding = List.copyOf(feeding);
  }

  /**
   * @param heightMm cut height, mm, 3 to 200
   * @param heightMmByMonth months cut at a height of their own, by name in small letters, mm, 3 to
   *     200
   * @param trigger when a cut is due
   * @param from first day of the mowing season
   * @param to last day; before {@code from} when the season goes over the new year
   * @param clippings what becomes of the clippings
   */
  public record Mowing(
      @Nullable Double heightMm,
      Map<String, Double> heightMmByMonth,
      @Nullable Trigger trigger,
      @Nullable CalendarDay from,
      @Nullable CalendarDay to,
      Clippings clippings) {
    public Mowing {
      heightMmByMonth = Map.copyOf(heightMmByMonth);
    }

    /** Cut height of a month, mm, or null for the grass's usual one. */
    public @Nullable Double heightMm(Month month) {
      Double own = heightMmByMonth.get(Choice.word(month));
      return own == null ? heightMm : own;
    }
  }

  /**
   * Exactly one of the two.
   *
   * @param everyDays days between cuts, 1 to 365
   * @param oneThird true when a cut is due as soon as it would take a third of the height
   */
  public record Trigger(@Nullable Integer everyDays, @Nullable Boolean oneThird) {}

  /**
   * One of the two at most.
   *
   * @param returnedShare share returned to the turf, 0 to 1
   * @param byRules true when each mowing is decided on its day
   */
  public record Clippings(@Nullable Double returnedShare, @Nullable Boolean byRules) {}

  /**
   * Exactly one of the two days is given; elements in g/m2, 0 to 100 each.
   *
   * @param dayOfYear 1 to 366
   * @param on the same day each year
   * @param fastNGPerM2 N that dissolves within days
   * @param slowNGPerM2 N released over months
   */
  public record Feeding(
      @Nullable Integer dayOfYear,
      @Nullable CalendarDay on,
      @Nullable Double fastNGPerM2,
      @Nullable Double slowNGPerM2,
      @Nullable Double pGPerM2,
      @Nullable Double kGPerM2) {

    /** The day it is given on, or null when it is not known. */
    public @Nullable CalendarDay day() {
      return dayOfYear == null ? on : CalendarDay.ofYear(dayOfYear);
    }
  }

  /**
   * @param shareOfDemand share of the water demand given back, 0 to 1.5
   */
  public record Irrigation(@Nullable Double shareOfDemand) {}

  /** A programme with every field named. */
  public static ProgrammeFields of(Programme programme) {
    Programme.Mowing mowing = programme.mowing();
    Map<String, Double> heights = new LinkedHashMap<>();
    mowing.heights().byMonth().forEach((month, mm) -> heights.put(Choice.word(month), mm));
    boolean byRules = mowing.clippings().byRules();
    return new ProgrammeFields(
        new Mowing(
            mowing.heightMm(),
            heights,
            mowing.byOneThirdRule()
                ? new Trigger(null, true)
                : new Trigger(mowing.everyDays(), null),
            mowing.from(),
            mowing.to(),
            new Clippings(byRules ? null : mowing.returnedShare(), byRules ? true : null)),
        programme.feedings().stream().map(ProgrammeFields::feeding).toList(),
        new Irrigation(programme.irrigationShareOfDemand()));
  }

  /**
   * A programme as a person reads it: days as dates, and no feeding of which nothing is given. A
   * day told by its number has the date of a common year.
   */
  public static ProgrammeFields told(Programme programme) {
    Programme.Mowing mowing = programme.mowing();
    List<Programme.Feeding> feedings = new ArrayList<>();
    for (Programme.Feeding feeding : programme.feedings()) {
      double all =
          feeding.fastNGPerM2() + feeding.slowNGPerM2() + feeding.pGPerM2() + feeding.kGPerM2();
      if (all > 0) {
        feedings.add(
            new Programme.Feeding(
                dated(feeding.on()),
                feeding.fastNGPerM2(),
                feeding.slowNGPerM2(),
                feeding.pGPerM2(),
                feeding.kGPerM2()));
      }
    }
    return of(
        new Programme(
            new Programme.Mowing(
                mowing.heights(),
                mowing.everyDays(),
                dated(mowing.from()),
                dated(mowing.to()),
                mowing.clippings()),
            feedings,
            programme.irrigationShareOfDemand()));
  }

  private static CalendarDay dated(CalendarDay day) {
    return CalendarDay.on(UsualSeason.dated(day));
  }

  private static Feeding feeding(Programme.Feeding feeding) {
    CalendarDay on = feeding.on();
    boolean byNumber = on.monthDay() == null;
    return new Feeding(
        byNumber ? on.dayOfYear() : null,
        byNumber ? null : on,
        any(feeding.fastNGPerM2()),
        any(feeding.slowNGPerM2()),
        any(feeding.pGPerM2()),
        any(feeding.kGPerM2()));
  }

  private static @Nullable Double any(double amount) {
    return amount == 0 ? null : Double.valueOf(amount);
  }

  /** Reads the fields {@code mowing}, {@code feeding} and {@code irrigation} of a description. */
  public static ProgrammeFields read(JsonObject json) {
    Mowing mowing = mowing(json.object("mowing"));
    List<Feeding> feeding = json.objects("feeding").stream().map(ProgrammeFields::feeding).toList();
    JsonObject section = json.object("irrigation");
    Irrigation irrigation = new Irrigation(section.number("shareOfDemand", 0, 1.5, ""));
    section.refuseOthers();
    return new ProgrammeFields(mowing, feeding, irrigation);
  }

  private static Mowing mowing(JsonObject section) {
    Double height = section.number("heightMm", 3, 200, "mm");
    Map<String, Double> heights = heights(section.object("heightMmByMonth"));
    Trigger trigger = trigger(section);
    CalendarDay from = calendarDay(section, "from");
    CalendarDay to = calendarDay(section, "to");
    Clippings clippings = clippings(section.object("clippings"));
    section.refuseOthers();
    return new Mowing(height, heights, trigger, from, to, clippings);
  }

  private static Map<String, Double> heights(JsonObject section) {
    Map<String, Double> heights = new LinkedHashMap<>();
    for (Month month : Month.values()) {
      String name = Choice.word(month);
      Double height = section.number(name, 3, 200, "mm");
      if (height != null) {
        heights.put(name, height);
      }
    }
    section.refuseOthers();
    return heights;
  }

  private static Clippings clippings(JsonObject section) {
    Double returned = section.number("returnedShare", 0, 1, "");
    Boolean byRules = section.flag("byRules");
    if (returned != null && byRules != null && byRules) {
      section.fault("byRules", "it stands beside returnedShare; keep one of them.");
    }
    section.refuseOthers();
    return new Clippings(returned, byRules);
  }

  private static @Nullable Trigger trigger(JsonObject mowing) {
    JsonObject trigger = mowing.object("trigger");
    if (!mowing.holdsObject("trigger")) {
      return null;
    }
    Integer everyDays = trigger.wholeNumber("everyDays", 1, MowingsAYear.MOST_DAYS_APART, "days");
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
    }
    return new Trigger(everyDays, oneThird);
  }

  private static Feeding feeding(JsonObject json) {
    Integer dayOfYear = json.wholeNumber("dayOfYear", 1, 366, "day of the year");
    CalendarDay on = calendarDay(json, "on");
    boolean byNumber = json.has("dayOfYear");
    boolean byDate = json.has("on");
    if (byNumber && byDate) {
      json.fault("on", "it stands beside dayOfYear; keep one of them.");
    } else if (!byNumber && !byDate) {
      json.fault("on", "it is missing; " + CALENDAR_DAY);
    }
    Feeding feeding =
        new Feeding(
            dayOfYear,
            on,
            Amounts.gPerM2(json, "fastNGPerM2"),
            Amounts.gPerM2(json, "slowNGPerM2"),
            Amounts.gPerM2(json, "pGPerM2"),
            Amounts.gPerM2(json, "kGPerM2"));
    json.refuseOthers();
    return feeding;
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
