package leafturn.web.form;

import java.util.List;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * A field of a form. Immutable; the methods that set something give a changed copy.
 *
 * @param path where its value stands in the sheet's JSON document, for instance {@code
 *     soil.organicMatterPercent} or {@code feeding[0].on}; also its name in the form
 * @param label what to call it
 * @param type how it is entered
 * @param measure what a number measures, or null
 * @param unit unit of a number that is the same for everyone; may be empty
 * @param hint what to enter, or which default stands in and why; may be empty
 * @param choices what can be chosen, for {@link Type#ONE_OF} and {@link Type#SOME_OF}; what is
 *     offered, for {@link Type#TEXT}
 * @param required true when it cannot be left empty
 */
public record Field(
    String path,
    String label,
    Type type,
    @Nullable Measure measure,
    String unit,
    String hint,
    List<Choice> choices,
    boolean required) {

  /** How a field is entered. */
  public enum Type {
    TEXT,
    LONG_TEXT,
    NUMBER,
    /** Numbers in one line with gaps or semicolons between them. */
    NUMBERS,
    DATE,
    TIME,
    FLAG,
    ONE_OF,
    SOME_OF,
    /** A secret that is typed and never shown again. */
    PASSWORD,
    /** A file to be sent along; it is no part of the document. */
    FILE,
    /** The outline of a lawn: a list of corners with a drawing beside it. */
    OUTLINE,
    HIDDEN
  }

  /**
   * @param value what is kept
   * @param words what is shown
   */
  public record Choice(String value, String words) {
    /** A choice that is kept as it is shown. */
    public static Choice of(String words) {
      return new Choice(words, words);
    }
  }

  public Field {
    choices = List.copyOf(choices);
  }

  /** A line of text. */
  public static Field text(String path, String label) {
    return of(path, label, Type.TEXT);
  }

  /** A line of text, for which some are offered. */
  public static Field text(String path, String label, List<Choice> offered) {
    return new Field(path, label, Type.TEXT, null, "", "", offered, false);
  }

  /** Several lines of text. */
  public static Field longText(String path, String label) {
    return of(path, label, Type.LONG_TEXT);
  }

  /** A number in the reader's unit. */
  public static Field number(String path, String label, Measure measure) {
    return new Field(path, label, Type.NUMBER, measure, "", "", List.of(), false);
  }

  /** A number whose unit is the same for everyone. */
  public static Field number(String path, String label, String unit) {
    return new Field(path, label, Type.NUMBER, null, unit, "", List.of(), false);
  }

  /** Several numbers in the reader's unit. */
  public static Field numbers(String path, String label, Measure measure) {
    return new Field(path, label, Type.NUMBERS, measure, "", "", List.of(), false);
  }

  /** A day of the calendar. */
  public static Field date(String path, String label) {
    return of(path, label, Type.DATE);
  }

  /** A time of day. */
  public static Field time(String path, String label) {
    return of(path, label, Type.TIME);
  }

  /** Yes or no. */
  public static Field flag(String path, String label) {
    return of(path, label, Type.FLAG);
  }

  /**
   * One of several, kept as a number where every choice is one, and as a yes or no where the
   * choices are true and false; the first is taken where nothing was chosen and the field is
   * required.
   */
  public static Field oneOf(String path, String label, List<Choice> choices) {
    return new Field(path, label, Type.ONE_OF, null, "", "", choices, false);
  }

  /** Any of several. */
  public static Field someOf(String path, String label, List<Choice> choices) {
    return new Field(path, label, Type.SOME_OF, null, "", "", choices, false);
  }

  /** A secret, which a page never sends back. */
  public static Field password(String path, String label) {
    return of(path, label, Type.PASSWORD);
  }

  /** A file to be sent along. */
  public static Field file(String path, String label) {
    return of(path, label, Type.FILE);
  }

  /** The outline of a lawn; its page needs the module {@code outline.js}. */
  public static Field outline(String path, String label) {
    return of(path, label, Type.OUTLINE);
  }

  /** A value that is not shown. */
  public static Field hidden(String path) {
    return of(path, "", Type.HIDDEN);
  }

  private static Field of(String path, String label, Type type) {
    return new Field(path, label, type, null, "", "", List.of(), false);
  }

  /** This field with a hint. */
  public Field hint(String words) {
    return new Field(path, label, type, measure, unit, words, choices, required);
  }

  /** This field, not to be left empty. */
  public Field needed() {
    return new Field(path, label, type, measure, unit, hint, choices, true);
  }

  /** The unit beside a number; empty where there is none. */
  public String unit(Units units) {
    return measure == null ? unit : measure.unit(units).symbol();
  }

  /** The unit as it stands after "in" beside a label; empty where there is none. */
  public String unitAfterIn(Units units) {
    String unit = unit(units);
    return unit.equals("in") ? "inches" : unit;
  }

  /** Its id in a page, and the stem of those of its hint and fault. */
  public String id() {
    return "f-" + path.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("-$", "");
  }

  /** The keyboard a phone should bring up. */
  public String inputMode() {
    return type == Type.NUMBER ? "decimal" : "text";
  }
}
