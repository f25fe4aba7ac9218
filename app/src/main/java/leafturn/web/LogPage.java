package leafturn.web;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.reports.DayWords;
import leafturn.web.form.Form;
import org.jspecify.annotations.Nullable;

/**
 * The log page of a lawn: everything that can be logged, each with its form.
 *
 * @param lawn the lawn, or null for the page that a phone keeps for any lawn
 * @param units in which the person writes
 * @param rows what can be logged
 */
public record LogPage(@Nullable LoggedLawn lawn, Units units, List<Row> rows) {
  /**
   * Something that can be logged.
   *
   * @param key its name in requests
   * @param heading what was done
   * @param usual true for what is usually done here
   * @param words what saving means as the form stands; may be empty
   * @param caution what to mind; may be empty
   * @param form its form
   * @param id id of the entry that it would make, so that sending it twice makes one
   * @param checks what the page says of its fields without asking the book
   */
  public record Row(
      String key,
      String heading,
      boolean usual,
      String words,
      String caution,
      Form form,
      String id,
      PhoneChecks checks) {
    /** True for the ways to mow, which come first. */
    public boolean isMowing() {
      return LogChoice.named(key, form.units()).map(LogChoice::isMowing).orElse(false);
    }
  }

  static LogPage blank(@Nullable LoggedLawn lawn, Units units) {
    List<Row> rows = new ArrayList<>();
    double usualShare = lawn == null ? 1 : lawn.returnedShare();
    for (LogChoice choice : LogChoice.usualFirst(usualShare, units)) {
      Form form = choice.blank(units, lawn);
      rows.add(row(choice, lawn, form, UUID.randomUUID().toString()));
    }
    return new LogPage(lawn, units, rows);
  }

  /** This page with a form as it was sent, in place of the blank one. */
  LogPage with(LogChoice sent, Form form, String id) {
    return new LogPage(
        lawn,
        units,
        rows.stream()
            .map(row -> row.key().equals(sent.key()) ? row(sent, lawn, form, id) : row)
            .toList());
  }

  private static Row row(LogChoice choice, @Nullable LoggedLawn lawn, Form form, String id) {
    boolean usual = lawn != null && LogChoice.usual(lawn.returnedShare()).equals(choice.key());
    String words = lawn == null ? "" : choice.words(form.units(), lawn);
    return new Row(
        choice.key(),
        choice.heading(),
        usual,
        words,
        choice.caution(),
        form,
        id,
        PhoneChecks.of(choice, form.units()));
  }

  /** The day it is at the lawn, in words; empty where that is not known yet. */
  public String today() {
    return lawn == null ? "" : DayWords.day(lawn.today());
  }

  /** The day that is always today here; null where the calendar decides. */
  public @Nullable String fixedDay() {
    return lawn == null || !lawn.dayFixed() ? null : lawn.today().toString();
  }

  /** The units as requests name them. */
  public String unitsWord() {
    return units == Units.US ? "us" : "metric";
  }

  /** The unit of the heights. */
  public String heightUnit() {
    return Measure.HEIGHT.unit(units).symbol();
  }
}
