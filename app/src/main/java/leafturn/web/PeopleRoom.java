package leafturn.web;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.people.Invitation;
import leafturn.records.people.Invitations;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.people.Shares;
import leafturn.records.people.SignIns;
import leafturn.records.people.Visitor;
import leafturn.web.form.Form;

/** Where owners see who may open the book, and invite others. */
final class PeopleRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int FEW = 1;

  private final Desk desk;
  private final Door door;

  PeopleRoom(Desk desk, Door door) {
    this.desk = desk;
    this.door = door;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/people", Right.MANAGE_PEOPLE, this::page);
    routes.read("/people/sign-ins", Right.MANAGE_PEOPLE, this::signIns);
    routes.write("/people/invitations", Right.MANAGE_PEOPLE, Intake.FORM, this::invite);
    routes.write(
        "/people/invitations/{id}/withdraw", Right.MANAGE_PEOPLE, Intake.FORM, this::takeBack);
  }

  private void page(Context context) {
    show(context, desk.book().read(PeopleForms::of).invitation(), "", "");
  }

  private void signIns(Context context) {
    List<PeoplePage.Happening> entries =
        desk.book().read(reading -> happenings(reading, PeoplePage.MOST));
    desk.show(context, "sign-ins.jte", "Who came in", Map.of("entries", entries));
  }

  private void invite(Context context) {
    Visitor visitor = Guest.visitor(context);
    PeopleForms forms = desk.book().read(PeopleForms::of);
    Form form = forms.invitation(context.formParamMap());
    if (visitor.open()) {
      form =
          form.faulted(
              "",
              "Give yourself a password first, on your own page: once somebody else has one, only"
                  + " those with a password get in.");
    }
    if (!form.faulty()) {
      try {
        String name = form.value("name");
        Set<String> chosen = forms.chosen(form);
        Form sent = form;
        String secret =
            desk.book()
                .write(
                    visitor.person().name(),
                    writing -> Invitations.make(writing, name, PeopleForms.role(sent), chosen));
        show(context, forms.invitation(), name, door.origin(context) + "/invitations/" + secret);
        return;
      } catch (InputException fault) {
        form = form.faulted(fault);
      }
    }
    context.status(UNUSABLE);
    show(context, form, "", "");
  }

  private void takeBack(Context context) {
    desk.book()
        .write(
            Guest.visitor(context).person().name(),
            writing -> {
              Invitations.withdraw(writing, context.pathParam("id"));
              return true;
            });
    Answers.goTo(context, "/people");
  }

  private void show(Context context, Form invite, String invited, String address) {
    PeoplePage page =
        desk.book()
            .read(
                reading ->
                    new PeoplePage(
                        rows(reading),
                        letters(reading),
                        invite,
                        invited,
                        address,
                        happenings(reading, FEW)));
    desk.show(context, "people.jte", "People", Map.of("page", page));
  }

  private static List<PeoplePage.Row> rows(BookReading reading) {
    PeopleForms forms = PeopleForms.of(reading);
    return People.all(reading).stream()
        .map(
            person ->
                new PeoplePage.Row(
                    person.id(),
                    person.name(),
                    person.role().word(),
                    forms.sees(person.role(), Shares.of(reading, person.id())),
                    signsIn(person)))
        .toList();
  }

  private static String signsIn(Person person) {
    if (person.withdrawn()) {
      return "no longer";
    }
    return person.hasPassword() ? "with a password" : "no password yet";
  }

  private List<PeoplePage.Letter> letters(BookReading reading) {
    PeopleForms forms = PeopleForms.of(reading);
    return Invitations.open(reading, desk.clock().instant()).stream()
        .map(letter -> new PeoplePage.Letter(letter.id(), letter.name(), words(letter, forms)))
        .toList();
  }

  private String words(Invitation letter, PeopleForms forms) {
    return "%s, %s, will see %s; until %s."
        .formatted(
            letter.name(),
            letter.role().word(),
            forms.sees(letter.role(), letter.properties()),
            moment(letter.endsAt()));
  }

  private List<PeoplePage.Happening> happenings(BookReading reading, int most) {
    return SignIns.latest(reading, most).stream()
        .map(
            entry ->
                new PeoplePage.Happening(
                    moment(entry.at()),
                    entry.name().isEmpty() ? "a name the book does not know" : entry.name(),
                    entry.words(),
                    CameFrom.place(entry.address())))
        .toList();
  }

  private String moment(Instant moment) {
    ZoneId zone = desk.clock().getZone();
    return Moments.words(moment, zone);
  }
}
