package leafturn.web;

import java.util.List;
import leafturn.web.sheet.Line;

/**
 * A property with all that is kept of it.
 *
 * @param id its id
 * @param name what its people call it
 * @param address its name in addresses
 * @param withdrawn whether it no longer counts
 * @param facts what its sheet says
 * @param lawns its lawns
 * @param shelves what else is kept of it
 * @param photographs its photographs and those of its lawns
 * @param withdrawnSheets sheets that no longer count
 * @param mayChange whether this reader may add and change
 */
public record PropertyPage(
    String id,
    String name,
    String address,
    boolean withdrawn,
    List<Line> facts,
    List<LawnEntry> lawns,
    List<Shelf> shelves,
    List<Photograph> photographs,
    List<Item> withdrawnSheets,
    boolean mayChange) {
  /**
   * A lawn of the property.
   *
   * @param facts grass, area and soil in a line
   * @param shelves what is kept of it
   */
  public record LawnEntry(
      String id, String name, String address, String facts, List<Shelf> shelves) {}

  /**
   * Sheets of one kind.
   *
   * @param label what they are
   * @param items the sheets, the latest first
   * @param add where one is added
   */
  public record Shelf(String label, List<Item> items, String add) {}

  /**
   * A sheet.
   *
   * @param title what it says in a line
   * @param detail more of it; may be empty
   */
  public record Item(String id, String title, String detail) {}

  /** A photograph with what it shows. */
  public record Photograph(String id, String caption) {}
}
