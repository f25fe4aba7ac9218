package leafturn.web;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.BookWriting;
import leafturn.records.people.FrontDoor;
import leafturn.records.people.Passwords;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.people.Secret;
import leafturn.records.people.Session;
import leafturn.records.people.Sessions;
import leafturn.records.people.SignIns;
import leafturn.records.people.SignIns.Outcome;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import org.jspecify.annotations.Nullable;

/** Where people set their units and password, and see where they are signed in. */
final class MyRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final String HERE = "/me";
  private static final FormShape UNITS =
      FormShape.of(
          Field.oneOf(
                  "units",
                  "Units in which you read and write",
                  List.of(
                      new Choice("metric", "Metric: mm, m², kg, °C"),
                      new Choice("us", "US: inches, square feet, pounds, °F")))
              .hint("The book itself keeps everything in metric; nothing is lost by changing.")
              .needed());
  private static final Field FRESH = Field.password("fresh", "New password").needed();
  private static final Field AGAIN = Field.password("again", "The new password once more").needed();
  private static final FormShape FIRST =
      FormShape.of(Field.text("name", "Your name in this book").needed(), FRESH, AGAIN);
  private static final FormShape CHANGE =
      FormShape.of(Field.password("current", "Password until now").needed(), FRESH, AGAIN);

  private final Desk desk;
  private final Door door;
  private final FrontDoor frontDoor;

  MyRoom(Desk desk, Door door, FrontDoor frontDoor) {
    this.desk = desk;
    this.door = door;
    this.frontDoor = frontDoor;
  }

  @Override
  public void open(Routes routes) {
    routes.read(HERE, Right.READ, context -> show(context, units(context), blank(context)));
    routes.write("/me/units", Right.READ, Intake.FORM, this::setUnits);
    routes.write("/me/password", Right.READ, Intake.FORM, this::setPassword);
    routes.write("/me/sign-out-everywhere", Right.READ, Intake.FORM, this::signOutEverywhere);
  }

  private void setUnits(Context context) {
    Form form = Form.sent(UNITS, Units.METRIC, context.formParamMap());
    String word = form.value("units");
    if (!word.equals("metric") && !word.equals("us")) {
      context.status(UNUSABLE);
      show(context, form.faulted("units", "choose one of the two."), blank(context));
      return;
    }
    Person person = Guest.visitor(context).person();
    write(
        person,
        writing ->
            People.setUnits(writing, person.id(), Units.valueOf(word.toUpperCase(Locale.ROOT))));
    Answers.goTo(context, HERE);
  }

  private void setPassword(Context context) {
    Person person = Guest.visitor(context).person();
    Form form = Form.sent(shape(person), person.units(), context.formParamMap());
    String name = person.hasPassword() ? person.name() : form.value("name");
    form = NewPassword.checked(context, form, name);
    if (!form.faulty() && person.hasPassword() && !confirmed(context, person)) {
      form = form.faulted("current", "this is not your password, or was tried too often.");
    }
    try {
      if (!form.faulty()) {
        setPassword(context, person, name);
        Answers.goTo(context, HERE);
        return;
      }
    } catch (InputException fault) {
      form = form.faulted(fault);
    }
    context.status(UNUSABLE);
    show(context, units(context), form);
  }

  private boolean confirmed(Context context, Person person) {
    String current = context.formParam("current");
    return frontDoor.confirms(person, current == null ? "" : current, door.address(context));
  }

  /** Every session ends, and this browser begins a new one. */
  private void setPassword(Context context, Person person, String name) {
    String hash = Passwords.hash(NewPassword.typed(context));
    String address = door.address(context);
    String secret =
        desk.book()
            .write(
                person.name(),
                writing -> {
                  if (!person.name().equals(name)) {
                    People.revise(writing, person.named(name));
                  }
                  People.setPasswordHash(writing, person.id(), hash);
                  Sessions.endAll(writing, person.id());
                  SignIns.note(
                      writing, name, person.named(name), address, Outcome.PASSWORD_CHANGED);
                  return Sessions.begin(
                      writing, person.id(), address, String.valueOf(context.userAgent()));
                });
    door.handOver(context, secret);
  }

  private void signOutEverywhere(Context context) {
    Person person = Guest.visitor(context).person();
    write(
        person,
        writing -> {
          Sessions.endAll(writing, person.id());
          SignIns.note(
              writing, person.name(), person, door.address(context), Outcome.WENT_EVERYWHERE);
        });
    door.handOver(context, Secret.fresh());
    Answers.goTo(context, "/sign-in");
  }

  private void write(Person person, java.util.function.Consumer<BookWriting> change) {
    desk.book()
        .write(
            person.name(),
            writing -> {
              change.accept(writing);
              return true;
            });
  }

  private static FormShape shape(Person person) {
    return person.hasPassword() ? CHANGE : FIRST;
  }

  private static Form blank(Context context) {
    Person person = Guest.visitor(context).person();
    Form form = Form.blank(shape(person), person.units());
    return person.hasPassword() ? form : form.with("name", person.name());
  }

  private static Form units(Context context) {
    Person person = Guest.visitor(context).person();
    return Form.blank(UNITS, person.units())
        .with("units", person.units().name().toLowerCase(Locale.ROOT));
  }

  private void show(Context context, Form units, Form password) {
    Person person = Guest.visitor(context).person();
    String secret = door.secret(context);
    List<Session> sessions =
        desk.book().read(reading -> Sessions.of(reading, person.id(), desk.clock().instant()));
    MyPage page =
        new MyPage(
            person,
            units,
            password,
            sessions.stream().map(session -> place(session, secret)).toList());
    desk.show(context, "me.jte", "You", Map.of("page", page));
  }

  private MyPage.Place place(Session session, @Nullable String secret) {
    ZoneId zone = desk.clock().getZone();
    return new MyPage.Place(
        CameFrom.browser(session.browser()),
        Moments.words(session.beganAt(), zone),
        Moments.words(session.seenAt(), zone),
        CameFrom.place(session.address()),
        secret != null && session.secretHash().equals(Secret.hash(secret)));
  }
}
