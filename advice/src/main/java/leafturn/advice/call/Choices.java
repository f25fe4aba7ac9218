package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leafturn.advice.call.Weighing.Weighed;
import org.jspecify.annotations.Nullable;

/** The choices that are shown side by side, with their outcomes. */
final class Choices {
  private static final List<Choice> COMPARED =
      List.of(
          Choice.WAIT_FOR_DRY_HOURS,
          Choice.WAIT_AND_RETURN,
          Choice.RAISE_AND_CUT_TWICE,
          Choice.RAISE_AND_COLLECT,
          Choice.DOUBLE_PASS,
          Choice.CHOP_LEAVES_AND_RETURN,
          Choice.WATER_IN_FIRST,
          Choice.LOWER_ONCE_AND_COLLECT);

  private final Prospect prospect;
  private final Weighing weighing;
  private final Outcomes outcomes;
  private final OptionWords words;

  Choices(Prospect prospect, Weighing weighing, Outcomes outcomes) {
    this.prospect = prospect;
    this.weighing = weighing;
    this.outcomes = outcomes;
    this.words = new OptionWords(prospect);
  }

  /** The options to show with their outcomes; none of them is marked where there is no best. */
  List<Option> options(@Nullable Weighed best) {
    return shown(best).stream()
        .map(w -> words.option(w, w.equals(best), outcomes.of(w.plan())))
        .toList();
  }

  /**
   * The plans to show: now returned, now collected, the best of each other kind that may be
   * compared, and the best of all. None where nothing stands above the cut height.
   */
  private List<Weighed> shown(@Nullable Weighed best) {
    List<Weighed> shown = new ArrayList<>();
    double least = prospect.rules().threshold(CallRule.LEAST_GROWTH);
    if (best == null && prospect.lengthMm(0, prospect.cutHeightMm()) < least) {
      return shown;
    }
    shown.add(weighing.of(Choice.MOW_AND_RETURN, 0));
    shown.add(weighing.of(Choice.MOW_AND_COLLECT, 0));
    COMPARED.stream()
        .filter(kind -> worthComparing(kind, weighing.of(Choice.MOW_AND_RETURN, 0)))
        .forEach(kind -> beside(kind, best).ifPresent(shown::add));
    if (best != null && !shown.contains(best)) {
      shown.add(best);
    }
    return shown;
  }

  /** The best plan of a kind; of steps beside one cut that takes too much those of its day. */
  private Optional<Weighed> beside(Choice kind, @Nullable Weighed best) {
    Optional<Weighed> steps =
        best == null ? Optional.empty() : new StepsNotTaken(prospect, weighing).of(kind, best);
    return steps.or(() -> weighing.best(plan -> plan.choice() == kind));
  }

  /** To collect a first cut or to go over it twice is no question where little comes off. */
  private static boolean worthComparing(Choice kind, Weighed returnToday) {
    return switch (kind) {
      case RAISE_AND_COLLECT ->
          returnToday.breaks(CallRule.ONE_THIRD)
              || returnToday.breaks(CallRule.HALF)
              || returnToday.breaks(CallRule.CLUMPS_HEAVY);
      case DOUBLE_PASS ->
          returnToday.breaks(CallRule.LENGTH) || returnToday.breaks(CallRule.CLUMPS);
      default -> true;
    };
  }

  /** Every day of waiting, for those who want to choose another one. */
  List<Option> waits(List<Option> shown) {
    List<Option> waits = new ArrayList<>();
    if (shown.isEmpty()) {
      return waits;
    }
    for (int day = 1; day <= Plans.LONGEST_WAIT_DAYS; day++) {
      Weighed weighed = weighing.of(Choice.WAIT_AND_RETURN, day);
      LocalDate date = prospect.date(day);
      waits.add(
          shown.stream()
              .filter(o -> o.choice() == Choice.WAIT_AND_RETURN && o.day().equals(date))
              .findFirst()
              .orElseGet(() -> words.option(weighed, false, outcomes.roughlyOf(weighed.plan()))));
    }
    return waits;
  }
}
