package leafturn.records.sheet;

import java.util.List;

/** Random measurements and photographs. */
final class AnyMeasurement {
  private static final String HEXADECIMAL = "0123456789abcdef";

  private final AnyValue any;

  AnyMeasurement(AnyValue any) {
    this.any = any;
  }

  VisitSheet visit(String lawn) {
    return new VisitSheet(
        lawn,
        any.day(),
        any.list(1, 20, () -> any.number(3, 1000)),
        any.maybe(this::cover),
        any.maybe(this::compaction),
        any.list(5, () -> any.number(0, 150)),
        any.list(3, () -> new VisitSheet.FixedPoint(any.text(), any.id())),
        any.maybe(any::note));
  }

  private Cover cover() {
    return new Cover(any.whole(1, 10_000), any.whole(0, 100), any.whole(0, 100), any.whole(0, 100));
  }

  private Compaction compaction() {
    Compaction.Method method = any.one(Compaction.Method.class);
    return switch (method) {
      case PENETROMETER -> new Compaction(method, any.number(0, 10_000), null, null);
      case SCREWDRIVER -> new Compaction(method, null, any.number(0, 300), null);
      case WORDS -> new Compaction(method, null, null, any.text());
    };
  }

  ThatchSheet thatch(String lawn) {
    return new ThatchSheet(
        lawn,
        any.day(),
        any.list(1, 10, () -> any.number(0, 150)),
        any.one(ThatchSheet.Method.class),
        any.maybe(any::note));
  }

  SoilTestSheet soilTest() {
    boolean ofLawn = any.yes();
    List<Analyte> analytes = any.some(Analyte.class);
    List<Determination> figures =
        (analytes.isEmpty() ? List.of(Analyte.PH) : analytes)
            .stream().map(this::determination).toList();
    return new SoilTestSheet(
        ofLawn ? null : any.id(),
        ofLawn ? any.id() : null,
        ofLawn ? null : any.maybe(any::id),
        any.day(),
        any.text(),
        any.maybe(any::text),
        any.number(1, 200),
        any.maybe(any::note),
        figures,
        any.maybe(any::note));
  }

  private Determination determination(Analyte analyte) {
    SoilUnit unit = any.one(analyte.units());
    double limit = any.number(analyte.lowest(), Analyte.highest(unit) / 2);
    boolean below = any.yes();
    return new Determination(
        analyte,
        below ? null : any.number(limit, Analyte.highest(unit)),
        below || any.yes() ? limit : null,
        unit,
        analyte.statedAsOxide() && any.yes());
  }

  PhotographSheet photograph() {
    boolean ofLawn = any.yes();
    StringBuilder digest = new StringBuilder();
    for (int i = 0; i < 64; i++) {
      digest.append(HEXADECIMAL.charAt(any.whole(0, 15)));
    }
    return new PhotographSheet(
        ofLawn ? null : any.id(),
        ofLawn ? any.id() : null,
        any.day(),
        any.maybe(any::text),
        any.one(PhotographSheet.MediaType.class),
        any.whole(1, PhotographSheet.MOST_BYTES),
        digest.toString());
  }
}
