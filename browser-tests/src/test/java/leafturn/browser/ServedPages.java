package leafturn.browser;

import com.microsoft.playwright.BrowserContext;
import java.nio.file.Path;
import leafturn.browser.Chromium.Window;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** One browser for a class of tests, and for each test a book of its own that is served. */
@TestInstance(Lifecycle.PER_CLASS)
abstract class ServedPages {
  private static final double LONG_ENOUGH_MS = 120_000;

  Chromium chromium;
  ServedBook book;

  @BeforeAll
  final void startBrowser() {
    chromium = new Chromium();
  }

  @AfterAll
  final void stopBrowser() {
    chromium.close();
  }

  @BeforeEach
  final void serve(@TempDir Path folder) throws Exception {
    book = ServedBook.start(folder.resolve("book"));
  }

  @AfterEach
  final void stopServing() throws Exception {
    book.close();
  }

  /** A phone's window that waits long for a page; close it in the test's end. */
  final BrowserContext patientPhone() {
    BrowserContext phone = chromium.window(Window.PHONE);
    phone.setDefaultTimeout(LONG_ENOUGH_MS);
    return phone;
  }
}
