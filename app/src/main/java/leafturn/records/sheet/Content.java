package leafturn.records.sheet;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a sheet of the book says. A record that checks itself; its components are the fields of its
 * JSON document, in SI.
 */
public sealed interface Content
    permits AdviceSheet,
        BedSheet,
        ForecastSheet,
        HeapSheet,
        IntakeSheet,
        LaboratorySheet,
        LawnSheet,
        LogSheet,
        PhotographSheet,
        ProgrammeSheet,
        Property,
        RuleSheet,
        SoilTestSheet,
        ThatchSheet,
        TrialEventSheet,
        TrialReadingsSheet,
        TrialSheet,
        VisitSheet,
        WeatherStation {
  /** Id of the property's sheet it belongs to, or null. */
  default @Nullable String property() {
    return null;
  }

  /** Id of the lawn's sheet it belongs to, or null. */
  default @Nullable String lawn() {
    return null;
  }

  /** The day it tells of, or null. */
  default @Nullable LocalDate day() {
    return null;
  }

  /** Its name in addresses, unique in the book, or null. */
  default @Nullable String address() {
    return null;
  }
}
