package leafturn.records.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.model.grass.Species;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import leafturn.records.LawnFile;
import leafturn.records.LawnParts;
import leafturn.records.Numbers;
import leafturn.records.SoilFields;
import leafturn.records.shape.Outline;
import org.jspecify.annotations.Nullable;

/**
 * A lawn: what grows there, and on what. The fields that a lawn description has too are named and
 * checked as there; what was not given is null and gets the model's default.
 *
 * @param property id of the property it lies on
 * @param name what its people call it, 1 to 80 characters
 * @param address its name in addresses, see {@link Address}
 * @param habit how it is kept, in a sentence, or null
 * @param outline its shape, or null
 * @param areaM2 area as somebody measured it, m2, 1 to 1,000,000, or null for that of the outline
 * @param slopePercent fall of the ground in per cent, 0 to 100, or null
 * @param grass common name of the grass, of a mixture the one there is most of
 * @param mixture the other grasses of a mixture, at most four; empty for a single grass
 * @param annualBluegrass whether annual bluegrass grows there, or null when nobody looked
 * @param soil the soil
 * @param shadeFraction share of the light taken by shade, 0 to 0.9, or null
 * @param mower the mower, or null
 * @param spinUpYears years run before the first reported day, 0 to 200, or null
 * @param parameters model parameters by short name that win over everything else
 * @param note anything to remember; may be null
 */
public record LawnSheet(
    String property,
    String name,
    String address,
    @Nullable String habit,
    @Nullable Outline outline,
    @Nullable Double areaM2,
    @Nullable Double slopePercent,
    String grass,
    List<AlsoSown> mixture,
    @Nullable AnnualBluegrass annualBluegrass,
    SoilFields soil,
    @Nullable Double shadeFraction,
    @Nullable MowerSheet mower,
    @Nullable Integer spinUpYears,
    Map<String, Double> parameters,
    @Nullable String note)
    implements Content {
  /** A tape and a drawn outline differ by as much of the area; common practice, no source. */
  private static final double AREAS_DIFFER = 0.05;

  public LawnSheet {
    name = Names.tidied(name);
    mixture = List.copyOf(mixture);
    parameters = Map.copyOf(parameters);
  }

  static LawnSheet read(JsonObject json) {
    String property = json.requiredId("property", "the property it lies on");
    String name = json.requiredText("name", Limits.NAME, "what its people call it");
    String address = Address.read(json);
    String habit = json.text("habit", Limits.SENTENCE);
    Outline outline = Outline.read(json, "outline");
    Double area = LawnParts.areaM2(json);
    Double slope = json.number("slopePercent", 0, 100, "%");
    Species grass = LawnParts.grass(json);
    List<AlsoSown> mixture = AlsoSown.list(json, grass);
    AnnualBluegrass annual = Choice.read(json, "annualBluegrass", AnnualBluegrass.class);
    SoilFields soil = SoilFields.read(json.object("soil"));
    Double shade = LawnParts.shadeFraction(json);
    MowerSheet mower = Part.read(json, "mower", MowerSheet::read);
    Integer spinUp = LawnParts.spinUpYears(json);
    var parameters = LawnParts.parameters(json.object("parameters"), grass, new ArrayList<>());
    String note = json.text("note", Limits.NOTE);
    json.end();
    String grassName = grass == null ? "" : grass.commonName();
    LawnSheet lawn =
        new LawnSheet(
            property,
            name,
            address,
            habit,
            outline,
            area,
            slope,
            grassName,
            mixture,
            annual,
            soil,
            shade,
            mower,
            spinUp,
            parameters,
            note);
    if (!parameters.isEmpty()) {
      lawn.checkTogether();
    }
    return lawn;
  }

  /** Parameters may be right one by one and yet not go together: then no model runs with them. */
  private void checkTogether() {
    var somewhere = new Property("", "", 50, null, null, "UTC", null, null);
    LawnFile.read(LawnDocument.compose(somewhere, null, this, null));
  }

  /** What grows there in words: "tall fescue", or "tall fescue 80 %, fine fescue 20 %". */
  public String grasses() {
    double others = mixture.stream().mapToDouble(AlsoSown::percent).sum();
    return mixture.isEmpty()
        ? grass
        : Stream.concat(Stream.of(new AlsoSown(grass, 100 - others)), mixture.stream())
            .map(one -> one.grass() + " " + Numbers.plain(one.percent()) + " %")
            .collect(Collectors.joining(", "));
  }

  /** How the model takes a mixture, in a sentence; empty for a single grass. */
  public Optional<String> mixtureNote() {
    return mixture.isEmpty()
        ? Optional.empty()
        : Optional.of("The mixture is reckoned as if all of it were %s.".formatted(grass));
  }

  /** True where the area as measured and that of the outline are too far apart to be one lawn's. */
  public boolean hasTwoAreas() {
    return areaM2 != null
        && outline != null
        && Math.abs(areaM2 - outline.areaM2()) > AREAS_DIFFER * outline.areaM2();
  }

  /** The area, m2: as measured, else that of the outline, else null. */
  public @Nullable Double surfaceM2() {
    return areaM2 == null && outline != null ? Double.valueOf(outline.areaM2()) : areaM2;
  }
}
