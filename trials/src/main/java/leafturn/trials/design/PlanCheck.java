package leafturn.trials.design;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Says whether the parts of a plan fit each other, and if not, why. */
public final class PlanCheck {
  private final List<Finding> findings = new ArrayList<>();

  /**
   * What does not fit.
   *
   * @param field of a plan's document to which it belongs
   * @param sentence what is there, and what would be right
   */
  public record Finding(String field, String sentence) {}

  private PlanCheck() {}

  /** Every fault that can be told; none when the parts make a plan. */
  public static List<Finding> of(
      Treatments treatments,
      Arrangement arrangement,
      List<TrialLawn> lawns,
      Observing observing,
      Protocol protocol) {
    PlanCheck check = new PlanCheck();
    check.treatments(treatments);
    check.contrasts(treatments);
    check.lawns(lawns);
    check.findings.addAll(ArrangementCheck.of(treatments, arrangement, lawns.size()));
    check.dates(observing);
    check.outcomes(observing);
    check.feed(treatments, protocol);
    return List.copyOf(check.findings);
  }

  private void treatments(Treatments treatments) {
    number("arms", "treatments", treatments.arms().size());
    unique("arms", "treatments", treatments.names());
    if (treatments.secondFactor() != null) {
      number("secondArms", "levels", treatments.secondArms().size());
      unique("secondArms", "levels", treatments.secondNames());
      if (treatments.secondFactor().equalsIgnoreCase(treatments.factor())) {
        add(
            "secondFactor",
            "both factors are called \"%s\"; name them differently.",
            treatments.factor());
      }
    }
  }

  private void number(String field, String what, int found) {
    if (found < Treatments.FEWEST || found > Treatments.MOST) {
      add(
          field,
          "there %s %d; give %d to %d %s.",
          found == 1 ? "is" : "are",
          found,
          Treatments.FEWEST,
          Treatments.MOST,
          what);
    }
  }

  private void unique(String field, String what, List<String> names) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name.toLowerCase(Locale.ROOT))) {
        add(field, "two %s are called \"%s\"; name them differently.", what, name);
      }
    }
  }

  private void contrasts(Treatments treatments) {
    if (treatments.contrasts().isEmpty()) {
      add(
          "contrasts",
          "no comparison is planned; name the pairs of treatments, the first minus the"
              + " second.");
    }
    Set<Set<String>> seen = new HashSet<>();
    for (Contrast contrast : treatments.contrasts()) {
      for (String name : List.of(contrast.first(), contrast.second())) {
        if (!treatments.names().contains(name)) {
          add(
              "contrasts",
              "\"%s\" is none of the treatments %s.",
              name,
              String.join(", ", treatments.names()));
        }
      }
      if (contrast.first().equals(contrast.second())) {
        add("contrasts", "\"%s\" is compared with itself; name two treatments.", contrast.first());
      } else if (!seen.add(Set.of(contrast.first(), contrast.second()))) {
        add(
            "contrasts",
            "%s and %s are compared twice; keep one.",
            contrast.first(),
            contrast.second());
      }
    }
  }

  private void lawns(List<TrialLawn> lawns) {
    if (lawns.isEmpty() || lawns.size() > TrialPlan.MOST_LAWNS) {
      add("lawns", "there are %d; give 1 to %d lawns.", lawns.size(), TrialPlan.MOST_LAWNS);
    }
    unique("lawns", "lawns", lawns.stream().map(TrialLawn::name).toList());
  }

  private void dates(Observing observing) {
    if (!observing.from().isBefore(observing.to())) {
      add(
          "season",
          "it ends on %s, not after %s; give its first and last day.",
          observing.to(),
          observing.from());
    }
    ordered("dates", observing.dates(), observing);
    if (!observing.cores().dates().equals(observing.dates())) {
      ordered("cores", observing.cores().dates(), observing);
    }
    if (observing.dates().isEmpty()) {
      add("dates", "there is none; give the days of observation.");
    }
  }

  private void ordered(String field, List<LocalDate> dates, Observing observing) {
    for (int i = 0; i < dates.size(); i++) {
      LocalDate date = dates.get(i);
      if (i > 0 && !dates.get(i - 1).isBefore(date)) {
        add(
            field,
            "%s stands after %s; give the dates in order, each once.",
            date,
            dates.get(i - 1));
      }
      boolean isSeason = observing.from().isBefore(observing.to());
      if (isSeason && (date.isBefore(observing.from()) || date.isAfter(observing.to()))) {
        add(field, "%s lies outside the season %s to %s.", date, observing.from(), observing.to());
      }
    }
  }

  private void outcomes(Observing observing) {
    List<Outcome> outcomes = observing.outcomes();
    unique("outcomes", "outcomes", outcomes.stream().map(Outcome::name).toList());
    List<Outcome> primary = outcomes.stream().filter(Outcome::primary).toList();
    if (primary.size() != 1) {
      add(
          "outcomes",
          "%d of %d are primary; exactly one is, and it alone gets a verdict.",
          primary.size(),
          outcomes.size());
    }
    for (Outcome outcome : primary) {
      if (outcome.margin() == null) {
        add(
            "outcomes",
            "\"%s\" is primary and has no margin; give the smallest difference that"
                + " matters, before anything is observed.",
            outcome.name());
      }
    }
  }

  private void feed(Treatments treatments, Protocol protocol) {
    boolean alike = treatments.arms().stream().mapToDouble(Arm::feedShare).distinct().count() <= 1;
    if (protocol.feed() == Protocol.Feed.EQUAL && !alike) {
      add(
          "protocol",
          "feed is \"equal\", but the treatments' feedShare differ; make them the same,"
              + " or write \"reduced\".");
    } else if (protocol.feed() == Protocol.Feed.REDUCED && alike) {
      add(
          "protocol",
          "feed is \"reduced\", but all treatments have the same feedShare; lower that"
              + " of the returned ones, or write \"equal\".");
    }
  }

  private void add(String field, String sentence, Object... values) {
    findings.add(new Finding(field, sentence.formatted(values)));
  }
}
