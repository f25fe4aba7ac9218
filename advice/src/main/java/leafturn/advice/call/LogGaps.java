package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.LogEntry.Mown;

/** Stretches in which a log tells no mowing: the model lets the grass stand through them. */
final class LogGaps {
  /** So much mowing season without a mowing asks for a word, weeks; our judgement. */
  private static final int LONG_WEEKS = 4;

  /** Longer than any winter, days. */
  private static final int YEARS_DAYS = 365;

  private static final int GAPS_SHOWN = 3;
  private static final int WEEK = 7;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private final MowingSeason season;
  private final LocalDate on;
  private final List<LogEntry> log;
  private final List<LocalDate> mowings;

  /**
   * @param log entries that the replay uses, in any order
   * @param on the day of the call
   */
  LogGaps(MowingSeason season, List<LogEntry> log, LocalDate on) {
    this.season = season;
    this.on = on;
    this.log = log;
    this.mowings =
        log.stream().filter(Mown.class::isInstance).map(LogEntry::day).distinct().sorted().toList();
  }

  /** What is to be told of them, one sentence each; nothing of a log that is kept up. */
  List<String> notes() {
    List<String> notes = new ArrayList<>(ofYears());
    if (!log.isEmpty()) {
      upToToday(notes);
    }
    return notes;
  }

  private List<String> ofYears() {
    List<String> gaps = new ArrayList<>();
    for (int i = 1; i < mowings.size(); i++) {
      LocalDate before = mowings.get(i - 1);
      LocalDate after = mowings.get(i);
      if (ChronoUnit.DAYS.between(before, after) > YEARS_DAYS) {
        gaps.add(
            say(
                "Between %s and %s the log tells no mowing: the model let the grass stand all that time, which still shows in its soil and thatch. Add what was mown then.",
                DATE.format(before), DATE.format(after)));
      }
    }
    return gaps.subList(Math.max(0, gaps.size() - GAPS_SHOWN), gaps.size());
  }

  private void upToToday(List<String> notes) {
    LocalDate first = log.stream().map(LogEntry::day).min(LocalDate::compareTo).orElse(on);
    LocalDate since = mowings.isEmpty() ? first : mowings.get(mowings.size() - 1);
    int weeks = seasonWeeks(since);
    if (weeks < LONG_WEEKS || !season.contains(on) || measuredLately()) {
      return;
    }
    notes.add(
        say(
            mowings.isEmpty()
                ? "The log begins on %s and tells no mowing, for %d weeks of mowing season: the model lets the grass stand since then. Log what was mown, or measure the height today."
                : "The last mowing in the log was on %s, %d weeks of mowing season ago: the model lets the grass stand since then. Log what was mown, or measure the height today.",
            DATE.format(since),
            weeks));
  }

  /** A height read since then sets the model right. */
  private boolean measuredLately() {
    return log.stream()
        .anyMatch(
            entry -> entry instanceof LogEntry.Measured && seasonWeeks(entry.day()) < LONG_WEEKS);
  }

  /** Whole weeks of mowing season from a day up to the day of the call. */
  private int seasonWeeks(LocalDate since) {
    return (int)
        (since.plusDays(1).datesUntil(on.plusDays(1)).filter(season::contains).count() / WEEK);
  }
}
