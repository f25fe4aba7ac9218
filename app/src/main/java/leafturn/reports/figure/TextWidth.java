package leafturn.reports.figure;

/**
 * Width of words in Atkinson Hyperlegible Next, regular weight, from its advance widths in
 * thousandths of the type size (measured in a browser from the file the pages serve). Some is added
 * for bolder weights and for the face that stands in until ours is there.
 */
final class TextWidth {
  private static final double ALLOWANCE = 1.08;
  private static final int OTHER = 560;
  private static final int NARROW_SPACE = 140;

  /** Advance widths of the characters from space (32) to tilde (126). */
  private static final int[] WIDTHS = {
    280, 286, 301, 651, 592, 919, 731, 160, 299, 299, 485, 606, 210, 362, 210, 387, 648, 407, 548,
    576, 614, 588, 598, 510, 615, 595, 210, 210, 553, 628, 553, 480, 778, 626, 613, 645, 669, 569,
    552, 694, 694, 392, 512, 631, 541, 824, 693, 714, 592, 724, 614, 592, 558, 690, 593, 856, 623,
    575, 607, 317, 387, 344, 552, 372, 243, 525, 566, 485, 564, 538, 314, 558, 550, 252, 245, 492,
    262, 845, 550, 548, 566, 574, 349, 471, 326, 540, 461, 684, 481, 449, 460, 344, 237, 344, 555
  };

  private TextWidth() {}

  /** Width in px at a type size in px, rather too wide than too narrow. */
  static double ofPx(String words, double sizePx) {
    int thousandths = 0;
    for (int i = 0; i < words.length(); i++) {
      thousandths += widthOf(words.charAt(i));
    }
    return ALLOWANCE * thousandths * sizePx / 1000;
  }

  private static int widthOf(char character) {
    if (character == '\u202f') {
      return NARROW_SPACE;
    }
    int index = character - ' ';
    return index >= 0 && index < WIDTHS.length ? WIDTHS[index] : OTHER;
  }
}
