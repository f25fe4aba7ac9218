package leafturn.reports.trial;

import java.util.List;

/**
 * How much of a sheet of paper its words and tables take, so that a map beside them leaves no few
 * lines over for the next sheet. px, from the type and the margins of the style of papers; what is
 * told is an estimate, on the large side.
 */
final class SheetRoom {
  /** Height of the sheet within its margins. */
  private static final double SHEET_PX = 979;

  private static final double TITLE_PX = 72;
  private static final double HEAD_PX = 44;
  private static final double LINE_PX = 18.7;
  private static final double AFTER_PX = 9.5;
  private static final double ROW_PX = 25.5;
  private static final double HIGH_ROW_PX = 35.5;
  private static final double AFTER_TABLE_PX = 16;
  private static final int LETTERS_IN_LINE = 105;

  private double takenPx;

  private SheetRoom(double takenPx) {
    this.takenPx = takenPx;
  }

  /** A sheet with its title. */
  static SheetRoom titled() {
    return new SheetRoom(TITLE_PX);
  }

  /** A part of a sheet; its table's head is the only one. */
  static SheetRoom part() {
    return new SheetRoom(AFTER_TABLE_PX);
  }

  /** Paragraphs, each of as many lines as its letters take. */
  SheetRoom paragraphs(List<String> words) {
    for (String each : words) {
      takenPx += AFTER_PX + LINE_PX * (1 + each.length() / LETTERS_IN_LINE);
    }
    return this;
  }

  /** Heads that stand alone. */
  SheetRoom heads(int count) {
    takenPx += count * HEAD_PX;
    return this;
  }

  /** A table of one-line rows below a head of its own. */
  SheetRoom table(int rows) {
    takenPx += rows == 0 ? 0 : HEAD_PX + ROW_PX * (rows + 1) + AFTER_TABLE_PX;
    return this;
  }

  /** A table whose rows are high enough to write in. */
  SheetRoom rowsToFillIn(int rows) {
    takenPx += ROW_PX + HIGH_ROW_PX * rows + AFTER_TABLE_PX;
    return this;
  }

  /** Whether the sheet has room for pictures of this height below a head of their own. */
  boolean hasRoomFor(double heightPx) {
    return HEAD_PX + heightPx <= leftPx();
  }

  /** What is left of one sheet for a map; may be too little or none. */
  double leftPx() {
    return SHEET_PX - takenPx;
  }

  /** What is left where two of these stand on a sheet. */
  double leftOfHalfPx() {
    return SHEET_PX / 2 - takenPx;
  }
}
