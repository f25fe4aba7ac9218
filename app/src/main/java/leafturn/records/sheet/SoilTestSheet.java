package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A soil test of a lawn, or of a bed of a property.
 *
 * @param property id of the property of the bed, or null for a lawn
 * @param lawn id of the lawn, or null for a bed
 * @param bed id of the bed, or null
 * @param day the day the samples were taken
 * @param laboratory who made the test
 * @param extractant what phosphorus and the other nutrients were extracted with, or null
 * @param depthCm depth of the cores, cm, 1 to 200
 * @param method how the samples were taken and what else is to be known, or null
 * @param determinations the figures, at least one, each analyte once
 * @param note anything to remember; may be null
 */
public record SoilTestSheet(
    @Nullable String property,
    @Nullable String lawn,
    @Nullable String bed,
    LocalDate day,
    String laboratory,
    @Nullable String extractant,
    double depthCm,
    @Nullable String method,
    List<Determination> determinations,
    @Nullable String note)
    implements Content {
  public SoilTestSheet {
    determinations = List.copyOf(determinations);
  }

  static SoilTestSheet read(JsonObject json) {
    Owner owner = Owner.read(json);
    String bed = json.id("bed", "the bed");
    if (json.has("bed") && !json.has("property")) {
      json.fault("bed", "it stands without property; give the id of the bed's property too.");
    }
    LocalDate day = json.requiredDate("day");
    String laboratory = json.requiredText("laboratory", Limits.NAME, "who made the test");
    String extractant = json.text("extractant", Limits.NAME);
    double depth = json.requiredNumber("depthCm", 1, 200, "cm");
    String method = json.text("method", Limits.NOTE);
    List<Determination> determinations = determinations(json);
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new SoilTestSheet(
        owner.property(),
        owner.lawn(),
        bed,
        day,
        laboratory,
        extractant,
        depth,
        method,
        determinations,
        note);
  }

  private static List<Determination> determinations(JsonObject json) {
    json.requireItems("determinations", "at least one figure");
    Set<Analyte> seen = EnumSet.noneOf(Analyte.class);
    return json.objects("determinations").stream()
        .map(item -> Determination.read(item, seen))
        .toList();
  }

  /** The figure of an analyte, if it was determined. */
  public Optional<Determination> of(Analyte analyte) {
    return determinations.stream().filter(each -> each.analyte() == analyte).findFirst();
  }
}
