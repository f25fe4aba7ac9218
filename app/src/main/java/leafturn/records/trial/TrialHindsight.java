package leafturn.records.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.Remark;

/**
 * What of a trial was decided, taken back or entered when its results could be seen. They can be
 * once its last planned day is past: then all that was planned is read.
 */
final class TrialHindsight {
  /** Days within which a field sheet is usually entered (common practice, no source). */
  private static final int USUAL_WAIT_DAYS = 7;

  private static final int MOST_NAMED = 6;
  private static final int SHORTEST_WORD = 4;
  private static final Pattern NUMBERED_RULE =
      Pattern.compile("\\brule\\s*([0-9]{1,3})\\b", Pattern.CASE_INSENSITIVE);

  private final TrialSheet trial;
  private final TrialPast past;
  private final TrialPlan plan;
  private final List<Reading> readings;

  /**
   * @param trial with what is known of its past
   * @param readings that count
   */
  TrialHindsight(TrialSheet trial, TrialPlan plan, List<Reading> readings) {
    this.trial = trial;
    this.past = Objects.requireNonNullElse(trial.past(), TrialPast.UNKNOWN);
    this.plan = plan;
    this.readings = readings;
  }

  /** The days on which an outcome was to be read. */
  static List<LocalDate> plannedDays(TrialPlan plan, Outcome outcome) {
    boolean soil = outcome.kind() == Outcome.Kind.SOIL;
    List<LocalDate> cores = plan.observing().cores().dates();
    return soil && !cores.isEmpty() ? cores : plan.observing().dates();
  }

  /** The last day on which anything was to be read; the season's last where none is named. */
  private LocalDate lastDay() {
    boolean soil = plan.observing().has(Outcome.Kind.SOIL);
    return Stream.concat(
            plan.observing().dates().stream(),
            soil ? plan.observing().cores().dates().stream() : Stream.<LocalDate>empty())
        .max(Comparator.naturalOrder())
        .orElse(plan.observing().to());
  }

  /** When results could be seen before a day, in words; empty where they could not. */
  private String seenBefore(LocalDate day) {
    LocalDate ended = trial.ended();
    if (day.isAfter(lastDay())) {
      return "after the last planned day, %s, when results could be seen".formatted(lastDay());
    }
    return ended != null && day.isAfter(ended)
        ? "after the trial was ended on %s, when results could be seen".formatted(ended)
        : "";
  }

  /** Readings that were taken back with results in sight. */
  TakenBack takenBack() {
    return new TakenBack(
        past.withdrawn().stream().filter(each -> !seenBefore(each.on()).isEmpty()).toList(),
        readings,
        this::seenBefore);
  }

  /** What stands beside a verdict, in sentences. */
  List<String> cautions(List<TrialEventSheet> events) {
    List<String> cautions = new ArrayList<>();
    earlyEnd().ifPresent(cautions::add);
    for (TrialEventSheet event : events) {
      TrialEventSheet.Exclusion decided = event.exclusion();
      if (decided != null && decided.leftOut() && leavesOutAnything(event)) {
        addLeftOut(event, decided, cautions);
      }
    }
    cautions.addAll(takenBack().cautions());
    past.events().stream()
        .filter(each -> !seenBefore(each.on()).isEmpty())
        .forEach(
            each ->
                cautions.add(
                    "What befell the trial on %s was noted otherwise before it was changed on %s, %s: %s."
                        .formatted(each.day(), each.on(), seenBefore(each.on()), each.words())));
    return cautions;
  }

  /** That the trial was ended before the primary outcome's last planned day. */
  Optional<String> earlyEnd() {
    LocalDate ended = trial.ended();
    Outcome primary = plan.primary();
    List<LocalDate> planned = plannedDays(plan, primary);
    LocalDate last = planned.stream().max(Comparator.naturalOrder()).orElse(LocalDate.MIN);
    if (ended == null || !ended.isBefore(last)) {
      return Optional.empty();
    }
    long read =
        readings.stream()
            .filter(each -> each.outcome().equals(primary.name()))
            .map(Reading::date)
            .filter(day -> !day.isBefore(plan.observing().from()))
            .distinct()
            .count();
    return Optional.of(
        "The trial was ended on %s, before its last planned day %s, with %d of %d planned days read%s: a trial that stops when it looks good finds too much."
            .formatted(
                ended,
                last,
                read,
                planned.size(),
                trial.whyEnded() == null ? "" : " (" + trial.whyEnded() + ")"));
  }

  /** Whether a reading is left out because of an event. */
  boolean leavesOutAnything(TrialEventSheet event) {
    return readings.stream().anyMatch(each -> TrialValues.leavesOut(event, each));
  }

  private void addLeftOut(
      TrialEventSheet event, TrialEventSheet.Exclusion decided, List<String> cautions) {
    String doubt =
        decided.blind() ? doubt(event) : "arms or results were in sight when it was decided";
    if (!doubt.isEmpty()) {
      cautions.add(
          "Left out from %s on: %s (%s; %s). It was decided on %s, and is not taken as blind: %s."
              .formatted(
                  event.day(),
                  event.plots().isEmpty()
                      ? "all plots"
                      : "plots " + String.join(", ", event.plots()),
                  event.what().words(),
                  decided.why(),
                  decided.on(),
                  doubt));
    }
  }

  /**
   * Why a decision is not taken as blind on somebody's word: its readings stood in the book,
   * results could be seen, or its reason is no rule of the frozen plan. Empty where none of these
   * is so.
   */
  String doubt(TrialEventSheet event) {
    TrialEventSheet.Exclusion decided = event.exclusion();
    if (decided == null || !decided.leftOut()) {
      return "";
    }
    List<String> doubts = new ArrayList<>();
    long known =
        readings.stream()
            .filter(each -> TrialValues.leavesOut(event, each))
            .filter(each -> isKnownBefore(each, decided.on()))
            .count();
    if (known > 0) {
      doubts.add(
          known == 1
              ? "1 of its readings stood in the book"
              : "%d of its readings stood in the book".formatted(known));
    }
    String seen = seenBefore(decided.on());
    if (!seen.isEmpty()) {
      doubts.add("it came " + seen);
    }
    List<String> rules = new FrozenPlan(past, plan).exclusions();
    if (!isRule(decided.why(), rules)) {
      doubts.add("its reason is no rule of the frozen plan");
    }
    return String.join("; ", doubts);
  }

  /** What is read and entered in one round is decided in it too. */
  private boolean isKnownBefore(Reading reading, LocalDate day) {
    return entered(reading)
        .min(Comparator.naturalOrder())
        .filter(on -> on.isBefore(day) || (on.equals(day) && reading.date().isBefore(day)))
        .isPresent();
  }

  private Stream<LocalDate> entered(Reading reading) {
    return past.entered().stream()
        .filter(each -> each.day().equals(reading.date()))
        .filter(each -> each.outcome().equals(reading.outcome()))
        .filter(each -> each.plots().contains(reading.plot()))
        .map(TrialPast.Entered::on);
  }

  /** Whether a reason names a rule by its number or by its words. */
  static boolean isRule(String why, List<String> rules) {
    if (rules.stream().anyMatch(rule -> rule.strip().equalsIgnoreCase(why.strip()))) {
      return true;
    }
    Matcher numbered = NUMBERED_RULE.matcher(why);
    if (numbered.find()) {
      int number = Integer.parseInt(numbered.group(1));
      return number >= 1 && number <= rules.size();
    }
    Set<String> words = words(why);
    return words.size() > 1 && rules.stream().anyMatch(rule -> words(rule).containsAll(words));
  }

  private static Set<String> words(String text) {
    return Pattern.compile("[^\\p{L}]+")
        .splitAsStream(text.toLowerCase(Locale.ROOT))
        .filter(word -> word.length() >= SHORTEST_WORD)
        .collect(Collectors.toSet());
  }

  static String named(Stream<String> names) {
    List<String> all = names.distinct().sorted().toList();
    return all.size() <= MOST_NAMED
        ? String.join(", ", all)
        : "%s and %d more"
            .formatted(String.join(", ", all.subList(0, MOST_NAMED)), all.size() - MOST_NAMED);
  }

  /** Readings by eye that were entered long after they were read, with results in sight. */
  List<Remark> remarks() {
    Map<LocalDate, List<String>> late = new TreeMap<>();
    for (Outcome outcome : plan.observing().outcomes()) {
      boolean laboratory =
          outcome.kind() == Outcome.Kind.SOIL || outcome.kind() == Outcome.Kind.TISSUE;
      readings.stream()
          .filter(each -> !laboratory && each.outcome().equals(outcome.name()))
          .forEach(
              each ->
                  lateOn(each)
                      .ifPresent(
                          on ->
                              late.computeIfAbsent(on, day -> new ArrayList<>())
                                  .add("%s on %s".formatted(each.plot(), each.date()))));
    }
    return late.entrySet().stream()
        .map(
            each ->
                new Remark(
                    Remark.Weight.WARNING,
                    "%d %s entered on %s, more than %d days after they were read and %s: %s."
                        .formatted(
                            each.getValue().size(),
                            each.getValue().size() == 1 ? "reading was" : "readings were",
                            each.getKey(),
                            USUAL_WAIT_DAYS,
                            seenBefore(each.getKey()),
                            named(each.getValue().stream()))))
        .toList();
  }

  private Optional<LocalDate> lateOn(Reading reading) {
    return entered(reading)
        .max(Comparator.naturalOrder())
        .filter(on -> on.isAfter(reading.date().plusDays(USUAL_WAIT_DAYS)))
        .filter(on -> !seenBefore(on).isEmpty());
  }
}
