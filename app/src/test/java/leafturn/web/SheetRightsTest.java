package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.book.Sheet;
import leafturn.records.people.Role;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Property;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who sees a sheet, and who may correct it. */
class SheetRightsTest {
  @TempDir static Path folder;
  private static PeopledSite site;

  @BeforeAll
  static void open() {
    site = new PeopledSite(folder, Clock.systemUTC());
  }

  @AfterAll
  static void close() {
    site.close();
  }

  @Test
  void whoOnlyLogsCorrectsWhatTheyWroteThemselves() {
    String own = "/sheets/" + logged(site.name(Role.HELPER));
    Browser helper = site.signedIn(Role.HELPER);
    assertThat(helper.get(own).body()).contains("Correct it");
    assertThat(helper.get(own + "/correct").statusCode()).isEqualTo(200);
    Map<String, String> fields = Map.of("version", "1", "day", "2015-05-02", "waterMm", "12");
    assertThat(helper.post(own, fields).statusCode()).isEqualTo(303);
    assertThat(helper.get(own).body()).contains("12\u202fmm", "Corrected by Henk Hollis");
  }

  @Test
  void whoOnlyLogsReadsWhatOthersWroteAndLeavesIt() {
    String others = "/sheets/" + logged(site.name(Role.ADVISER));
    Browser helper = site.signedIn(Role.HELPER);
    assertThat(helper.get(others).body())
        .contains("Watered on Friday 1 May 2015")
        .doesNotContain("Correct it");
    assertThat(helper.get(others + "/correct").statusCode()).isEqualTo(403);
    assertThat(helper.get(others + "/withdraw").statusCode()).isEqualTo(403);
    for (String path : List.of(others, others + "/withdraw", others + "/restore")) {
      assertThat(helper.post(path, Map.of("version", "1")).statusCode()).isEqualTo(403);
    }
    String lawn = "/sheets/" + lawnOf(site.shared).id();
    assertThat(helper.get(lawn).statusCode()).isEqualTo(200);
    assertThat(helper.post(lawn, Map.of("version", "1")).statusCode()).isEqualTo(403);
  }

  @Test
  void aReaderReadsAndOffersAreNotMade() {
    Browser reader = site.signedIn(Role.READER);
    String address = property(site.shared).content().address();
    assertThat(reader.get("/properties/" + address).body())
        .contains(property(site.shared).content().name())
        .doesNotContain("/sheets/new", "/edit", ">Add<");
    assertThat(reader.get("/lawns").body()).doesNotContain("/properties/new");
  }

  @Test
  void nothingOfAnotherClientIsThere() {
    Sheet<Property> other =
        site.book.read(reading -> reading.all(Kind.PROPERTY)).stream()
            .filter(property -> !property.id().equals(site.shared))
            .findFirst()
            .orElseThrow();
    for (Role role : List.of(Role.HELPER, Role.READER)) {
      Browser browser = site.signedIn(role);
      assertThat(browser.get("/properties/" + other.content().address()).statusCode())
          .isEqualTo(404);
      assertThat(browser.get("/sheets/" + other.id()).statusCode()).isEqualTo(404);
      assertThat(browser.get("/sheets/" + lawnOf(other.id()).id()).statusCode()).isEqualTo(404);
      assertThat(browser.get("/lawns").body()).doesNotContain(other.content().name());
    }
  }

  private static String logged(String writer) {
    LogSheet entry =
        new LogSheet(
            lawnOf(site.shared).id(),
            LocalDate.of(2015, 5, 1),
            null,
            new Done.Watered(10),
            null,
            List.of());
    String id = UUID.randomUUID().toString();
    site.book.write(writer, writing -> writing.add(Kind.LOG, id, entry));
    return id;
  }

  private static Sheet<?> lawnOf(String property) {
    return site.book.read(reading -> reading.ofProperty(Kind.LAWN, property)).get(0);
  }

  private static Sheet<Property> property(String id) {
    return site.book.read(reading -> reading.find(Kind.PROPERTY, id)).orElseThrow();
  }
}
