package leafturn.trials.analysis.data;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Numbers as they may stand in a cell. */
public final class Numbers {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,30}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][+-]?\\d{1,3})?");

  private Numbers() {}

  /** The number, or null where the text is none. */
  public static @Nullable Double parse(String text) {
    return NUMBER.matcher(text).matches() ? Double.valueOf(text) : null;
  }
}
