package leafturn.web;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.RoundOfLawns;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.BookTitle;
import leafturn.records.book.Today;
import leafturn.records.people.Visitor;
import leafturn.records.round.AdviceKeeper;
import leafturn.records.round.BookRound;
import leafturn.records.sheet.AdviceSheet.Way;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.TrialClock;
import leafturn.records.trial.TrialGrounds;

/** What the rooms share: the book, the round made from it, the templates and the clock. */
final class Desk {
  /** When to look again at a page that waits for advice, seconds, as a header says it. */
  static final String SOON_SECONDS = "1";

  /** Query of a lawn's page that comes right after its form. */
  static final String JUST_ADDED = "added";

  /** A round of so few lawns is shown whole; that of more is soon there, with what is made. */
  private static final int FEW_LAWNS = 24;

  private static final Duration FOR_A_FEW = Duration.ofSeconds(5);
  private static final Duration FOR_MANY = Duration.ofMillis(120);
  private static final Duration FOR_A_LAWN = Duration.ofSeconds(10);

  private final Book book;
  private final Clock clock;
  private final BookRound rounds;
  private final AdviceKeeper keeper;
  private final TrialGrounds grounds = new TrialGrounds();
  private final Assets assets = new Assets();
  private final Pages pages = new Pages();

  Desk(Book book, Clock clock) {
    this.book = book;
    this.clock = clock;
    this.rounds = new BookRound(book, clock);
    this.keeper = new AdviceKeeper(book);
  }

  /** Keeps the advice for these lawns as given to whoever asked. */
  void given(Context context, Way way, List<LawnOnRound> lawns) {
    keeper.given(lawns, way, Guest.visitor(context).person().name());
  }

  /** What keeps the advice that is given. */
  AdviceKeeper keeper() {
    return keeper;
  }

  /** Writes what is still to be written, and stops. */
  void close() {
    keeper.close();
    rounds.close();
  }

  Book book() {
    return book;
  }

  /** Tells the time; its zone is that of a book without properties. */
  Clock clock() {
    return clock;
  }

  /** The day that is today in this book, where nothing says in which time zone. */
  LocalDate today() {
    return Today.of(book.read(BookTitle::of), clock).in(clock.getZone());
  }

  /** The day that is today where a trial lies. */
  LocalDate today(TrialSheet trial) {
    return book.read(reading -> new TrialClock(reading, clock).today(trial));
  }

  /** Trials as they lie on the ground. */
  TrialGrounds grounds() {
    return grounds;
  }

  Assets assets() {
    return assets;
  }

  /** The calls of the book. */
  BookRound rounds() {
    return rounds;
  }

  /**
   * The round of today as far as a visitor may see it; calls that are not made yet are left out
   * with a word, so that a round of many lawns is soon there.
   */
  RoundOfLawns round(Context context) {
    Visitor visitor = Guest.visitor(context);
    Units units = visitor.person().units();
    boolean few = rounds.register().only(visitor::mayRead).lawns().size() <= FEW_LAWNS;
    Duration patience = few ? FOR_A_FEW : FOR_MANY;
    return rounds.today(register -> register.only(visitor::mayRead), units, patience);
  }

  /**
   * The round of one lawn alone; without any where the visitor may not see it or it is not there.
   * The first advice of a book takes seconds: whoever has just added the lawn is told so at once,
   * instead of looking at the form that was sent.
   */
  RoundOfLawns roundOf(Context context, String address) {
    Visitor visitor = Guest.visitor(context);
    return rounds.ofLawn(
        register -> register.only(visitor::mayRead).onlyLawn(address),
        visitor.person().units(),
        context.queryParam(JUST_ADDED) == null ? FOR_A_LAWN : Duration.ZERO);
  }

  /** The same on another day: as of one that is past, or for one to come. */
  RoundOfLawns roundOn(Context context, String address, LocalDate day) {
    Visitor visitor = Guest.visitor(context);
    return rounds.onDay(
        register -> register.only(visitor::mayRead).onlyLawn(address),
        visitor.person().units(),
        day);
  }

  /**
   * Answers with a page that has no day and no weather of its own. What stands on the cover of the
   * book is for those it knows.
   */
  void show(Context context, String template, String title, Map<String, ?> content) {
    String standing = Guest.of(context).isKnown() ? book.read(BookTitle::of).standing() : "";
    show(context, template, frame(context, title, standing), content);
  }

  /** Answers with a page on the round of its day. */
  void show(
      Context context, String template, String title, RoundOfLawns round, Map<String, ?> content) {
    Frame frame =
        new Frame(
            title,
            round.standing(),
            round.weatherOrigin(),
            round.today(),
            Guest.of(context),
            assets);
    show(context, template, frame, content);
  }

  /**
   * Answers with a page that holds nothing of the book or the person, so that a phone may keep it.
   */
  void showKept(Context context, String template, String title, Map<String, ?> content) {
    show(context, template, frame(context, title, ""), content);
  }

  /** Answers with a few words; needs no book, so that it can tell that there is none. */
  void tell(Context context, int status, String headline, String more) {
    context.status(status);
    show(
        context,
        "message.jte",
        frame(context, headline, ""),
        Map.of("headline", headline, "more", more));
  }

  /** Answers with a part of a page, for a page that asks for it again and again. */
  void showPart(Context context, String template, Map<String, ?> content) {
    Answers.part(context, pages.part(template, content));
  }

  private void show(Context context, String template, Frame frame, Map<String, ?> content) {
    Answers.page(context, pages.filled(template, frame, content));
  }

  private Frame frame(Context context, String title, String standing) {
    return new Frame(title, standing, "", null, Guest.of(context), assets);
  }
}
