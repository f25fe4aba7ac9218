package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static leafturn.browser.ServedBook.LAWN;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log with accounts, over TLS as beyond this machine. */
class PhoneLogOverTlsTest {
  private static final String NAME = "Ada Lind";
  private static final String PASSWORD = "three hedges and a gate";

  @TempDir Path folder;
  private Chromium chromium;
  private ServedBook book;
  private BrowserContext phone;

  @BeforeEach
  void start() throws Exception {
    TestCertificate certificate = TestCertificate.in(folder);
    book = ServedBook.startOverTls(folder.resolve("book"), certificate, NAME, PASSWORD);
    chromium = new Chromium();
    phone =
        chromium.returning(
            folder.resolve("browser"),
            "--ignore-certificate-errors-spki-list=" + certificate.publicKeyHash());
    phone.setDefaultTimeout(60_000);
  }

  @AfterEach
  void stop() throws Exception {
    chromium.close();
    book.close();
  }

  @Test
  void whatIsLoggedWithoutAConnectionIsSentOnce() throws Exception {
    LogJourney journey = signedIn().prepare();
    phone.setOffline(true);
    journey.openLawn(LAWN).choose("returned").save("returned");
    journey.openLog().awaitUnsent(1);
    assertThat(journey.page().locator("a[href='/lawns/" + LAWN + "/log']"))
        .containsText("An entry waits to be sent");
    phone.setOffline(false);
    journey.awaitUnsent(0);
    assertThat(book.newEntries()).hasSize(1);
  }

  @Test
  void signingOutLeavesNoLawnOnThePhoneAndLosesNoEntry() throws Exception {
    LogJourney journey = signedIn().prepare();
    journey.openLawn(LAWN).choose("watered").type("watered", "waterMm", "900").save("watered");
    Page page = journey.page();
    page.navigate(book.url("/me"));
    page.locator("form[action='/sign-out'] button").click();
    page.waitForURL("**/sign-in**");
    phone.setOffline(true);
    journey.openLog();
    Locator main = page.locator("main");
    assertThat(main).containsText("Nothing is known of the lawns yet");
    assertThat(main).containsText("1 entry of " + NAME);
    assertThat(main.innerText()).doesNotContain("Linden House", "Watered");
    phone.setOffline(false);
    assertThat(signedIn().awaitUnsent(1).unsent()).containsText("Water given");
  }

  @Test
  void anEntryOfSomebodyWhoseSessionEndedWaitsForTheirSignIn() throws Exception {
    LogJourney journey = signedIn().prepare().openLawn(LAWN);
    phone.clearCookies();
    journey.choose("returned").save("returned");
    assertThat(journey.outcome())
        .hasText(Pattern.compile("^Kept on this phone, not sent yet.*Sign in"));
    signedIn().openLog().awaitUnsent(0);
    assertThat(book.newEntries()).hasSize(1);
  }

  private LogJourney signedIn() {
    Page page = phone.pages().get(0);
    page.navigate(book.url("/sign-in?to=/log"));
    page.locator("#f-name").fill(NAME);
    page.locator("#f-password").fill(PASSWORD);
    page.locator("main button.main").click();
    // In full, for the address of the sign-in ends in the same words.
    page.waitForURL(book.url("/log"));
    return new LogJourney(page, book.url(""));
  }
}
