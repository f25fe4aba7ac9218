package leafturn.trials.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import org.jspecify.annotations.Nullable;

/** Writes the models of tests in few words. */
public final class Models {
  private final String response;
  private TrialModel.Scale scale = TrialModel.Scale.IDENTITY;
  private List<String> factors = List.of();
  private List<String> covariates = List.of();
  private List<Term> fixed = List.of();
  private boolean intercept = true;
  private final List<RandomTerm> random = new ArrayList<>();
  private @Nullable OverTime overTime;
  private DegreesOfFreedom df = DegreesOfFreedom.KENWARD_ROGER;
  private @Nullable Comparison compare;
  private final Map<String, List<String>> levels = new HashMap<>();

  private Models(String response) {
    this.response = response;
  }

  public static Models of(String response) {
    return new Models(response);
  }

  public Models factors(String... names) {
    factors = List.of(names);
    return this;
  }

  public Models covariates(String... names) {
    covariates = List.of(names);
    return this;
  }

  public Models fixed(String... terms) {
    fixed = Arrays.stream(terms).map(Term::of).toList();
    return this;
  }

  public Models random(String... within) {
    random.add(RandomTerm.mean(within));
    return this;
  }

  public Models random(RandomTerm term) {
    random.add(term);
    return this;
  }

  public Models noIntercept() {
    intercept = false;
    return this;
  }

  public Models log() {
    scale = TrialModel.Scale.LOG;
    return this;
  }

  public Models ordinal() {
    scale = TrialModel.Scale.ORDINAL;
    return this;
  }

  public Models overTime(OverTime.Correlation correlation, String time, String... unit) {
    overTime = new OverTime(List.of(unit), time, correlation);
    return this;
  }

  public Models df(DegreesOfFreedom kind) {
    df = kind;
    return this;
  }

  public Models levels(String factor, String... order) {
    levels.put(factor, List.of(order));
    return this;
  }

  public Models compare(
      String factor, @Nullable String control, Comparison.Multiplicity multiplicity) {
    compare = new Comparison(factor, List.of(), control, 0.95, multiplicity);
    return this;
  }

  public Models compare(Comparison comparison) {
    compare = comparison;
    return this;
  }

  public TrialModel model() {
    return new TrialModel(
        response,
        scale,
        factors,
        covariates,
        fixed,
        intercept,
        random,
        overTime,
        df,
        compare,
        levels);
  }
}
