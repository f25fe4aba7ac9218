package leafturn.records.sheet;

import java.util.ArrayList;
import java.util.List;

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
              any.maybe(any::yes),
              any.maybe(() -> any.one(FeedForm.class)),
              any.maybe(() -> any.number(0, 50)));
      case WATERED -> new Done.Watered(any.number(0, 200));
      case TREATED -> treated();
      case SEEDED -> new Done.Seeded(any.maybe(any::text), any.maybe(() -> any.number(0.1, 500)));
      case AERATED, SCARIFIED, TOPDRESSED ->
          new Done.Worked(what, any.maybe(() -> any.number(0.5, 300)));
      case LIMED -> new Done.Limed(any.number(0.1, 1000), any.maybe(any::text));
      case OBSERVED -> observed();
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
    boolean never = !none && any.yes();
    boolean interval = !none && !never;
    return new Done.Treated(
        any.text(),
        any.one(ProductKind.class),
        any.maybe(() -> any.one(IngredientGroup.class)),
        interval ? any.whole(0, 1100) : null,
        interval ? any.maybe(() -> any.whole(0, 20)) : null,
        never,
        none,
        any.maybe(() -> any.whole(0, 60)));
  }

  private Done observed() {
    List<Sight> there = any.some(Sight.class);
    List<Sight> notThere = new ArrayList<>(any.some(Sight.class));
    notThere.removeAll(there);
    return new Done.Observed(
        there, notThere, any.maybe(() -> any.number(0, 1)), any.number(3, 1000));
  }
}
