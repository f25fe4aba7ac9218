package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.nio.charset.StandardCharsets;
import java.util.List;
import leafturn.quantity.Units;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.LogTable;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;

/**
 * The log of a lawn as a file: CSV in metric units for the command line or another book, a workbook
 * in the units of whoever asks for it.
 */
final class LogFilesRoom implements Room {
  private static final String CSV = "text/csv; charset=utf-8";
  private static final String XLSX =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

  private final Desk desk;

  LogFilesRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/lawns/{address}/log.csv", Right.READ, this::csv);
    routes.read("/lawns/{address}/log.xlsx", Right.READ, this::xlsx);
  }

  private void csv(Context context) {
    byte[] bytes = table(context, Units.METRIC).csv().getBytes(StandardCharsets.UTF_8);
    send(context, CSV, "csv", bytes);
  }

  private void xlsx(Context context) {
    Units units = Guest.visitor(context).person().units();
    send(context, XLSX, "xlsx", table(context, units).xlsx());
  }

  private LogTable table(Context context, Units units) {
    Visitor visitor = Guest.visitor(context);
    List<Sheet<LogSheet>> entries =
        desk.book()
            .read(
                reading -> {
                  Sheet<LawnSheet> lawn =
                      reading
                          .at(Kind.LAWN, context.pathParam("address"))
                          .filter(sheet -> visitor.mayRead(sheet.content().property()))
                          .orElseThrow(Refusal::notFound);
                  return reading.ofLawn(Kind.LOG, lawn.id());
                });
    return LogTable.of(entries, units);
  }

  private static void send(Context context, String type, String ending, byte[] bytes) {
    String name = context.pathParam("address") + "-log." + ending;
    context.header(Header.CACHE_CONTROL, "private, no-cache");
    context.header(Header.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"");
    context.contentType(type).result(bytes);
  }
}
