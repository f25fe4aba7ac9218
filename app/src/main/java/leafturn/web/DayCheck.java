package leafturn.web;

import java.time.LocalDate;
import java.util.Set;
import leafturn.records.Dates;
import leafturn.records.sheet.Kind;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import org.jspecify.annotations.Nullable;

/**
 * Checks that what a form tells as done or seen was not still to come. It looks at what was typed,
 * so that such a day is told at once with whatever else is wrong. Programmes, forecasts and plans
 * of trials may tell of days ahead.
 */
final class DayCheck {
  private static final Set<Kind<?>> OF_THE_PAST =
      Set.of(
          Kind.LAWN,
          Kind.HEAP,
          Kind.INTAKE,
          Kind.VISIT,
          Kind.SOIL_TEST,
          Kind.THATCH,
          Kind.PHOTOGRAPH,
          Kind.LOG,
          Kind.TRIAL_EVENT);

  private DayCheck() {}

  /**
   * A form with a fault beside each day that cannot be.
   *
   * @param kind of the sheet it makes
   * @param today the day it is where the sheet belongs
   * @param place what the sheet belongs to, in a word
   */
  static Form told(Form form, Kind<?> kind, LocalDate today, String place) {
    if (!OF_THE_PAST.contains(kind)) {
      return form;
    }
    Form told = form;
    for (Field field : form.shape().fields()) {
      LocalDate day = day(form, field);
      if (day != null && day.isAfter(today)) {
        told = told.faulted(field.path(), LogCheck.notYet(day, today, place));
      }
    }
    return kind == Kind.HEAP ? notBeforeItsHeap(told) : told;
  }

  private static Form notBeforeItsHeap(Form form) {
    LocalDate started = Dates.parse(form.value("started"));
    Form told = form;
    for (Field field : form.shape().fields()) {
      LocalDate day = field.path().startsWith("heat[") ? day(form, field) : null;
      if (started != null && day != null && day.isBefore(started)) {
        String sentence =
            "%s lies before the day on which the heap was begun, %s; correct one of the two days."
                .formatted(DayWords.dayAndYear(day), DayWords.dayAndYear(started));
        told = told.faulted(field.path(), sentence);
      }
    }
    return told;
  }

  private static @Nullable LocalDate day(Form form, Field field) {
    return field.type() == Field.Type.DATE ? Dates.parse(form.value(field.path())) : null;
  }
}
