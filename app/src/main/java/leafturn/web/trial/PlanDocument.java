package leafturn.web.trial;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import leafturn.web.form.Form;

/** Turns the form of a plan into its document and back: lists that are typed in one field. */
public final class PlanDocument {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String DATES = "dates";
  private static final String CORES = "cores";
  private static final String CONTRASTS = "contrasts";
  private static final String LAYOUTS = "allowedLayouts";
  private static final String EXCLUSIONS = "exclusions";

  private PlanDocument() {}

  /**
   * The document of a plan that a form makes, without its lawns.
   *
   * @param before the plan as it was, so that what the form does not show stays
   */
  public static ObjectNode of(Form form, JsonNode before) {
    ObjectNode plan = (ObjectNode) parsed(form.document("plan", typed(before)).text());
    plan.remove(TrialPlanForm.LAWNS);
    lists(plan, DATES, "[\\s,;]+");
    if (plan.path(CORES) instanceof ObjectNode cores) {
      lists(cores, DATES, "[\\s,;]+");
    }
    lists(plan, EXCLUSIONS, "\\R");
    rows(plan, CONTRASTS, "\\s*(?:\\s-\\s|−|–|\\bminus\\b)\\s*");
    if (plan.path(CONTRASTS).isEmpty()) {
      plan.remove(CONTRASTS); // all pairs
    }
    rows(plan, LAYOUTS, "\\s*[,;]\\s*");
    return plan;
  }

  /** The ids of the lawns that were chosen. */
  public static List<String> lawns(Form form) {
    return form.values().getOrDefault(TrialPlanForm.LAWNS, List.of());
  }

  /** A plan's document as the form takes it. */
  public static String text(JsonNode plan, List<String> lawns) {
    ObjectNode root = (ObjectNode) parsed(typed(plan));
    ArrayNode ids = root.putArray(TrialPlanForm.LAWNS);
    lawns.forEach(ids::add);
    return root.toString();
  }

  private static String typed(JsonNode plan) {
    if (!plan.isObject()) {
      return "{}";
    }
    ObjectNode root = plan.deepCopy();
    join(root, DATES, "\n", "");
    if (root.path(CORES) instanceof ObjectNode cores) {
      join(cores, DATES, "\n", "");
    }
    join(root, EXCLUSIONS, "\n", "");
    join(root, CONTRASTS, "\n", " − ");
    join(root, LAYOUTS, "\n", ", ");
    return root.toString();
  }

  private static void join(ObjectNode root, String field, String between, String within) {
    if (!root.path(field).isArray()) {
      return;
    }
    List<String> lines = new ArrayList<>();
    for (JsonNode item : root.path(field)) {
      List<String> parts = new ArrayList<>();
      item.forEach(part -> parts.add(part.asText()));
      lines.add(item.isArray() ? String.join(within, parts) : item.asText());
    }
    root.put(field, String.join(between, lines));
  }

  private static void lists(ObjectNode plan, String field, String separator) {
    if (!plan.path(field).isTextual()) {
      return;
    }
    String text = plan.path(field).asText();
    ArrayNode list = plan.putArray(field);
    for (String item : text.strip().split(separator, -1)) {
      if (!item.isBlank()) {
        list.add(item.strip());
      }
    }
  }

  private static void rows(ObjectNode plan, String field, String separator) {
    lists(plan, field, "\\R");
    JsonNode lines = plan.path(field);
    if (!lines.isArray()) {
      return;
    }
    ArrayNode rows = plan.putArray(field);
    for (JsonNode line : lines) {
      ArrayNode row = rows.addArray();
      for (String item : line.asText().split(separator, -1)) {
        row.add(item.strip());
      }
    }
  }

  private static JsonNode parsed(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a form made no JSON", e);
    }
  }
}
