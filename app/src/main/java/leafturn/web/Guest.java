package leafturn.web;

import io.javalin.http.Context;
import leafturn.records.people.Visitor;
import org.jspecify.annotations.Nullable;

/**
 * Who is behind a request.
 *
 * @param known who it is, or null for somebody who has not signed in
 * @param token what every form of theirs must bring back, in the field {@code _token}
 */
public record Guest(@Nullable Visitor known, String token) {
  private static final String ATTRIBUTE = "guest";

  /** The guest of a request that a route has let through; a stranger before that. */
  static Guest of(Context context) {
    Guest guest = context.attribute(ATTRIBUTE);
    return guest == null ? new Guest(null, "") : guest;
  }

  /** The visitor of a request to a route that asks for more than {@link Right#ANYBODY}. */
  static Visitor visitor(Context context) {
    return of(context).visitor();
  }

  /** Keeps the guest with the request. */
  void keepWith(Context context) {
    context.attribute(ATTRIBUTE, this);
  }

  /** Whether it is somebody the book knows. */
  public boolean isKnown() {
    return known != null;
  }

  /** Whether they may write into some log. */
  public boolean mayLog() {
    return known != null && known.mayLogSomewhere();
  }

  /** Somebody the book knows. */
  public Visitor visitor() {
    if (known == null) {
      throw new IllegalStateException("this route lets strangers in, and this is one");
    }
    return known;
  }
}
