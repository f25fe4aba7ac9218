package leafturn.trials.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.mixed.MixedModel;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.TrialModel;

/** The models of the reference cases, as their README.md files state them. */
public final class Cases {
  static final Set<Integer> MACHINES_LEFT_OUT = Set.of(2, 3, 6, 8, 9, 12, 19, 20, 27, 33);

  static final List<String> TURF_CLASSES = List.of("Poor", "Average", "Good", "Excellent");

  private Cases() {}

  public static MixedFit fit(TrialTable table, Models models) {
    TrialModel model = models.model();
    return MixedModel.fit(model, ModelFrame.of(table, model));
  }

  public static TrialTable table(String name) {
    return new ReferenceCase(name).table();
  }

  static TrialTable machinesUnbalanced() {
    return new ReferenceCase("machines").tableWithout(MACHINES_LEFT_OUT);
  }

  public static Models oats() {
    return Models.of("yield")
        .factors("Variety", "nitro")
        .fixed("Variety", "nitro", "Variety*nitro")
        .random("Block")
        .random("Block", "Variety");
  }

  static Models oatsAsStrips() {
    return oats().random("Block", "nitro");
  }

  static Models strips() {
    return Models.of("yield")
        .factors("nitro", "gen")
        .fixed("nitro", "gen", "nitro*gen")
        .random("rep")
        .random("rep", "nitro")
        .random("rep", "gen");
  }

  static Models machines() {
    return Models.of("score")
        .factors("Machine")
        .fixed("Machine")
        .random("Worker")
        .random("Worker", "Machine");
  }

  static Models machinesUnstructured() {
    return Models.of("score")
        .factors("Machine")
        .fixed("Machine")
        .random(new RandomTerm(List.of("Worker"), List.of("Machine"), false, true));
  }

  static Models ergoStool() {
    return Models.of("effort").factors("Type").fixed("Type").random("Subject");
  }

  static Models sleep(boolean correlated) {
    return Models.of("Reaction")
        .covariates("Days")
        .fixed("Days")
        .random(new RandomTerm(List.of("Subject"), List.of("Days"), true, correlated));
  }

  static Models sleepMeans() {
    return Models.of("Reaction").covariates("Days").fixed("Days").random("Subject");
  }

  static Models sleepDays() {
    return Models.of("Reaction").factors("Days").fixed("Days").random("Subject");
  }

  /** The turf ratings as scores from 1 to 4. */
  static TrialTable turfScoresTable() {
    TrialTable ratings = table("karcher_turfgrass");
    List<String> columns = new ArrayList<>(ratings.columns());
    columns.add("score");
    String[] words = ratings.cells("rating");
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < words.length; i++) {
      List<String> row = new ArrayList<>(ratings.rows().get(i));
      row.add(String.valueOf(TURF_CLASSES.indexOf(words[i]) + 1));
      rows.add(row);
    }
    return new TrialTable(columns, rows, ratings.lines());
  }

  static Models growth() {
    return Models.of("distance")
        .factors("Sex")
        .levels("Sex", "Male", "Female")
        .covariates("age")
        .fixed("age", "Sex", "age*Sex");
  }

  static Models growthByAge() {
    return Models.of("distance")
        .factors("Sex", "age")
        .levels("Sex", "Male", "Female")
        .fixed("Sex", "age", "Sex*age");
  }

  static Models growthSlopes() {
    return growth().random(new RandomTerm(List.of("Subject"), List.of("age"), true, true));
  }

  static Models weights() {
    return Models.of("weight")
        .factors("Diet")
        .covariates("Time")
        .fixed("Time", "Diet", "Time*Diet");
  }

  static Models factorial() {
    return Models.of("yield")
        .factors("N", "P", "K")
        .fixed("N", "P", "K", "N*P", "N*K", "P*K")
        .random("block");
  }

  static Models factorialFull() {
    return Models.of("yield")
        .factors("N", "P", "K")
        .fixed("N", "P", "K", "N*P", "N*K", "P*K", "N*P*K")
        .random("block");
  }

  static Models turfScores() {
    return Models.of("score")
        .factors("manage", "nitro", "week")
        .fixed("manage", "nitro", "week")
        .random("rep", "manage", "nitro");
  }

  static Models warpBreaks() {
    return Models.of("breaks")
        .log()
        .factors("wool", "tension")
        .levels("tension", "L", "M", "H")
        .fixed("wool", "tension", "wool*tension");
  }
}
