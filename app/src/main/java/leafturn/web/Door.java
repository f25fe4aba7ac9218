package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.records.book.Book;
import leafturn.records.book.BookReading;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.people.Secret;
import leafturn.records.people.Session;
import leafturn.records.people.Sessions;
import leafturn.records.people.Visitor;
import leafturn.web.Routes.Route;
import org.jspecify.annotations.Nullable;

/** Finds out who asks, and lets them through to a route or not. */
final class Door {
  private static final String TOKEN_FIELD = "_token";
  private static final String TOKEN_HEADER = "Leafturn-Token";

  private final Book book;
  private final InstantSource clock;
  private final Listening listening;
  private final RequestGuard guard;

  Door(Book book, InstantSource clock, Listening listening, RequestGuard guard) {
    this.book = book;
    this.clock = clock;
    this.listening = listening;
    this.guard = guard;
  }

  /**
   * Whether the request goes on to its handler; otherwise it has been answered.
   *
   * @throws Refusal when it is turned away
   */
  boolean admits(Context context, Route route) {
    if (route.right() == Right.OPEN) {
      return true;
    }
    boolean sending = route.method().equals(HandlerType.POST);
    if (sending) {
      Body.check(context, route.intake());
    }
    Guest guest = recognise(context);
    guest.keepWith(context);
    Visitor known = guest.known();
    if (!route.right().isForStrangers()) {
      if (known == null) {
        return sendToSignIn(context, sending);
      }
      if (!route.right().has(known)) {
        throw Refusal.notAllowed();
      }
    }
    if (sending) {
      checkOrigin(context);
      checkToken(context, route, guest);
    }
    return true;
  }

  /** Gives this browser a new secret, under which it is known from the next request on. */
  void handOver(Context context, String secret) {
    boolean secure = !listening.isForThisMachineAlone();
    String cookie =
        "%s=%s; Path=/; Max-Age=%d; HttpOnly; SameSite=Lax%s"
            .formatted(
                cookieName(context), secret, Session.LONGEST.toSeconds(), secure ? "; Secure" : "");
    context.res().addHeader("Set-Cookie", cookie);
  }

  /** The secret this browser is known by, or null. */
  @Nullable String secret(Context context) {
    String given = context.cookie(cookieName(context));
    return given != null && Secret.looksLikeOne(given) ? given : null;
  }

  /** Network address of the visitor. */
  String address(Context context) {
    return guard.visitorAddress(context);
  }

  /** Scheme, host and port as the visitor's browser sees them. */
  String origin(Context context) {
    return guard.origin(context);
  }

  private Guest recognise(Context context) {
    String given = secret(context);
    String secret = given == null ? Secret.fresh() : given;
    if (given == null) {
      handOver(context, secret);
    }
    Found found = book.read(reading -> find(reading, given));
    Session session = found.session;
    if (session != null && session.isToBeSeen(clock.instant())) {
      book.write(
          "Leafturn",
          writing -> {
            Sessions.seen(writing, session);
            return true;
          });
    }
    return new Guest(found.visitor, Secret.derived(secret, "form"));
  }

  private Found find(BookReading reading, @Nullable String secret) {
    Optional<Session> session =
        secret == null ? Optional.empty() : Sessions.find(reading, secret, clock.instant());
    if (session.isPresent()) {
      String person = session.get().person();
      return new Found(session.get(), People.visitor(reading, person, false).orElse(null));
    }
    boolean open = listening.isForThisMachineAlone() && !People.haveAccounts(reading);
    return new Found(
        null, open ? People.visitor(reading, Person.LOCAL_OWNER, true).orElse(null) : null);
  }

  private static boolean sendToSignIn(Context context, boolean sending) {
    if (sending) {
      throw Refusal.notSignedIn();
    }
    String query = context.queryString();
    String here = context.path() + (query == null ? "" : "?" + query);
    Answers.goTo(context, "/sign-in?to=" + URLEncoder.encode(here, StandardCharsets.UTF_8));
    return false;
  }

  /** Browsers say from which site a form was sent; what says nothing has the token alone. */
  private void checkOrigin(Context context) {
    String site = context.header("Sec-Fetch-Site");
    if (site != null && !site.equals("same-origin") && !site.equals("none")) {
      throw Refusal.notFromOurPage();
    }
    String origin = context.header("Origin");
    boolean told = site != null && "null".equals(origin);
    if (origin != null && !told && !origin.equalsIgnoreCase(guard.origin(context))) {
      throw Refusal.notFromOurPage();
    }
  }

  private static void checkToken(Context context, Route route, Guest guest) {
    String inHeader = context.header(TOKEN_HEADER);
    if (route.intake() == Intake.JSON) {
      if (inHeader == null || !Secret.same(inHeader, guest.token())) {
        throw Refusal.notFromOurPage();
      }
      return;
    }
    Map<String, List<String>> form = Body.form(context);
    List<String> inForm = form.getOrDefault(TOKEN_FIELD, List.of());
    String token = inForm.isEmpty() ? inHeader == null ? "" : inHeader : inForm.get(0);
    if (!Secret.same(token, guest.token())) {
      throw Refusal.notFromOurPage();
    }
  }

  /** Under TLS a name that browsers keep from being set by anybody else. */
  private String cookieName(Context context) {
    return listening.isForThisMachineAlone()
        ? "leafturn-" + context.req().getLocalPort()
        : "__Host-leafturn";
  }

  private record Found(@Nullable Session session, @Nullable Visitor visitor) {}
}
