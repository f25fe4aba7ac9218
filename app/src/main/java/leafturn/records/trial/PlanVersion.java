package leafturn.records.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.TrialSheet;
import org.jspecify.annotations.Nullable;

/**
 * A plan as it stood from a day on.
 *
 * @param plan the document of the plan
 * @param on the day it was saved, in universal time
 * @param why it was changed; null where nobody said
 */
public record PlanVersion(JsonNode plan, LocalDate on, @Nullable String why) {

  /**
   * The plans of a trial since it was frozen, the frozen one first; none where it never was.
   *
   * @param history of its sheet, the latest first
   */
  static List<PlanVersion> since(List<Sheet<TrialSheet>> history) {
    List<PlanVersion> versions = new ArrayList<>();
    for (int i = history.size() - 1; i >= 0; i--) {
      Sheet<TrialSheet> sheet = history.get(i);
      JsonNode plan = sheet.content().plan();
      boolean same = !versions.isEmpty() && versions.get(versions.size() - 1).plan().equals(plan);
      if (sheet.content().frozen() != null && !same) {
        LocalDate on = LocalDate.ofInstant(sheet.writtenAt(), ZoneOffset.UTC);
        versions.add(new PlanVersion(plan, on, sheet.content().note()));
      }
    }
    return versions;
  }
}
