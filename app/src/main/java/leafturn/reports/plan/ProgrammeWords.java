package leafturn.reports.plan;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Programme;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.reports.QuantityWords;
import leafturn.reports.UnitWords;

/**
 * Programmes in words: "every 7 days to 76 mm, collected, 15 g N/m² a year".
 *
 * @param units of the reader
 * @param third largest share of the height that one cut should take by the rules of the plan, in
 *     words
 */
public record ProgrammeWords(UnitWords units, String third) {

  /** A programme's name: its own, or what it does. */
  public String name(PlannedProgramme planned) {
    if (planned.origin() == Origin.PRESENT) {
      return "As now";
    }
    return planned.name().isEmpty() ? capital(parts(planned.programme())) : planned.name();
  }

  /** A programme's name, and what it does where its name does not tell: "Mine: every 7 days …". */
  public String told(PlannedProgramme planned) {
    String name = name(planned);
    return planned.origin() == Origin.GIVEN && !planned.name().isEmpty()
        ? name + ": " + parts(planned.programme())
        : name;
  }

  /** How a lawn is kept now, told in full. */
  public String now(Programme programme) {
    return parts(programme) + (programme.irrigationShareOfDemand() > 0 ? "" : ", not watered");
  }

  /** What a programme does. */
  public String parts(Programme programme) {
    List<String> parts = new ArrayList<>();
    parts.add(trigger(programme) + " to " + heights(programme.mowing().heights()));
    parts.add(clippings(programme));
    parts.add(feed(programme));
    double watered = programme.irrigationShareOfDemand();
    if (watered > 0) {
      parts.add("watered to " + QuantityWords.percent(watered) + " of its need");
    }
    return String.join(", ", parts);
  }

  private String trigger(Programme programme) {
    int days = programme.mowing().everyDays();
    if (programme.mowing().byOneThirdRule()) {
      return "when " + third + " is due";
    }
    return days == 1 ? "every day" : "every " + days + " days";
  }

  private String heights(CutHeights heights) {
    Map<Double, List<String>> others = new TreeMap<>();
    for (Month month : Month.values()) {
      double heightMm = heights.in(month);
      if (heightMm != heights.usualMm()) {
        others.computeIfAbsent(heightMm, mm -> new ArrayList<>()).add(monthName(month));
      }
    }
    StringBuilder words = new StringBuilder(units.height(heights.usualMm()));
    others.forEach(
        (mm, months) -> words.append(" (%s in %s)".formatted(units.height(mm), joined(months))));
    return words.toString();
  }

  private static String monthName(Month month) {
    return capital(Choice.word(month));
  }

  /** Names or parts in a row: "June, July and August". */
  static String joined(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  private String clippings(Programme programme) {
    if (programme.mowing().clippings().byRules()) {
      return "clippings by the rules";
    }
    double share = programme.mowing().returnedShare();
    if (share == 1) {
      return us() ? "clippings left" : "clippings returned";
    }
    if (share == 0) {
      return us() ? "clippings bagged" : "clippings collected";
    }
    return QuantityWords.percent(share)
        + (us() ? " of the clippings left" : " of the clippings returned");
  }

  private String feed(Programme programme) {
    double nGPerM2 =
        programme.feedings().stream()
            .mapToDouble(feeding -> feeding.fastNGPerM2() + feeding.slowNGPerM2())
            .sum();
    return nGPerM2 == 0
        ? "no feed"
        : units.onAreaNumber(nGPerM2)
            + QuantityWords.THIN
            + units.onAreaUnit()
            + AimWords.NO_BREAK
            + "N a year";
  }

  private boolean us() {
    return units.units() == Units.US;
  }

  /** With a capital letter first. */
  public static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
