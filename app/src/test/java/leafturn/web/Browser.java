package leafturn.web;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Just enough of a browser for tests: one person's cookies, and forms that bring their token. */
final class Browser {
  private static final Pattern TOKEN = Pattern.compile("name=\"_token\" value=\"([^\"]+)\"");

  private final HttpClient client;
  private final URI site;
  private final Map<String, String> cookies = new LinkedHashMap<>();
  private String token = "";

  Browser(HttpClient client, URI site) {
    this.client = client;
    this.site = site;
  }

  Browser(URI site) {
    this(HttpClient.newHttpClient(), site);
  }

  /** Reads a page; follows nothing. */
  HttpResponse<String> get(String path) {
    return send(request(path).GET());
  }

  /** Sends a form with the token of the page read last. */
  HttpResponse<String> post(String path, Map<String, String> fields) {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.putIfAbsent("_token", token());
    return send(
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString(encoded(all))));
  }

  /** Signs in; the answer is that of the form. */
  HttpResponse<String> signIn(String name, String password) {
    get("/sign-in");
    HttpResponse<String> answer = post("/sign-in", Map.of("name", name, "password", password));
    token = "";
    return answer;
  }

  /** The token of this browser's forms. */
  String token() {
    if (token.isEmpty()) {
      get("/me");
      if (token.isEmpty()) {
        get("/sign-in");
      }
    }
    return token;
  }

  /** Cookies by name. */
  Map<String, String> cookies() {
    return cookies;
  }

  HttpRequest.Builder request(String path) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(site.resolve("/") + path.substring(1)));
    if (!cookies.isEmpty()) {
      request.header(
          "Cookie",
          cookies.entrySet().stream()
              .map(cookie -> cookie.getKey() + "=" + cookie.getValue())
              .collect(Collectors.joining("; ")));
    }
    return request;
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    HttpResponse<String> answer = answer(request, BodyHandlers.ofString());
    for (String cookie : answer.headers().allValues("Set-Cookie")) {
      String pair = cookie.substring(0, cookie.indexOf(';'));
      cookies.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
      token = "";
    }
    Matcher found = TOKEN.matcher(answer.body());
    if (found.find()) {
      token = found.group(1);
    }
    return answer;
  }

  /** The bytes of a file. */
  byte[] file(String path) {
    return answer(request(path), BodyHandlers.ofByteArray()).body();
  }

  private <T> HttpResponse<T> answer(
      HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler) {
    try {
      return client.send(request.build(), handler);
    } catch (IOException e) {
      throw new IllegalStateException("no answer", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
  }

  static String encoded(Map<String, String> fields) {
    return fields.entrySet().stream()
        .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
        .collect(Collectors.joining("&"));
  }

  static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
