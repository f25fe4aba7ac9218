package leafturn.model.lawn;

import java.util.List;
import leafturn.model.Parameters;

/** Rules that parameter values must keep together for the equations to hold. */
final class ParameterRules {
  /** Parameters that the equations divide by. */
  private static final List<String> DIVISORS =
      List.of(
          "cC",
          "rho",
          "rhoT",
          "zr",
          "cnm",
          "tu",
          "wvol",
          "depth",
          "bd",
          "bP",
          "bK",
          "gp_var",
          "Href",
          "nc0",
          "stub0",
          "root0",
          "lenRef",
          "lenCut",
          "stalkAge");

  private ParameterRules() {}

  static Parameters checked(Parameters parameters) {
    for (String name : DIVISORS) {
      if (!(parameters.get(name) > 0)) {
        throw new IllegalArgumentException(
            "the parameter %s is %s, but must be above 0".formatted(name, parameters.get(name)));
      }
    }
    if (parameters.get("ptab") >= 1) {
      throw new IllegalArgumentException(
          "the parameter ptab is %s, but must be below 1".formatted(parameters.get("ptab")));
    }
    ascending(parameters, "wp", "fc");
    ascending(parameters, "fc", "sat");
    ascending(parameters, "nlo", "nhi");
    if (parameters.get("tresp") == 1) {
      ascending(parameters, "beta_tb", "beta_to");
      ascending(parameters, "beta_to", "beta_tm");
    }
    if (parameters.get("qual") == 1) {
      ascending(parameters, "ks", "km");
    }
    double availableMm =
        1000 * (parameters.get("fc") - parameters.get("wp")) * parameters.get("zr");
    if (parameters.get("Dr0") > availableMm) {
      throw new IllegalArgumentException(
          "the parameter Dr0 is %s mm, but the root zone holds no more than %.1f mm"
              .formatted(parameters.get("Dr0"), availableMm));
    }
    double humusCarbon = parameters.get("h") * parameters.get("cns") / parameters.get("cnm");
    if (humusCarbon > 1) {
      throw new IllegalArgumentException(
          "h cns / cnm is %.3f, but must not be above 1, or dying microbes would make carbon"
              .formatted(humusCarbon));
    }
    return parameters;
  }

  private static void ascending(Parameters parameters, String lower, String upper) {
    if (!(parameters.get(lower) < parameters.get(upper))) {
      throw new IllegalArgumentException(
          "the parameter %s (%s) must be below %s (%s)"
              .formatted(lower, parameters.get(lower), upper, parameters.get(upper)));
    }
  }
}
