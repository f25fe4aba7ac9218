package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static leafturn.browser.ServedBook.LAWN;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.Media;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import leafturn.browser.Chromium.Window;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Sight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The log pages as pages: accessible, usable by keyboard, without script, with a photograph. */
class LogPagesTest extends ServedPages {
  private static final int MOST_BYTES = 200_000;
  private static final int LONGEST_SIDE_PX = 1600;

  static Stream<Window> windows() {
    return Stream.of(Window.PHONE, Window.PHONE_DARK, Window.DESK, Window.DESK_DARK);
  }

  @Test
  void lawnsTheBookDidNotTellAreAskedForAgain() {
    AtomicInteger asked = new AtomicInteger();
    BrowserContext phone = chromium.window(Window.PHONE);
    phone.route(
        "**/queue/lawns",
        route -> {
          if (asked.incrementAndGet() == 1) {
            route.fulfill(new Route.FulfillOptions().setStatus(503));
          } else {
            route.resume();
          }
        });
    LogJourney journey = new LogJourney(phone.newPage(), book.url("")).prepare();
    phone.setOffline(true);
    journey.openLog();
    assertThat(asked).hasValueGreaterThan(1);
    assertThat(journey.page().locator("a[href='/lawns/" + LAWN + "/log']")).isVisible();
  }

  @ParameterizedTest
  @MethodSource("windows")
  void theLogPagesAreAccessibleAndStillInEveryState(Window window) throws Exception {
    try (Visit visit = new Visit(chromium.window(window), book.url("/log"))) {
      assertThat(visit.complaints()).isEmpty();
      assertThat(visit.weightBytes()).isBetween(10_000, MOST_BYTES);
      assertThat(visit.number("window.layoutShift")).isLessThan(0.001);
      Accessibility.check(visit.page());
      LogJourney journey = new LogJourney(visit.page(), book.url("")).prepare().openLawn(LAWN);
      Accessibility.check(visit.page());
      journey.choose("treated").save("treated");
      Accessibility.check(visit.page());
      journey.choose("watered").type("watered", "waterMm", "900").save("watered");
      Accessibility.check(visit.page());
      journey.page().navigate(book.url("/me/calendar"));
      Accessibility.check(visit.page());
      journey.page().getByText("Make an address").click();
      assertThat(journey.page().locator("main")).containsText("Copy it into the calendar program");
      Accessibility.check(visit.page());
      book.stop();
      journey.openLog().awaitUnsent(1);
      Accessibility.check(visit.page());
      journey.openLawn(LAWN).choose("returned").save("returned");
      Accessibility.check(visit.page());
      journey.page().navigate(book.url("/lawns"));
      assertThat(journey.page().locator("h1")).containsText("No connection");
      Accessibility.check(visit.page());
    }
  }

  @Test
  void onPaperTheLogIsASheetToFillInByHand() throws Exception {
    try (Visit visit =
        new Visit(chromium.window(Window.DESK), book.url("/lawns/" + LAWN + "/log"))) {
      Page page = visit.page();
      Locator sheet = page.locator(".log-sheet");
      assertThat(sheet).isHidden();
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      assertThat(sheet).isVisible();
      assertThat(sheet).containsText("Height before, mm");
      assertThat(sheet.locator("tbody tr").last()).isVisible();
      assertThat(page.locator(".log-choices")).isHidden();
      page.navigate(book.url("/log"));
      assertThat(sheet.locator("th").nth(1)).hasText("Lawn");
    }
  }

  @Test
  void theKeyboardAloneLogsAMowing() throws Exception {
    try (BrowserContext desk = chromium.window(Window.DESK)) {
      Page page = new LogJourney(desk.newPage(), book.url("")).prepare().page();
      tabTo(page, "a[href='/lawns/" + LAWN + "/log']");
      page.keyboard().press("Enter");
      page.waitForURL("**/lawns/" + LAWN + "/log");
      tabTo(page, "details[data-as='collected'] summary");
      page.keyboard().press("Enter");
      tabTo(page, "details[data-as='collected'] [name='bags']");
      page.keyboard().type("2");
      page.keyboard().press("Enter");
      assertThat(page.locator("[data-outcome]")).containsText("In the book: Mown, collected");
    }
    assertThat(book.newEntries())
        .extracting(LogSheet::done)
        .containsExactly(new Done.Mown(null, 64.0, 0, 2.0, null, null, null, false));
  }

  @Test
  void withoutScriptTheFormsWorkAsPlainOnesWithAllFaultsAtOnce() throws Exception {
    try (BrowserContext plain = chromium.windowWithoutScript(Window.PHONE)) {
      LogJourney journey = new LogJourney(plain.newPage(), book.url("")).openLawn(LAWN);
      journey.choose("treated").type("treated", "note", "calm and dry").type("treated", "day", "");
      journey.choice("treated").locator("button.main").click();
      Locator faults = journey.page().locator("#treated-faults");
      for (String told :
          List.of("3 things", "Day", "Product", "Days before they may be used elsewhere")) {
        assertThat(faults).containsText(told);
      }
      assertThat(journey.choice("treated").locator("[name='note']")).hasValue("calm and dry");
      journey.type("treated", "day", "2015-05-26").type("treated", "product", "Sward Guard");
      journey.choice("treated").locator("[name='labelSaysNone']").check();
      journey.choice("treated").locator("button.main").click();
      assertThat(journey.page().locator(".kept"))
          .hasText(
              Pattern.compile("^In the book: Treated, Back lawn, Linden House, Tuesday 26 May\\."));
    }
    assertThat(book.newEntries()).hasSize(1);
  }

  @Test
  void aPhotographIsMadeSmallerKeptWithoutAConnectionAndSent() throws Exception {
    try (BrowserContext phone = chromium.window(Window.PHONE)) {
      LogJourney journey = new LogJourney(phone.newPage(), book.url("")).prepare();
      phone.setOffline(true);
      journey.openLawn(LAWN).choose("observed");
      journey.choice("observed").locator("input[name='things'][value='clumps']").check();
      journey
          .choice("observed")
          .locator("[name='photograph']")
          .setInputFiles(new FilePayload("clumps.png", "image/png", largePicture()));
      journey.save("observed");
      assertThat(journey.unsent()).containsText("with a photograph");
      phone.setOffline(false);
      journey.openLog().awaitUnsent(0);
    }
    LogSheet entry = book.newEntries().get(0);
    assertThat(entry.done())
        .isEqualTo(new Done.Observed(List.of(Sight.CLUMPS), List.of(), null, null));
    BufferedImage kept = picture(entry.photographs().get(0));
    assertThat(Math.max(kept.getWidth(), kept.getHeight())).isEqualTo(LONGEST_SIDE_PX);
    assertThat(Math.min(kept.getWidth(), kept.getHeight()))
        .isEqualTo(Math.round(LONGEST_SIDE_PX * 2 / 3.0f));
  }

  private BufferedImage picture(String id) throws Exception {
    byte[] bytes =
        book.read(
            reading -> {
              Sheet<?> sheet = reading.find(Kind.PHOTOGRAPH, id).orElseThrow();
              return reading
                  .handle()
                  .createQuery("select bytes from photograph where id = ?")
                  .bind(0, sheet.id())
                  .mapTo(byte[].class)
                  .one();
            });
    return ImageIO.read(new ByteArrayInputStream(bytes));
  }

  private static byte[] largePicture() throws IOException {
    BufferedImage image = new BufferedImage(3000, 2000, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(63, 125, 44));
    graphics.fillRect(0, 0, 3000, 1200);
    graphics.dispose();
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(image, "png", png);
    return png.toByteArray();
  }

  private static void tabTo(Page page, String selector) {
    for (int tabs = 0; tabs < 80; tabs++) {
      page.keyboard().press("Tab");
      boolean there =
          (boolean) page.evaluate("selector => document.activeElement.matches(selector)", selector);
      if (there) {
        return;
      }
    }
    throw new AssertionError("the keyboard does not reach " + selector);
  }
}
