package leafturn.web;

import java.util.Map;

/** Every number the model rests on. */
final class SourcesRoom implements Room {
  private final Desk desk;

  SourcesRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read(
        "/sources",
        Right.READ,
        context ->
            desk.show(
                context,
                "sources.jte",
                "Sources",
                Map.of("page", SourcesPage.ofTheModel(Guest.visitor(context).person().units()))));
  }
}
