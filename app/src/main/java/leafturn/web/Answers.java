package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.nio.charset.StandardCharsets;

/** Sends content to the browser. */
final class Answers {
  static final String HTML = "text/html; charset=utf-8";

  private static final String KEEP_FOR_GOOD = "public, max-age=31536000, immutable";
  private static final String KEEP_FOR_ONESELF = "private, max-age=86400";
  private static final String ASK_AGAIN = "private, no-cache";
  private static final int NOT_MODIFIED = 304;
  private static final int SEE_OTHER = 303;
  private static final int OK = 200;

  private Answers() {}

  /** A page, which the browser asks for again each time. */
  static void page(Context context, String html) {
    send(context, new Assets.Asset(HTML, html.getBytes(StandardCharsets.UTF_8)), ASK_AGAIN);
  }

  /** A part of a page, which is another the next time. */
  static void part(Context context, String html) {
    context.header(Header.CACHE_CONTROL, "no-store").contentType(HTML).result(html);
  }

  /** A picture, for this visitor alone; it never changes under its address. */
  static void picture(Context context, String mediaType, byte[] bytes) {
    send(context, new Assets.Asset(mediaType, bytes), KEEP_FOR_ONESELF);
  }

  /** A file that never changes under its address. */
  static void file(Context context, Assets.Asset asset) {
    send(context, asset, KEEP_FOR_GOOD);
  }

  /** Where to go after something was saved. */
  static void goTo(Context context, String path) {
    context.status(SEE_OTHER).header(Header.LOCATION, path);
  }

  /** Sends content with its tag, or only says that what the browser holds is still right. */
  private static void send(Context context, Assets.Asset asset, String caching) {
    context.header(Header.CACHE_CONTROL, caching);
    if (context.statusCode() == OK) {
      context.header(Header.ETAG, asset.tag);
      if (asset.tag.equals(context.header(Header.IF_NONE_MATCH))) {
        context.status(NOT_MODIFIED);
        return;
      }
    }
    context.contentType(asset.type).result(asset.content);
  }
}
