package leafturn.web;

import io.javalin.http.Context;

/** The files that pages need. */
final class AssetRoom implements Room {
  private static final int NOT_FOUND = 404;

  private final Assets assets;

  AssetRoom(Assets assets) {
    this.assets = assets;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/assets/{version}/{name}", Right.OPEN, this::asset);
  }

  private void asset(Context context) {
    assets
        .find(context.pathParam("version"), context.pathParam("name"))
        .ifPresentOrElse(asset -> Answers.file(context, asset), () -> context.status(NOT_FOUND));
  }
}
