package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leafturn.browser.Chromium.Window;
import leafturn.quantity.Units;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drawing the outline of a lawn: by the rectangle, mouse, finger, keys and plain list. */
@TestInstance(Lifecycle.PER_CLASS)
class OutlineFieldTest {
  private static final String LAWN =
      """
      0 0
      14 0
      14 6.5
      9 9
      9 12
      0 12

      2 x 3 at 3 3
      """;

  private Chromium chromium;
  private OutlinePage page;

  @BeforeAll
  void start() throws IOException {
    chromium = new Chromium();
    page = new OutlinePage(LAWN, Units.METRIC);
  }

  @AfterAll
  void stop() {
    page.close();
    chromium.close();
  }

  static Stream<Window> windows() {
    return Stream.of(Window.PHONE, Window.PHONE_DARK, Window.DESK, Window.DESK_DARK);
  }

  @ParameterizedTest
  @MethodSource("windows")
  void itIsAccessibleAndFitsThePage(Window window) {
    try (Visit visit = new Visit(chromium.window(window), page.url())) {
      visit.page().locator("summary").click();
      assertThat(visit.complaints()).isEmpty();
      Accessibility.check(visit.page());
      visit.picture("outline-" + window.widthPx() + window.dark());
    }
  }

  @Test
  void aRectangleIsTwoNumbersAndAButton() {
    try (Visit visit = new Visit(chromium.window(Window.PHONE), page.url())) {
      rectangle(visit.page(), "12.5", "8");
      assertThat(list(visit)).hasValue("0 0\n12.5 0\n12.5 8\n0 8\n");
      assertThat(visit.page().locator(".outline-size")).hasText("100.0 m² · 41.0 m of edge");
      visit.page().getByText("Undo").click();
      assertThat(list(visit)).hasValue(LAWN);
    }
  }

  @Test
  void aReaderOfUsUnitsGivesFeet() throws IOException {
    try (OutlinePage us = new OutlinePage(LAWN, Units.US);
        Visit visit = new Visit(chromium.window(Window.DESK), us.url())) {
      rectangle(visit.page(), "100", "50");
      assertThat(list(visit)).hasValue("0 0\n100 0\n100 50\n0 50\n");
      assertThat(visit.page().locator(".outline-size")).hasText("5000 ft² · 300.0 ft of edge");
      Locator ground = visit.page().locator(".outline-ground");
      ground.focus();
      ground.press("ArrowUp");
      assertThat(list(visit)).hasValue("0 0\n100 0\n100 50\n0 51\n");
      assertThat(visit.page().locator(".outline-status"))
          .hasText("Corner 4 of 4 of the edge: 0 ft east, 51 ft north.");
    }
  }

  @Test
  void theKeysDoAllThatThePointerDoes() {
    try (Visit visit = new Visit(chromium.window(Window.DESK), page.url())) {
      rectangle(visit.page(), "4", "4");
      Locator ground = visit.page().locator(".outline-ground");
      ground.focus();
      for (String key :
          List.of("ArrowUp", "ArrowUp", "ArrowRight", "PageDown", "ArrowLeft", "Enter")) {
        ground.press(key);
      }
      assertThat(list(visit)).hasValue("-0.5 0\n2 0\n4 0\n4 4\n0.5 5\n");
      assertThat(visit.page().locator(".outline-status"))
          .hasText("Corner 2 of 5 of the edge: 2 m east, 0 m north.");
      ground.press("Delete");
      ground.press("Shift+ArrowDown");
      assertThat(list(visit)).hasValue("-0.5 -0.5\n4 -0.5\n4 3.5\n0.5 4.5\n");
      ground.press("Control+z");
      ground.press("Control+z");
      assertThat(list(visit)).hasValue("-0.5 0\n2 0\n4 0\n4 4\n0.5 5\n");
    }
  }

  @Test
  void anEmptyDrawingIsBegunByTheKeysAndTheButton() {
    try (Visit visit = new Visit(chromium.window(Window.DESK), page.url())) {
      list(visit).fill("");
      Locator ground = visit.page().locator(".outline-ground");
      assertThat(visit.page().locator(".outline-status")).containsText("or press Enter");
      ground.press("Enter");
      assertThat(list(visit)).hasValue("0 0\n");
      visit.page().getByText("Add a corner").click();
      assertThat(list(visit)).hasValue("0 0\n5 0\n");
      ground.press("Enter");
      for (int step = 0; step < 4; step++) {
        ground.press("ArrowUp");
      }
      assertThat(list(visit)).hasValue("0 0\n5 0\n2.5 2\n");
      assertThat(visit.page().locator(".outline-size")).containsText("5.0 m²");
    }
  }

  @Test
  void aLineThatTouchesItselfIsToldAtOnceAndHasNoArea() {
    try (Visit visit = new Visit(chromium.window(Window.DESK), page.url())) {
      list(visit).fill("0 0\n8 0\n8 8\n0 8\n\n3 3\n5 3\n5 5\n3 5\n3 4\n5 4");
      Locator size = visit.page().locator(".outline-size");
      assertThat(size).containsText("no area yet: a line touches itself");
      assertThat(size).not().containsText("m²");
      list(visit).fill("0 0\n8 0\n8 8\n0 8\n\n3 3\n5 3\n5 5\n3 5");
      assertThat(size).containsText("60.0 m²");
      visit.page().getByText("Next corner").click();
      visit.page().getByText("Cut a hole").click();
      assertThat(visit.page().locator(".outline-status")).containsText("a tap adds a corner to it");
    }
  }

  @Test
  void cornersAreDraggedAndSetByMouse() {
    try (Visit visit = new Visit(chromium.window(Window.DESK), page.url())) {
      rectangle(visit.page(), "4", "4");
      dragMark(visit.page(), 3, 40, 0);
      assertThat(list(visit)).hasValue(Pattern.compile("^0 0\\n4 0\\n4 4\\n(?!0 4\\n)"));
      visit.page().getByText("Undo").click();
      BoundingBox box = visit.page().locator(".outline-ground").boundingBox();
      visit.page().mouse().click(box.x + 6, box.y + box.height / 2);
      assertThat(list(visit))
          .hasValue(Pattern.compile("^0 0\\n4 0\\n4 4\\n0 4\\n-\\d+(\\.\\d)? 2\\n$"));
    }
  }

  @Test
  void aFingerSetsCorners() {
    try (Visit visit = new Visit(chromium.windowForFingers(Window.PHONE), page.url())) {
      list(visit).fill("");
      Locator ground = visit.page().locator(".outline-ground");
      for (double[] at : new double[][] {{60, 250}, {260, 250}, {260, 90}}) {
        ground.tap(new Locator.TapOptions().setPosition(at[0], at[1]));
      }
      assertThat(list(visit)).hasValue(Pattern.compile("^([^\\n]+\\n){2}[^\\n]+\\n?$"));
      assertThat(visit.page().locator(".outline-size")).not().hasText("0.0 m² · 0.0 m of edge");
    }
  }

  @Test
  void aHoleIsCutWhereThereIsRoomAndMovedAsAWhole() {
    try (Visit visit = new Visit(chromium.window(Window.DESK), page.url())) {
      rectangle(visit.page(), "8", "8");
      visit.page().getByText("Cut a hole").click();
      assertThat(list(visit)).hasValue("0 0\n8 0\n8 8\n0 8\n\n3 3\n5 3\n5 5\n3 5\n");
      assertThat(visit.page().locator(".outline-size")).containsText("60.0 m²");
      visit.page().locator(".outline-ground").press("Shift+ArrowRight");
      assertThat(list(visit)).hasValue("0 0\n8 0\n8 8\n0 8\n\n3.5 3\n5.5 3\n5.5 5\n3.5 5\n");
    }
  }

  @Test
  void theListIsReadAsItIsTypedAndItsFaultIsTold() {
    try (Visit visit = new Visit(chromium.window(Window.DESK), page.url())) {
      list(visit).fill("origin 10 50\n6 x 5\n\n1 x 1 at 2 2");
      assertThat(visit.page().locator(".outline-size")).hasText("29.0 m² · 26.0 m of edge");
      list(visit).fill("0 0\n6 0\nfive 5");
      assertThat(visit.page().locator(".outline-size"))
          .containsText("line 3 of the list cannot be read yet");
      list(visit).fill("0 0\n6 6\n6 0\n0 6");
      assertThat(visit.page().locator(".outline-size")).containsText("two sides cross");
    }
  }

  @Test
  void withoutScriptTheListIsAllThereIs() {
    try (Visit visit = new Visit(chromium.windowWithoutScript(Window.PHONE), page.url())) {
      assertThat(visit.page().locator(".outline-board")).isHidden();
      assertThat(list(visit)).isVisible();
      list(visit).fill("12 x 8");
      visit.page().getByText("Keep it").click();
      assertThat(visit.page()).hasURL(Pattern.compile("outline=12\\+x\\+8"));
    }
  }

  private static Locator list(Visit visit) {
    return visit.page().locator("textarea");
  }

  private static void rectangle(Page page, String length, String width) {
    page.getByLabel("Length of the rectangle").fill(length);
    page.getByLabel("Width of the rectangle").fill(width);
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Draw it")).click();
  }

  private static void dragMark(Page page, int corner, double byX, double byY) {
    BoundingBox box =
        page.locator("circle[data-kind=corner][data-corner='" + corner + "']").boundingBox();
    page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
    page.mouse().down();
    page.mouse().move(box.x + box.width / 2 + byX / 2, box.y + box.height / 2 + byY / 2);
    page.mouse().move(box.x + box.width / 2 + byX, box.y + box.height / 2 + byY);
    page.mouse().up();
  }
}
