package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import leafturn.records.people.FrontDoor;
import leafturn.records.people.FrontDoor.Answer;
import leafturn.records.people.Person;
import leafturn.records.people.Secret;
import leafturn.records.people.Sessions;
import leafturn.records.people.SignIns;
import leafturn.records.people.SignIns.Outcome;
import org.jspecify.annotations.Nullable;

/** Where people come in and go. */
final class SignInRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int TOO_MANY = 429;
  private static final int LONGEST_PATH = 500;
  private static final String HOME = "/";

  private final Desk desk;
  private final Door door;
  private final FrontDoor frontDoor;

  SignInRoom(Desk desk, Door door, FrontDoor frontDoor) {
    this.desk = desk;
    this.door = door;
    this.frontDoor = frontDoor;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/sign-in", Right.ANYBODY, this::page);
    routes.write("/sign-in", Right.ANYBODY, Intake.FORM, this::knock);
    routes.write("/sign-out", Right.READ, Intake.FORM, this::leave);
  }

  private void page(Context context) {
    String to = path(context.queryParam("to"));
    if (Guest.of(context).isKnown()) {
      Answers.goTo(context, to);
    } else {
      show(context, "", to, "");
    }
  }

  private void knock(Context context) {
    String name = field(context, "name");
    String to = path(context.formParam("to"));
    String browser = String.valueOf(context.userAgent());
    Answer answer =
        frontDoor.knock(name, field(context, "password"), door.address(context), browser);
    if (answer instanceof Answer.In in) {
      endOldSession(context);
      door.handOver(context, in.secret());
      Answers.goTo(context, to);
    } else if (answer instanceof Answer.Paused paused) {
      Instant now = desk.clock().instant();
      Duration wait = Duration.between(now, paused.until());
      context.status(TOO_MANY).header(Header.RETRY_AFTER, Long.toString(wait.toSeconds() + 1));
      show(
          context,
          name,
          to,
          "Too many tries have failed. Try again in %s.".formatted(Moments.wait(wait)));
    } else {
      context.status(UNUSABLE);
      show(context, name, to, "Name and password do not go together.");
    }
  }

  private void leave(Context context) {
    Person person = Guest.visitor(context).person();
    String secret = door.secret(context);
    if (secret != null && person.hasPassword()) {
      desk.book()
          .write(
              person.name(),
              writing -> {
                Sessions.end(writing, Secret.hash(secret));
                SignIns.note(writing, person.name(), person, door.address(context), Outcome.WENT);
                return true;
              });
    }
    door.handOver(context, Secret.fresh());
    context.header("Clear-Site-Data", "\"cache\"");
    Answers.goTo(context, "/sign-in");
  }

  /** What this browser was known by before no longer opens anything. */
  private void endOldSession(Context context) {
    String before = door.secret(context);
    if (before != null) {
      desk.book()
          .write(
              "Leafturn",
              writing -> {
                Sessions.end(writing, Secret.hash(before));
                return true;
              });
    }
  }

  private void show(Context context, String name, String to, String fault) {
    desk.show(context, "sign-in.jte", "Sign in", Map.of("name", name, "to", to, "fault", fault));
  }

  private static String field(Context context, String name) {
    String value = context.formParam(name);
    return value == null ? "" : value;
  }

  /** A path of this site to go on to; the first page for anything else. */
  private static String path(@Nullable String given) {
    return given != null && isOfThisSite(given) ? given : HOME;
  }

  private static boolean isOfThisSite(String path) {
    return path.length() <= LONGEST_PATH
        && path.matches("/(?![/\\\\])[\\x21-\\x5b\\x5d-\\x7e]*")
        && !path.startsWith("/sign-");
  }
}
