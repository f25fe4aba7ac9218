package leafturn.web;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Set;
import leafturn.records.InputException;
import leafturn.records.book.BookWriting;
import leafturn.records.people.Calendars;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.people.Sessions;
import leafturn.records.people.Shares;
import leafturn.records.people.SignIns;
import leafturn.records.people.SignIns.Outcome;
import leafturn.records.people.StalePersonException;
import leafturn.web.form.Form;

/** Where an owner changes what somebody is and sees. */
final class PersonRoom implements Room {
  private static final int CONFLICT = 409;
  private static final int UNUSABLE = 422;

  private final Desk desk;
  private final Door door;

  PersonRoom(Desk desk, Door door) {
    this.desk = desk;
    this.door = door;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/people/{id}", Right.MANAGE_PEOPLE, this::page);
    routes.write("/people/{id}", Right.MANAGE_PEOPLE, Intake.FORM, this::save);
  }

  private void page(Context context) {
    Person person = person(context);
    Form form = desk.book().read(reading -> PeopleForms.of(reading).of(reading, person));
    show(context, person, form, "");
  }

  private void save(Context context) {
    Person before = person(context);
    PeopleForms forms = desk.book().read(PeopleForms::of);
    Form form = forms.person(context.formParamMap());
    try {
      if (!form.faulty()) {
        Person after = changed(before, form);
        Set<String> shared = forms.chosen(form);
        String address = door.address(context);
        desk.book()
            .write(
                Guest.visitor(context).person().name(),
                writing -> save(writing, before, after, shared, address));
        Answers.goTo(context, "/people");
        return;
      }
    } catch (InputException fault) {
      form = form.faulted(fault);
    } catch (StalePersonException stale) {
      quicker(context, stale.current(), forms, form);
      return;
    }
    context.status(UNUSABLE);
    show(context, before, form, "");
  }

  private static Person save(
      BookWriting writing, Person before, Person changed, Set<String> shared, String address) {
    Set<String> sharedBefore = Shares.of(writing, before.id());
    Person after = People.revise(writing, changed);
    Shares.set(writing, after.id(), shared);
    boolean other =
        after.role() != before.role()
            || after.withdrawn() != before.withdrawn()
            || !shared.equals(sharedBefore);
    if (other) {
      Sessions.endAll(writing, after.id());
      boolean leaves = after.withdrawn() && !before.withdrawn();
      SignIns.note(
          writing,
          after.name(),
          after,
          address,
          leaves ? Outcome.WITHDRAWN : Outcome.RIGHTS_CHANGED);
    }
    if (after.withdrawn()) {
      Calendars.withdraw(writing, after.id());
    }
    return after;
  }

  private void quicker(Context context, Person now, PeopleForms forms, Form typed) {
    Set<String> shared = desk.book().read(reading -> Shares.of(reading, now.id()));
    String state =
        "The book now says: %s, %s, sees %s%s. Below is what you typed; save again to put it in"
                .formatted(
                    now.name(),
                    now.role().word(),
                    forms.sees(now.role(), shared),
                    now.withdrawn() ? ", may no longer open the book" : "")
            + " place of that.";
    context.status(CONFLICT);
    show(context, now, typed.with("version", Integer.toString(now.version())), state);
  }

  private static Person changed(Person before, Form form) {
    int version =
        form.value("version").matches("\\d{1,9}")
            ? Integer.parseInt(form.value("version"))
            : before.version();
    return new Person(
        before.id(),
        form.value("name"),
        PeopleForms.role(form),
        before.units(),
        before.hasPassword(),
        form.taken("withdrawn", "true"),
        Math.max(1, version));
  }

  private Person person(Context context) {
    return desk.book()
        .read(reading -> People.find(reading, context.pathParam("id")))
        .orElseThrow(Refusal::notFound);
  }

  private void show(Context context, Person person, Form form, String stale) {
    desk.show(
        context,
        "person.jte",
        person.name(),
        Map.of("person", person, "form", form, "stale", stale));
  }
}
