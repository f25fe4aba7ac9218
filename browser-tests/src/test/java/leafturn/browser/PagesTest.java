package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leafturn.browser.Chromium.Window;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page of the round in a real browser, on a phone and on a desk, light and dark. */
class PagesTest extends DemoPages {
  private static final int MOST_BYTES = 200_000;
  private static final double NO_SHIFT = 0.001;
  private static final int MOST_TABS = 60;

  /** Pairs of words in the figure that is shown which cover one another, with a px of grace. */
  private static final String LABELS_IN_THE_WAY =
      """
      () => {
        const shown = [...document.querySelectorAll('figure svg')].find(svg => svg.clientWidth > 0);
        const boxes = [...shown.querySelectorAll('text')].map(text => [text.textContent, text.getBoundingClientRect()]);
        const faults = [];
        const edge = shown.getBoundingClientRect();
        boxes.forEach(([words, box], i) => {
          if (box.left < edge.left - 1 || box.right > edge.right + 1) faults.push(words + ' runs out');
          boxes.slice(i + 1).forEach(([others, other]) => {
            const wide = Math.min(box.right, other.right) - Math.max(box.left, other.left);
            const tall = Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top);
            if (wide > 1 && tall > 4) faults.push(words + ' covers ' + others);
          });
        });
        return faults;
      }
      """;

  private List<String> lawns;

  @BeforeAll
  void findLawns() {
    try (Visit visit = visit("/", Window.DESK)) {
      lawns = links(visit.page(), "main a[href^='/lawns/']");
    }
  }

  /** The rooms in every window; the longest page and the further lawns in two of them. */
  Stream<Arguments> pagesAndWindows() {
    List<String> further = new ArrayList<>(lawns.subList(1, lawns.size()));
    further.addAll(
        List.of("/sources", "/weather", "/weather/new", "/import", lawns.get(0) + "/season"));
    return Stream.concat(
        inEveryWindow(List.of("/", "/lawns", lawns.get(0))).stream(),
        inTwoWindows(further).stream());
  }

  Stream<Arguments> lawnsOnPhoneAndDesk() {
    return lawns.stream()
        .flatMap(
            path -> Stream.of(Window.PHONE, Window.DESK).map(window -> Arguments.of(path, window)));
  }

  @ParameterizedTest
  @MethodSource("pagesAndWindows")
  void aPageIsSoundAccessibleLightAndStill(String path, Window window) {
    try (Visit visit = visit(path, window)) {
      assertThat(visit.complaints()).isEmpty();
      assertThat(visit.hosts()).containsExactly(leafturn.address().getAuthority());
      assertThat(visit.weightBytes()).isBetween(10_000, MOST_BYTES);
      assertThat(visit.number("window.layoutShift")).isLessThan(NO_SHIFT);
      Accessibility.check(visit.page());
    }
  }

  @Test
  void theRoundHasAtLeastFourLawnsAndEachHasItsPage() {
    assertThat(lawns).hasSizeGreaterThanOrEqualTo(4).doesNotHaveDuplicates();
    for (String path : lawns) {
      try (Visit visit = visit(path, Window.DESK)) {
        assertThat(visit.page().locator("h1").innerText()).as(path).isNotBlank();
      }
    }
  }

  @Test
  void theFirstScreenOfAPhoneShowsTheAnswerAndTheFirstReason() {
    try (Visit visit = visit(lawns.get(0), Window.PHONE)) {
      assertThat(bottom(visit.page().locator("h1"))).isLessThan(Window.PHONE.heightPx());
      assertThat(bottom(visit.page().locator(".reasons li").first()))
          .isLessThan(Window.PHONE.heightPx());
    }
  }

  @Test
  void onAPhoneEveryValueOfAChoiceKeepsItsLabelBesideIt() {
    try (Visit visit = visit(lawns.get(0), Window.PHONE)) {
      List<Locator> cells = visit.page().locator(".choices td:visible").all();
      assertThat(cells).isNotEmpty();
      for (Locator cell : cells) {
        BoundingBox label = cell.locator(".label").boundingBox();
        BoundingBox value = cell.locator(".value").boundingBox();
        assertThat(label.x + label.width).isLessThanOrEqualTo(value.x);
        assertThat(Math.abs(label.y - value.y)).isLessThan(24);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("lawnsOnPhoneAndDesk")
  void noLabelOfTheSeasonFigureIsInTheWayOfAnother(String path, Window window) {
    try (Visit visit = visit(path, window)) {
      assertThat((List<?>) visit.page().evaluate(LABELS_IN_THE_WAY)).isEmpty();
    }
  }

  @Test
  void theKeyboardReachesEveryLinkAndShowsWhereItIs() {
    try (Visit visit = visit(lawns.get(0), Window.DESK)) {
      Page page = visit.page();
      page.keyboard().press("Tab");
      assertThat(page.locator(".skip:focus").boundingBox().y).isGreaterThanOrEqualTo(0);
      List<String> reached = new ArrayList<>();
      for (int tab = 0; tab < MOST_TABS && !endsAtTheTable(reached); tab++) {
        page.keyboard().press("Tab");
        reached.add(
            (String)
                page.evaluate(
                    "() => document.activeElement.getAttribute('href')"
                        + " ?? document.activeElement.tagName"));
        assertThat(page.evaluate("() => getComputedStyle(document.activeElement).outlineStyle"))
            .as("outline of " + reached)
            .isEqualTo("solid");
      }
      assertThat(reached).contains("/", "/lawns", "/sources", "INPUT", "SUMMARY");
    }
  }

  @Test
  void theSkipLinkLeadsToTheContent() {
    try (Visit visit = visit("/", Window.DESK)) {
      visit.page().keyboard().press("Tab");
      visit.page().keyboard().press("Enter");
      assertThat(visit.page().locator("#content")).isFocused();
    }
  }

  @Test
  void theArrowKeysReadTheSeasonDayByDay() {
    try (Visit visit = visit(lawns.get(0), Window.DESK)) {
      Locator slider = visit.page().locator(".season .day-readout input");
      Locator output = visit.page().locator(".season .day-readout output");
      String today = output.innerText();
      slider.press("ArrowLeft");
      assertThat(output).not().hasText(today);
      assertThat(output).containsText("mm high");
      assertThat(slider).hasAttribute("aria-valuetext", output.innerText());
      slider.press("ArrowRight");
      assertThat(output).hasText(today);
    }
  }

  @Test
  void anHourIsReadByTheArrowKeysAndByATap() {
    for (Window window : List.of(Window.DESK, Window.PHONE)) {
      try (Visit visit = visit(lawns.get(0), window)) {
        Locator slider = visit.page().locator(".hours .day-readout input");
        Locator output = visit.page().locator(".hours .day-readout output");
        assertThat(output).containsText("Today from 12: fit in ");
        slider.press("ArrowRight");
        assertThat(output).containsText("Today from 13: fit in ");
        assertThat(slider).hasAttribute("aria-valuetext", output.innerText());
        Locator figure = visit.page().locator(".hours figure svg:visible");
        BoundingBox box = figure.boundingBox();
        figure.click(new Locator.ClickOptions().setPosition(box.width - 15, box.height - 60));
        assertThat(output).containsText("Tomorrow from 23: fit in ");
      }
    }
  }

  @Test
  void everythingCanBeReadWithoutScript() {
    try (Visit visit =
        new Visit(chromium.windowWithoutScript(Window.DESK), leafturn.url(lawns.get(0)))) {
      Page page = visit.page();
      assertThat(page.locator("h1").innerText()).isNotBlank();
      assertThat(page.locator(".season-wide")).isVisible();
      page.locator(".season summary").click();
      assertThat(page.locator("#season-days")).isVisible();
    }
  }

  @Test
  void aMissingPageLeadsBackToTheRound() {
    try (Visit visit = visit("/no-such-page", Window.PHONE)) {
      Accessibility.check(visit.page());
      visit.page().locator("main a").click();
      assertThat(visit.page()).hasURL(leafturn.url("/"));
    }
  }

  /** The summary that opens the season's table comes right after the slider. */
  private static boolean endsAtTheTable(List<String> reached) {
    return reached.contains("INPUT") && reached.get(reached.size() - 1).equals("SUMMARY");
  }

  private static double bottom(Locator locator) {
    BoundingBox box = locator.boundingBox();
    return box.y + box.height;
  }
}
