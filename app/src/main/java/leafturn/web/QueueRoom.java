package leafturn.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import io.javalin.http.Header;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.book.BookTitle;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.LogSheet;
import leafturn.web.form.Field;
import leafturn.web.form.Form;

/**
 * Where a phone asks what it needs to log without a connection, and where it sends what was logged.
 * An entry is answered with 200 once it is in the book, however often it is sent.
 */
final class QueueRoom implements Room {
  static final String TAKEN =
      "Another entry with the same id is in the book already. Discard this one, or enter it anew.";

  private static final String CHANGED =
      "This entry was sent before, and what the book has of it was changed or withdrawn since."
          + " Correct it on the lawn’s page, and discard this one.";

  private static final String JSON_TYPE = "application/json; charset=utf-8";
  private static final int CONFLICT = 409;
  private static final int FAULTY = 422;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Desk desk;
  private final LoggedLawns lawns;
  private final LogIntake intake;

  QueueRoom(Desk desk) {
    this.desk = desk;
    this.lawns = new LoggedLawns(desk);
    this.intake = new LogIntake(desk.book());
  }

  @Override
  public void open(Routes routes) {
    routes.read("/queue/who", Right.READ, this::who);
    routes.read("/queue/lawns", Right.LOG, this::lawns);
    routes.write("/queue", Right.LOG, Intake.PHOTOGRAPH, this::take);
  }

  private void who(Context context) {
    answer(context, 200, person(LogWriter.of(context)).put("token", Guest.of(context).token()));
  }

  private static ObjectNode person(LogWriter who) {
    ObjectNode answer = JSON.createObjectNode();
    answer.putObject("person").put("id", who.id()).put("name", who.name());
    return answer;
  }

  private void lawns(Context context) {
    LogWriter who = LogWriter.of(context);
    LocalDate fixed = desk.book().read(BookTitle::of).fixedDay();
    ObjectNode answer = person(who);
    answer.put("units", word(who.units()));
    answer.put("heightUnit", Measure.HEIGHT.unit(who.units()).symbol());
    answer.put("fixedDay", fixed == null ? null : fixed.toString());
    ArrayNode list = answer.putArray("lawns");
    for (LoggedLawn lawn : lawns.mostUrgentFirst(who)) {
      list.addObject()
          .put("id", lawn.id())
          .put("address", lawn.address())
          .put("name", lawn.name())
          .put("property", lawn.property())
          .put("timeZone", lawn.timeZone())
          .put("advice", lawn.advice())
          .put("cutHeight", lawn.cutHeight(who.units()))
          .put("returnedShare", lawn.returnedShare());
    }
    answer(context, 200, answer);
  }

  private void take(Context context) {
    LogWriter who = LogWriter.of(context);
    String id = param(context, "id");
    Optional<LogChoice> choice = LogChoice.named(param(context, "as"), who.units());
    Optional<LoggedLawn> lawn = lawns.withId(who, param(context, "lawn"));
    if (!LogIntake.Sent.isId(id) || choice.isEmpty()) {
      refuse(context, "This is no entry that a log page makes; discard it, or enter it anew.");
    } else if (lawn.isEmpty()) {
      refuse(context, "This lawn is no longer in the book, or no longer shared with you.");
    } else {
      take(context, who, lawn.get(), id, choice.get());
    }
  }

  private void take(Context context, LogWriter who, LoggedLawn lawn, String id, LogChoice choice) {
    Units units = param(context, "units").equals(word(Units.US)) ? Units.US : Units.METRIC;
    Map<String, List<String>> fields = context.formParamMap();
    LogIntake.Outcome outcome;
    try {
      SentPhotograph photograph = SentPhotograph.of(context, id);
      outcome = intake.take(who, lawn, new LogIntake.Sent(id, choice, units, fields, photograph));
    } catch (InputException noPicture) {
      refuse(context, String.join(" ", noPicture.faults()));
      return;
    }
    if (outcome instanceof LogIntake.Outcome.Faulty faulty) {
      answer(context, FAULTY, faults(faulty.form()));
    } else if (outcome instanceof LogIntake.Outcome.Taken taken) {
      answer(context, CONFLICT, sentence(taken.current().version() > 1 ? CHANGED : TAKEN));
    } else {
      answer(context, 200, kept(((LogIntake.Outcome.Kept) outcome).sheet(), lawn, units));
    }
  }

  /** The acknowledgement of an entry, with what may be a slip in it. */
  private ObjectNode kept(Sheet<LogSheet> sheet, LoggedLawn lawn, Units units) {
    String doubt = desk.book().read(reading -> SavedEntry.of(reading, sheet, lawn, units)).doubt();
    ObjectNode answer = JSON.createObjectNode().put("id", sheet.id());
    return doubt.isEmpty() ? answer : answer.put("doubt", doubt);
  }

  private static ObjectNode faults(Form form) {
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode faults = answer.putArray("faults");
    for (Fault fault : form.faults()) {
      String label = form.shape().field(fault.field()).map(Field::label).orElse("");
      faults
          .addObject()
          .put("field", fault.field())
          .put("label", label)
          .put("sentence", fault.sentence());
    }
    return answer;
  }

  private static void refuse(Context context, String sentence) {
    answer(context, FAULTY, sentence(sentence));
  }

  private static ObjectNode sentence(String sentence) {
    ObjectNode answer = JSON.createObjectNode();
    answer.putArray("faults").addObject().put("field", "").put("sentence", sentence);
    return answer;
  }

  private static void answer(Context context, int status, ObjectNode answer) {
    try {
      context
          .status(status)
          .header(Header.CACHE_CONTROL, "no-store")
          .contentType(JSON_TYPE)
          .result(JSON.writeValueAsString(answer));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of text and numbers is always JSON", e);
    }
  }

  private static String param(Context context, String name) {
    String value = context.formParam(name);
    return value == null ? "" : value;
  }

  private static String word(Units units) {
    return units == Units.US ? "us" : "metric";
  }
}
