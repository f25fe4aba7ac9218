package leafturn.records;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.advice.call.CallRules;
import leafturn.advice.season.AimWeights;
import leafturn.advice.season.PlanAim;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.model.lawn.Programme;

/**
 * Reads programmes to compare, a JSON document of the schema {@code
 * docs/schemas/programmes.schema.json}. What a programme leaves out is as the lawn is kept now.
 */
public final class ProgrammesFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 1_000_000;

  /** Most programmes in a file. */
  public static final int MOST = 100;

  private static final int NAME = 80;

  private final Faults faults;
  private final JsonObject root;
  private final Programme present;

  /**
   * What is to be compared.
   *
   * @param programmes in the order of the file
   * @param search true when programmes round that of now are tried too
   * @param weights how much each aim counts
   * @param rules thresholds for clippings left to the rules, and figures
   */
  public record Programmes(
      List<PlannedProgramme> programmes, boolean search, AimWeights weights, CallRules rules) {
    public Programmes {
      programmes = List.copyOf(programmes);
    }

    /** No programme of one's own: the search alone, by the usual aims and rules. */
    public static Programmes none() {
      return new Programmes(List.of(), true, AimWeights.usual(), CallRules.standard());
    }
  }

  private ProgrammesFile(SourceText source, Programme present) {
    this.faults = new Faults(source.name());
    this.root = JsonObject.root(source, faults);
    this.present = present;
  }

  /**
   * Reads programmes from a file.
   *
   * @param present the lawn's programme of now
   * @throws InputException with one sentence for each fault of the file
   */
  public static Programmes read(Path file, Programme present) {
    return read(SourceText.read(file, LIMIT_BYTES), present);
  }

  /**
   * Reads programmes from text.
   *
   * @param present the lawn's programme of now
   * @throws InputException with one sentence for each fault of the text
   */
  public static Programmes read(SourceText source, Programme present) {
    return new ProgrammesFile(source, present).programmes();
  }

  private Programmes programmes() {
    List<PlannedProgramme> programmes = new ArrayList<>();
    List<JsonObject> given = root.objects("programmes");
    if (given.size() > MOST) {
      root.fault("programmes", "it holds %d; give %d at most.".formatted(given.size(), MOST));
    }
    Set<String> names = new HashSet<>();
    for (JsonObject each : given) {
      programmes.add(programme(each, names));
    }
    Boolean search = root.flag("search");
    if (given.isEmpty() && Boolean.FALSE.equals(search)) {
      root.fault("programmes", "it holds none, and search is false; give one, or search.");
    }
    AimWeights weights = root.has("aims") ? weights(root.object("aims")) : AimWeights.usual();
    CallRules rules = rules();
    root.end();
    return new Programmes(programmes, search == null || search, weights, rules);
  }

  private PlannedProgramme programme(JsonObject json, Set<String> names) {
    String name = json.requiredText("name", NAME, "what to call it");
    if (!name.isEmpty() && !names.add(name)) {
      json.fault("name", Faults.quoted(name) + " is taken by a programme above; take another.");
    }
    boolean fed = json.has("feeding");
    ProgrammeFields fields = ProgrammeFields.read(json);
    json.refuseOthers();
    Programme changed = ChangedProgramme.of(present, fields, fed);
    MowingsAYear.checkSeason(json.object("mowing"), changed.mowing().from(), changed.mowing().to());
    return new PlannedProgramme(name, Origin.GIVEN, changed);
  }

  private AimWeights weights(JsonObject json) {
    Map<PlanAim, Double> weights = new EnumMap<>(PlanAim.class);
    long before = faults.count();
    for (PlanAim aim : PlanAim.values()) {
      Double weight = json.number(aim.id(), 0, AimWeights.MOST, "");
      weights.put(aim, weight == null ? 0 : weight);
    }
    json.refuseOthers();
    if (weights.values().stream().noneMatch(weight -> weight > 0)) {
      if (faults.count() == before) {
        root.fault("aims", AimWeights.NONE + ", for instance \"work\": 1.");
      }
      return AimWeights.usual();
    }
    return new AimWeights(weights);
  }

  private CallRules rules() {
    try {
      return CallRules.standard().with(root.object("rules").numbers());
    } catch (IllegalArgumentException wrong) {
      String.valueOf(wrong.getMessage()).lines().forEach(fault -> root.fault("rules", fault + "."));
      return CallRules.standard();
    }
  }
}
