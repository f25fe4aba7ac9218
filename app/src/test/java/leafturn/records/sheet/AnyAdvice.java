package leafturn.records.sheet;

import java.util.List;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.sheet.AdviceSheet.Expected;
import leafturn.records.sheet.AdviceSheet.Forecast;
import leafturn.records.sheet.AdviceSheet.Ground;
import leafturn.records.sheet.AdviceSheet.Hours;
import leafturn.records.sheet.AdviceSheet.Range;

/** Random advice. */
final class AnyAdvice {
  private final AnyValue any;

  AnyAdvice(AnyValue any) {
    this.any = any;
  }

  AdviceSheet of(String lawn) {
    int days = any.whole(0, 5);
    return new AdviceSheet(
        lawn,
        any.day(),
        any.one(AdviceSheet.Way.class),
        any.one(Units.class),
        any.text(),
        any.maybe(any::day),
        any.maybe(any::yes),
        any.text(),
        any.list(3, () -> new Ground(any.text(), any.text(), any.maybe(any::text))),
        any.maybe(() -> range(1000)),
        new Forecast(any.number(0, 5000), heights(days), heights(days), heights(days)),
        any.maybe(this::expected),
        any.text(),
        any.yes() ? Map.of("one-third", any.number(0, 1)) : Map.of(),
        any.text());
  }

  private List<Double> heights(int days) {
    return any.list(days, days, () -> any.number(0, 5000));
  }

  private Expected expected() {
    return new Expected(
        any.maybe(() -> any.number(0, 5000)),
        any.maybe(() -> range(1)),
        any.maybe(() -> range(1000)),
        any.maybe(() -> range(1000)),
        any.maybe(() -> range(1000)),
        any.maybe(() -> range(1000)),
        any.maybe(() -> range(1000)),
        any.maybe(() -> new Hours(any.whole(0, 11), any.whole(12, 24))));
  }

  private Range range(double most) {
    double low = any.number(0, most / 3);
    double middle = low + any.number(0, most / 3);
    return new Range(low, middle, middle + any.number(0, most / 3));
  }
}
