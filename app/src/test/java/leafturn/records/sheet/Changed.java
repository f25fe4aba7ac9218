package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.UUID;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;

/** Valid documents, as they are or changed in few places, and what their reader says to that. */
public final class Changed {
  static final String ID = "00000000-0000-4000-8000-000000000001";

  private static final ObjectMapper JSON = new ObjectMapper();

  private Changed() {}

  /**
   * The document with changes such as {@code /soil/texture = "mud" ; /name =}, where nothing after
   * the sign takes a field away; {@code ID} stands for an id.
   */
  static SourceText document(String base, String changes) {
    try {
      JsonNode root = JSON.readTree(base.replace("ID", '"' + ID + '"'));
      if (!changes.isBlank()) {
        for (String change : changes.split(" ; ")) {
          String[] parts = change.split("=", 2);
          String value = parts[1].strip().replace("ID", '"' + ID + '"');
          set(root, JsonPointer.compile(parts[0].strip()), value);
        }
      }
      return new SourceText("sheet", root.toString());
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("the test's own JSON is wrong: " + changes, e);
    }
  }

  /** Writes a valid document as a new sheet. */
  public static <C extends Content> Sheet<C> added(
      BookWriting writing, Kind<C> kind, String document) {
    C content = kind.read(new SourceText("sheet", document));
    return writing.add(kind, UUID.randomUUID().toString(), content);
  }

  /** Writes the next version of a stored sheet, changed as {@link #document} says. */
  public static <C extends Content> Sheet<C> revised(
      BookWriting writing, Sheet<C> sheet, String changes) {
    Kind<C> kind = sheet.kind();
    C content = kind.read(document(kind.write(sheet.content()), changes));
    return writing.revise(kind, sheet.id(), sheet.version(), content);
  }

  private static void set(JsonNode root, JsonPointer place, String value)
      throws JsonProcessingException {
    JsonNode parent = root.at(place.head());
    JsonPointer last = place.last();
    if (parent instanceof ArrayNode list) {
      list.set(last.getMatchingIndex(), JSON.readTree(value));
    } else if (value.isEmpty()) {
      ((ObjectNode) parent).remove(last.getMatchingProperty());
    } else {
      ((ObjectNode) parent).set(last.getMatchingProperty(), JSON.readTree(value));
    }
  }

  /** What the reader finds wrong in a changed document. */
  static List<Faults.Fault> faults(Kind<?> kind, String base, String changes) {
    SourceText document = document(base, changes);
    try {
      kind.read(document);
    } catch (InputException e) {
      return e.faultsByField();
    }
    throw new AssertionError("this was read without a fault: " + document.text());
  }

  /** Holds that a changed document is refused with one fault, in a field and in these words. */
  static void assertRefused(Kind<?> kind, String base, String changes, String field, String words) {
    assertThat(faults(kind, base, changes))
        .singleElement()
        .satisfies(fault -> assertThat(fault.field()).isEqualTo(field))
        .satisfies(fault -> assertThat(fault.sentence()).contains(words));
  }
}
