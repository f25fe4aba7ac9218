package leafturn.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.records.Dates;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.book.Today;
import leafturn.web.form.Form;

/** Where the days of a weather station are typed in and corrected. */
final class StationDayRoom implements Room {
  private static final int CONFLICT = 409;
  private static final int UNUSABLE = 422;

  private final Desk desk;
  private final Stations stations;

  StationDayRoom(Desk desk) {
    this.desk = desk;
    this.stations = new Stations(desk);
  }

  @Override
  public void open(Routes routes) {
    routes.write("/weather/{station}/days", Right.CHANGE, Intake.FORM, this::add);
    routes.read("/weather/{station}/days", Right.CHANGE, this::find);
    routes.read("/weather/{station}/days/{day}", Right.CHANGE, this::show);
    routes.write("/weather/{station}/days/{day}", Right.CHANGE, Intake.FORM, this::correct);
  }

  /** Goes to the day that is asked for, or lets it be typed in. */
  private void find(Context context) {
    LocalDate day = Dates.parse(String.valueOf(context.queryParam("day")));
    Optional<StationDay> known =
        day == null
            ? Optional.empty()
            : desk.book()
                .read(reading -> StationDays.on(reading, stations.of(context, reading).id(), day));
    if (known.isPresent()) {
      Answers.goTo(context, address(context) + "/days/" + day);
    } else {
      Form form = Form.blank(WeatherForms.DAY, Stations.units(context));
      stations.show(
          context,
          day == null
              ? form.faulted("day", "give a date such as 2015-05-28.")
              : form.with("day", day.toString())
                  .faulted("day", "the book does not have this day; type it in."));
    }
  }

  private void add(Context context) {
    Form form = Form.sent(WeatherForms.DAY, Stations.units(context), Body.form(context));
    try {
      StationDay day = StationDay.read(form.document("day"));
      if (day.day().isAfter(Today.begunAnywhere(desk.clock()))) {
        context.status(UNUSABLE);
        stations.show(context, form.faulted("day", "it has not come yet; give it as a forecast."));
        return;
      }
      if (desk.book().write(by(context), writing -> add(context, writing, day))) {
        Answers.goTo(context, address(context));
        return;
      }
      context.status(CONFLICT);
      String known = "the book has this day already; to correct it, choose it in the table below.";
      stations.show(context, form.faulted("day", known));
    } catch (InputException faults) {
      context.status(UNUSABLE);
      stations.show(context, form.faulted(faults));
    }
  }

  /** Adds a day; false when the book says something else of it. */
  private boolean add(Context context, BookWriting writing, StationDay day) {
    String station = stations.of(context, writing).id();
    Optional<StationDay> before = StationDays.on(writing, station, day.day());
    if (before.isEmpty()) {
      StationDays.put(writing, station, List.of(day));
    }
    return before.isEmpty() || before.get().equals(day);
  }

  private static String by(Context context) {
    return Guest.visitor(context).person().name();
  }

  private static String address(Context context) {
    return Stations.HERE + "/" + context.pathParam("station");
  }

  private void show(Context context) {
    StationDay day = desk.book().read(reading -> day(context, reading));
    show(context, day, Form.of(WeatherForms.MEASURED, Stations.units(context), day.document()));
  }

  private StationDay day(Context context, BookReading reading) {
    LocalDate day = Dates.parse(context.pathParam("day"));
    if (day == null) {
      throw Refusal.notFound();
    }
    return StationDays.on(reading, stations.of(context, reading).id(), day)
        .orElseThrow(Refusal::notFound);
  }

  private void show(Context context, StationDay day, Form form) {
    String name = desk.book().read(reading -> stations.of(context, reading).content().name());
    desk.show(
        context,
        "stationday.jte",
        name,
        Map.of(
            "form", form,
            "name", name,
            "day", day.day(),
            "station", address(context),
            "before", day.document()));
  }

  private void correct(Context context) {
    Form form = Form.sent(WeatherForms.MEASURED, Stations.units(context), Body.form(context));
    StationDay known = desk.book().read(reading -> day(context, reading));
    try {
      StationDay day = StationDay.read(form.document("day", known.document()));
      String seen = String.valueOf(context.formParam("before"));
      if (desk.book().write(by(context), writing -> correct(context, writing, day, seen))) {
        Answers.goTo(context, address(context));
        return;
      }
      context.status(CONFLICT);
      String meanwhile = "Somebody changed this day meanwhile; save again if yours is right.";
      show(context, known, form.faulted("", meanwhile));
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, known, form.faulted(faults));
    }
  }

  /** Replaces a day; false when it is no longer what its page showed. */
  private boolean correct(Context context, BookWriting writing, StationDay day, String seen) {
    boolean unchanged = day(context, writing).document().equals(seen);
    if (unchanged) {
      StationDays.put(writing, stations.of(context, writing).id(), List.of(day));
    }
    return unchanged;
  }
}
