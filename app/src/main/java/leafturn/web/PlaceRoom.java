package leafturn.web;

import io.javalin.http.Context;
import java.util.Map;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.web.sheet.Setting;

/** One property with all that is kept of it, and short ways to the forms of places. */
final class PlaceRoom implements Room {
  private static final String ADDRESS = "address";

  private final Desk desk;
  private final SheetDesk sheets;
  private final SheetRoom sheetRoom;
  private final NewSheetRoom newSheetRoom;

  PlaceRoom(Desk desk, SheetDesk sheets, SheetRoom sheetRoom, NewSheetRoom newSheetRoom) {
    this.desk = desk;
    this.sheets = sheets;
    this.sheetRoom = sheetRoom;
    this.newSheetRoom = newSheetRoom;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/properties/{address}", Right.READ, this::property);
    routes.read(
        "/properties/{address}/edit",
        Right.CHANGE,
        context -> sheetRoom.correct(context, id(context, Kind.PROPERTY)));
    routes.read(
        "/properties/{address}/lawns/new",
        Right.CHANGE,
        context -> newSheetRoom.blank(context, Kind.LAWN.name(), id(context, Kind.PROPERTY), null));
    routes.read(
        "/lawns/{address}/edit",
        Right.CHANGE,
        context -> sheetRoom.correct(context, id(context, Kind.LAWN)));
    routes.read(
        "/lawns/{address}/programme",
        Right.CHANGE,
        context ->
            newSheetRoom.blank(context, Kind.PROGRAMME.name(), null, id(context, Kind.LAWN)));
  }

  private void property(Context context) {
    Visitor visitor = Guest.visitor(context);
    String id = id(context, Kind.PROPERTY);
    PropertyPage page = desk.book().read(reading -> page(reading, visitor, id));
    desk.show(context, "property.jte", page.name(), Map.of("page", page));
  }

  private PropertyPage page(BookReading reading, Visitor visitor, String id) {
    SheetPlace place = SheetPlace.of(reading, id, null);
    if (!place.mayRead(visitor)) {
      throw Refusal.notFound();
    }
    Setting setting = sheets.setting(reading, visitor, place);
    return PropertyPages.of(reading, place, setting, place.mayChange(visitor));
  }

  /** Id of the place at the address of the path. */
  private <C extends Content> String id(Context context, Kind<C> kind) {
    return desk.book()
        .read(reading -> reading.at(kind, context.pathParam(ADDRESS)))
        .map(Sheet::id)
        .orElseThrow(Refusal::notFound);
  }
}
