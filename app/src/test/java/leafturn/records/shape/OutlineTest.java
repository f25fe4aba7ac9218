package leafturn.records.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlineTest {
  private static final ObjectMapper WRITER =
      JsonMapper.builder()
          .serializationInclusion(JsonInclude.Include.NON_EMPTY)
          .visibility(PropertyAccessor.GETTER, JsonAutoDetect.Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, JsonAutoDetect.Visibility.ANY)
          .build();

  @Test
  void anAreaIsWhatTheEdgeHoldsWithoutItsHoles() {
    Ring edge = Ring.of(0, 0, 12, 0, 12, 8, 0, 8);
    Ring bed = Ring.of(2, 2, 5, 2, 5, 4);
    Outline outline = new Outline(List.of(new Patch(edge, List.of(bed))), null);
    assertThat(outline.areaM2()).isEqualTo(93);
    assertThat(outline.holesAreaM2()).isEqualTo(3);
    assertThat(outline.perimeterM()).isCloseTo(40 + 5 + Math.sqrt(13), within(1e-9));
    assertThat(outline.bounds()).isEqualTo(new Outline.Bounds(0, 0, 12, 8));
    assertThat(outline.corners()).isEqualTo(7);
  }

  @Test
  void aRectangleHasTheAreaOfItsSides() {
    assertThat(Outline.rectangle(12.5, 8).areaM2()).isEqualTo(100);
  }

  @Test
  void anEdgeRunsAnticlockwiseAndAHoleClockwiseFromTheSameFirstCorner() {
    Patch patch = new Patch(Ring.of(0, 0, 0, 8, 12, 8, 12, 0), List.of(Ring.of(2, 2, 5, 2, 5, 4)));
    assertThat(patch.edge()).isEqualTo(Ring.of(0, 0, 12, 0, 12, 8, 0, 8));
    assertThat(patch.holes()).containsExactly(Ring.of(2, 2, 5, 4, 5, 2));
  }

  @Test
  void aRingNamesEachCornerOnce() {
    assertThat(Ring.of(0, 0, 4, 0, 4, 0, 4, 0.0001, 4, 3, 0, 0))
        .isEqualTo(Ring.of(0, 0, 4, 0, 4, 3));
  }

  @Test
  void noCornerLiesNowhere() {
    assertThatThrownBy(() -> new Corner(Double.NaN, 0)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> new Corner(0, 10_001)).hasMessageContaining("10001");
    assertThatThrownBy(() -> new Anchor(0, 86)).hasMessageContaining("86");
  }

  @Test
  void anOutlineRefusesPiecesThatMakeNone() {
    Patch crossed = new Patch(Ring.of(0, 0, 4, 4, 4, 0, 0, 4), List.of());
    assertThatThrownBy(() -> new Outline(List.of(crossed), null))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("near x 2, y 2");
  }

  @Test
  void itIsWrittenAsPlainLists() throws JsonProcessingException {
    assertThat(WRITER.writeValueAsString(Outline.rectangle(12, 8.5).anchoredAt(new Anchor(10, 50))))
        .isEqualTo(
            "{\"patches\":[{\"edge\":[[0.0,0.0],[12.0,0.0],[12.0,8.5],[0.0,8.5]]}],"
                + "\"anchor\":{\"longitudeDeg\":10.0,\"latitudeDeg\":50.0}}");
  }

  @Test
  void whatIsWrittenIsReadAgain() throws JsonProcessingException {
    RandomOutlines outlines = new RandomOutlines(71);
    for (int i = 0; i < 300; i++) {
      Outline outline = outlines.next();
      assertThat(read(WRITER.writeValueAsString(outline))).isEqualTo(outline);
    }
  }

  @Test
  void theAreaIsTheSumOverTheCorners() {
    RandomOutlines outlines = new RandomOutlines(72);
    for (int i = 0; i < 500; i++) {
      Outline outline = outlines.next();
      double sum = outline.rings().stream().mapToDouble(Ring::signedAreaM2).sum();
      assertThat(outline.areaM2()).as("outline %d", i).isCloseTo(sum, within(1e-9 * sum));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{} | outline, line 1, patches: it is missing",
        "{'patches': 3} | outline, line 1, patches: it is not a list",
        "{'patches': []} | outline, line 1, patches: it has no corners",
        "{'patches': [{}]} | outline, line 1, patches[0].edge: it is missing",
        "{'patches': [{'edge': 'round'}]} | patches[0].edge: \"round\" is not a list",
        "{'patches': [{'edge': [[0,0],[1]]}]} | patches[0].edge[1]: a list is no corner",
        "{'patches': [{'edge': [[0,0],[1,NaN]]}]} | patches[0].edge[1]: a list is no corner",
        "{'patches': [{'edge': [[0,0],[99999,1]]}]} | from -10000 to 10000, m",
        "{'patches': [{'edge': [[0,0],[4,4]]}]} | patches[0].edge: it has 2 corners",
        "{'patches': [{'edge': [[0,0],[4,0],[4,4]], 'hole': []}]} | did you mean holes?",
        "{'patches': [{'edge': [[0,0],[4,0],[4,4]], 'holes': [[[9,9],[10,9],[9,10]]]}]}"
            + " | patches[0].holes: hole 1: this hole reaches outside the edge near x 9, y 9",
        "{'patches': [{'edge': [[0,0],[4,0],[4,4]]}], 'anchor': {'longitudeDeg': 10}}"
            + " | anchor.latitudeDeg: it is missing",
      })
  void aFaultNamesItsPlace(String json, String sentence) {
    assertThatThrownBy(() -> read(json.replace('\'', '"')))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(sentence);
  }

  private static @Nullable Outline read(String json) {
    Faults faults = new Faults("outline");
    Outline outline = Outline.read(JsonObject.root(new SourceText("outline", json), faults));
    faults.throwIfAny();
    return outline;
  }
}
