package leafturn.records;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class JsonTreeTest {
  @Test
  void aValueKnowsItsPathAndLine() {
    String text = "{\"feeding\": [{\"on\": 1},\n {\"no plain name\": [2, 3]}]}";
    JsonValue root = JsonTree.read(new SourceText("x", text), new Faults("x"));
    JsonValue feeding = member(root, "feeding");
    assertThat(root.path()).isEmpty();
    assertThat(member(item(feeding, 0), "on").path()).isEqualTo("feeding[0].on");
    JsonValue last = item(member(item(feeding, 1), "no plain name"), 1);
    assertThat(last.path()).isEqualTo("feeding[1].\"no plain name\"[1]");
    assertThat(last.line()).isEqualTo(2);
  }

  private static JsonValue member(JsonValue object, String name) {
    return requireNonNull(requireNonNull(object.members()).get(name));
  }

  private static JsonValue item(JsonValue list, int index) {
    return requireNonNull(list.items()).get(index);
  }

  /** With its path spelt out at every number this document would take twenty gigabytes. */
  @Test
  void aGreatManyValuesUnderAVeryLongNameAreRefusedInPeace() {
    String text = "{\"" + "n".repeat(45_000) + "\": [" + "1,".repeat(450_000) + "1]}";
    Faults faults = new Faults("x");
    JsonObject root = JsonObject.root(new SourceText("x", text), faults);
    root.number("area", 0, 1, "");
    assertThatThrownBy(root::end)
        .isInstanceOf(InputException.class)
        .hasMessageStartingWith("x, line 1, \"nnnn")
        .message()
        .hasSizeLessThan(200);
  }
}
