package leafturn.records.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;

/**
 * A kind of sheet: its name in the database and in archives, and how its content is read and
 * written.
 *
 * @param <C> the content
 */
public final class Kind<C extends Content> {
  private static final List<Kind<?>> ALL = new ArrayList<>();

  /** A record of daily weather and where it was measured. */
  public static final Kind<WeatherStation> STATION =
      new Kind<>("station", WeatherStation.class, WeatherStation::read);

  /** Somewhere with lawns and beds, and the people who use them. */
  public static final Kind<Property> PROPERTY =
      new Kind<>("property", Property.class, Property::read);

  /** A lawn: what grows there, and on what. */
  public static final Kind<LawnSheet> LAWN = new Kind<>("lawn", LawnSheet.class, LawnSheet::read);

  /** What is done to a lawn year after year. */
  public static final Kind<ProgrammeSheet> PROGRAMME =
      new Kind<>("programme", ProgrammeSheet.class, ProgrammeSheet::read);

  /** A bed or border that may take clippings as mulch. */
  public static final Kind<BedSheet> BED = new Kind<>("bed", BedSheet.class, BedSheet::read);

  /** A compost heap or bin. */
  public static final Kind<HeapSheet> HEAP = new Kind<>("heap", HeapSheet.class, HeapSheet::read);

  /** What an adviser asks before the first season. */
  public static final Kind<IntakeSheet> INTAKE =
      new Kind<>("intake", IntakeSheet.class, IntakeSheet::read);

  /** A photograph's description. */
  public static final Kind<PhotographSheet> PHOTOGRAPH =
      new Kind<>("photograph", PhotographSheet.class, PhotographSheet::read);

  /** What was measured on a visit to a lawn. */
  public static final Kind<VisitSheet> VISIT =
      new Kind<>("visit", VisitSheet.class, VisitSheet::read);

  /** A soil test of a lawn or a bed. */
  public static final Kind<SoilTestSheet> SOIL_TEST =
      new Kind<>("soil-test", SoilTestSheet.class, SoilTestSheet::read);

  /** A measurement of a lawn's thatch. */
  public static final Kind<ThatchSheet> THATCH =
      new Kind<>("thatch", ThatchSheet.class, ThatchSheet::read);

  /** An entry of a lawn's log. */
  public static final Kind<LogSheet> LOG = new Kind<>("log", LogSheet.class, LogSheet::read);

  /** A threshold of the call's rules that a person has set. */
  public static final Kind<RuleSheet> RULE = new Kind<>("rule", RuleSheet.class, RuleSheet::read);

  /** A forecast for the place of a station. */
  public static final Kind<ForecastSheet> FORECAST =
      new Kind<>("forecast", ForecastSheet.class, ForecastSheet::read);

  /** Advice as it was given; written by the program and never changed. */
  public static final Kind<AdviceSheet> ADVICE =
      new Kind<>("advice", AdviceSheet.class, AdviceSheet::read);

  /** How a laboratory's tables are read. */
  public static final Kind<LaboratorySheet> LABORATORY =
      new Kind<>("laboratory", LaboratorySheet.class, LaboratorySheet::read);

  /** A trial with its plan. */
  public static final Kind<TrialSheet> TRIAL =
      new Kind<>("trial", TrialSheet.class, TrialSheet::read);

  /** Readings of a trial that were entered together. */
  public static final Kind<TrialReadingsSheet> TRIAL_READINGS =
      new Kind<>("trial-readings", TrialReadingsSheet.class, TrialReadingsSheet::read);

  /** Something that befell a trial. */
  public static final Kind<TrialEventSheet> TRIAL_EVENT =
      new Kind<>("trial-event", TrialEventSheet.class, TrialEventSheet::read);

  /** Largest document, characters. */
  public static final int LIMIT_CHARACTERS = 1_000_000;

  private final String name;
  private final Class<C> type;
  private final Function<JsonObject, C> reader;

  private Kind(String name, Class<C> type, Function<JsonObject, C> reader) {
    this.name = name;
    this.type = type;
    this.reader = reader;
    ALL.add(this);
  }

  /** Every kind, those that others rest on first. */
  public static List<Kind<?>> all() {
    return List.copyOf(ALL);
  }

  /** The kind with this name. */
  public static Optional<Kind<?>> named(String name) {
    return all().stream().filter(kind -> kind.name.equals(name)).findFirst();
  }

  /** Its name in the database and in archives. */
  public String name() {
    return name;
  }

  /** The class of its content. */
  public Class<C> type() {
    return type;
  }

  /**
   * Reads a document.
   *
   * @throws InputException with every fault, each naming its field
   */
  public C read(SourceText document) {
    if (document.text().length() > LIMIT_CHARACTERS) {
      throw new InputException(document.name() + ": it is too large; shorten its texts.");
    }
    Faults faults = new Faults(document.name());
    JsonObject root = JsonObject.root(document, faults);
    return reader.apply(root);
  }

  /**
   * Reads a document that is a part of a larger one.
   *
   * @throws InputException with every fault found in the whole so far, each naming its field
   */
  public C read(JsonObject document) {
    return reader.apply(document);
  }

  /**
   * A content made in the program, checked as if it had been read.
   *
   * @throws InputException with every fault, each naming its field
   */
  public C checked(C content) {
    return read(new SourceText(name, write(content)));
  }

  /** Writes the document of a content, always in the same way. */
  public String write(C content) {
    return Document.of((Record) content);
  }

  @Override
  public String toString() {
    return name;
  }
}
