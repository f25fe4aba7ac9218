package leafturn.web;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.people.Invitation;
import leafturn.records.people.Invitations;
import leafturn.records.people.Passwords;
import leafturn.records.people.Person;
import leafturn.records.people.Sessions;
import leafturn.records.people.SignIns;
import leafturn.records.people.SignIns.Outcome;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;

/** Where an invitation becomes an account. */
final class InvitationRoom implements Room {
  private static final int GONE = 410;
  private static final int UNUSABLE = 422;
  private static final FormShape SHAPE =
      FormShape.of(
          Field.text("name", "Your name in this book").needed(),
          Field.password("fresh", "Password").needed(),
          Field.password("again", "The password once more").needed());

  private final Desk desk;
  private final Door door;

  InvitationRoom(Desk desk, Door door) {
    this.desk = desk;
    this.door = door;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/invitations/{secret}", Right.ANYBODY, this::page);
    routes.write("/invitations/{secret}", Right.ANYBODY, Intake.FORM, this::accept);
  }

  private void page(Context context) {
    Optional<Invitation> invitation = find(context);
    if (invitation.isEmpty()) {
      gone(context);
      return;
    }
    Form form = Form.blank(SHAPE, Units.METRIC).with("name", invitation.get().name());
    show(context, invitation.get(), form);
  }

  private void accept(Context context) {
    Optional<Invitation> invitation = find(context);
    if (invitation.isEmpty()) {
      gone(context);
      return;
    }
    Form form = Form.sent(SHAPE, Units.METRIC, context.formParamMap());
    form = NewPassword.checked(context, form, form.value("name"));
    try {
      if (form.value("name").isEmpty()) {
        form = form.faulted("name", "give the name you want to be called.");
      }
      if (!form.faulty()) {
        make(context, form.value("name"));
        return;
      }
    } catch (InputException fault) {
      form = form.faulted(fault);
    }
    context.status(UNUSABLE);
    show(context, invitation.get(), form);
  }

  private void make(Context context, String name) {
    String hash = Passwords.hash(NewPassword.typed(context));
    String address = door.address(context);
    String browser = String.valueOf(context.userAgent());
    Optional<String> secret =
        desk.book()
            .write(
                name,
                writing -> {
                  Optional<Person> person =
                      Invitations.accept(writing, context.pathParam("secret"), name, hash);
                  person.ifPresent(
                      known ->
                          SignIns.note(
                              writing, known.name(), known, address, Outcome.INVITATION_TAKEN));
                  return person.map(known -> Sessions.begin(writing, known.id(), address, browser));
                });
    if (secret.isEmpty()) {
      gone(context);
      return;
    }
    door.handOver(context, secret.get());
    Answers.goTo(context, "/");
  }

  private Optional<Invitation> find(Context context) {
    return desk.book()
        .read(
            reading ->
                Invitations.find(reading, context.pathParam("secret"), desk.clock().instant()));
  }

  private void gone(Context context) {
    desk.tell(
        context,
        GONE,
        "This invitation does not hold.",
        "It was used or taken back, or is older than seven days. Ask for another one.");
  }

  private void show(Context context, Invitation invitation, Form form) {
    desk.show(
        context,
        "invitation.jte",
        "Invitation",
        Map.of("invitation", invitation, "form", form, "address", context.path()));
  }
}
