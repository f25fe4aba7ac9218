package leafturn.records.sheet;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.MonthDay;
import java.util.HashMap;
import java.util.Map;
import leafturn.model.lawn.CalendarDay;
import leafturn.records.Choice;
import leafturn.records.ProgrammeFields;

/** Random programmes of lawns. */
final class AnyProgramme {
  private final AnyValue any;

  AnyProgramme(AnyValue any) {
    this.any = any;
  }

  ProgrammeSheet programme(String lawn) {
    return new ProgrammeSheet(
        lawn,
        any.maybe(any::text),
        any.day(),
        new ProgrammeFields.Mowing(
            any.maybe(() -> any.number(3, 200)),
            heights(),
            any.maybe(this::trigger),
            any.maybe(() -> calendarDay(1, 6)),
            any.maybe(() -> calendarDay(7, 12)),
            clippings()),
        any.list(5, this::feeding),
        new ProgrammeFields.Irrigation(any.maybe(() -> any.number(0, 1.5))),
        any.maybe(any::text),
        any.some(DayOfWeek.class),
        any.list(6, () -> any.number(3, 200)),
        any.maybe(any::note));
  }

  private Map<String, Double> heights() {
    Map<String, Double> heights = new HashMap<>();
    for (Month month : any.some(Month.class)) {
      heights.put(Choice.word(month), any.number(3, 200));
    }
    return heights;
  }

  private ProgrammeFields.Clippings clippings() {
    return any.yes()
        ? new ProgrammeFields.Clippings(null, any.yes())
        : new ProgrammeFields.Clippings(any.maybe(() -> any.number(0, 1)), null);
  }

  private ProgrammeFields.Trigger trigger() {
    return any.yes()
        ? new ProgrammeFields.Trigger(any.whole(1, 366), null)
        : new ProgrammeFields.Trigger(null, true);
  }

  private CalendarDay calendarDay() {
    return calendarDay(1, 12);
  }

  /** A day of some months, by its number or its date; a season of one day is none. */
  private CalendarDay calendarDay(int firstMonth, int lastMonth) {
    return any.yes()
        ? CalendarDay.ofYear(any.whole(30 * firstMonth - 29, 30 * lastMonth))
        : CalendarDay.on(MonthDay.of(any.whole(firstMonth, lastMonth), any.whole(1, 28)));
  }

  private ProgrammeFields.Feeding feeding() {
    boolean byNumber = any.yes();
    return new ProgrammeFields.Feeding(
        byNumber ? any.whole(1, 366) : null,
        byNumber ? null : calendarDay(),
        any.maybe(() -> any.number(0, 100)),
        any.maybe(() -> any.number(0, 100)),
        any.maybe(() -> any.number(0, 100)),
        any.maybe(() -> any.number(0, 100)));
  }
}
