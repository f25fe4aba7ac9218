package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.HasTextOptions;
import java.util.regex.Pattern;
import leafturn.browser.Chromium.Window;
import org.junit.jupiter.api.Test;

/** Somebody asks for a season plan, watches it being made, and weighs its answer. */
class SeasonPlanTest {
  private static final String PAGE = "/lawns/linden-house-back/season";
  private static final HasTextOptions WHEN_MADE = new HasTextOptions().setTimeout(300_000);

  @Test
  void thePlanShowsItsProgressAndThenItsAnswerAndFollowsTheWeights() throws Exception {
    try (RunningLeafturn leafturn = RunningLeafturn.start();
        Chromium chromium = new Chromium();
        Visit visit = new Visit(chromium.window(Window.DESK), leafturn.url(PAGE))) {
      Page page = visit.page();
      page.getByText("Make the plan").last().click();
      assertThat(page.locator("h1")).hasText("The season plan is being made");
      assertThat(page.locator(".plan-progress"))
          .containsText(Pattern.compile("\\d+ of \\d+ programmes"));
      Accessibility.check(page);

      assertThat(page.locator("h1")).hasText(Pattern.compile("^By your aims"), WHEN_MADE);
      String evenly = page.locator("h1").innerText();
      Locator work = page.locator("#w-work");
      work.focus();
      work.selectOption("8");

      assertThat(page.locator("h1")).not().hasText(evenly);
      assertThat(page).hasURL(Pattern.compile("work=8"));
      assertThat(page.locator("#w-work")).isFocused();
      page.goBack();
      assertThat(page.locator("h1")).hasText(evenly);
      assertThat(visit.complaints()).isEmpty();
    }
  }
}
