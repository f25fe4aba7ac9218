package leafturn.records.sheet;

import java.util.regex.Pattern;

/** Names as people read them: how many spaces stand between two words tells nothing apart. */
public final class Names {
  private static final Pattern SPACES = Pattern.compile("(?U)\\s+");

  private Names() {}

  /** A name without spaces at its ends and with a single one between its words. */
  public static String tidied(String name) {
    return SPACES.matcher(name).replaceAll(" ").strip();
  }

  /** Whether nobody could tell two names apart: spaces and capitals do not count. */
  public static boolean areSame(String one, String other) {
    return tidied(one).equalsIgnoreCase(tidied(other));
  }
}
