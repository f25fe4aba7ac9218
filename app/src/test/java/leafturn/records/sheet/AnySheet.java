package leafturn.records.sheet;

import java.time.DayOfWeek;
import java.util.List;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.RuleEntry;
import org.jspecify.annotations.Nullable;

/**
 * Random contents of every kind, valid as the readers demand; the seed decides everything. Ids of
 * other sheets are random too: a test that needs them to exist takes the methods that are given
 * them.
 */
public final class AnySheet {
  private final AnyValue any;

  /**
   * @param seed decides everything
   */
  public AnySheet(long seed) {
    this.any = new AnyValue(seed);
  }

  /** An id that no sheet has yet. */
  public String id() {
    return any.id();
  }

  /** A random content of a kind, with random ids of the sheets it belongs to. */
  public <C extends Content> C of(Kind<C> kind) {
    return kind.type().cast(content(kind));
  }

  private Content content(Kind<?> kind) {
    if (kind == Kind.STATION) {
      return station();
    }
    if (kind == Kind.PROPERTY) {
      return property(any.maybe(any::id));
    }
    if (kind == Kind.LAWN) {
      return lawn(any.id());
    }
    if (kind == Kind.PROGRAMME) {
      return programme(any.id());
    }
    if (kind == Kind.LOG) {
      return log(any.id());
    }
    if (kind == Kind.BED) {
      return bed(any.id());
    }
    if (kind == Kind.HEAP) {
      return heap(any.id());
    }
    if (kind == Kind.INTAKE) {
      return intake(any.id());
    }
    if (kind == Kind.RULE) {
      return rule();
    }
    if (kind == Kind.FORECAST) {
      return forecast(any.id());
    }
    if (kind == Kind.ADVICE) {
      return new AnyAdvice(any).of(any.id());
    }
    return measured(kind);
  }

  private Content measured(Kind<?> kind) {
    AnyMeasurement measurement = new AnyMeasurement(any);
    if (kind == Kind.VISIT) {
      return measurement.visit(any.id());
    }
    if (kind == Kind.SOIL_TEST) {
      return measurement.soilTest();
    }
    if (kind == Kind.THATCH) {
      return measurement.thatch(any.id());
    }
    if (kind == Kind.PHOTOGRAPH) {
      return measurement.photograph();
    }
    return new AnyTrial(any).of(kind);
  }

  /** A weather station. */
  public WeatherStation station() {
    return new WeatherStation(
        any.text(),
        any.text(),
        any.number(0.5, 100),
        any.maybe(() -> any.number(-90, 90)),
        any.maybe(() -> any.number(-180, 180)),
        any.maybe(() -> any.number(-430, 5500)),
        any.yes());
  }

  /** A property. */
  public Property property(@Nullable String station) {
    return new Property(
        any.text(),
        any.address(),
        any.number(-90, 90),
        any.maybe(() -> any.number(-180, 180)),
        any.maybe(() -> any.number(-430, 5500)),
        any.one(List.of("Europe/Paris", "America/New_York", "Asia/Tokyo", "UTC")),
        station,
        any.maybe(any::note));
  }

  /** A lawn of a property. */
  public LawnSheet lawn(String property) {
    return new AnyLawn(any).lawn(property);
  }

  /** A programme of a lawn. */
  public ProgrammeSheet programme(String lawn) {
    return new AnyProgramme(any).programme(lawn);
  }

  /** An entry of a lawn's log. */
  public LogSheet log(String lawn) {
    return log(lawn, new AnyLog(any).done(any.one(What.class)));
  }

  /** An entry of a lawn's log that tells of something particular. */
  public LogSheet log(String lawn, Done done) {
    return new LogSheet(
        lawn, any.day(), any.maybe(any::time), done, any.maybe(any::note), any.list(3, any::id));
  }

  /** A bed of a property. */
  public BedSheet bed(String property) {
    return new BedSheet(
        property,
        any.text(),
        any.maybe(() -> new AnyLawn(any).outline()),
        any.maybe(() -> any.number(0.1, 1e6)),
        any.maybe(() -> any.number(0, 300)),
        any.maybe(any::text),
        any.maybe(() -> any.number(0, 1000)),
        any.maybe(any::note));
  }

  /** A heap of a property. */
  public HeapSheet heap(String property) {
    return new HeapSheet(
        property,
        any.text(),
        any.one(HeapSheet.HeapKind.class),
        any.maybe(() -> any.number(10, 1e6)),
        any.maybe(any::day),
        any.list(3, () -> new HeapSheet.Heat(any.day(), any.number(-30, 100))),
        any.maybe(any::note));
  }

  /** An intake of a property. */
  public IntakeSheet intake(String property) {
    return new IntakeSheet(
        property,
        any.day(),
        any.maybe(any::note),
        any.maybe(any::yes),
        any.maybe(any::yes),
        any.maybe(() -> any.one(Watering.class)),
        any.list(3, this::productUsed),
        any.some(Aim.class),
        any.maybe(any::note),
        any.maybe(any::note),
        any.maybe(any::note),
        any.maybe(() -> any.number(200, 20_000)),
        new IntakeSheet.Mowing(
            any.maybe(any::text),
            any.some(DayOfWeek.class),
            any.maybe(() -> any.one(DeckType.class)),
            any.list(6, () -> any.number(3, 200)),
            any.maybe(any::day)),
        any.maybe(this::wateringRules),
        any.maybe(any::note));
  }

  private WateringRules wateringRules() {
    boolean hours = any.yes();
    return new WateringRules(
        any.yes(), any.some(DayOfWeek.class), hours ? any.time() : null, hours ? any.time() : null);
  }

  private IntakeSheet.ProductUsed productUsed() {
    return new IntakeSheet.ProductUsed(
        any.text(),
        any.maybe(() -> any.one(ProductKind.class)),
        any.maybe(any::day),
        any.maybe(any::note));
  }

  /** A forecast for the place of a station. */
  public ForecastSheet forecast(String station) {
    return new ForecastSheet(
        station,
        any.day(),
        any.text(),
        any.day(),
        any.list(1, ForecastSheet.MOST_DAYS, this::forecastDay));
  }

  private ForecastSheet.Day forecastDay() {
    double minimumC = any.number(-90, 20);
    boolean told = any.yes();
    return new ForecastSheet.Day(
        minimumC,
        minimumC + any.number(0, 40),
        told ? any.number(0, 2000) : null,
        told ? any.maybe(() -> any.number(0.01, 1)) : Double.valueOf(any.number(0, 1)),
        any.maybe(() -> any.number(0, 115)));
  }

  /** A rule with a threshold of a person's own. */
  public RuleSheet rule() {
    String rule = any.one(RuleSheet.names());
    RuleEntry entry = CallRules.standard().entry(CallRules.named(rule).orElseThrow());
    return new RuleSheet(rule, any.number(entry.low(), entry.high()), any.text());
  }
}
