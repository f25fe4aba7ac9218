package leafturn.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static leafturn.browser.ServedBook.LAWN;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import leafturn.browser.Chromium.Window;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody takes an archive away, loses the book, and has it again, as the guide tells. */
class RestoreTest {
  @Test
  void aBookThatWasDeletedIsTheSameAgainFromTheArchiveTakenAway(@TempDir Path folder)
      throws Exception {
    Path place = folder.resolve("book");
    try (Chromium chromium = new Chromium();
        ServedBook book = ServedBook.start(place);
        Visit visit = new Visit(chromium.window(Window.DESK), book.url("/log"))) {
      Page page = visit.page();
      LogJourney journey = new LogJourney(page, book.url("")).openLawn(LAWN);
      journey.choose("watered").type("watered", "waterMm", "12").save("watered");
      assertThat(journey.outcome()).containsText("In the book");
      page.navigate(book.url("/lawns/" + LAWN));
      String advice = page.locator("h1").innerText();
      List<String> entries = page.locator(".entries li").allInnerTexts();
      assertThat(entries).isNotEmpty();

      Path archive = takenAway(page, book, folder);
      book.stop();
      delete(place);
      book.start();
      page.navigate(book.url("/"));
      assertThat(page.locator("main a[href='/lawns/" + LAWN + "']")).hasCount(0);
      book.stop();
      delete(place);
      assertThat(
              RunningLeafturn.run("book", "import", "--book", place.toString(), archive.toString()))
          .isZero();

      book.start();
      page.navigate(book.url("/lawns/" + LAWN));
      assertThat(page.locator("h1")).hasText(advice);
      assertThat(page.locator(".entries li")).hasText(entries.toArray(String[]::new));
      assertThat(book.newEntries())
          .extracting(LogSheet::done)
          .containsExactly(new Done.Watered(12));
    }
  }

  /** From the page of the book: one is written and told to be whole, and taken from the list. */
  private static Path takenAway(Page page, ServedBook book, Path folder) {
    page.navigate(book.url("/book"));
    page.getByText("Write one now").click();
    assertThat(page.locator(".told")).containsText("reads back whole");
    Accessibility.check(page);
    Locator newest = page.locator("a[href^='/book/archives/']").first();
    Download download = page.waitForDownload(newest::click);
    Path file = folder.resolve(download.suggestedFilename());
    download.saveAs(file);
    return file;
  }

  private static void delete(Path folder) throws Exception {
    try (Stream<Path> files = Files.walk(folder)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    }
    assertThat(folder).doesNotExist();
  }
}
