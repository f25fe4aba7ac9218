package leafturn.web;

import java.util.List;

/** The style sheets of the pages, by what they dress. */
final class Styles {
  /** All of them; a later one has the last word over an earlier one. */
  static final List<String> IN_ORDER =
      List.of(
          "page.css",
          "lawn.css",
          "figures.css",
          "narrow.css",
          "outline.css",
          "forms.css",
          "log.css",
          "sheets.css",
          "rules.css");

  /** What the first page of the site does with. */
  private static final List<String> OF_THE_ROUND = IN_ORDER.subList(0, 4);

  private Styles() {}

  /**
   * The style sheets that the pages of a room need, in order.
   *
   * @param room the room's name in the head of the page; may be empty
   */
  static List<String> of(String room) {
    return room.equals("round") ? OF_THE_ROUND : IN_ORDER;
  }
}
