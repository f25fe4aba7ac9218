package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import leafturn.records.people.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Script typed into every text field of every form; no page may ever send it back as script. */
class InjectionTest {
  private static final String MARK = "\"'><script>sting()</script><img src=x onerror=sting()>";
  private static final Pattern RAW = Pattern.compile("<script>sting|<img src=x|=\"\"'");
  private static final List<String> DOWNLOADS =
      List.of("text/csv", "application/json", "application/zip", "text/calendar");
  private static final int MOST_PAGES = 150;

  @TempDir Path folder;

  @Test
  void whatIsTypedComesBackAsTextOnly() {
    try (PeopledSite site = new PeopledSite(folder, Clock.systemUTC())) {
      Browser owner = site.signedIn(Role.OWNER);
      Set<String> typedInto = new LinkedHashSet<>();
      for (String page : pages(owner)) {
        for (PageForm form : PageForm.in(owner.get(page).body())) {
          if (form.action().contains("sign-out") || form.action().equals("/me/password")) {
            continue; // would shut this visitor out
          }
          form.textFields().forEach(field -> type(owner, form, field, typedInto));
        }
      }
      assertThat(typedInto).contains("/people/invitations name");
      for (String page : pages(owner)) {
        assertClean(owner.get(page), page);
      }
      signInPage(site);
    }
  }

  private static void type(Browser owner, PageForm form, String field, Set<String> typedInto) {
    Map<String, String> fields = new LinkedHashMap<>(form.fields());
    fields.put(field, MARK);
    fields.remove("_token");
    HttpResponse<String> answer =
        form.sends()
            ? owner.post(form.action(), fields)
            : owner.get(form.action() + "?" + Browser.encoded(fields));
    typedInto.add(form.action() + " " + field);
    assertThat(answer.statusCode()).as("%s with %s", form.action(), field).isLessThan(500);
    assertClean(answer, form.action() + " with " + field);
  }

  private static void signInPage(PeopledSite site) {
    Browser stranger = site.stranger();
    assertClean(stranger.signIn(MARK, MARK), "sign-in");
    assertClean(stranger.get("/sign-in?to=" + Browser.encoded("/" + MARK)), "sign-in");
    assertClean(stranger.get("/" + Browser.encoded(MARK)), "no page");
  }

  private static void assertClean(HttpResponse<String> answer, String where) {
    String type = answer.headers().firstValue("Content-Type").orElse("");
    assertThat(answer.headers().firstValue("X-Content-Type-Options")).as(where).hasValue("nosniff");
    if (DOWNLOADS.stream().anyMatch(type::startsWith)) {
      return; // a browser shows none of these as a page
    }
    assertThat(RAW.matcher(answer.body()).find())
        .as("script in %s: %s", where, answer.body())
        .isFalse();
    assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
        .doesNotContain("unsafe");
  }

  /** Every page that links lead to. */
  private static List<String> pages(Browser browser) {
    Set<String> seen = new LinkedHashSet<>(List.of("/"));
    Deque<String> toRead = new ArrayDeque<>(seen);
    while (!toRead.isEmpty() && seen.size() < MOST_PAGES) {
      HttpResponse<String> page = browser.get(toRead.remove());
      for (String link : PageForm.links(page.body())) {
        if (seen.add(link)) {
          toRead.add(link);
        }
      }
    }
    return List.copyOf(seen);
  }
}
