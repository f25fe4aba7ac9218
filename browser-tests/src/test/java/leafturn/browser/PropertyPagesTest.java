package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leafturn.browser.Chromium.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Properties, lawns and sheets in a real browser: begun, corrected, and by two at once. */
class PropertyPagesTest extends DemoPages {
  private static final String LAWN = "/lawns/heron-bank-play";
  private static final int MOST_TABS = 40;
  private static final String FIELD_IN_FOCUS = "() => document.activeElement.name ?? ''";
  private static final String STANDS = ".turf-sketch >> nth=0";

  /** Pages in every window; the forms, which are made alike, in two of them. */
  Stream<Arguments> pagesAndWindows() {
    String entry;
    try (Visit visit = visit(LAWN, Window.DESK)) {
      entry = links(visit.page(), ".entries a").get(0);
    }
    return Stream.concat(
        inEveryWindow(List.of("/lawns", "/properties/new", "/properties/heron-bank", entry))
            .stream(),
        inTwoWindows(forms(entry)).stream());
  }

  /** The form of each kind of sheet, once. */
  private List<String> forms(String entry) {
    Map<String, String> byKind = new LinkedHashMap<>();
    try (Visit visit = visit("/properties/heron-bank", Window.DESK)) {
      links(visit.page(), "main a[href^='/sheets/new']")
          .forEach(path -> byKind.putIfAbsent(path.replaceAll("&.*", ""), path));
    }
    List<String> forms = new ArrayList<>(byKind.values());
    forms.addAll(List.of(LAWN + "/edit", entry + "/correct", entry + "/withdraw"));
    return forms;
  }

  @ParameterizedTest
  @MethodSource("pagesAndWindows")
  void aPageIsSoundAccessibleAndFits(String path, Window window) {
    checkSoundAndAccessible(path, window);
  }

  @Test
  void fromAnEmptyBookToTheFirstAdviceByKeyboardAlone(@TempDir Path folder) throws Exception {
    try (RunningLeafturn empty =
            RunningLeafturn.start("serve", "--book", folder.toString(), "--port", "0");
        Visit visit = new Visit(chromium.window(Window.DESK), empty.url("/"))) {
      Page page = visit.page();
      Instant began = Instant.now();
      goToLink(page, "/properties/new");
      page.keyboard().press("Enter");
      page.waitForURL("**/properties/new");
      type(page, "property.name", "Sallow House");
      type(page, "property.latitudeDeg", "40.8");
      type(page, "station", "Exa");
      type(page, "lawn.areaM2", "640");
      page.keyboard().press("Enter");
      page.waitForURL("**/lawns/sallow-house-lawn");
      assertThat(page.locator("h1")).containsText(Pattern.compile("\\w"));
      assertThat(page.locator("body")).containsText("Sallow House");
      assertThat(page.locator("body")).containsText("New York");
      assertThat(Duration.between(began, Instant.now())).isLessThan(Duration.ofMinutes(2));
    }
  }

  @Test
  void correctingAnOldEntryChangesTheStateOfToday() {
    try (Visit visit = visit(LAWN, Window.PHONE)) {
      Page page = visit.page();
      String before = page.locator(STANDS).getAttribute("aria-label");
      page.locator(".entries a:has-text('Mown')").first().click();
      page.locator("a:has-text('Correct it')").click();
      String height = page.locator("[name='heightAfterMm']").inputValue();
      page.locator("[name='heightAfterMm']").fill("90");
      page.locator("button:has-text('Save the correction')").click();
      assertThat(page.locator(".changes").first()).containsText(height);
      assertThat(page.locator(".changes").first()).containsText("90");
      page.locator("a:has-text('see the lawn')").click();
      page.waitForURL("**" + LAWN);
      assertThat(page.locator(STANDS)).hasAttribute("aria-label", Pattern.compile("\\w"));
      assertThat(page.locator(STANDS)).not().hasAttribute("aria-label", before);
    }
  }

  @Test
  void twoWhoCorrectTheSameSheetAreToldAndLoseNothing() {
    try (Visit visit = visit("/lawns/heron-bank-verge", Window.DESK)) {
      String entry = links(visit.page(), ".entries a").get(0);
      BrowserContext other = chromium.window(Window.DESK);
      try (Visit first = visit(entry + "/correct", Window.DESK);
          Visit second = new Visit(other, leafturn.url(entry + "/correct"))) {
        first.page().locator("[name='note']").fill("as the first saw it");
        second.page().locator("[name='note']").fill("as the second saw it");
        first.page().locator("button.main").click();
        assertThat(first.page().locator(".said").first()).containsText("as the first saw it");
        second.page().locator("button.main").click();
        Page told = second.page();
        assertThat(told.locator("h1")).hasText("Somebody else was quicker");
        assertThat(told.locator(".changes")).containsText("as the first saw it");
        assertThat(told.locator(".changes")).containsText("as the second saw it");
        Accessibility.check(told);
        told.locator("button:has-text('Save mine over it')").first().click();
        assertThat(told.locator(".said").first()).containsText("as the second saw it");
        assertThat(told.locator(".versions")).containsText("as the first saw it");
      }
    }
  }

  /** Reaches a link by the tabulator key, as somebody without a mouse does. */
  private static void goToLink(Page page, String path) {
    String inFocus = "() => document.activeElement.getAttribute('href') ?? ''";
    for (int tab = 0; tab < MOST_TABS && !page.evaluate(inFocus).equals(path); tab++) {
      page.keyboard().press("Tab");
    }
    assertThat(page.evaluate(inFocus)).isEqualTo(path);
  }

  private static void type(Page page, String field, String words) {
    for (int tab = 0; tab < MOST_TABS && !page.evaluate(FIELD_IN_FOCUS).equals(field); tab++) {
      page.keyboard().press("Tab");
    }
    assertThat(page.evaluate(FIELD_IN_FOCUS)).isEqualTo(field);
    page.keyboard().type(words);
  }
}
