package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static leafturn.browser.ServedBook.LAWN;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What can be done with entries that wait on the phone, on the page that kept them. */
class PhoneLogWaitingTest extends ServedPages {
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
  void thePageThatKeptAnEntryTellsWhenItWasSent() {
    LogJourney journey = withoutConnection();
    water(journey, "12");
    assertThat(journey.outcome())
        .hasText("Kept on this phone, not sent yet: Watered, Thursday 28 May.");
    phone.setOffline(false);
    journey.awaitUnsent(0);
    assertThat(journey.outcome()).hasText("In the book: Watered, Thursday 28 May.");
  }

  @Test
  void workThatWasLoggedTwiceIsSavedAndDoubtedOnceTheBookHasIt() throws Exception {
    LogJourney journey = withoutConnection();
    water(journey, "12");
    water(journey, "12");
    assertThat(journey.doubts()).hasCount(0);
    phone.setOffline(false);
    journey.awaitUnsent(0);
    String doubt =
        "The log has this for the same day too: Watered, 12\u202fmm. Both count; withdraw one of"
            + " them if it was done only once. The entry";
    assertThat(journey.doubts()).hasText(new String[] {doubt});
    water(journey, "7");
    assertThat(journey.outcome()).hasText("In the book: Watered, Thursday 28 May.");
    assertThat(journey.doubts()).hasCount(0);
    assertThat(book.newEntries())
        .extracting(LogSheet::done)
        .containsExactlyInAnyOrder(new Done.Watered(12), new Done.Watered(12), new Done.Watered(7));
  }

  @Test
  void whatWaitsIsCorrectedOrDiscardedWithoutAConnection() throws Exception {
    LogJourney journey = withoutConnection();
    water(journey, "12");
    journey.choose("watered").type("watered", "day", "2014-05-28");
    journey.type("watered", "waterMm", "5").save("watered");
    Locator last = journey.awaitUnsent(2).unsent().last();
    assertThat(last).containsText("Watered for Wednesday 28 May 2014");
    last.locator("button").click();
    last.locator("button").last().click();
    journey.awaitUnsent(1).unsent().locator("a").click();
    journey.type("watered", "waterMm", "13").save("watered");
    phone.setOffline(false);
    journey.awaitUnsent(0);
    assertThat(book.newEntries()).extracting(LogSheet::done).containsExactly(new Done.Watered(13));
  }

  @Test
  void whatIsSentWhileItIsCorrectedTakesTheCorrection() throws Exception {
    LogJourney journey = withoutConnection();
    water(journey, "12");
    journey.awaitUnsent(1).unsent().locator("a").click();
    journey.type("watered", "waterMm", "13");
    phone.setOffline(false);
    journey.awaitUnsent(0).save("watered");
    assertThat(journey.outcome()).hasText("In the book: Watered, Thursday 28 May.");
    journey.awaitUnsent(0);
    assertThat(book.newEntries()).extracting(LogSheet::done).containsExactly(new Done.Watered(13));
  }

  private LogJourney withoutConnection() {
    LogJourney journey = new LogJourney(phone.newPage(), book.url("")).prepare();
    journey.openLawn(LAWN);
    phone.setOffline(true);
    return journey;
  }

  private static void water(LogJourney journey, String mm) {
    journey.choose("watered").type("watered", "waterMm", mm).save("watered");
  }
}
