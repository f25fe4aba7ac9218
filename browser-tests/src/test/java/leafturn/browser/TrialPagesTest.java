package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import java.util.stream.Stream;
import leafturn.browser.Chromium.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Trials in a real browser: planned, frozen, and read on a phone. */
class TrialPagesTest extends DemoPages {
  private String demoTrial() {
    try (Visit visit = visit("/trials", Window.DESK)) {
      return visit.page().locator(".register a").first().getAttribute("href");
    }
  }

  Stream<Arguments> pagesAndWindows() {
    String trial = demoTrial();
    return inEveryWindow(
        List.of(
            "/trials",
            "/trials/new",
            trial,
            trial + "/plan",
            trial + "/layout",
            trial + "/size",
            trial + "/readings",
            trial + "/events",
            "/laboratories",
            "/laboratories/new"))
        .stream();
  }

  @ParameterizedTest
  @MethodSource("pagesAndWindows")
  void aPageIsSoundAccessibleAndFits(String path, Window window) {
    checkSoundAndAccessible(path, window);
  }

  @Test
  void fromThePlanToReadingsOnAPhone() {
    String trial;
    try (Visit visit = visit("/lawns/linden-house-front/edit", Window.DESK)) {
      Page page = visit.page();
      page.locator("textarea[name='outline']").fill("0 0\n24 0\n24 16\n0 16");
      press(page, "Save the correction");
      page.waitForURL("**/lawns/linden-house-front");
      fillPlan(page, "One yard", "Front lawn");
      page.locator("[name='cores.perPlot']").fill("0");
      press(page, "Save the plan");
      assertThat(page.locator("h1")).hasText("One yard");
      press(page, "Freeze the plan");
      assertThat(page.locator("main")).containsText("unchanged since");
      trial = page.url();
    }
    try (Visit visit = new Visit(chromium.window(Window.PHONE), trial + "/readings")) {
      Page page = visit.page();
      page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Enter quality"))
          .first()
          .click();
      assertThat(page.locator("main")).containsText("The arms are not shown");
      page.locator("[name='rater']").fill("Robin");
      page.locator("[name='plot-B1-1']").fill("6.5");
      page.locator("[name='plot-B1-2']").fill("12");
      press(page, "Save the readings");
      assertThat(page.locator("#f-plot-B1-2-fault")).containsText("1 to 9");
      page.locator("[name='plot-B1-2']").fill("7");
      press(page, "Save the readings");
      page.waitForURL("**/readings");
      assertThat(page.locator("main")).containsText("2 of 2");
      assertThat(page.locator("main")).containsText("0 degrees of freedom");
      Accessibility.check(page);
    }
  }

  @Test
  void thePlanShowsTheFieldsOfTheChosenLayoutAndSendsNoOthers() {
    try (Visit visit = visit("/trials/new", Window.DESK)) {
      Page page = visit.page();
      assertThat(page.locator("[name='sides']")).isVisible();
      assertThat(page.locator("[name='blocks']")).isHidden();
      assertThat(page.locator("[name='pairs']")).isHidden();
      assertThat(page.locator("[name='allowedLayouts']")).isHidden();
      page.locator("[name='design']").selectOption("split-plot");
      assertThat(page.locator("[name='sides']")).isHidden();
      assertThat(page.locator("[name='sides']")).isDisabled();
      assertThat(page.locator("[name='blocks']")).isVisible();
      assertThat(page.getByText("A second factor, for split plots and strip plots")).isVisible();
      page.locator("[name='blocks']").fill("4");
      page.locator("[name='design']").selectOption("listed");
      assertThat(page.locator("[name='blocks']")).hasValue("4");
      assertThat(page.locator("[name='allowedLayouts']")).isEnabled();
      assertThat(page.getByText("A second factor, for split plots and strip plots")).isHidden();
    }
  }

  @Test
  void aLawnDrawnByPointerWithABedIsLaidOut() {
    String trial;
    try (Visit visit = visit("/lawns/linden-house-back/edit", Window.DESK)) {
      Page page = visit.page();
      page.getByLabel("Length of the rectangle").fill("30");
      page.getByLabel("Width of the rectangle").fill("20");
      press(page, "Draw it");
      BoundingBox ground = page.locator(".outline-ground").boundingBox();
      page.getByText("Cut a hole").click();
      page.mouse().click(ground.x + ground.width / 3, ground.y + ground.height / 2);
      press(page, "Save the correction");
      page.waitForURL("**/lawns/linden-house-back");
      fillPlan(page, "One yard with a bed", "Back lawn");
      press(page, "Save the plan");
      assertThat(page.locator("main")).containsText("has passed");
      trial = page.url();
      page.navigate(trial + "/layout");
      assertThat(page.locator(".outline-wide")).containsText("B1-2");
      page.navigate(trial + "/plan");
      page.locator("[name='design']").selectOption("paired-strips");
      page.locator("[name='pairs']").fill("4");
      press(page, "Save the plan");
      page.navigate(trial + "/layout");
      assertThat(page.locator(".outline-wide")).containsText("B4-2");
      Accessibility.check(page);
    }
    try (Visit visit = new Visit(chromium.window(Window.PHONE), trial + "/layout")) {
      for (String code : List.of("B1-1", "B2-2", "B3-1", "B4-2")) {
        assertThat(visit.page().locator(".outline-narrow")).containsText(code);
      }
      assertThat(visit.complaints()).isEmpty();
      Accessibility.check(visit.page());
      visit.picture("layout-phone");
    }
  }

  private void fillPlan(Page page, String name, String lawn) {
    page.navigate(leafturn.url("/trials/new"));
    page.locator("[name='name']").fill(name);
    page.locator("[name='question']").fill("Does returning keep the turf as good?");
    page.getByLabel("Linden House, " + lawn).check();
    page.locator("[name='season.from']").fill("2015-04-01");
    page.locator("[name='season.to']").fill("2015-10-31");
    page.locator("[name='dates']").fill("2015-05-04 2015-06-01");
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).click();
  }
}
