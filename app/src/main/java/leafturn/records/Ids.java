package leafturn.records;

import java.util.regex.Pattern;

/** Ids of sheets as documents carry them. */
public final class Ids {
  private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

  private Ids() {}

  /** True for a UUID in lower case. */
  public static boolean isId(String text) {
    return ID.matcher(text).matches();
  }
}
