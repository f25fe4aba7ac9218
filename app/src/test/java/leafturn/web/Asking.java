package leafturn.web;

import java.io.ByteArrayOutputStream;
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
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import leafturn.records.book.Book;
import leafturn.records.people.Sessions;
import org.jspecify.annotations.Nullable;

/** Somebody's requests to a server: keeps the cookie, and brings the token back that forms need. */
final class Asking {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static final String EDGE = "edge-of-a-part";
  private static final Pattern TOKEN = Pattern.compile("\"token\":\"([^\"]+)\"");

  private final LeafturnServer server;
  private String cookie = "";

  /** Whoever sits at the machine. */
  Asking(LeafturnServer server) {
    this.server = server;
  }

  /** Somebody who has signed in. */
  static Asking as(LeafturnServer server, Book book, String person) {
    Asking asking = new Asking(server);
    String secret =
        book.write("Test", writing -> Sessions.begin(writing, person, "127.0.0.1", "test"));
    asking.cookie = "leafturn-" + server.address().getPort() + "=" + secret;
    return asking;
  }

  HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return send(request(path).GET(), BodyHandlers.ofString());
  }

  HttpResponse<byte[]> bytes(String path) throws IOException, InterruptedException {
    return send(request(path).GET(), BodyHandlers.ofByteArray());
  }

  /** Sends a form with its token. */
  HttpResponse<String> post(String path, Map<String, String> fields) throws Exception {
    return post(path, fields, null);
  }

  /** Sends a form with its token and a photograph. */
  HttpResponse<String> post(String path, Map<String, String> fields, byte @Nullable [] photograph)
      throws Exception {
    return post(path, fields, "name=\"photograph\"; filename=\"p\"", photograph);
  }

  /** Sends a form with its token and a file. */
  HttpResponse<String> upload(String path, Map<String, String> fields, String name, byte[] file)
      throws Exception {
    return post(path, fields, "name=\"file\"; filename=\"" + name + "\"", file);
  }

  private HttpResponse<String> post(
      String path, Map<String, String> fields, String head, byte @Nullable [] file)
      throws Exception {
    Map<String, String> all = new LinkedHashMap<>(fields);
    all.put("_token", token());
    HttpRequest.Builder request =
        request(path)
            .header("Content-Type", "multipart/form-data; boundary=" + EDGE)
            .header("Origin", "http://127.0.0.1:" + server.address().getPort())
            .POST(BodyPublishers.ofByteArray(body(all, head, file)));
    return send(request, BodyHandlers.ofString());
  }

  /** Sends a form without a file. */
  HttpResponse<String> postForm(String path) throws Exception {
    return postForm(path, Map.of());
  }

  /** Sends a form without a file. */
  HttpResponse<String> postForm(String path, Map<String, String> fields) throws Exception {
    String token =
        token()
            + fields.entrySet().stream()
                .map(field -> "&" + field.getKey() + "=" + encoded(field.getValue()))
                .collect(Collectors.joining());
    HttpRequest.Builder request =
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(BodyPublishers.ofString("_token=" + token));
    return send(request, BodyHandlers.ofString());
  }

  private static String encoded(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  private String token() throws Exception {
    Matcher token = TOKEN.matcher(get("/queue/who").body());
    return token.find() ? token.group(1) : "";
  }

  private static byte[] body(Map<String, String> fields, String head, byte @Nullable [] file) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (Map.Entry<String, String> field : fields.entrySet()) {
      part(
          body,
          "name=\"" + field.getKey() + "\"",
          field.getValue().getBytes(StandardCharsets.UTF_8));
    }
    if (file != null) {
      part(body, head + "\r\nContent-Type: application/octet-stream", file);
    }
    body.writeBytes(("--" + EDGE + "--\r\n").getBytes(StandardCharsets.UTF_8));
    return body.toByteArray();
  }

  private static void part(ByteArrayOutputStream body, String head, byte[] content) {
    body.writeBytes(
        ("--" + EDGE + "\r\nContent-Disposition: form-data; " + head + "\r\n\r\n")
            .getBytes(StandardCharsets.UTF_8));
    body.writeBytes(content);
    body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
  }

  private HttpRequest.Builder request(String path) {
    HttpRequest.Builder request = HttpRequest.newBuilder(server.address().resolve(path));
    return cookie.isEmpty() ? request : request.header("Cookie", cookie);
  }

  private <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler)
      throws IOException, InterruptedException {
    HttpResponse<T> answer = CLIENT.send(request.build(), handler);
    List<String> given = answer.headers().allValues("Set-Cookie");
    if (!given.isEmpty()) {
      cookie = given.get(0).replaceFirst(";.*", "");
    }
    return answer;
  }

  static URI location(HttpResponse<String> answer) {
    return URI.create(answer.headers().firstValue("Location").orElse(""));
  }
}
