package leafturn.records.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.model.grass.Species;
import leafturn.records.SoilFields;
import leafturn.records.shape.Anchor;
import leafturn.records.shape.Outline;
import leafturn.records.shape.Patch;
import leafturn.records.shape.Ring;

/** Random lawns and outlines. */
final class AnyLawn {
  private final AnyValue any;

  AnyLawn(AnyValue any) {
    this.any = any;
  }

  LawnSheet lawn(String property) {
    List<Species> grasses = new ArrayList<>(List.of(Species.values()));
    Collections.rotate(grasses, any.whole(0, grasses.size() - 1));
    return new LawnSheet(
        property,
        any.text(),
        any.address(),
        any.maybe(any::text),
        any.maybe(this::outline),
        any.maybe(() -> any.number(1, 1e6)),
        any.maybe(() -> any.number(0, 100)),
        grasses.get(0).commonName(),
        any.yes() ? List.of() : mixture(grasses),
        any.maybe(() -> any.one(AnnualBluegrass.class)),
        soil(),
        any.maybe(() -> any.number(0, 0.9)),
        any.maybe(this::mower),
        any.maybe(() -> any.whole(0, 200)),
        parameters(),
        any.maybe(any::note));
  }

  /** Up to four grasses beside the first, each with less than it. */
  private List<AlsoSown> mixture(List<Species> grasses) {
    return grasses.subList(1, 1 + any.whole(1, 4)).stream()
        .map(grass -> new AlsoSown(grass.commonName(), any.whole(1, 20)))
        .toList();
  }

  /** A rectangle, perhaps with a hole, perhaps with a place on the earth. */
  Outline outline() {
    double lengthM = any.number(4, 60);
    double widthM = any.number(4, 60);
    Ring edge = Ring.of(0, 0, lengthM, 0, lengthM, widthM, 0, widthM);
    List<Ring> holes = any.yes() ? List.of(Ring.of(1, 1, 2, 1, 2, 2)) : List.of();
    return new Outline(
        List.of(new Patch(edge, holes)),
        any.maybe(() -> new Anchor(any.number(-179, 179), any.number(-84, 84))));
  }

  private Map<String, Double> parameters() {
    Map<String, Double> parameters = new HashMap<>();
    if (any.yes()) {
      parameters.put("gmax", any.number(10, 25));
    }
    if (any.yes()) {
      parameters.put("cn", any.number(40, 90));
    }
    return parameters;
  }

  private SoilFields soil() {
    boolean byFigures = any.yes();
    return new SoilFields(
        any.maybe(() -> any.one(List.of("sand", "loam", "silty clay"))),
        byFigures ? any.number(0.2, 0.3) : null,
        byFigures ? any.number(0.05, 0.15) : null,
        byFigures ? any.number(0.4, 0.6) : null,
        any.maybe(() -> any.number(30, 100)),
        any.maybe(() -> any.number(0.1, 30)),
        any.maybe(() -> any.number(2, 40)),
        any.maybe(() -> any.number(0.5, 2)),
        any.maybe(() -> any.number(0, 2000)),
        any.maybe(() -> any.number(0, 5000)),
        any.maybe(any::text));
  }

  private MowerSheet mower() {
    return new MowerSheet(
        any.maybe(() -> any.number(200, 4000)),
        any.maybe(() -> any.number(5, 5000)),
        any.maybe(() -> any.number(0.5, 20)),
        any.yes(),
        any.maybe(() -> any.one(DeckType.class)),
        any.maybe(any::day));
  }
}
