package leafturn.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import java.util.List;

/** What every page is to anybody, whatever they see and hold it with. */
final class Accessibility {
  /** What the keyboard can come to, how much of it there is. */
  private static final String STOPS =
      """
      () => {
        const stops = [...document.querySelectorAll(
            'a[href], button, input:not([type=hidden]), select, textarea, summary')];
        window.stops = stops.filter(stop => stop.checkVisibility() && !stop.disabled);
        window.reached = new Set();
        return window.stops.length;
      }
      """;

  private static final String REACH =
      """
      () => {
        const here = document.activeElement;
        window.reached.add(here);
        return here === document.body ? 'solid' : getComputedStyle(here).outlineStyle;
      }
      """;

  /** Of choices that exclude one another the keyboard comes to one, and arrows lead on. */
  private static final String NOT_REACHED =
      """
      () => window.stops
          .filter(stop => !window.reached.has(stop))
          .filter(stop => stop.type !== 'radio'
              || ![...window.reached].some(other => other.name === stop.name))
          .map(stop => stop.outerHTML.slice(0, 120))
      """;

  private Accessibility() {}

  /** No rule of accessibility is broken, and nothing is wider than the window. */
  static void check(Page page) {
    assertThat(new AxeBuilder(page).analyze().getViolations())
        .as(page.url())
        .extracting(Rule::getId, Rule::getNodes)
        .isEmpty();
    Object wider = page.evaluate("() => document.documentElement.scrollWidth - window.innerWidth");
    assertThat(((Number) wider).intValue()).as("px wider than the window").isLessThanOrEqualTo(0);
  }

  /** The keyboard comes to everything that can be done, and shows each time where it is. */
  static void checkByKeyboard(Page page) {
    int stops = ((Number) page.evaluate(STOPS)).intValue();
    assertThat(stops).isPositive();
    for (int tab = 0; tab <= stops; tab++) {
      page.keyboard().press("Tab");
      assertThat(page.evaluate(REACH)).as("outline at stop " + tab).isEqualTo("solid");
    }
    assertThat((List<?>) page.evaluate(NOT_REACHED)).as(page.url()).isEmpty();
  }
}
