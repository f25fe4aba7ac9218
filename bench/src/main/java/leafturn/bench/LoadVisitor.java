package leafturn.bench;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpClient.Redirect;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Asks for pages as a browser does, and fills in the form of a log entry. */
final class LoadVisitor {
  private static final Duration LONGEST = Duration.ofSeconds(30);
  private static final Pattern FORM =
      Pattern.compile("<form[^>]*data-entry.*?</form>", Pattern.DOTALL);
  private static final Pattern INPUT =
      Pattern.compile("<input[^>]*\\bname=\"([^\"]+)\"[^>]*\\bvalue=\"([^\"]*)\"");

  private final URI address;
  private final HttpClient client =
      HttpClient.newBuilder()
          .cookieHandler(new CookieManager())
          .followRedirects(Redirect.NEVER)
          .connectTimeout(LONGEST)
          .build();
  private final Queue<Entry> filled = new ConcurrentLinkedQueue<>();

  /** What can be asked for. */
  enum Page {
    ROUND,
    LAWN,
    LOG_FORM,
    LOG_ENTRY
  }

  /**
   * What came of a request.
   *
   * @param fault what went wrong, or null
   * @param bytes bytes of the body as they were sent
   * @param unfinished true when the page asks to be looked at again, since advice is being worked
   *     out
   */
  record Answer(@Nullable String fault, int bytes, boolean unfinished) {}

  private record Entry(String path, String body) {}

  LoadVisitor(URI address) {
    this.address = address;
  }

  /** Asks for a page of a lawn, or for the round. */
  Answer visit(Page page, String lawn) {
    try {
      return switch (page) {
        case ROUND -> read("/", "gzip");
        case LAWN -> read("/lawns/" + lawn, "gzip");
        case LOG_FORM -> form("/lawns/" + lawn + "/log");
        case LOG_ENTRY -> entry("/lawns/" + lawn + "/log");
      };
    } catch (IOException failure) {
      return new Answer(page + ": " + failure, 0, false);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return new Answer(page + ": interrupted", 0, false);
    }
  }

  private Answer read(String path, String encoding) throws IOException, InterruptedException {
    return answer(path, 200, send(request(path).header("Accept-Encoding", encoding)));
  }

  private Answer form(String path) throws IOException, InterruptedException {
    HttpResponse<byte[]> page = send(request(path));
    Matcher form = FORM.matcher(new String(page.body(), StandardCharsets.UTF_8));
    if (form.find()) {
      StringBuilder body = new StringBuilder();
      Matcher input = INPUT.matcher(form.group());
      while (input.find()) {
        body.append(body.isEmpty() ? "" : "&").append(input.group(1)).append('=');
        body.append(URLEncoder.encode(input.group(2), StandardCharsets.UTF_8));
      }
      filled.add(new Entry(path, body.toString()));
    }
    return answer(path, 200, page);
  }

  private Answer entry(String path) throws IOException, InterruptedException {
    Entry entry = filled.poll();
    if (entry == null) {
      Answer form = form(path);
      entry = filled.poll();
      if (entry == null) {
        return new Answer("no form of a log entry: " + form.fault(), 0, false);
      }
    }
    return answer(
        entry.path(),
        303,
        send(
            request(entry.path())
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(entry.body()))));
  }

  private static Answer answer(String path, int expected, HttpResponse<byte[]> response) {
    boolean right = response.statusCode() == expected;
    return new Answer(
        right ? null : path + " answered " + response.statusCode(),
        response.body().length,
        response.headers().firstValue("Retry-After").isPresent());
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(address.resolve(path)).timeout(LONGEST);
  }

  private HttpResponse<byte[]> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return client.send(request.build(), BodyHandlers.ofByteArray());
  }
}
