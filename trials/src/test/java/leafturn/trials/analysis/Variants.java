package leafturn.trials.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.Comparison.Multiplicity;
import leafturn.trials.analysis.model.OverTime.Correlation;
import leafturn.trials.analysis.model.RandomTerm;

/** The models of the cases that variants.R makes. */
final class Variants {
  private Variants() {}

  private static RandomTerm slopes(String within, String slope, boolean correlated) {
    return new RandomTerm(List.of(within), List.of(slope), true, correlated);
  }

  static Map<String, Models> mixed() {
    Map<String, Models> all = new LinkedHashMap<>();
    all.put("machines_cut", Cases.machines());
    all.put(
        "pixel",
        Models.of("pixel")
            .covariates("day")
            .fixed("day", "day*day")
            .random(slopes("Dog", "day", true))
            .random("Dog", "Side"));
    all.put(
        "oxide",
        Models.of("Thickness")
            .factors("Source")
            .fixed("Source")
            .random("Lot")
            .random("Lot", "Wafer"));
    all.put("rail", Models.of("travel").random("Rail"));
    all.put(
        "cake",
        Models.of("angle")
            .factors("recipe", "temperature")
            .fixed("recipe", "temperature", "recipe*temperature")
            .random("recipe", "replicate")
            .random("replicate"));
    all.put("chick_log", chick().random(slopes("Chick", "Time", true)));
    all.put("sleep_missing", Cases.sleep(true));
    all.put("sleep_apart", Cases.sleep(false));
    all.put("penicillin_cut", Models.of("diameter").random("plate").random("sample"));
    all.put(
        "oats_cut",
        Models.of("yield")
            .factors("Variety", "nitro")
            .fixed("Variety", "nitro", "Variety*nitro")
            .random("Block")
            .random("Block", "Variety"));
    all.put(
        "npk_log",
        Models.of("yield")
            .log()
            .factors("N", "P", "K")
            .fixed("N", "P", "K", "N*P")
            .random("block"));
    addSimulated(all);
    return all;
  }

  private static void addSimulated(Map<String, Models> all) {
    all.put(
        "nested_and_crossed",
        Models.of("value")
            .factors("practice", "date")
            .fixed("practice", "date", "practice*date")
            .random("yard")
            .random("yard", "practice")
            .random("yard", "date")
            .random("laboratory"));
    all.put(
        "two_slopes_apart",
        Models.of("value")
            .factors("arm")
            .covariates("day", "rain")
            .fixed("arm", "day", "rain", "arm*day")
            .random(new RandomTerm(List.of("plot"), List.of("day", "rain"), true, false)));
    all.put(
        "arms_vary",
        Models.of("value")
            .factors("arm")
            .fixed("arm")
            .random(new RandomTerm(List.of("yard"), List.of("arm"), false, true)));
  }

  private static Models chick() {
    return Models.of("weight")
        .log()
        .factors("Diet")
        .covariates("Time")
        .fixed("Time", "Diet", "Time*Diet");
  }

  static Map<String, Models> correlated() {
    Map<String, Models> all = new LinkedHashMap<>();
    all.put("chick_car1", chick().overTime(Correlation.CAR1, "Time", "Chick"));
    all.put("growth_ar1", growth(Correlation.AR1));
    all.put("growth_het", growth(Correlation.HETEROGENEOUS_AR1));
    all.put("growth_un", growth(Correlation.UNSTRUCTURED));
    all.put(
        "ovary_car1",
        Models.of("follicles")
            .covariates("sine", "cosine")
            .fixed("sine", "cosine")
            .overTime(Correlation.CAR1, "Time", "Mare"));
    return all;
  }

  private static Models growth(Correlation correlation) {
    return Models.of("distance")
        .factors("Sex")
        .covariates("age")
        .fixed("age", "Sex", "age*Sex")
        .overTime(correlation, "visit", "Subject");
  }

  static Models anorexia() {
    return Models.of("Postwt").factors("Treat").covariates("Prewt").fixed("Prewt", "Treat");
  }

  static Comparison compare(String factor, List<String> within, Multiplicity multiplicity) {
    return new Comparison(factor, within, null, 0.95, multiplicity);
  }
}
