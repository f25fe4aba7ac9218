package leafturn.model.lawn;

import leafturn.model.Parameters;

/** Rules that parameter values must keep together for the equations to hold. */
final class ParameterRules {
  private ParameterRules() {}

  static Parameters checked(Parameters parameters) {
    ascending(parameters, "wp", "fc");
    ascending(parameters, "fc", "sat");
    ascending(parameters, "nlo", "nhi");
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
