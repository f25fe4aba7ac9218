package leafturn.records.round;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import leafturn.advice.call.CallRules;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.RuleSheet;

/** The rules of a book: the standard ones, and the thresholds its people have set. */
public final class BookRules {
  private BookRules() {}

  /** The rules of the book, to be shown; two thresholds may be out of order. */
  public static CallRules of(BookReading reading) {
    return CallRules.standard().unordered(LawnCalls.thresholds(reading));
  }

  /**
   * Refuses thresholds that are out of order.
   *
   * @throws InputException with one sentence for each two of them
   */
  public static void check(Map<String, Double> thresholds) {
    try {
      CallRules.standard().with(thresholds);
    } catch (IllegalArgumentException wrong) {
      throw new InputException(
          String.valueOf(wrong.getMessage())
              .lines()
              .map(fault -> Character.toUpperCase(fault.charAt(0)) + fault.substring(1) + ".")
              .toList());
    }
  }

  /**
   * Refuses the thresholds of the book where they are out of order.
   *
   * @throws InputException with one sentence for each two of them
   */
  public static void check(BookReading reading) {
    check(LawnCalls.thresholds(reading));
  }

  /** The sheet on which a threshold is set, withdrawn or not; empty where it never was. */
  public static Optional<Sheet<RuleSheet>> sheet(BookReading reading, String rule) {
    return reading.find(Kind.RULE, id(rule));
  }

  /** The thresholds of the book with one of them set. */
  public static Map<String, Double> with(BookReading reading, RuleSheet set) {
    Map<String, Double> thresholds = new HashMap<>(LawnCalls.thresholds(reading));
    thresholds.putAll(set.thresholds());
    return thresholds;
  }

  /**
   * Sets a threshold.
   *
   * @param basedOn version of its sheet that the change was made from, 0 where there was none
   * @throws leafturn.records.book.StaleSheetException when somebody else has set it meanwhile
   * @throws InputException when thresholds would be out of order
   */
  public static void set(BookWriting writing, RuleSheet set, int basedOn) {
    check(with(writing, set));
    String id = id(set.rule());
    if (basedOn == 0) {
      writing.add(Kind.RULE, id, set);
      return;
    }
    Sheet<RuleSheet> revised = writing.revise(Kind.RULE, id, basedOn, set);
    if (revised.withdrawn()) {
      writing.restore(Kind.RULE, id, revised.version());
    }
  }

  /**
   * Goes back to the standard threshold.
   *
   * @throws leafturn.records.book.StaleSheetException when somebody else has set it meanwhile
   */
  public static void unset(BookWriting writing, String rule, int basedOn) {
    writing.withdraw(Kind.RULE, id(rule), basedOn);
    check(writing);
  }

  private static String id(String rule) {
    byte[] name = ("leafturn rule " + rule).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name).toString();
  }
}
