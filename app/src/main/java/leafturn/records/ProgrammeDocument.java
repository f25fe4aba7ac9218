package leafturn.records;

import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Programme;

/** A programme as the fields {@code mowing}, {@code feeding} and {@code irrigation} of a lawn. */
public final class ProgrammeDocument {
  private static final DateTimeFormatter MONTH_DAY = DateTimeFormatter.ofPattern("MM-dd");

  private ProgrammeDocument() {}

  /** The fields in their order; what is nothing or usual is left out. */
  public static Map<String, Object> of(Programme programme) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("mowing", mowing(programme.mowing()));
    List<Object> feeding = new ArrayList<>();
    programme.feedings().forEach(each -> feeding.add(feeding(each)));
    fields.put("feeding", feeding);
    fields.put("irrigation", Map.of("shareOfDemand", programme.irrigationShareOfDemand()));
    return fields;
  }

  private static Map<String, Object> mowing(Programme.Mowing mowing) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("heightMm", mowing.heightMm());
    Map<String, Object> months = new LinkedHashMap<>();
    for (Month month : Month.values()) {
      Double own = mowing.heights().byMonth().get(month);
      if (own != null) {
        months.put(Choice.word(month), own);
      }
    }
    if (!months.isEmpty()) {
      fields.put("heightMmByMonth", months);
    }
    fields.put(
        "trigger",
        mowing.byOneThirdRule()
            ? Map.of("oneThird", true)
            : Map.of("everyDays", mowing.everyDays()));
    fields.put("from", day(mowing.from()));
    fields.put("to", day(mowing.to()));
    fields.put(
        "clippings",
        mowing.clippings().byRules()
            ? Map.of("byRules", true)
            : Map.of("returnedShare", mowing.returnedShare()));
    return fields;
  }

  private static Map<String, Object> feeding(Programme.Feeding feeding) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put(feeding.on().monthDay() == null ? "dayOfYear" : "on", day(feeding.on()));
    putIfAny(fields, "fastNGPerM2", feeding.fastNGPerM2());
    putIfAny(fields, "slowNGPerM2", feeding.slowNGPerM2());
    putIfAny(fields, "pGPerM2", feeding.pGPerM2());
    putIfAny(fields, "kGPerM2", feeding.kGPerM2());
    return fields;
  }

  private static void putIfAny(Map<String, Object> fields, String name, double amount) {
    if (amount > 0) {
      fields.put(name, amount);
    }
  }

  private static Object day(CalendarDay day) {
    return day.monthDay() == null ? day.dayOfYear() : MONTH_DAY.format(day.monthDay());
  }
}
