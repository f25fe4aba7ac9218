package leafturn.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;

/** Where a room says which addresses it answers. */
final class Routes {
  private final RoutesConfig routes;

  Routes(RoutesConfig routes) {
    this.routes = routes;
  }

  /**
   * A page that is read: answers GET and HEAD alike; for HEAD the server leaves the content out.
   */
  void read(String path, Handler handler) {
    routes.get(path, handler);
    routes.head(path, handler);
  }

  /** A form or an entry that is sent. */
  void write(String path, Handler handler) {
    routes.post(path, handler);
  }
}
