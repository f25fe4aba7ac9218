package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.List;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;

/**
 * Readings of a trial that were entered together: a page filled in, or a part of a file.
 *
 * @param trial id of the trial
 * @param laboratory id of the laboratory whose mapping read the file, or null
 * @param file name of the file they came in, or null
 * @param fileHash SHA-256 of that file, or null
 * @param readings at least one, 1,000 at most
 * @param note anything to remember; may be null
 * @param whyWithdrawn why they were taken back; null where they count, or where nobody said
 */
public record TrialReadingsSheet(
    String trial,
    @Nullable String laboratory,
    @Nullable String file,
    @Nullable String fileHash,
    List<Reading> readings,
    @Nullable String note,
    @Nullable String whyWithdrawn)
    implements Content {
  /** Readings of one sheet, so that its document stays small. */
  public static final int MOST = 1000;

  private static final int HASH_CHARACTERS = 64;
  private static final int MOST_DUPLICATES = 20;

  public TrialReadingsSheet {
    readings = List.copyOf(readings);
  }

  /** Readings that count. */
  public TrialReadingsSheet(
      String trial,
      @Nullable String laboratory,
      @Nullable String file,
      @Nullable String fileHash,
      List<Reading> readings,
      @Nullable String note) {
    this(trial, laboratory, file, fileHash, readings, note, null);
  }

  /** The same, taken back for a reason. */
  public TrialReadingsSheet withdrawnFor(String why) {
    return new TrialReadingsSheet(trial, laboratory, file, fileHash, readings, note, why);
  }

  /** The earliest day of its readings. */
  @Override
  public @Nullable LocalDate day() {
    return readings.stream().map(Reading::date).min(LocalDate::compareTo).orElse(null);
  }

  static TrialReadingsSheet read(JsonObject json) {
    String trial = json.requiredId("trial", "the trial");
    String laboratory = json.id("laboratory", "the laboratory");
    String file = json.text("file", Limits.SENTENCE);
    String hash = json.text("fileHash", HASH_CHARACTERS);
    List<Reading> readings =
        json.objects("readings").stream().map(TrialReadingsSheet::reading).toList();
    if (readings.isEmpty()) {
      json.requireItems("readings", "at least one reading");
    }
    if (readings.size() > MOST) {
      json.fault("readings", "there are %d; give %d at most.".formatted(readings.size(), MOST));
    }
    String note = json.text("note", Limits.NOTE);
    String why = json.text("whyWithdrawn", Limits.SENTENCE);
    json.end();
    return new TrialReadingsSheet(trial, laboratory, file, hash, readings, note, why);
  }

  /** Reads the document of one reading, as a row of a table makes it. */
  public static Reading readOne(SourceText document) {
    Faults faults = new Faults(document.name());
    Reading reading = reading(JsonObject.root(document, faults));
    faults.throwIfAny();
    return reading;
  }

  /**
   * A reading made in the program, checked as if it had been read.
   *
   * @throws leafturn.records.InputException with every fault, each naming its field
   */
  public static Reading checked(Reading reading) {
    return readOne(new SourceText("reading", Document.of(reading)));
  }

  static Reading reading(JsonObject json) {
    Reading reading =
        new Reading(
            json.requiredText("plot", Limits.NAME, "the code of a plot"),
            json.requiredDate("date"),
            json.requiredText("outcome", Limits.NAME, "the name of an outcome"),
            json.requiredText("value", Limits.NAME, "what was read"),
            json.text("unit", Limits.NAME),
            json.text("laboratory", Limits.NAME),
            json.text("method", Limits.NAME),
            json.number("detectionLimit", 0, 1e9, "in the unit of the value"),
            json.text("batch", Limits.NAME),
            json.text("rater", Limits.NAME),
            json.text("sample", Limits.NAME),
            json.wholeNumber("duplicate", 1, MOST_DUPLICATES, ""),
            json.text("note", Limits.SENTENCE));
    json.refuseOthers();
    return reading;
  }
}
