package leafturn.records;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Fills in what one part of a file leaves out, and says so. */
final class Defaults {
  private final String part;
  private final List<String> taken = new ArrayList<>();

  /**
   * @param part the part of the file the fields stand in, for instance {@code soil}
   */
  Defaults(String part) {
    this.part = part;
  }

  /** The given value, else the default, which is then noted. */
  double number(@Nullable Double given, double otherwise, String name, String unit) {
    if (given != null) {
      return given;
    }
    taken.add(
        "%s %s%s".formatted(name, Numbers.plain(otherwise), unit.isEmpty() ? "" : " " + unit));
    return otherwise;
  }

  /** The given value, else the default, which is then noted in words. */
  <T> T value(@Nullable T given, T otherwise, String inWords) {
    if (given != null) {
      return given;
    }
    taken.add(inWords);
    return otherwise;
  }

  /** One sentence naming every default taken; none when nothing was left out. */
  List<String> notes() {
    return taken.isEmpty()
        ? List.of()
        : List.of("Not given in %s and assumed: %s.".formatted(part, String.join(", ", taken)));
  }
}
