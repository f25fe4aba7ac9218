package leafturn.records.sheet;

import java.util.List;
import java.util.Map;
import leafturn.model.lawn.Lawn;
import leafturn.records.ProgrammeFields;
import leafturn.records.SoilFields;
import leafturn.records.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * The lawn description that the sheets of a book add up to, field by field as {@code
 * docs/schemas/lawn.schema.json} has them.
 */
public final class LawnDocument {
  private LawnDocument() {}

  private record Fields(
      Site site,
      String grass,
      SoilFields soil,
      ProgrammeFields.@Nullable Mowing mowing,
      List<ProgrammeFields.Feeding> feeding,
      ProgrammeFields.@Nullable Irrigation irrigation,
      @Nullable Integer spinUpYears,
      Map<String, Double> parameters,
      @Nullable Double areaM2,
      @Nullable Double shadeFraction,
      Lawn.@Nullable Mower mower) {}

  private record Site(
      double latitudeDeg,
      @Nullable Double elevationM,
      @Nullable Double windHeightM,
      @Nullable Double longitudeDeg,
      String timeZone) {}

  /**
   * Composes the description of a lawn, for {@link leafturn.records.LawnFile#read(SourceText)} to
   * read, fill in and check as a whole. Faults found there name the lawn by its address.
   *
   * @param station whose weather stands for the property, or null when there is none yet
   * @param programme what is done to it, or null for the usual programme of its grass
   */
  public static SourceText compose(
      Property property,
      @Nullable WeatherStation station,
      LawnSheet lawn,
      @Nullable ProgrammeSheet programme) {
    return compose(property, station, lawn, programme, lawn.soil());
  }

  /**
   * Composes the description of a lawn on another soil than its sheet tells, for instance with
   * figures of a soil test.
   */
  public static SourceText compose(
      Property property,
      @Nullable WeatherStation station,
      LawnSheet lawn,
      @Nullable ProgrammeSheet programme,
      SoilFields soil) {
    Site site =
        new Site(
            property.latitudeDeg(),
            property.elevationM(),
            station == null ? null : station.windHeightM(),
            property.longitudeDeg(),
            property.timeZone());
    MowerSheet mower = lawn.mower();
    Fields document =
        new Fields(
            site,
            lawn.grass(),
            soil,
            programme == null ? null : programme.mowing(),
            programme == null ? List.of() : programme.feeding(),
            programme == null ? null : programme.irrigation(),
            lawn.spinUpYears(),
            lawn.parameters(),
            lawn.surfaceM2(),
            lawn.shadeFraction(),
            mower == null ? null : mower.forModel());
    return new SourceText(lawn.address(), Document.of(document));
  }
}
