package leafturn.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.Ids;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.book.StaleSheetException;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.web.form.Form;
import org.jspecify.annotations.Nullable;

/**
 * Takes entries into the log: from the form of a page, and from the queue of a phone. The id of an
 * entry is made by whoever sends it, so that one sent twice is kept once.
 */
final class LogIntake {
  private static final String NAME = "entry";

  private final Book book;

  LogIntake(Book book) {
    this.book = book;
  }

  /**
   * An entry as it was sent.
   *
   * @param id its id
   * @param choice what was logged
   * @param units the units its numbers are in
   * @param fields what was typed, by the names of the form's fields
   * @param photograph its photograph, or null
   */
  record Sent(
      String id,
      LogChoice choice,
      Units units,
      Map<String, List<String>> fields,
      @Nullable SentPhotograph photograph) {

    static boolean isId(String text) {
      return Ids.isId(text);
    }

    Sent with(@Nullable SentPhotograph chosen) {
      return new Sent(id, choice, units, fields, chosen);
    }

    Form form() {
      return Form.sent(choice.shape(), units, fields);
    }
  }

  /** What became of an entry. */
  sealed interface Outcome {
    /** It is in the book, now or since an earlier time. */
    record Kept(Sheet<LogSheet> sheet) implements Outcome {}

    /** Something in it is wrong; nothing was written. */
    record Faulty(Form form) implements Outcome {}

    /** Its id is taken by something else; nothing was written. */
    record Taken(Sheet<?> current) implements Outcome {}
  }

  /** Takes an entry for a lawn on which this person may log. */
  Outcome take(LogWriter who, LoggedLawn lawn, Sent sent) {
    Form form = sent.form();
    LogSheet content;
    try {
      content = Kind.LOG.read(form.document(NAME, fixed(lawn, sent)));
    } catch (InputException wrong) {
      return new Outcome.Faulty(form.faulted(wrong));
    }
    try {
      return new Outcome.Kept(
          book.write(
              who.name(),
              writing -> {
                // One that is sent again is in the book already, whatever has come beside it since.
                if (writing.find(Kind.LOG, sent.id()).isEmpty()) {
                  new LogCheck(writing, lawn.today(), sent.units()).check(sent.id(), content);
                }
                return written(writing, sent, content);
              }));
    } catch (StaleSheetException taken) {
      return new Outcome.Taken(taken.current());
    } catch (InputException wrong) {
      return new Outcome.Faulty(form.faulted(wrong));
    }
  }

  private static Sheet<LogSheet> written(BookWriting writing, Sent sent, LogSheet content) {
    SentPhotograph photograph = sent.photograph();
    if (photograph != null) {
      photograph.write(writing, content.lawn(), content.day(), null);
    }
    return writing.add(Kind.LOG, sent.id(), content);
  }

  /** What the choice itself says of the entry. */
  private static String fixed(LoggedLawn lawn, Sent sent) {
    LogChoice choice = sent.choice();
    ObjectNode document = JsonNodeFactory.instance.objectNode();
    document.put("lawn", lawn.id()).put("what", Choice.word(choice.what()));
    if (choice.returnedShare() != null) {
      document.put("returnedShare", choice.returnedShare());
    }
    SentPhotograph photograph = sent.photograph();
    if (photograph != null) {
      document.putArray("photographs").add(photograph.id());
    }
    return document.toString();
  }
}
