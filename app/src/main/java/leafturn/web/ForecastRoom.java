package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.model.weather.generator.WeatherForecast;
import leafturn.records.Dates;
import leafturn.records.Faults.Fault;
import leafturn.records.ForecastFile;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.ForecastSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.WeatherStation;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import org.jspecify.annotations.Nullable;

/** Where a forecast comes in for the place of a station: a file is looked at, and then used. */
final class ForecastRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int MOST_BYTES = 100_000;
  private static final String ORIGIN = "origin";
  private static final String ISSUED = "issued";
  private static final String TEXT = "text";
  private static final String FILE = "file";

  private static final FormShape SHAPE =
      FormShape.of(
          Field.text(ORIGIN, "Whose forecast it is")
              .hint("It is named where advice follows it.")
              .needed(),
          Field.date(ISSUED, "Made on").needed(),
          Field.file(FILE, "Forecast file")
              .hint(
                  "CSV with date, temp_max, temp_min, rain_mm or rain_chance_percent or both, and"
                      + " perhaps wind_m_s; a line a day, up to 16."));

  private final Desk desk;
  private final Stations stations;

  ForecastRoom(Desk desk) {
    this.desk = desk;
    this.stations = new Stations(desk);
  }

  @Override
  public void open(Routes routes) {
    routes.read("/weather/{station}/forecast", Right.CHANGE, context -> show(context, blank()));
    routes.write("/weather/{station}/forecast", Right.CHANGE, Intake.SHAPE, this::look);
    routes.write("/weather/{station}/forecast/use", Right.CHANGE, Intake.FORM, this::use);
  }

  private Form blank() {
    return Form.blank(SHAPE, leafturn.quantity.Units.METRIC).with(ISSUED, desk.today().toString());
  }

  private void show(Context context, Form form) {
    show(context, form, null, "");
  }

  private void show(Context context, Form form, @Nullable ForecastSheet found, String text) {
    Sheet<WeatherStation> station = desk.book().read(reading -> stations.of(context, reading));
    Map<String, Object> content = new HashMap<>();
    content.put("station", station);
    content.put("form", form);
    content.put("text", text);
    content.put(
        "days",
        found == null ? null : new ForecastWords(found, Stations.units(context), desk.today()));
    desk.show(context, "forecast.jte", "A forecast for " + station.content().name(), content);
  }

  private void look(Context context) {
    Form form = sent(context);
    String text = "";
    try {
      text = text(context);
    } catch (InputException noFile) {
      again(context, faulted(ofTheForm(form), noFile));
      return;
    }
    try {
      show(context, form, sheet(context, form, text), text);
    } catch (InputException faults) {
      again(context, faulted(form, faults));
    }
  }

  private void again(Context context, Form form) {
    context.status(UNUSABLE);
    show(context, form);
  }

  private void use(Context context) {
    Form form = sent(context);
    String text = String.valueOf(context.formParam(TEXT));
    Visitor visitor = Guest.visitor(context);
    try {
      ForecastSheet forecast = sheet(context, form, text);
      desk.book()
          .write(
              visitor.person().name(),
              writing -> writing.add(Kind.FORECAST, UUID.randomUUID().toString(), forecast));
      Answers.goTo(context, Stations.HERE + "/" + forecast.station());
    } catch (InputException faults) {
      again(context, faulted(form, faults));
    }
  }

  private static Form sent(Context context) {
    return Form.sent(SHAPE, leafturn.quantity.Units.METRIC, Body.form(context));
  }

  /** What is wrong in the file is told as it stands there; all else beside its field. */
  private static Form faulted(Form form, InputException faults) {
    Form told = form;
    for (var fault : faults.faultsByField()) {
      boolean ofTheForm = fault.field().equals(ORIGIN) || fault.field().equals(ISSUED);
      told =
          told.faulted(
              ofTheForm ? fault.field() : FILE, ofTheForm ? fault.sentence() : fault.placed());
    }
    return told;
  }

  private ForecastSheet sheet(Context context, Form form, String text) {
    String station = desk.book().<String>read(reading -> stations.of(context, reading).id());
    Form asked = ofTheForm(form);
    List<Fault> faults = new ArrayList<>(asked.faults());
    WeatherForecast forecast = read(text, faults);
    LocalDate issued = Dates.parse(form.value(ISSUED));
    if (forecast != null && lastDay(forecast).isBefore(desk.today())) {
      String passed =
          "All its days have passed, the last of them on %s; choose a newer one."
              .formatted(DayWords.dayAndYear(lastDay(forecast)));
      faults.add(new Fault(FILE, passed, passed));
    }
    if (forecast == null || issued == null || !faults.isEmpty()) {
      throw InputException.of(faults);
    }
    return Kind.FORECAST.checked(
        new ForecastSheet(station, issued, form.value(ORIGIN), forecast.first(), days(forecast)));
  }

  private static LocalDate lastDay(WeatherForecast forecast) {
    return forecast.first().plusDays(forecast.days().size() - 1);
  }

  private static @Nullable WeatherForecast read(String text, List<Fault> faults) {
    try {
      return ForecastFile.read(new SourceText("forecast", text));
    } catch (InputException wrong) {
      faults.addAll(wrong.faultsByField());
      return null;
    }
  }

  private static List<ForecastSheet.Day> days(WeatherForecast forecast) {
    return forecast.days().stream()
        .map(
            day ->
                new ForecastSheet.Day(
                    day.minimumC(),
                    day.maximumC(),
                    told(day.rainMm()),
                    told(day.rainChanceFraction()),
                    told(day.windMPerS())))
        .toList();
  }

  /** What the form itself lacks, whatever the file says. */
  private static Form ofTheForm(Form form) {
    Form told = form;
    if (form.value(ORIGIN).isBlank()) {
      told = told.faulted(ORIGIN, "It is missing; give whose forecast it is.");
    }
    if (Dates.parse(form.value(ISSUED)) == null) {
      told = told.faulted(ISSUED, "It is missing; give the day it was made.");
    }
    return told;
  }

  private static InputException fault(String field, String sentence) {
    return InputException.of(List.of(new Fault(field, sentence, sentence)));
  }

  private static @Nullable Double told(double value) {
    return Double.isNaN(value) ? null : value;
  }

  private static String text(Context context) {
    UploadedFile file = context.isMultipartFormData() ? context.uploadedFile(FILE) : null;
    if (file == null || file.size() == 0) {
      throw fault(FILE, "Choose a file that is not empty.");
    }
    try (InputStream in = file.content()) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      return SourceText.of("forecast", bytes, MOST_BYTES).text();
    } catch (IOException e) {
      throw new UncheckedIOException("a forecast that came with a form could not be read", e);
    }
  }
}
