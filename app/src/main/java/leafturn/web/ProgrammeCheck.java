package leafturn.web;

import java.time.MonthDay;
import java.time.format.DateTimeParseException;
import java.util.stream.Stream;
import leafturn.model.lawn.CalendarDay;
import leafturn.records.MowingsAYear;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import org.jspecify.annotations.Nullable;

/**
 * Checks of a programme what a reader of documents lets pass, as a book may hold it already. It
 * looks at what was typed, so that such a thing is told at once with whatever else is wrong.
 */
final class ProgrammeCheck {
  private static final String FROM = "mowing.from";
  private static final String TO = "mowing.to";

  private ProgrammeCheck() {}

  /** A form of a programme with a fault beside each feed without amount and a season of one day. */
  static Form told(Form form) {
    Form told =
        MowingsAYear.isSingleDay(calendarDay(form.value(FROM)), calendarDay(form.value(TO)))
            ? form.faulted(TO, MowingsAYear.SINGLE_DAY)
            : form;
    for (Field field : form.shape().fields()) {
      String path = field.path();
      if (path.matches("feeding\\[\\d+]\\.(on|dayOfYear)")
          && !form.value(path).isEmpty()
          && amounts(path).map(form::value).allMatch(String::isEmpty)) {
        String sentence =
            "this feed has a day and no amount; give at least one amount, or empty the row.";
        told = told.faulted(amounts(path).findFirst().orElseThrow(), sentence);
      }
    }
    return told;
  }

  private static Stream<String> amounts(String dayPath) {
    String row = dayPath.substring(0, dayPath.lastIndexOf('.') + 1);
    return Stream.of("fastNGPerM2", "slowNGPerM2", "pGPerM2", "kGPerM2").map(row::concat);
  }

  /** The day that a field holds, or null where it holds none. */
  private static @Nullable CalendarDay calendarDay(String typed) {
    try {
      return CalendarDay.on(MonthDay.parse("--" + typed));
    } catch (DateTimeParseException noDay) {
      return null;
    }
  }
}
