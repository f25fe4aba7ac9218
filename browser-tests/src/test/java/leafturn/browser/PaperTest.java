package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import leafturn.browser.Chromium.Window;
import org.junit.jupiter.api.Test;

/** Pages and empty forms on paper. */
class PaperTest extends DemoPages {
  private static final Pattern SHEET = Pattern.compile("/Type\\s*/Page\\b");
  private static final String NOTE =
      "() => { const note = document.createElement('p'); note.className = 'unsent-note';"
          + " note.textContent = '1 entry is not sent yet'; document.body.append(note); }";

  @Test
  void anEmptySoilTestTakesTwoSheetsAtMost() {
    try (Visit visit = visit(emptySoilTest(), Window.DESK)) {
      String pdf = new String(visit.page().pdf(), StandardCharsets.ISO_8859_1);
      assertThat(SHEET.matcher(pdf).results().count()).isBetween(1L, 2L);
    }
  }

  @Test
  void whatIsForTheScreenAloneIsNotPrinted() {
    try (Visit visit = visit("/lawns/heron-bank-play", Window.DESK)) {
      Page page = visit.page();
      page.evaluate(NOTE);
      Locator chosenDay = page.locator("form.screen-only");
      assertThat(chosenDay).isVisible();
      assertThat(page.locator(".unsent-note")).isVisible();
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      assertThat(page.locator(".unsent-note")).isHidden();
      assertThat(chosenDay).isHidden();
    }
  }

  private String emptySoilTest() {
    try (Visit visit = visit("/properties/heron-bank", Window.DESK)) {
      return links(visit.page(), "main a[href^='/sheets/new?kind=soil-test&lawn']").get(0);
    }
  }
}
