package leafturn.web;

import io.javalin.http.Context;
import java.util.Optional;
import leafturn.records.Choice;
import leafturn.records.book.BookReading;
import leafturn.records.book.Photographs;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.PhotographSheet;

/** Shows photographs to those who may see their property. */
final class PhotographRoom implements Room {
  private final Desk desk;

  PhotographRoom(Desk desk) {
    this.desk = desk;
  }

  private record Shown(String mediaType, byte[] bytes) {}

  @Override
  public void open(Routes routes) {
    routes.read("/photographs/{id}", Right.READ, this::photograph);
  }

  private void photograph(Context context) {
    Visitor visitor = Guest.visitor(context);
    String id = context.pathParam("id");
    Shown shown =
        desk.book().read(reading -> find(reading, id, visitor)).orElseThrow(Refusal::notFound);
    Answers.picture(context, shown.mediaType(), shown.bytes());
  }

  private static Optional<Shown> find(BookReading reading, String id, Visitor visitor) {
    return reading
        .find(Kind.PHOTOGRAPH, id)
        .filter(sheet -> !sheet.withdrawn())
        .map(Sheet::content)
        .filter(sheet -> property(reading, sheet).filter(visitor::mayRead).isPresent())
        .flatMap(
            sheet ->
                Photographs.bytes(reading, id)
                    .map(bytes -> new Shown(Choice.word(sheet.mediaType()), bytes)));
  }

  private static Optional<String> property(BookReading reading, PhotographSheet sheet) {
    String lawn = sheet.lawn();
    return lawn == null
        ? Optional.ofNullable(sheet.property())
        : reading.find(Kind.LAWN, lawn).map(Sheet::content).map(LawnSheet::property);
  }
}
