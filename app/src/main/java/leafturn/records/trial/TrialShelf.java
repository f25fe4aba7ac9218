package leafturn.records.trial;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookTitle;
import leafturn.records.book.Sheet;
import leafturn.records.book.Today;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;

/**
 * The trials of a book as far as a visitor may see them: those who see the whole book see all of
 * them, others those whose lawns all lie on properties that are shared with them.
 */
public final class TrialShelf {
  private final BookReading book;
  private final Visitor visitor;

  /**
   * @param visitor who asks
   */
  public TrialShelf(BookReading book, Visitor visitor) {
    this.book = book;
    this.visitor = visitor;
  }

  /** A trial the visitor may see; empty where there is none. */
  public Optional<Sheet<TrialSheet>> find(String id) {
    return book.find(Kind.TRIAL, id)
        .filter(trial -> !trial.withdrawn() && mayRead(trial.content()));
  }

  /** The trials the visitor may see, as they were entered. */
  public List<Sheet<TrialSheet>> all() {
    return book.all(Kind.TRIAL).stream().filter(trial -> mayRead(trial.content())).toList();
  }

  /** Whether the visitor sees a trial. */
  public boolean mayRead(TrialSheet trial) {
    return visitor.mayReadAll() || everywhere(trial, Visitor::mayRead);
  }

  /** Whether the visitor may enter readings and events of a trial. */
  public boolean mayLog(TrialSheet trial) {
    return visitor.mayLogSomewhere() && mayRead(trial);
  }

  /**
   * Whether the visitor may know which plot bears which arm, and what was found. Where raters are
   * blind, a helper may not before the trial has ended: helpers rate.
   */
  public boolean mayKnowArms(TrialSheet trial) {
    boolean mayRate = visitor.mayLogSomewhere() && !mayChange();
    return !mayRate || trial.ended() != null || !BookPlan.ratersAreBlind(trial);
  }

  /** Whether the visitor may change the plan of a trial. */
  public boolean mayChange() {
    return visitor.mayChangeAll();
  }

  private boolean everywhere(TrialSheet trial, BiPredicate<Visitor, String> may) {
    return !trial.lawns().isEmpty()
        && trial.lawns().stream()
            .map(lawn -> book.find(Kind.LAWN, lawn))
            .allMatch(
                lawn -> lawn.isPresent() && may.test(visitor, lawn.get().content().property()));
  }

  /** Why a trial takes no readings; empty where it takes them. */
  public static String closed(TrialSheet trial) {
    if (trial.frozen() == null) {
      return "The plan of this trial is not frozen; readings are taken only once it is.";
    }
    return trial.ended() == null ? "" : "This trial has ended; it takes no more readings.";
  }

  /** How far a trial has come. */
  public TrialState state(Sheet<TrialSheet> trial) {
    if (trial.content().ended() != null) {
      return TrialState.ENDED;
    }
    if (trial.content().frozen() == null) {
      return readingSheets(trial.id()).isEmpty() ? TrialState.PLANNED : TrialState.NEVER_FROZEN;
    }
    return readingSheets(trial.id()).isEmpty() ? TrialState.FROZEN : TrialState.UNDER_WAY;
  }

  /** The sheets of readings of a trial that count. */
  public List<Sheet<TrialReadingsSheet>> readingSheets(String trial) {
    return book.ofTrial(Kind.TRIAL_READINGS, trial);
  }

  /** The sheets of readings of a trial that were taken back. */
  public List<Sheet<TrialReadingsSheet>> withdrawnSheets(String trial) {
    return book.withdrawnOfTrial(Kind.TRIAL_READINGS, trial);
  }

  /** All readings of a trial that count. */
  public List<Reading> readings(String trial) {
    return readingSheets(trial).stream()
        .flatMap(sheet -> sheet.content().readings().stream())
        .toList();
  }

  /**
   * What was changed and taken back of a trial, here and in the book that it came from.
   *
   * @param zone in which the book counts its days
   */
  public TrialPast past(Sheet<TrialSheet> trial, ZoneId zone) {
    TrialPast brought = trial.content().past();
    List<TrialPast.Withdrawn> withdrawn = new ArrayList<>();
    List<TrialPast.EarlierEvent> events = new ArrayList<>();
    if (brought != null) {
      withdrawn.addAll(brought.withdrawn());
      events.addAll(brought.events());
    }
    withdrawnSheets(trial.id())
        .forEach(
            sheet ->
                withdrawn.add(
                    new TrialPast.Withdrawn(
                        day(sheet, zone),
                        sheet.content().readings(),
                        sheet.content().whyWithdrawn())));
    events(trial.id()).forEach(event -> addEarlier(events, event.id(), zone));
    List<Sheet<TrialSheet>> history = history(trial.id());
    return new TrialPast(
        FrozenPlan.since(history, sheet -> day(sheet, zone), zone),
        withdrawn,
        events,
        entered(history, zone),
        draws(trial));
  }

  /** The day of what was written here. */
  private LocalDate day(Sheet<?> sheet, ZoneId zone) {
    return Today.of(BookTitle.of(book), sheet.writtenAt(), zone);
  }

  /**
   * How many layouts were drawn of a trial up to when it was frozen, each from another seed; null
   * for a trial of another book that does not tell.
   */
  public @Nullable Integer draws(Sheet<TrialSheet> trial) {
    List<Sheet<TrialSheet>> history = history(trial.id());
    TrialPast brought = trial.content().past();
    if (brought != null) {
      return brought.draws();
    }
    return cameFrozen(trial.id()) ? null : Integer.valueOf(BookPlan.draws(history));
  }

  /** Whether a trial came frozen from another book: nobody saw here when its plan was fixed. */
  public boolean cameFrozen(String trial) {
    List<Sheet<TrialSheet>> history = history(trial);
    return history.get(history.size() - 1).content().frozen() != null;
  }

  /**
   * When readings were entered. Those that came into the book together with a frozen trial were
   * entered elsewhere; of them is known what the trial brought with it.
   */
  private List<TrialPast.Entered> entered(List<Sheet<TrialSheet>> history, ZoneId zone) {
    List<TrialPast.Entered> entered = new ArrayList<>();
    Sheet<TrialSheet> first = history.get(history.size() - 1);
    TrialPast brought = first.content().past();
    if (brought != null) {
      entered.addAll(brought.entered());
    }
    boolean cameFrozen = cameFrozen(first.id());
    for (Sheet<TrialReadingsSheet> sheet : readingSheets(first.id())) {
      LocalDate on = day(sheet, zone);
      if (!cameFrozen || sheet.writtenAt().isAfter(first.writtenAt())) {
        addEntered(sheet.content().readings(), on, entered);
      }
    }
    return entered;
  }

  private static void addEntered(
      List<Reading> readings, LocalDate on, List<TrialPast.Entered> entered) {
    Map<String, Map<LocalDate, Set<String>>> plots = new LinkedHashMap<>();
    readings.forEach(
        each ->
            plots
                .computeIfAbsent(each.outcome(), outcome -> new TreeMap<>())
                .computeIfAbsent(each.date(), day -> new LinkedHashSet<>())
                .add(each.plot()));
    plots.forEach(
        (outcome, days) ->
            days.forEach(
                (day, codes) ->
                    entered.add(new TrialPast.Entered(on, outcome, day, List.copyOf(codes)))));
  }

  private void addEarlier(List<TrialPast.EarlierEvent> earlier, String event, ZoneId zone) {
    List<Sheet<TrialEventSheet>> versions = book.history(Kind.TRIAL_EVENT, event);
    for (int i = versions.size() - 1; i > 0; i--) {
      TrialEventSheet before = versions.get(i).content();
      Sheet<TrialEventSheet> after = versions.get(i - 1);
      if (before.isTakenBackBy(after.content())) {
        LocalDate on = day(after, zone);
        earlier.add(new TrialPast.EarlierEvent(on, before.day(), before.words()));
      }
    }
  }

  /** What befell a trial. */
  public List<Sheet<TrialEventSheet>> events(String trial) {
    return book.ofTrial(Kind.TRIAL_EVENT, trial);
  }

  /** The earlier versions of a trial's sheet and the one that counts, the latest first. */
  public List<Sheet<TrialSheet>> history(String trial) {
    return book.history(Kind.TRIAL, trial);
  }
}
