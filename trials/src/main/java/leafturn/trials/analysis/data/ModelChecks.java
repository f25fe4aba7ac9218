package leafturn.trials.analysis.data;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import org.jspecify.annotations.Nullable;

/** Whether a model and a table speak of the same things. */
final class ModelChecks {
  private final TrialTable table;
  private final TrialModel model;
  private final List<String> faults = new ArrayList<>();

  private ModelChecks(TrialTable table, TrialModel model) {
    this.table = table;
    this.model = model;
  }

  /**
   * @throws TrialFaultException with every name that does not fit
   */
  static void check(TrialTable table, TrialModel model) {
    ModelChecks checks = new ModelChecks(table, model);
    checks.columns();
    model.fixed().forEach(checks::fixed);
    model.random().forEach(checks::random);
    checks.compare(model.compare());
    if (checks.faults.isEmpty()) {
      checks.units();
    }
    if (!checks.faults.isEmpty()) {
      throw new TrialFaultException(checks.faults.stream().distinct().toList());
    }
  }

  private void columns() {
    column("response", model.response());
    model.factors().forEach(name -> column("factors", name));
    model.covariates().forEach(name -> column("covariates", name));
    model.covariates().stream()
        .filter(model.factors()::contains)
        .forEach(
            name ->
                faults.add(
                    "'%s' stands in factors and in covariates; it can be one of them."
                        .formatted(name)));
    OverTime overTime = model.overTime();
    if (overTime != null) {
      overTime.unit().forEach(name -> column("overTime.unit", name));
      column("overTime.time", overTime.time());
      if (overTime.unit().isEmpty()) {
        faults.add("overTime.unit is empty; name the columns that tell the plots apart.");
      }
    }
  }

  private void column(String path, String name) {
    if (!table.has(name)) {
      faults.add(
          "%s names '%s', which the data do not have; they have %s."
              .formatted(path, name, String.join(", ", table.columns())));
    }
  }

  private void declared(String path, String name) {
    if (!model.factors().contains(name) && !model.covariates().contains(name)) {
      faults.add(
          "%s uses '%s', which stands neither in factors nor in covariates.".formatted(path, name));
    }
  }

  private void fixed(Term term) {
    term.variables().forEach(name -> declared("fixed '" + term + "'", name));
    Predicate<String> repeated =
        name ->
            model.isFactor(name)
                && term.variables().indexOf(name) != term.variables().lastIndexOf(name);
    if (term.variables().stream().anyMatch(repeated)) {
      faults.add("fixed '%s' multiplies a factor by itself.".formatted(term));
    }
    if (model.fixed().stream().filter(other -> other.sameAs(term.variables())).count() > 1) {
      faults.add("fixed has '%s' twice; each term may stand once.".formatted(term));
    }
    if (term.variables().contains(model.response())) {
      faults.add("fixed '%s' explains the response by itself.".formatted(term));
    }
  }

  private void random(RandomTerm term) {
    term.within().forEach(name -> column("random.within", name));
    term.slopes().forEach(name -> declared("random.slopes", name));
    if (term.within().isEmpty()) {
      faults.add("random.within is empty; name the factors whose combinations vary at random.");
    }
    if (term.slopes().isEmpty() && !term.intercept()) {
      faults.add(
          "The random term within %s has neither a mean nor slopes."
              .formatted(String.join(", ", term.within())));
    }
  }

  private void compare(@Nullable Comparison compare) {
    if (compare == null) {
      return;
    }
    List<String> names = new ArrayList<>(compare.within());
    names.add(compare.factor());
    for (String name : names) {
      boolean fixed = model.fixed().stream().anyMatch(term -> term.variables().contains(name));
      if (!model.isFactor(name) || !fixed) {
        faults.add(
            "compare names '%s', which is no factor of the fixed part; means are compared of factors that fixed holds."
                .formatted(name));
      }
    }
    if (names.stream().distinct().count() < names.size()) {
      faults.add(
          "compare names a factor twice; within needs another factor than the one compared.");
    }
    level(compare);
    multiplicity(compare);
  }

  private void level(Comparison compare) {
    if (!(compare.levelFraction() > 0 && compare.levelFraction() < 1)) {
      faults.add(
          "compare.level is %s; the level of an interval lies between 0 and 1, as 0.95."
              .formatted(compare.levelFraction()));
    }
  }

  private void multiplicity(Comparison compare) {
    boolean tukey = compare.multiplicity() == Comparison.Multiplicity.TUKEY;
    if (tukey && compare.control() != null) {
      faults.add(
          "compare.multiplicity is tukey, which is for all pairs, but a control is named; use dunnett, or leave the control out.");
    }
    if (compare.multiplicity() == Comparison.Multiplicity.DUNNETT && compare.control() == null) {
      faults.add(
          "compare.multiplicity is dunnett, but compare.control is missing; name the level that the others are compared with.");
    }
  }

  /** A column of units beside the response may hold one unit only. */
  private void units() {
    String response = model.response().toLowerCase(Locale.ROOT);
    for (String column : table.columns()) {
      String name = column.toLowerCase(Locale.ROOT);
      boolean ofResponse =
          List.of("unit", "units", response + "unit", response + "_unit", response + " unit")
              .contains(name);
      if (ofResponse && !isUsed(column)) {
        List<String> units =
            Arrays.stream(table.cells(column)).filter(cell -> !cell.isEmpty()).distinct().toList();
        if (units.size() > 1) {
          faults.add(
              "Column '%s' holds %d units (%s); bring %s to one unit first."
                  .formatted(
                      column,
                      units.size(),
                      String.join(", ", units.subList(0, Math.min(4, units.size()))),
                      model.response()));
        }
      }
    }
  }

  private boolean isUsed(String column) {
    OverTime overTime = model.overTime();
    return model.isFactor(column)
        || model.covariates().contains(column)
        || model.random().stream().anyMatch(term -> term.within().contains(column))
        || (overTime != null
            && (overTime.unit().contains(column) || overTime.time().equals(column)));
  }
}
