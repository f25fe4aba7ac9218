package leafturn.records.sheet;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * When the local rules let lawns be watered.
 *
 * @param banned true when they do not at all
 * @param days days of the week on which they do; empty for every day
 * @param from first hour of those days, or null for any; never without {@code to}
 * @param to last hour, which may lie past midnight, or null for any
 */
public record WateringRules(
    boolean banned, List<DayOfWeek> days, @Nullable LocalTime from, @Nullable LocalTime to) {
  public WateringRules {
    days = List.copyOf(days);
  }

  static WateringRules read(JsonObject section) {
    boolean banned = Boolean.TRUE.equals(section.flag("banned"));
    List<DayOfWeek> days = section.list("days").choices(DayOfWeek.class);
    LocalTime from = Times.read(section, "from");
    LocalTime to = Times.read(section, "to");
    if (section.has("from") != section.has("to")) {
      String missing = section.has("from") ? "to" : "from";
      section.missing(missing, "the other end of the hours as 21:00");
    }
    section.refuseOthers();
    return new WateringRules(banned, days, from, to);
  }
}
