package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import leafturn.records.book.Sheet;
import leafturn.records.sheet.Changed;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import org.junit.jupiter.api.Test;

/** The area of a lawn as measured, beside that of its outline, and where it has neither. */
class TwoAreasTest extends DemoSite {
  private static final String OUTLINE = "/outline = \"0 0\\n24 0\\n24 15\\n0 15\" ; /areaM2 = %s";

  @Test
  void twoAreasThatDifferAreToldWithTheOneThatCounts() throws Exception {
    Sheet<LawnSheet> lawn = lawn();
    book.write("Ada", writing -> Changed.revised(writing, lawn, OUTLINE.formatted("420")));
    String told =
        "The outline has 360\u202fm², the area as measured is 420\u202fm²: bags and minutes are"
            + " reckoned with 420\u202fm².";
    assertThat(visitor.read("/lawns/heron-bank-play")).contains(told);
    assertThat(visitor.read("/sheets/" + lawn.id())).contains("Two areas", told);
  }

  @Test
  void areasWithinFivePerCentAreOfOneLawn() throws Exception {
    Sheet<LawnSheet> lawn = lawn();
    book.write("Ada", writing -> Changed.revised(writing, lawn, OUTLINE.formatted("377")));
    assertThat(visitor.read("/lawns/heron-bank-play")).doesNotContain("The outline has");
    assertThat(visitor.read("/sheets/" + lawn.id())).doesNotContain("Two areas");
  }

  @Test
  void aPropertySaysThatItIsTheAreaThatWasNotMeasured() throws Exception {
    Sheet<LawnSheet> lawn = lawn();
    book.write("Ada", writing -> Changed.revised(writing, lawn, "/areaM2 ="));
    assertThat(visitor.read("/properties/heron-bank"))
        .contains(", area not measured, ")
        .doesNotContain(", not measured, ");
  }

  private Sheet<LawnSheet> lawn() {
    return book.read(reading -> reading.at(Kind.LAWN, "heron-bank-play")).orElseThrow();
  }
}
