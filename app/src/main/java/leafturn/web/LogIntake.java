package leafturn.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Ids;
import leafturn.records.InputException;
import leafturn.records.SourceText;
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
  private static final String CUT_TO = "heightAfterMm";
  private static final String CORRECTS = "corrects";

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

    /** True when a phone sends it in place of one of the same id that it kept, sent or not. */
    boolean corrects() {
      return fields.getOrDefault(CORRECTS, List.of()).contains("true");
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
      content = Kind.LOG.read(document(form, lawn, sent));
    } catch (InputException wrong) {
      return new Outcome.Faulty(DayCheck.told(form, Kind.LOG, lawn.today(), "lawn").faulted(wrong));
    }
    try {
      return new Outcome.Kept(
          book.write(
              who.name(),
              writing -> {
                Sheet<LogSheet> before = corrected(writing, sent, content);
                // One that is sent again is in the book already, whatever has come beside it since.
                if (before != null || writing.find(Kind.LOG, sent.id()).isEmpty()) {
                  new LogCheck(writing, lawn.today(), sent.units()).check(sent.id(), content);
                }
                return written(writing, sent, content, before);
              }));
    } catch (StaleSheetException taken) {
      return new Outcome.Taken(taken.current());
    } catch (InputException wrong) {
      return new Outcome.Faulty(form.faulted(wrong));
    }
  }

  /**
   * The entry in the book that this one corrects: its writer's own, sent while it was still being
   * corrected, and nobody's since. Null where there is none.
   */
  private static @Nullable Sheet<LogSheet> corrected(
      BookWriting writing, Sent sent, LogSheet content) {
    return writing
        .find(Kind.LOG, sent.id())
        .filter(sheet -> sent.corrects() && sheet.version() == 1 && !sheet.withdrawn())
        .filter(sheet -> sheet.writtenBy().equals(writing.by()))
        .filter(sheet -> sheet.content().lawn().equals(content.lawn()))
        .filter(sheet -> !sheet.content().equals(content))
        .orElse(null);
  }

  private static Sheet<LogSheet> written(
      BookWriting writing, Sent sent, LogSheet content, @Nullable Sheet<LogSheet> before) {
    SentPhotograph photograph = sent.photograph();
    if (photograph != null) {
      photograph.write(writing, content.lawn(), content.day(), null);
    }
    if (before != null) {
      return writing.revise(Kind.LOG, sent.id(), before.version(), content);
    }
    return sent.corrects() && isThere(writing, sent, content)
        ? writing.find(Kind.LOG, sent.id()).orElseThrow()
        : writing.add(Kind.LOG, sent.id(), content);
  }

  /** True when a correction that is sent again was taken before. */
  private static boolean isThere(BookWriting writing, Sent sent, LogSheet content) {
    return writing.find(Kind.LOG, sent.id()).isPresent()
        && writing.history(Kind.LOG, sent.id()).stream()
            .anyMatch(version -> version.content().equals(content));
  }

  /** The entry as a document; a height that was filled in and not touched is kept to the mm. */
  private static SourceText document(Form form, LoggedLawn lawn, Sent sent) {
    ObjectNode fixed = fixed(lawn, sent);
    Double untouchedMm = lawn.untouchedMm(form.value(CUT_TO), sent.units());
    if (untouchedMm == null) {
      return form.document(NAME, fixed.toString());
    }
    fixed.put(CUT_TO, untouchedMm);
    String typed = Measure.HEIGHT.typed(untouchedMm, sent.units());
    return form.with(CUT_TO, typed).document(NAME, fixed.toString());
  }

  /** What the choice itself says of the entry. */
  private static ObjectNode fixed(LoggedLawn lawn, Sent sent) {
    ObjectNode document = sent.choice().document(lawn.id());
    SentPhotograph photograph = sent.photograph();
    if (photograph != null) {
      document.putArray("photographs").add(photograph.id());
    }
    return document;
  }
}
