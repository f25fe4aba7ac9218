package leafturn.web;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialPast.PlanVersion;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.TrialState;
import leafturn.reports.DayWords;
import leafturn.web.sheet.Change;
import leafturn.web.sheet.Line;
import leafturn.web.trial.PlanWords;
import leafturn.web.trial.PlannedChance;
import org.jspecify.annotations.Nullable;

/**
 * A trial: its plan in words, how far it has come, and the doors to its parts.
 *
 * @param id its id
 * @param version of its sheet
 * @param name what its people call it
 * @param question what it is to answer; may be empty
 * @param state how far it has come
 * @param standing the state in a sentence
 * @param late what freezing now means where planned days have passed; empty where none has
 * @param doubts what of its layout stands in the way of a verdict, in sentences
 * @param chance what its size can find, before it is frozen; null afterwards or where unknown
 * @param plan the plan in words
 * @param hash SHA-256 of the plan when it was frozen; empty before
 * @param changes what was changed after it was frozen, the latest first
 * @param readings how much has been read, in words
 * @param events what befell it, in words, by day
 * @param mayChange whether the reader may change the plan
 * @param mayLog whether the reader may enter readings
 */
public record TrialPage(
    String id,
    int version,
    String name,
    String question,
    TrialState state,
    String standing,
    String late,
    List<String> doubts,
    @Nullable PlannedChance chance,
    List<Line> plan,
    String hash,
    List<Later> changes,
    String readings,
    List<Event> events,
    boolean mayChange,
    boolean mayLog) {
  public TrialPage {
    doubts = List.copyOf(doubts);
    plan = List.copyOf(plan);
    changes = List.copyOf(changes);
    events = List.copyOf(events);
  }

  /**
   * Something that befell it.
   *
   * @param id of its sheet
   * @param words what it was and what was decided
   */
  public record Event(String id, String words) {}

  /**
   * A change after the plan was frozen.
   *
   * @param words by whom and when
   * @param why the reason, in a sentence
   * @param changes what it changed
   */
  public record Later(String words, String why, List<Change> changes) {
    /** The same without a field. */
    Later without(String label) {
      return new Later(
          words, why, changes.stream().filter(each -> !each.label().equals(label)).toList());
    }
  }

  /** Whether readings are taken. */
  public boolean open() {
    return state.takesReadings();
  }

  /** Whether it is still being planned. */
  public boolean planned() {
    return state == TrialState.PLANNED;
  }

  /** Beside the standing of a trial that came in a package. */
  static final String BROUGHT =
      " All this is as the package says that it came with; this book did not see it.";

  static String standing(TrialSheet trial, TrialState state, ZoneId zone, String progress) {
    TrialSheet.Frozen frozen = trial.frozen();
    if (state == TrialState.NEVER_FROZEN) {
      return "It came in with its readings, and its plan was never frozen: nobody can see that it"
          + " was not fitted to them. No more readings are taken.";
    }
    if (frozen == null) {
      return "It is being planned. Nothing can be read before the plan is frozen.";
    }
    String since =
        "The plan was frozen by %s on %s"
            .formatted(frozen.by(), Moments.words(frozen.moment(), zone));
    String as =
        BookPlan.isAsFrozen(trial)
            ? " and is unchanged since."
            : "; it was changed since, see below.";
    if (BookPlan.isFrozenLate(trial, zone)) {
      as +=
          " It was frozen only after all its planned days, so nobody can see that it was fixed before"
              + " the first reading.";
    }
    if (trial.ended() == null) {
      boolean plain = progress.equals(state.words());
      return since + as + (plain ? "" : " " + capital(progress) + ".");
    }
    String why = trial.whyEnded() == null ? "" : " (%s)".formatted(trial.whyEnded());
    return "It ended on %s%s. %s%s".formatted(DayWords.dayAndYear(trial.ended()), why, since, as);
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** What it means to freeze a plan now, where planned days have passed; else empty. */
  static String late(TrialSheet trial, LocalDate today) {
    LocalDate first;
    try {
      first = BookPlan.of(trial).observing().dates().get(0);
    } catch (InputException unfinished) {
      return "";
    }
    return first.isBefore(today)
        ? ("Its first planned day, %s, has passed. What was observed before today can still be"
                + " entered, but the findings will then say that the plan was frozen after it:"
                + " nobody can see that margin, primary outcome and exclusions were not chosen by"
                + " what came out, and the verdict convinces less. If nothing was observed yet, move"
                + " the days first.")
            .formatted(DayWords.dayAndYear(first))
        : "";
  }

  /** What was changed from version to version since the plan was frozen, the latest first. */
  static List<Later> changes(List<Sheet<TrialSheet>> versions, Units units, ZoneId zone) {
    List<Later> all = new ArrayList<>();
    for (int i = 0; i + 1 < versions.size(); i++) {
      Sheet<TrialSheet> after = versions.get(i);
      TrialSheet before = versions.get(i + 1).content();
      if (before.frozen() != null && !before.plan().equals(after.content().plan())) {
        all.add(
            new Later(
                "%s, %s".formatted(after.writtenBy(), Moments.words(after.writtenAt(), zone)),
                why(after.content().note()),
                new PlanWords(before.plan(), units).changesTo(after.content().plan())));
      }
    }
    TrialPast brought = versions.get(0).content().past();
    List<PlanVersion> plans = brought == null ? List.of() : brought.plans();
    for (int i = plans.size() - 1; i > 0; i--) {
      PlanVersion after = plans.get(i);
      all.add(
          new Later(
              "%s, in the book it came from".formatted(DayWords.dayAndYear(after.on())),
              why(after.why()),
              new PlanWords(plans.get(i - 1).plan(), units).changesTo(after.plan())));
    }
    return all;
  }

  private static String why(@Nullable String told) {
    return told == null || told.isBlank() ? "No reason was given." : "Why: " + told.strip();
  }
}
