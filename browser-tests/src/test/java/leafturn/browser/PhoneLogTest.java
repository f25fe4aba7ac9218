package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static leafturn.browser.ServedBook.LAWN;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.UUID;
import java.util.regex.Pattern;
import leafturn.browser.BadLine.Way;
import leafturn.browser.Chromium.Window;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.What;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logging at the lawn, with the connection cut, the server gone or the browser killed. */
class PhoneLogTest extends ServedPages {
  private static final LocalDate TODAY = LocalDate.of(2015, 5, 28);
  private static final double SMALLEST_TARGET_PX = 56;
  private static final Pattern KEPT = Pattern.compile("^Kept on this phone, not sent yet: .+");

  /** Answers once an element stood still for five frames. */
  private static final String AT_REST =
      """
      element => new Promise(resolve => {
        let place = '';
        let still = 0;
        const look = () => {
          const { x, y, width, height } = element.getBoundingClientRect();
          const now = [x, y, width, height].join();
          still = now === place ? still + 1 : 0;
          place = now;
          if (still >= 5) resolve(); else requestAnimationFrame(look);
        };
        look();
      })
      """;

  private BrowserContext phone;

  @BeforeEach
  void openPhone() {
    phone = patientPhone();
  }

  @AfterEach
  void closePhone() {
    phone.close();
  }

  @Test
  void mownAndReturnedAsUsualTakesThreeTapsOnLargeTargetsWithinReach() throws Exception {
    LogJourney journey = journey(book.url("")).openLog();
    tap(journey, journey.page().locator("a[href='/lawns/" + LAWN + "/log']"));
    Locator usual = journey.page().locator("details[data-as] summary").first();
    assertThat(usual).containsText(Pattern.compile("Mown, returned.*as usual"));
    tap(journey, usual);
    Locator save = journey.page().locator("details[open] button.main");
    assertThat(journey.page().locator("details[open] [data-meaning]"))
        .hasText("Cut to 64\u00a0mm, all clippings returned. Thursday 28 May.");
    assertThat(resting(save).y).isGreaterThan(Window.PHONE.heightPx() / 2.0);
    tap(journey, save);
    journey.page().waitForFunction("() => document.body.innerText.includes('In the book')");
    assertThat(book.newEntries())
        .singleElement()
        .satisfies(entry -> assertThat(entry.day()).isEqualTo(TODAY))
        .extracting(LogSheet::done)
        .isEqualTo(new Done.Mown(null, 64.0, 1, null, null, null, null, false));
  }

  @Test
  void whatIsLoggedWithoutAConnectionIsSentOnceThereIsOneAgain() throws Exception {
    LogJourney journey = journey(book.url("")).prepare();
    phone.setOffline(true);
    book.stop();
    journey.openLog();
    journey.page().locator("a[href='/lawns/" + LAWN + "/log']").click();
    journey.choose("watered").type("watered", "waterMm", "12").save("watered");
    assertThat(journey.outcome())
        .hasText("Kept on this phone, not sent yet: Watered, Thursday 28 May.");
    assertThat(journey.openLog().awaitUnsent(1).unsent().locator("p"))
        .containsText(
            new String[] {
              "Back lawn, Linden House",
              "Watered for Thursday 28 May · Water given: 12 mm",
              "kept on this phone since"
            });
    book.start();
    phone.setOffline(false);
    journey.awaitUnsent(0);
    assertThat(book.newEntries()).extracting(LogSheet::done).containsExactly(new Done.Watered(12));
  }

  @Test
  void aServerThatIsGoneIsNoHindrance() throws Exception {
    LogJourney journey = journey(book.url("")).prepare();
    book.kill();
    journey.openLawn(LAWN).choose("returned").save("returned");
    assertThat(journey.outcome()).hasText(KEPT);
    journey.page().navigate(book.url("/"));
    assertThat(journey.page().locator("h1")).containsText("No connection");
    assertThat(journey.page().locator(".unsent-note")).containsText("1 entry is not sent yet");
    book.start();
    journey.openLog().awaitUnsent(0);
    assertThat(book.newEntries()).hasSize(1);
  }

  @Test
  void theLawnsPageTellsWhatIsNotSentYet() throws Exception {
    LogJourney journey = journey(book.url("")).prepare();
    journey.openLawn(LAWN).choose("watered").type("watered", "waterMm", "900").save("watered");
    journey.page().navigate(book.url("/lawns/" + LAWN));
    assertThat(journey.page().locator(".unsent-note > *"))
        .containsText(
            new String[] {
              "1 entry is not sent yet", "Watered for Thursday 28 May · Water given: 900 mm"
            });
    journey.page().navigate(book.url("/lawns/heron-bank-play"));
    assertThat(journey.page().locator(".unsent-note")).hasText("1 entry is not sent yet");
  }

  @Test
  void anEntryWhoseAnswerWasLostIsKeptOnce() throws Exception {
    try (BadLine line = new BadLine(book.port(), () -> {})) {
      LogJourney journey = journey(line.url("")).prepare();
      line.become(Way.ANSWER_LOST);
      journey.openLawn(LAWN).choose("returned").save("returned");
      assertThat(journey.outcome()).hasText(KEPT);
      line.become(Way.THROUGH);
      journey.openLog().awaitUnsent(0);
      assertThat(line.entries()).isGreaterThanOrEqualTo(2);
      assertThat(book.newEntries()).hasSize(1);
    }
  }

  @Test
  void anEntryDuringWhichThePowerWentIsKeptOnce() throws Exception {
    try (BadLine line = new BadLine(book.port(), this::cutPower)) {
      LogJourney journey = journey(line.url("")).prepare();
      line.become(Way.POWER_CUT);
      journey.openLawn(LAWN).choose("returned").save("returned");
      assertThat(journey.outcome()).hasText(KEPT);
      line.become(Way.THROUGH);
      book.start();
      journey.openLog().awaitUnsent(0);
      assertThat(book.newEntries()).hasSize(1);
    }
  }

  @Test
  void entriesOutliveTheBrowser(@TempDir Path browser) throws Exception {
    BrowserContext before = chromium.returning(browser);
    LogJourney journey = new LogJourney(before.pages().get(0), book.url("")).prepare();
    book.stop();
    journey.openLawn(LAWN).choose("returned").save("returned");
    journey.choose("watered").type("watered", "waterMm", "8").save("watered");
    Chromium.kill(browser);
    try (BrowserContext after = chromium.returning(browser)) {
      LogJourney again = new LogJourney(after.pages().get(0), book.url(""));
      again.openLog().awaitUnsent(2);
      book.start();
      again.openLog().awaitUnsent(0);
    }
    assertThat(book.newEntries())
        .extracting(LogSheet::what)
        .containsOnlyOnce(What.MOWN, What.WATERED)
        .hasSize(2);
  }

  @Test
  void aWeekWithoutAConnectionComesInWithItsOwnDays() throws Exception {
    LogJourney journey = journey(book.url("")).prepare();
    phone.setOffline(true);
    for (LocalDate day = TODAY.minusDays(6); !day.isAfter(TODAY); day = day.plusDays(1)) {
      String key = day.getDayOfMonth() % 2 == 0 ? "collected" : "observed";
      journey.openLawn(LAWN).choose(key).type(key, "day", day.toString());
      if (key.equals("observed")) {
        journey.choice(key).locator("input[name='things'][value='clumps']").check();
      } else {
        journey.type(key, "bags", "2.5").type(key, "wentTo", "heap by the shed");
      }
      journey.save(key);
    }
    assertThat(journey.openLog().awaitUnsent(7).page().locator("[data-unsent] h2"))
        .hasText("7 entries not sent yet");
    phone.setOffline(false);
    journey.awaitUnsent(0);
    assertThat(book.newEntries())
        .extracting(LogSheet::day)
        .containsExactlyElementsOf(TODAY.minusDays(6).datesUntil(TODAY.plusDays(1)).toList());
  }

  @Test
  void anEntryThatIsWrongStaysUntilItIsCorrectedOrDiscarded() throws Exception {
    LogJourney journey = journey(book.url("")).prepare();
    phone.setOffline(true);
    journey
        .openLawn(LAWN)
        .choose("treated")
        .type("treated", "product", "Sward Guard")
        .save("treated");
    journey.openLawn(LAWN).choose("watered").type("watered", "waterMm", "900").save("watered");
    phone.setOffline(false);
    journey.openLog();
    assertThat(journey.page().locator("[data-state=faulty]")).hasCount(2);
    assertThat(journey.unsent().first()).containsText("Days before they may be used elsewhere");
    journey.unsent().first().locator("a").click();
    assertThat(journey.choice("treated").locator("[name='product']")).hasValue("Sward Guard");
    journey.choice("treated").locator("[name='labelSaysNone']").check();
    journey.save("treated").awaitUnsent(1);
    journey.unsent().first().getByText("Discard it").click();
    journey.unsent().first().getByText("Yes, discard this entry").click();
    journey.awaitUnsent(0);
    assertThat(book.newEntries()).extracting(LogSheet::what).containsExactly(What.TREATED);
  }

  @Test
  void whatTheBookIsSureToRefuseIsToldBesideItsFieldAndNotKept() throws Exception {
    LogJourney journey = journey(book.url("")).prepare();
    journey.openLawn(LAWN);
    phone.setOffline(true);
    journey.choose("watered").type("watered", "waterMm", "abc").save("watered");
    Locator fault = journey.choice("watered").locator(".field .fault");
    assertThat(fault).hasText("\"abc\" is not a number; give a number from 0 to 200, mm.");
    journey.type("watered", "waterMm", "").save("watered");
    assertThat(fault).hasText(Pattern.compile("^It is missing; give a number from 0 to 200.+"));
    journey.type("watered", "waterMm", "12,5").save("watered");
    assertThat(journey.outcome()).hasText(KEPT);
    phone.setOffline(false);
    journey.openLog().awaitUnsent(0);
    assertThat(book.newEntries())
        .extracting(LogSheet::done)
        .containsExactly(new Done.Watered(12.5));
  }

  @Test
  void twoTabsSendEachEntryOnce() throws Exception {
    LogJourney one = journey(book.url("")).prepare();
    LogJourney other = journey(book.url("")).openLog();
    phone.setOffline(true);
    one.openLawn(LAWN).choose("returned").save("returned");
    other.openLawn(LAWN).choose("collected").save("collected");
    phone.setOffline(false);
    one.openLog();
    other.openLog();
    one.awaitUnsent(0);
    other.awaitUnsent(0);
    assertThat(book.newEntries()).hasSize(2);
  }

  @Test
  void anIdThatIsTakenIsToldAndTheEntryStays() throws Exception {
    LogJourney journey = journey(book.url("")).prepare();
    journey.openLawn(LAWN).choose("watered").type("watered", "waterMm", "5");
    String taken = UUID.randomUUID().toString();
    journey.page().evaluate("id => { crypto.randomUUID = () => id; }", taken);
    journey.save("watered").choose("watered").type("watered", "waterMm", "6").save("watered");
    journey.openLog().awaitUnsent(1);
    assertThat(journey.unsent()).containsText("same id is in the book already");
    assertThat(book.newEntries()).extracting(LogSheet::done).containsExactly(new Done.Watered(5));
  }

  private LogJourney journey(String root) {
    return new LogJourney(phone.newPage(), root);
  }

  /** Where something is once it has come to rest: an opened choice scrolls into view. */
  private static BoundingBox resting(Locator target) {
    target.evaluate(AT_REST);
    return target.boundingBox();
  }

  private static void tap(LogJourney journey, Locator target) {
    BoundingBox box = resting(target);
    assertThat(box.height).isGreaterThanOrEqualTo(SMALLEST_TARGET_PX);
    assertThat(box.y + box.height).isLessThanOrEqualTo(Window.PHONE.heightPx());
    journey.page().mouse().click(box.x + box.width / 2, box.y + box.height / 2);
    journey.page().waitForLoadState();
  }

  private void cutPower() {
    try {
      book.kill();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
