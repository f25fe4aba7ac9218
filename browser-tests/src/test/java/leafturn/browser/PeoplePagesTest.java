package leafturn.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leafturn.browser.Chromium.Window;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages on which people come in, are invited and looked after, in every window. */
@TestInstance(Lifecycle.PER_CLASS)
class PeoplePagesTest {
  private static final String NAME = "Ada Lind";
  private static final String PASSWORD = "three hedges and a gate";

  private Chromium chromium;
  private ServedBook book;
  private String signedIn;
  private List<String> ownersPages;
  private List<String> strangersPages;

  @BeforeAll
  void start(@TempDir Path folder) throws Exception {
    TestCertificate certificate = TestCertificate.in(folder);
    book = ServedBook.startOverTls(folder.resolve("book"), certificate, NAME, PASSWORD);
    chromium = new Chromium("--ignore-certificate-errors-spki-list=" + certificate.publicKeyHash());
    try (BrowserContext window = window(Window.DESK, null)) {
      Page page = window.newPage();
      page.navigate(book.url("/sign-in?to=/people"));
      page.locator("#f-name").fill(NAME);
      page.locator("#f-password").fill(PASSWORD);
      page.locator("main button.main").click();
      page.waitForURL(book.url("/people"));
      String person = page.locator("th a[href^='/people/']").first().getAttribute("href");
      page.locator("[name='name']").fill("Rowan Field");
      page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Make the invitation"))
          .click();
      String invitation = page.locator("code.address").innerText().strip();
      ownersPages = List.of("/people", person, "/people/sign-ins", "/me");
      strangersPages =
          List.of("/sign-in", invitation.substring(invitation.indexOf("/invitations/")));
      signedIn = window.storageState();
    }
  }

  @AfterAll
  void stop() throws Exception {
    chromium.close();
    book.close();
  }

  Stream<Arguments> pagesAndWindows() {
    return Stream.of(Window.PHONE, Window.PHONE_DARK, Window.DESK, Window.DESK_DARK)
        .flatMap(
            window ->
                Stream.concat(
                    ownersPages.stream().map(path -> Arguments.of(path, window, true)),
                    strangersPages.stream().map(path -> Arguments.of(path, window, false))));
  }

  @ParameterizedTest
  @MethodSource("pagesAndWindows")
  void aPageIsSoundAccessibleAndUsableByKeyboard(String path, Window window, boolean owner) {
    try (Visit visit = new Visit(window(window, owner ? signedIn : null), book.url(path))) {
      assertThat(visit.complaints()).isEmpty();
      assertThat(visit.page().url()).isEqualTo(book.url(path));
      Accessibility.check(visit.page());
      Accessibility.checkByKeyboard(visit.page());
    }
  }

  private BrowserContext window(Window window, String cookies) {
    NewContextOptions options = new NewContextOptions();
    return chromium.window(window, cookies == null ? options : options.setStorageState(cookies));
  }
}
