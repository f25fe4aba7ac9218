package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.List;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A compost heap or bin.
 *
 * @param property id of the property
 * @param name what its people call it, 1 to 80 characters
 * @param heapKind how it is run
 * @param volumeLitres room it offers, litres, 10 to 1,000,000, or null
 * @param started day it was begun, or null
 * @param heat temperatures measured in its middle
 * @param note anything to remember; may be null
 */
public record HeapSheet(
    String property,
    String name,
    HeapKind heapKind,
    @Nullable Double volumeLitres,
    @Nullable LocalDate started,
    List<Heat> heat,
    @Nullable String note)
    implements Content {
  public HeapSheet {
    heat = List.copyOf(heat);
  }

  /** How a heap is run. */
  public enum HeapKind {
    HOT,
    COLD,
    LEAF_MOULD
  }

  /**
   * A temperature measured in the middle of a heap.
   *
   * @param day the day
   * @param temperatureC °C, -30 to 100
   */
  public record Heat(LocalDate day, double temperatureC) {
    private static Heat read(JsonObject json) {
      Heat heat =
          new Heat(json.requiredDate("day"), json.requiredNumber("temperatureC", -30, 100, "°C"));
      json.refuseOthers();
      return heat;
    }
  }

  static HeapSheet read(JsonObject json) {
    String property = json.requiredId("property", "the property it stands on");
    String name = json.requiredText("name", Limits.NAME, "what its people call it");
    HeapKind kind = Choice.required(json, "heapKind", HeapKind.class);
    Double volume = json.number("volumeLitres", 10, 1e6, "litres");
    LocalDate started = json.date("started");
    List<Heat> heat = json.objects("heat").stream().map(Heat::read).toList();
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new HeapSheet(property, name, kind, volume, started, heat, note);
  }
}
