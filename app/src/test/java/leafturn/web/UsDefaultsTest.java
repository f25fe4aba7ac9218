package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What forms have filled in for a reader with US units. */
class UsDefaultsTest extends DemoSite {
  @Override
  void prepare() {
    inUsUnits();
  }

  @Test
  void whatStandsInFormsBeforehandIsRoundInUsUnits() throws Exception {
    String property = visitor.read("/properties/new");
    assertThat(property).contains("3.0 for tall fescue");
    assertThat(begun(property, "lawn.mower.deckWidthMm")).isEqualTo("21");
    assertThat(begun(property, "lawn.mower.bagLitres")).isEqualTo("16");
    assertThat(begun(property, "lawn.mower.speedKmPerH")).isEqualTo("2.5");
    String trial = visitor.read("/trials/new");
    assertThat(begun(trial, "plots.edgeM")).isEqualTo("3");
    assertThat(begun(trial, "plots.bedM")).isEqualTo("3");
    assertThat(begun(trial, "cores.fromOldHolesM")).isEqualTo("1");
  }

  private static String begun(String page, String field) {
    return page.replaceAll(
        "(?s).*<input [^>]*name=\"" + field + "\"[^>]*value=\"([^\"]*)\".*", "$1");
  }
}
