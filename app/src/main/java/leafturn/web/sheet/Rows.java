package leafturn.web.sheet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import leafturn.web.form.FormShape.Group;

/** Rows of a list in a form: those a document has, and some to fill in. */
final class Rows {
  private static final ObjectMapper JSON = new ObjectMapper();

  private Rows() {}

  /**
   * The rows of a list.
   *
   * @param list its name in the document
   * @param least rows that are always there
   * @param spare empty rows after those of the document
   * @param row makes the row of a number, the first of which is 0
   */
  static List<Group> of(
      String document, String list, int least, int spare, IntFunction<Group> row) {
    int rows = Math.max(least, parsed(document).path(list).size() + spare);
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      groups.add(row.apply(i));
    }
    return groups;
  }

  /** A document as a tree. */
  static JsonNode parsed(String document) {
    try {
      return JSON.readTree(document);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("the document of a sheet is not JSON", e);
    }
  }
}
