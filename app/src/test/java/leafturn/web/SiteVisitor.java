package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Somebody who reads pages and sends forms, with cookies and the token of the page's form. */
final class SiteVisitor {
  private static final Pattern TOKEN = Pattern.compile("name=\"_token\" value=\"([^\"]+)\"");

  private static final String BOUNDARY = "a-form-of-the-tests";

  private final URI site;
  private final HttpClient browser =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

  SiteVisitor(URI site) {
    this.site = site;
  }

  HttpResponse<String> ask(String path) throws IOException, InterruptedException {
    return browser.send(
        HttpRequest.newBuilder(site.resolve(path)).build(), BodyHandlers.ofString());
  }

  String read(String path) throws IOException, InterruptedException {
    return ask(path).body();
  }

  /** Opens the page of a form, and sends the form to the page's own address. */
  HttpResponse<String> send(String path, Map<String, String> fields)
      throws IOException, InterruptedException {
    return send(path, path, fields);
  }

  /** Opens the page of a form, and sends the form to where it says. */
  HttpResponse<String> send(String page, String path, Map<String, String> fields)
      throws IOException, InterruptedException {
    Matcher token = TOKEN.matcher(read(page));
    assertThat(token.find()).as("a form on %s", page).isTrue();
    Map<String, String> all = new HashMap<>(fields);
    all.put("_token", token.group(1));
    String body =
        all.entrySet().stream()
            .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
            .collect(Collectors.joining("&"));
    return browser.send(
        HttpRequest.newBuilder(site.resolve(path))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(body))
            .build(),
        BodyHandlers.ofString());
  }

  /** Opens the page of a form that takes a file, and sends the form with one or without. */
  HttpResponse<String> sendWithFile(
      String path, Map<String, String> fields, String field, String name, @Nullable String content)
      throws IOException, InterruptedException {
    Matcher token = TOKEN.matcher(read(path));
    assertThat(token.find()).as("a form on %s", path).isTrue();
    Map<String, String> all = new HashMap<>(fields);
    all.put("_token", token.group(1));
    StringBuilder body = new StringBuilder();
    String part = "--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"%s\"";
    all.forEach(
        (key, value) -> body.append(part.formatted(key)).append("\r\n\r\n" + value + "\r\n"));
    body.append(part.formatted(field)).append("; filename=\"" + name + "\"\r\n");
    body.append("Content-Type: text/csv\r\n\r\n").append(content == null ? "" : content);
    body.append("\r\n--" + BOUNDARY + "--\r\n");
    return browser.send(
        HttpRequest.newBuilder(site.resolve(path))
            .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
            .POST(BodyPublishers.ofString(body.toString()))
            .build(),
        BodyHandlers.ofString());
  }

  private static String encoded(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }
}
