package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What makes the site usable on a phone without a connection: the service worker, the page it shows
 * in place of those it cannot reach, and the manifest that lets the site stand on a home screen.
 */
final class PhoneRoom implements Room {
  /** What the log pages need beside their styles, kept on the phone together with them. */
  private static final List<String> KEPT =
      List.of(
          "literata.woff2",
          "atkinson-hyperlegible-next.woff2",
          "leaf.svg",
          "faults.js",
          "again.js",
          "phone.js",
          "kept.js",
          "log.js",
          "queue.js",
          "send.js",
          "unsent.js",
          "words.js",
          "picture.js");

  private final Desk desk;

  PhoneRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/worker.js", Right.OPEN, this::worker);
    routes.read("/manifest.webmanifest", Right.OPEN, this::manifest);
    routes.read("/phone/offline", Right.OPEN, this::offline);
  }

  /**
   * The worker lies at the root, for it may answer only for addresses below its own. Its text
   * changes with the files it keeps, which is how the browser learns of new ones.
   */
  private void worker(Context context) {
    StringBuilder script = new StringBuilder();
    script.append("import { serve } from \"").append(asset("worker.js")).append("\";\n\n");
    script.append("serve([\n");
    Stream.concat(Styles.IN_ORDER.stream(), KEPT.stream())
        .forEach(name -> script.append("  \"").append(asset(name)).append("\",\n"));
    script.append("]);\n");
    context
        .header(Header.CACHE_CONTROL, "no-cache")
        .contentType("text/javascript; charset=utf-8")
        .result(script.toString());
  }

  private void manifest(Context context) {
    String icons =
        """
        {"src": "%s", "type": "image/svg+xml", "sizes": "any"},
            {"src": "%s", "type": "image/png", "sizes": "192x192"},
            {"src": "%s", "type": "image/png", "sizes": "512x512"},
            {"src": "%s", "type": "image/png", "sizes": "512x512", "purpose": "maskable"}"""
            .formatted(
                asset("leaf.svg"),
                asset("leaf-192.png"),
                asset("leaf-512.png"),
                asset("leaf-maskable-512.png"));
    context
        .header(Header.CACHE_CONTROL, "no-cache")
        .contentType("application/manifest+json; charset=utf-8")
        .result(
            """
            {
              "id": "/log",
              "name": "Leafturn, the log",
              "short_name": "Leafturn",
              "description": "Log what was done on a lawn, with or without a connection.",
              "lang": "en",
              "start_url": "/log",
              "scope": "/",
              "display": "standalone",
              "background_color": "#f6f2e7",
              "theme_color": "#f6f2e7",
              "icons": [
                %s
              ]
            }
            """
                .formatted(icons));
  }

  private void offline(Context context) {
    desk.showKept(context, "offline.jte", "No connection", Map.of());
  }

  private String asset(String name) {
    return desk.assets().address(name);
  }
}
