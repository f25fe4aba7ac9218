package leafturn.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.options.LoadState;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One page opened in a fresh window, with all that was asked for and complained about. */
final class Visit implements AutoCloseable {
  private static final String COUNT_SHIFTS =
      "window.layoutShift = 0;"
          + "new PerformanceObserver(list => list.getEntries()"
          + ".forEach(entry => window.layoutShift += entry.value))"
          + ".observe({type: 'layout-shift', buffered: true});";

  private final BrowserContext context;
  private final Page page;
  private final List<String> complaints = new ArrayList<>();
  private final List<Request> requests = new ArrayList<>();

  Visit(BrowserContext context, String url) {
    this.context = context;
    page = context.newPage();
    page.addInitScript(COUNT_SHIFTS);
    page.onConsoleMessage(message -> complaints.add(message.type() + ": " + message.text()));
    page.onPageError(complaints::add);
    page.onRequestFailed(request -> complaints.add("not answered: " + request.url()));
    page.onRequestFinished(requests::add);
    page.navigate(url);
    page.waitForLoadState(LoadState.NETWORKIDLE);
  }

  Page page() {
    return page;
  }

  List<String> complaints() {
    return complaints;
  }

  /** Hosts and ports the page asked something of. */
  List<String> hosts() {
    return List.copyOf(requests).stream()
        .map(request -> URI.create(request.url()).getAuthority())
        .distinct()
        .toList();
  }

  /** Bytes of all answers as they came over the wire. */
  int weightBytes() {
    // A copy, for asking for a size lets further requests in.
    return List.copyOf(requests).stream()
        .map(Request::sizes)
        .mapToInt(sizes -> sizes.responseBodySize + sizes.responseHeadersSize)
        .sum();
  }

  /** Keeps a picture of the whole page beside the build. */
  void picture(String name) {
    page.screenshot(
        new Page.ScreenshotOptions().setFullPage(true).setPath(Path.of("target", name + ".png")));
  }

  double number(String script) {
    return ((Number) page.evaluate(script)).doubleValue();
  }

  @Override
  public void close() {
    context.close();
  }
}
