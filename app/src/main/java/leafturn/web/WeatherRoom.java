package leafturn.web;

import io.javalin.http.Context;
import java.util.Map;
import java.util.UUID;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.WeatherStation;
import leafturn.web.form.Form;
import leafturn.web.sheet.StationFields;
import org.jspecify.annotations.Nullable;

/** The weather stations of the book: what each has measured, how far it reaches, where it lies. */
final class WeatherRoom implements Room {
  private static final int CONFLICT = 409;
  private static final int UNUSABLE = 422;
  private static final double USUAL_WIND_HEIGHT_M = 2;

  private final Desk desk;
  private final Stations stations;

  WeatherRoom(Desk desk) {
    this.desk = desk;
    this.stations = new Stations(desk);
  }

  @Override
  public void open(Routes routes) {
    routes.read(Stations.HERE, Right.READ, this::list);
    routes.read("/weather/new", Right.CHANGE, context -> begin(context, begun(context)));
    routes.write("/weather/new", Right.CHANGE, Intake.FORM, this::add);
    routes.read("/weather/{station}", Right.READ, stations::show);
    routes.read("/weather/{station}/edit", Right.CHANGE, this::edit);
    routes.write("/weather/{station}/edit", Right.CHANGE, Intake.FORM, this::revise);
  }

  private void list(Context context) {
    Visitor visitor = Guest.visitor(context);
    Map<String, Object> content =
        Map.of("stations", stations.all(visitor), "mayChange", visitor.mayChangeAll());
    desk.show(context, "weather.jte", "Weather", content);
  }

  private static Form begun(Context context) {
    Units units = Stations.units(context);
    Form form = Form.blank(StationFields.shape(units), units);
    return form.with("windHeightM", Measure.DISTANCE.begun(USUAL_WIND_HEIGHT_M, form.units()));
  }

  private void begin(Context context, Form form) {
    show(context, form, "A new weather station", Stations.HERE + "/new", 0);
  }

  private void show(Context context, Form form, String headline, String action, int version) {
    desk.show(
        context,
        "stationform.jte",
        headline,
        Map.of("form", form, "headline", headline, "action", action, "version", version));
  }

  private void add(Context context) {
    Form form = sent(context);
    try {
      WeatherStation station = Kind.STATION.read(form.document("station"));
      String id = UUID.randomUUID().toString();
      desk.book().write(by(context), writing -> writing.add(Kind.STATION, id, station));
      Answers.goTo(context, Stations.HERE + "/" + id);
    } catch (InputException faults) {
      context.status(UNUSABLE);
      begin(context, form.faulted(faults));
    }
  }

  private static Form sent(Context context) {
    Units units = Stations.units(context);
    return Form.sent(StationFields.shape(units), units, Body.form(context));
  }

  private static String by(Context context) {
    return Guest.visitor(context).person().name();
  }

  private void edit(Context context) {
    Sheet<WeatherStation> station = station(context);
    String document = Kind.STATION.write(station.content());
    Units units = Stations.units(context);
    Form form = Form.of(StationFields.shape(units), units, document);
    show(context, station, form, station.version());
  }

  private Sheet<WeatherStation> station(Context context) {
    return desk.book().read(reading -> stations.of(context, reading));
  }

  private void show(Context context, Sheet<WeatherStation> station, Form form, int version) {
    show(context, form, station.content().name(), address(station) + "/edit", version);
  }

  private static String address(Sheet<WeatherStation> station) {
    return Stations.HERE + "/" + station.id();
  }

  private void revise(Context context) {
    Form form = sent(context);
    Sheet<WeatherStation> station = station(context);
    int version = number(context.formParam("version"));
    if (version != station.version()) {
      context.status(CONFLICT);
      show(context, station, form.faulted("", changed(station)), station.version());
      return;
    }
    try {
      String before = Kind.STATION.write(station.content());
      WeatherStation changed = Kind.STATION.read(form.document("station", before));
      desk.book()
          .write(
              by(context), writing -> writing.revise(Kind.STATION, station.id(), version, changed));
      Answers.goTo(context, address(station));
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, station, form.faulted(faults), version);
    }
  }

  private static String changed(Sheet<WeatherStation> station) {
    WeatherStation now = station.content();
    return "%s changed this station meanwhile; it is now %s, from %s. What you typed is below; save again if it is right."
        .formatted(station.writtenBy(), now.name(), now.origin());
  }

  private static int number(@Nullable String text) {
    return text != null && text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
  }
}
