package leafturn.records.sheet;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leafturn.model.lawn.LogEntry;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.LogReading;
import org.jspecify.annotations.Nullable;

/**
 * An entry of a lawn's log. In its document the fields of {@code done} stand beside the others, and
 * {@code what} tells which they are.
 *
 * @param lawn id of the lawn
 * @param day the day it was done or seen
 * @param time the time of day, or null
 * @param done what was done
 * @param note anything to remember; may be null
 * @param photographs ids of photographs
 */
@JsonPropertyOrder({"lawn", "day", "time", "what"})
public record LogSheet(
    String lawn,
    LocalDate day,
    @Nullable LocalTime time,
    @JsonUnwrapped Done done,
    @Nullable String note,
    List<String> photographs)
    implements Content {
  public LogSheet {
    photographs = List.copyOf(photographs);
  }

  /** What was done. */
  @JsonProperty
  public What what() {
    return done.what();
  }

  static LogSheet read(JsonObject json) {
    String lawn = json.requiredId("lawn", "the lawn");
    LocalDate day = json.requiredDate("day");
    LocalTime time = Times.read(json, "time");
    Done done = DoneReader.read(json);
    String note = json.text("note", Limits.NOTE);
    List<String> photographs = json.list("photographs").ids("a photograph");
    boolean tells =
        Stream.of("things", "notThere", "leafCoverFraction", "heightMm", "note", "photographs")
            .anyMatch(json::holdsSomething);
    if (done instanceof Done.Observed && !tells) {
      json.requireItems(
          "things",
          "what was seen, or notThere, leafCoverFraction, heightMm, a note or photographs");
    }
    json.end();
    return new LogSheet(lawn, day, time, done, note, photographs);
  }

  /**
   * The entry of a lawn that a line of a log file tells of.
   *
   * @throws InputException when its remark is longer than a sheet's may be
   */
  public static LogSheet of(String lawn, LogReading.Line line) {
    LogEntry entry = line.entry();
    return Kind.LOG.checked(
        new LogSheet(lawn, entry.day(), null, done(entry), line.note(), List.of()));
  }

  /** What it says: photographs are in no table, and none of an element is 0 g/m2 of it. */
  public LogSheet bare() {
    return bare(note);
  }

  /** What it says beside its note. */
  LogSheet withoutNote() {
    return bare(null);
  }

  private LogSheet bare(@Nullable String kept) {
    Done said = done;
    if (done instanceof Done.Fed fed) {
      said =
          new Done.Fed(
              noneAsNull(fed.fastNGPerM2()),
              noneAsNull(fed.slowNGPerM2()),
              noneAsNull(fed.pGPerM2()),
              noneAsNull(fed.kGPerM2()),
              fed.product(),
              fed.wateredIn(),
              fed.feedForm(),
              fed.waterInMm());
    }
    return new LogSheet(lawn, day, time, said, kept, List.of());
  }

  private static @Nullable Double noneAsNull(@Nullable Double amount) {
    return amount == null || amount == 0 ? null : amount;
  }

  private static Done done(LogEntry entry) {
    if (entry instanceof LogEntry.Mown mown) {
      return new Done.Mown(
          orNull(mown.heightBeforeMm()),
          orNull(mown.heightAfterMm()),
          mown.returnedShare(),
          null,
          null,
          null,
          null,
          false);
    }
    if (entry instanceof LogEntry.Fed fed) {
      return new Done.Fed(
          fed.fastNGPerM2(),
          fed.slowNGPerM2(),
          fed.pGPerM2(),
          fed.kGPerM2(),
          null,
          null,
          null,
          null);
    }
    if (entry instanceof LogEntry.Measured measured) {
      return new Done.Observed(List.of(), List.of(), null, measured.heightMm());
    }
    return new Done.Watered(((LogEntry.Watered) entry).waterMm());
  }

  /** What the model takes of it: mowing, fertiliser, water and measured heights. */
  public Optional<LogEntry> forModel() {
    if (done instanceof Done.Mown mown) {
      return Optional.of(
          new LogEntry.Mown(
              day,
              orNaN(mown.heightBeforeMm()),
              orNaN(mown.heightAfterMm()),
              mown.returnedShare()));
    }
    if (done instanceof Done.Fed fed) {
      return Optional.of(
          new LogEntry.Fed(
              day,
              orNone(fed.fastNGPerM2()),
              orNone(fed.slowNGPerM2()),
              orNone(fed.pGPerM2()),
              orNone(fed.kGPerM2())));
    }
    if (done instanceof Done.Observed seen && seen.heightMm() != null) {
      return Optional.of(new LogEntry.Measured(day, seen.heightMm()));
    }
    return done instanceof Done.Watered watered
        ? Optional.of(new LogEntry.Watered(day, watered.waterMm()))
        : Optional.empty();
  }

  private static double orNone(@Nullable Double amount) {
    return amount == null ? 0 : amount;
  }

  private static double orNaN(@Nullable Double heightMm) {
    return heightMm == null ? Double.NaN : heightMm;
  }

  private static @Nullable Double orNull(double heightMm) {
    return Double.isNaN(heightMm) ? null : heightMm;
  }
}
