package leafturn.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.Header;
import io.javalin.http.HttpResponseException;
import leafturn.records.InputException;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.book.StaleSheetException;
import leafturn.records.people.StalePersonException;
import org.eclipse.jetty.io.EofException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Answers what cannot be answered as asked: in words, and with nothing of the inside. */
final class Faulty {
  private static final Logger LOG = LoggerFactory.getLogger(Faulty.class);
  private static final int CONFLICT = 409;
  private static final int UNUSABLE = 422;
  private static final int FAULT = 500;
  private static final int UNAVAILABLE = 503;

  private static final String STILL_TYPED =
      " What you typed still stands in the form: go back with the browser's Back button and send it"
          + " once more then.";

  private final Desk desk;

  Faulty(Desk desk) {
    this.desk = desk;
  }

  void answerIn(JavalinConfig config) {
    config.routes.error(404, context -> tell(context, Refusal.notFound()));
    config.routes.error(405, this::notAsked);
    config.routes.exception(Refusal.class, (refusal, context) -> tell(context, refusal));
    config.routes.exception(HttpResponseException.class, this::ofTheServer);
    // The sender went away before all of the request was there.
    config.routes.exception(
        EofException.class, (gone, context) -> tell(context, Refusal.unreadable()));
    config.routes.exception(InputException.class, this::unusable);
    config.routes.exception(
        StaleSheetException.class, (stale, context) -> changedMeanwhile(context, stale));
    config.routes.exception(
        StalePersonException.class, (stale, context) -> changedMeanwhile(context, stale));
    config.routes.exception(BookUnavailableException.class, this::unavailable);
    config.routes.exception(Exception.class, this::fault);
    config.router.javaLangErrorHandler(
        (response, error) -> {
          LOG.error("a page could not be made: {}", error, error);
          response.setStatus(FAULT);
        });
  }

  private void notAsked(Context context) {
    if (context.res().getHeader(Header.ALLOW) == null) {
      boolean sent = context.method().equals(HandlerType.POST);
      context.header(Header.ALLOW, sent ? "GET, HEAD" : "POST");
    }
    tell(context, Refusal.notAsked());
  }

  private void tell(Context context, Refusal refusal) {
    desk.tell(context, refusal.status(), refusal.headline(), refusal.more());
  }

  /** What the library beneath refuses by itself. */
  private void ofTheServer(HttpResponseException refused, Context context) {
    switch (refused.getStatus()) {
      case 404 -> tell(context, Refusal.notFound());
      case 405 -> tell(context, Refusal.notAsked());
      case 413 -> tell(context, Refusal.tooLarge(Intake.FORM.mostBytes()));
      default -> {
        if (refused.getStatus() >= FAULT) {
          fault(refused, context);
        } else {
          tell(context, Refusal.unreadable());
        }
      }
    }
  }

  /** What was sent cannot be used; where nothing was sent the fault is in what the book holds. */
  private void unusable(InputException fault, Context context) {
    if (context.method().equals(HandlerType.POST)) {
      desk.tell(
          context, UNUSABLE, "This cannot be used as it is.", String.join(" ", fault.faults()));
    } else {
      fault(fault, context);
    }
  }

  private void changedMeanwhile(Context context, Exception stale) {
    desk.tell(
        context,
        CONFLICT,
        "Somebody else was quicker.",
        String.valueOf(stale.getMessage()) + " Open the page again to see it as it is now.");
  }

  private void unavailable(BookUnavailableException fault, Context context) {
    LOG.warn("{} {} failed: {}", context.method(), context.path(), fault.getMessage());
    boolean sent = context.method().equals(HandlerType.POST);
    String kept = sent ? STILL_TYPED : "";
    switch (fault.reason()) {
      case DISK ->
          desk.tell(
              context,
              UNAVAILABLE,
              "The server's disk is full.",
              "The disk that the book lies on is full, or does not take what is written. Nothing of"
                  + " this was saved. Once there is room on it, everything works again by itself."
                  + kept);
      case GONE ->
          desk.tell(
              context,
              UNAVAILABLE,
              "The book's file is gone.",
              "The file of this book is no longer in the folder it was opened in: somebody deleted"
                  + " or moved it. Nothing of this was saved. Whoever runs the server puts the"
                  + " folder back, or starts the server with its new place or a book imported from"
                  + " the newest archive; the server's log names the folder."
                  + kept);
      case REPLACED ->
          desk.tell(
              context,
              UNAVAILABLE,
              "The book's file was replaced.",
              "Another file lies where the file of this book was opened: somebody replaced it."
                  + " Nothing of this was saved. Whoever runs the server stops it, sees that the"
                  + " file that is to count lies there, and starts it again; the server's log names"
                  + " the folder."
                  + kept);
      default ->
          desk.tell(
              context,
              UNAVAILABLE,
              "The book does not answer.",
              "Nothing of this was saved; try again in a while. The server's log tells more."
                  + kept);
    }
  }

  private void fault(Exception fault, Context context) {
    LOG.error("{} {} failed: {}", context.method(), context.path(), fault, fault);
    desk.tell(
        context,
        FAULT,
        "This page could not be made.",
        "The fault is ours and has been written to the log; nothing you entered is lost.");
  }
}
