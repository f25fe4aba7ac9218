package leafturn.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leafturn.quantity.Units;
import leafturn.records.shape.Anchor;
import leafturn.records.shape.Outline;
import leafturn.records.shape.OutlineText;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;

/** A page with the outline field of the forms and the figure of an outline, and nothing else. */
final class OutlinePage implements AutoCloseable {
  private static final String ASSETS = "/leafturn/web/assets/";
  private static final String SECURITY =
      "default-src 'none'; style-src 'self'; font-src 'self'; script-src 'self'; form-action 'self'";

  private static final Map<String, String> TYPES =
      Map.of("css", "text/css", "js", "text/javascript", "woff2", "font/woff2");

  private static final List<String> STYLES =
      List.of("page.css", "lawn.css", "figures.css", "narrow.css", "outline.css", "forms.css");

  private static final Field FIELD =
      Field.outline("outline", "Outline").hint("Its area stands in for the lawn's.");

  private final HttpServer server;
  private final String list;
  private final Units units;

  OutlinePage(String list, Units units) throws IOException {
    this.list = list;
    this.units = units;
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/", this::answer);
    server.start();
  }

  String url() {
    return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      String path = exchange.getRequestURI().getPath();
      String name = path.substring(1);
      byte[] content = path.equals("/") ? page().getBytes(StandardCharsets.UTF_8) : asset(name);
      String kind = name.substring(name.lastIndexOf('.') + 1);
      exchange.getResponseHeaders().set("Content-Security-Policy", SECURITY);
      exchange
          .getResponseHeaders()
          .set("Content-Type", TYPES.getOrDefault(kind, "text/html; charset=utf-8"));
      exchange.sendResponseHeaders(
          content.length == 0 ? 204 : 200, content.length == 0 ? -1 : content.length);
      exchange.getResponseBody().write(content);
    }
  }

  private static byte[] asset(String name) throws IOException {
    try (InputStream in = OutlinePage.class.getResourceAsStream(ASSETS + name)) {
      return in == null ? new byte[0] : in.readAllBytes();
    }
  }

  private String page() {
    Form form = Form.blank(FormShape.of(FIELD), units).with("outline", list);
    Outline outline = OutlineText.read("outline", list).anchoredAt(new Anchor(10, 50));
    return """
    <!doctype html><html lang="en"><head><title>Outline</title>
    <meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
    <meta name="color-scheme" content="light dark">
    %s</head>
    <body><main class="measure"><h1>A lawn</h1>
    <form class="entry" method="get" action="/">%s
    <p class="actions"><button class="main">Keep it</button></p></form>
    <section><h2>As it is kept</h2>%s</section>
    <script type="module" src="outline.js"></script></main></body></html>
    """
        .formatted(
            STYLES.stream()
                .map("<link rel=\"stylesheet\" href=\"%s\">"::formatted)
                .collect(Collectors.joining()),
            filled("outlinefield.jte", Map.of("form", form, "field", FIELD)),
            filled("outlinefigure.jte", Map.of("outline", outline, "units", units)));
  }

  private static String filled(String template, Map<String, Object> parameters) {
    StringOutput output = new StringOutput();
    TemplateEngine.createPrecompiled(null, ContentType.Html, null, "gg.jte.generated.precompiled")
        .render(template, parameters, output);
    return output.toString();
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
