package leafturn.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;

/** What a person does on the log pages, and what they can read there. */
final class LogJourney {
  private static final String READY =
      "() => navigator.serviceWorker.ready.then(() => navigator.serviceWorker.controller !== null)";
  private static final String LAWNS_ARE_KNOWN =
      """
      async () => {
        const all = await indexedDB.databases();
        if (!all.some((one) => one.name === 'leafturn-log')) {
          return false;
        }
        return new Promise((resolve) => {
          const opening = indexedDB.open('leafturn-log');
          opening.onsuccess = () => {
            const reading = opening.result.transaction('known').objectStore('known').count();
            reading.onsuccess = () => { opening.result.close(); resolve(reading.result > 0); };
          };
        });
      }
      """;
  private static final int TRIES = 600;
  private static final int BETWEEN_TRIES_MS = 100;

  private final Page page;
  private final String root;

  /**
   * @param root address of the site, without a slash at its end
   */
  LogJourney(Page page, String root) {
    this.page = page;
    this.root = root;
  }

  Page page() {
    return page;
  }

  /** Visits the log once with a connection, so that the phone knows what it needs without one. */
  LogJourney prepare() {
    page.navigate(root + "/log");
    await("a worker answers for", READY);
    await("the lawns are known to", LAWNS_ARE_KNOWN);
    return this;
  }

  /** A promise counts as true where functions are waited for; evaluated, its answer counts. */
  private void await(String what, String promise) {
    for (int tries = 0; !Boolean.TRUE.equals(page.evaluate(promise)); tries++) {
      if (tries == TRIES) {
        throw new IllegalStateException("it never came about that " + what + " " + page.url());
      }
      page.waitForTimeout(BETWEEN_TRIES_MS);
    }
  }

  LogJourney openLog() {
    page.navigate(root + "/log");
    return this;
  }

  LogJourney openLawn(String address) {
    page.navigate(root + "/lawns/" + address + "/log");
    return this;
  }

  /** Opens something that can be logged. */
  LogJourney choose(String key) {
    choice(key).locator("summary").click();
    return this;
  }

  LogJourney type(String key, String field, String text) {
    choice(key).locator("[name='" + field + "']").fill(text);
    return this;
  }

  /** Saves, and waits until the page has told what became of it. */
  LogJourney save(String key) {
    choice(key).locator("button.main").click();
    page.waitForFunction(
        "() => !document.querySelector('details[open] button:disabled')"
            + " && !document.querySelector('[data-outcome]').textContent.includes('Sending')");
    return this;
  }

  /** Where the page tells what became of the entry saved last. */
  Locator outcome() {
    return page.locator("[data-outcome]");
  }

  /** What may be slips in what was sent. */
  Locator doubts() {
    return page.locator("[data-doubts] p");
  }

  /** The entries that are shown as not sent yet. */
  Locator unsent() {
    return page.locator("[data-unsent] li");
  }

  /** Waits until so many entries are shown as not sent yet. */
  LogJourney awaitUnsent(int count) {
    page.waitForFunction(
        "count => document.querySelector('[data-unsent]').dataset.unsent === String(count)", count);
    return this;
  }

  Locator choice(String key) {
    Locator choice = page.locator("details[data-as='" + key + "']");
    choice.waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
    return choice;
  }
}
