package leafturn.records.sheet;

/** Random entries of a log. */
final class AnyLog {
  private final AnyValue any;

  AnyLog(AnyValue any) {
    this.any = any;
  }

  /** Something done or seen. */
  public Done done(What what) {
    return switch (what) {
      case MOWN -> mown();
      case FED ->
          new Done.Fed(
              any.number(0, 100),
              any.maybe(() -> any.number(0, 100)),
              any.maybe(() -> any.number(0, 100)),
              any.maybe(() -> any.number(0, 100)),
              any.maybe(any::text),
              any.maybe(any::yes));
      case WATERED -> new Done.Watered(any.number(0, 200));
      case TREATED -> treated();
      case SEEDED -> new Done.Seeded(any.maybe(any::text), any.maybe(() -> any.number(0.1, 500)));
      case AERATED, SCARIFIED, TOPDRESSED ->
          new Done.Worked(what, any.maybe(() -> any.number(0.5, 300)));
      case LIMED -> new Done.Limed(any.number(0.1, 1000), any.maybe(any::text));
      case OBSERVED -> new Done.Observed(any.some(Sight.class), any.number(3, 1000));
    };
  }

  private Done mown() {
    double after = any.number(3, 500);
    return new Done.Mown(
        any.maybe(() -> after + any.number(0, 500)),
        any.maybe(() -> after),
        any.number(0, 1),
        any.maybe(() -> any.number(0, 10_000)),
        any.maybe(() -> any.number(0, 100_000)),
        any.maybe(any::text),
        any.maybe(() -> any.number(0, 1440)),
        any.yes());
  }

  private Done treated() {
    boolean none = any.yes();
    return new Done.Treated(
        any.text(),
        any.one(ProductKind.class),
        none ? null : any.whole(0, 1100),
        none,
        any.maybe(() -> any.whole(0, 60)));
  }
}
