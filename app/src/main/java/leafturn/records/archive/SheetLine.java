package leafturn.records.archive;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.records.SourceText;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import org.jspecify.annotations.Nullable;

/**
 * A sheet with all its versions as a line of an archive.
 *
 * @param entry its place in the order in which the book's sheets were entered, from 1
 * @param id UUID in lower case
 * @param kind what it is
 * @param versions its versions from the first to the one that counts, at least one
 */
record SheetLine<C extends Content>(
    long entry, String id, Kind<C> kind, List<Version<C>> versions) {
  private static final JsonFactory JSON = new JsonFactory();
  private static final double MOST_ENTRIES = 1e12;
  private static final int LONGEST_NAME = 80;

  SheetLine {
    versions = List.copyOf(versions);
  }

  /**
   * One version.
   *
   * @param withdrawn true when the sheet did not count in it
   * @param writtenAt when it was written
   * @param writtenBy who wrote it
   * @param content what it said
   */
  record Version<C extends Content>(
      boolean withdrawn, Instant writtenAt, String writtenBy, C content) {}

  /** What the version that counts says. */
  C content() {
    return versions.get(versions.size() - 1).content();
  }

  /** The line, without a line end. */
  String write() {
    StringWriter line = new StringWriter();
    try (JsonGenerator out = JSON.createGenerator(line)) {
      out.writeStartObject();
      out.writeNumberField("entry", entry);
      out.writeStringField("id", id);
      out.writeArrayFieldStart("versions");
      int number = 1;
      for (Version<C> version : versions) {
        out.writeStartObject();
        out.writeNumberField("version", number++);
        out.writeBooleanField("withdrawn", version.withdrawn());
        out.writeStringField("writtenAt", version.writtenAt().toString());
        out.writeStringField("writtenBy", version.writtenBy());
        out.writeFieldName("content");
        out.writeRawValue(kind.write(version.content()));
        out.writeEndObject();
      }
      out.writeEndArray();
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("a string took no more text", e);
    }
    return line.toString();
  }

  /** Reads a line; null when it has faults, which are then told with its number. */
  static <C extends Content> @Nullable SheetLine<C> read(
      Kind<C> kind, String text, long number, Faults faults) {
    Faults ofLine = new Faults("");
    try {
      return read(kind, JsonObject.root(new SourceText("it", text), ofLine), ofLine);
    } catch (InputException e) {
      e.faultsByField().forEach(fault -> tell(fault, number, faults));
      return null;
    }
  }

  private static void tell(Faults.Fault fault, long number, Faults faults) {
    if (fault.field().isEmpty()) {
      faults.add(number, fault.sentence());
    } else {
      faults.add(number, fault.field(), fault.sentence());
    }
  }

  private static <C extends Content> SheetLine<C> read(
      Kind<C> kind, JsonObject line, Faults faults) {
    long entry = (long) line.requiredNumber("entry", 1, MOST_ENTRIES, "the order of entry");
    String id = line.requiredId("id", "the sheet itself");
    List<Version<C>> versions = new ArrayList<>();
    List<JsonObject> list = line.objects("versions");
    int expected = 1;
    for (JsonObject version : list) {
      Integer number = version.wholeNumber("version", 1, Integer.MAX_VALUE, "");
      if (number == null || number != expected) {
        version.fault("version", "versions run from 1; this one should be " + expected + ".");
      }
      expected++;
      try {
        versions.add(version(kind, version, faults));
      } catch (InputException e) {
        continue; // its faults stay with the others, and the next version is read all the same
      }
    }
    if (list.isEmpty()) {
      line.fault("versions", "there is no version; a sheet has at least one.");
    }
    line.refuseOthers();
    faults.throwIfAny();
    return new SheetLine<>(entry, id, kind, versions);
  }

  private static <C extends Content> Version<C> version(
      Kind<C> kind, JsonObject json, Faults faults) {
    Boolean withdrawn = json.flag("withdrawn");
    if (withdrawn == null && !json.has("withdrawn")) {
      json.missing("withdrawn", "true or false");
    }
    Instant writtenAt = Times.read(json, "writtenAt");
    JsonValue by = json.take("writtenBy");
    String writtenBy = by != null && by.content() instanceof String text ? text : "";
    if (writtenBy.isBlank() || writtenBy.length() > LONGEST_NAME) {
      json.fault("writtenBy", "give who wrote it in up to 80 characters.");
    }
    JsonObject document = json.object("content");
    json.refuseOthers();
    faults.throwIfAny();
    return new Version<>(withdrawn != null && withdrawn, writtenAt, writtenBy, kind.read(document));
  }
}
