package leafturn.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a room says which addresses it answers, and what each asks of its visitor. Nothing is
 * answered that was not added here.
 */
final class Routes {
  /**
   * One address.
   *
   * @param method GET, with which goes HEAD, or POST
   * @param path with its variable parts in braces
   * @param right what the visitor needs
   * @param intake what comes with the request
   */
  record Route(HandlerType method, String path, Right right, Intake intake) {}

  private final RoutesConfig routes;
  private final Door door;
  private final List<Route> all = new ArrayList<>();

  /**
   * @param door lets visitors through, or not
   */
  Routes(RoutesConfig routes, Door door) {
    this.routes = routes;
    this.door = door;
  }

  /**
   * A page that is read: answers GET and HEAD alike; for HEAD the server leaves the content out.
   *
   * @param right what the visitor needs
   */
  void read(String path, Right right, Handler handler) {
    Handler guarded = guarded(new Route(HandlerType.GET, path, right, Intake.NOTHING), handler);
    routes.get(path, guarded);
    routes.head(path, guarded);
  }

  /**
   * A form or an entry that is sent.
   *
   * @param right what the visitor needs
   * @param intake what comes with it
   */
  void write(String path, Right right, Intake intake, Handler handler) {
    routes.post(path, guarded(new Route(HandlerType.POST, path, right, intake), handler));
  }

  /** Every address there is. */
  List<Route> all() {
    return List.copyOf(all);
  }

  private Handler guarded(Route route, Handler handler) {
    all.add(route);
    return context -> {
      if (door.admits(context, route)) {
        handler.handle(context);
      }
    };
  }
}
