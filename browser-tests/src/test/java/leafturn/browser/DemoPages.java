package leafturn.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import leafturn.browser.Chromium.Window;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.provider.Arguments;

/** Tests of pages of the demo, served once for a class, in a browser of its own. */
@TestInstance(Lifecycle.PER_CLASS)
abstract class DemoPages {
  private static final List<Window> WINDOWS =
      List.of(Window.PHONE, Window.PHONE_DARK, Window.DESK, Window.DESK_DARK);

  RunningLeafturn leafturn;
  Chromium chromium;

  @BeforeAll
  final void start() throws Exception {
    leafturn = RunningLeafturn.start();
    chromium = new Chromium();
  }

  @AfterAll
  final void stop() throws Exception {
    chromium.close();
    leafturn.close();
  }

  final Visit visit(String path, Window window) {
    return new Visit(chromium.window(window), leafturn.url(path));
  }

  /** The address of each link that a selector finds on a page. */
  static List<String> links(Page page, String selector) {
    return page.locator(selector).all().stream().map(link -> link.getAttribute("href")).toList();
  }

  /** Each page in every window. */
  static List<Arguments> inEveryWindow(List<String> paths) {
    return inWindows(paths, WINDOWS);
  }

  /** Each page on a light phone and a dark desk, for pages that are made like others. */
  static List<Arguments> inTwoWindows(List<String> paths) {
    return inWindows(paths, List.of(Window.PHONE, Window.DESK_DARK));
  }

  private static List<Arguments> inWindows(List<String> paths, List<Window> windows) {
    List<Arguments> pairs = new ArrayList<>();
    for (String path : paths) {
      windows.forEach(window -> pairs.add(Arguments.of(path, window)));
    }
    return pairs;
  }

  /** Nothing on the page complains, and everybody can use it. */
  final void checkSoundAndAccessible(String path, Window window) {
    try (Visit visit = visit(path, window)) {
      assertThat(visit.complaints()).isEmpty();
      Accessibility.check(visit.page());
    }
  }
}
