package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Units;
import leafturn.records.people.People;
import leafturn.records.people.Role;
import leafturn.records.people.Shares;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.Test;

class CalendarRoomTest extends DemoSite {
  private static final Pattern ADDRESS =
      Pattern.compile("http://127\\.0\\.0\\.1:\\d+(/calendar/[A-Za-z0-9_-]{43}\\.ics)<");

  @Test
  void whoeverHasTheAddressReadsTheDaysOfItsOwnersLawns() throws Exception {
    String address = made(new Asking(server));
    HttpResponse<String> calendar = asking.get(address);
    assertThat(calendar.statusCode()).isEqualTo(200);
    assertThat(calendar.headers().firstValue("Content-Type"))
        .contains("text/calendar; charset=utf-8");
    assertThat(calendar.headers().firstValue("Cache-Control")).contains("private, no-store");
    assertThat(calendar.body().replace("\r\n ", ""))
        .startsWith("BEGIN:VCALENDAR")
        .contains("SUMMARY:Back lawn\\, Linden House: mow by this day");
  }

  @Test
  void aReadersCalendarHoldsTheLawnsSharedWithThemAndNoOthers() throws Exception {
    String address = made(reader("linden-house"));
    assertThat(asking.get(address).body()).contains("Linden House").doesNotContain("Heron Bank");
  }

  @Test
  void aWithdrawnAddressEndsAtOnceAndSoDoesAReplacedOne() throws Exception {
    Asking owner = new Asking(server);
    String first = made(owner);
    String second = made(owner);
    assertThat(asking.get(first).statusCode()).isEqualTo(404);
    assertThat(asking.get(second).statusCode()).isEqualTo(200);
    assertThat(owner.get("/me/calendar").body()).doesNotContain(second);
    assertThat(owner.postForm("/me/calendar/withdraw").statusCode()).isEqualTo(303);
    assertThat(asking.get(second).statusCode()).isEqualTo(404);
  }

  @Test
  void theBookKeepsNoCopyOfTheAddress() throws Exception {
    String address = made(new Asking(server));
    String secret = address.replaceAll("/calendar/|\\.ics", "");
    int copies =
        book.read(
            reading ->
                reading
                    .handle()
                    .createQuery("select count(*) from calendar where secret_hash like :secret")
                    .bind("secret", "%" + secret + "%")
                    .mapTo(Integer.class)
                    .one());
    assertThat(copies).isZero();
  }

  @Test
  void whatIsNoAddressIsNotFound() throws Exception {
    for (String file :
        new String[] {"x.ics", "x", "a".repeat(43), "a".repeat(43) + ".ics", ".ics"}) {
      assertThat(asking.get("/calendar/" + file).statusCode()).as(file).isEqualTo(404);
    }
  }

  private static String made(Asking person) throws Exception {
    Matcher address = ADDRESS.matcher(person.postForm("/me/calendar").body());
    assertThat(address.find()).isTrue();
    return address.group(1);
  }

  private Asking reader(String property) {
    String person =
        book.write(
            "Test",
            writing -> {
              String added = People.add(writing, "Reader", Role.READER, Units.METRIC).id();
              String shared = writing.at(Kind.PROPERTY, property).orElseThrow().id();
              Shares.set(writing, added, Set.of(shared));
              return added;
            });
    return Asking.as(server, book, person);
  }
}
