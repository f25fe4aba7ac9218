package leafturn.web.sheet;

import java.util.List;
import leafturn.web.form.Field;

/** Choices of an enumeration, as forms show them. */
public final class Words {
  /** Told one way or the other, or not told. */
  public static final List<Field.Choice> YES_OR_NO =
      List.of(new Field.Choice("true", "yes"), new Field.Choice("false", "no"));

  private Words() {}

  /** Every constant by its word. */
  public static <E extends Enum<E>> List<Field.Choice> of(Class<E> type) {
    return leafturn.records.Choice.words(type).stream().map(Words::choice).toList();
  }

  /** A choice kept as its word and shown with a capital. */
  static Field.Choice choice(String word) {
    return new Field.Choice(word, capital(word));
  }

  /** With a capital letter first; pH stays as it is. */
  static String capital(String word) {
    return word.isEmpty() || word.startsWith("pH")
        ? word
        : Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
