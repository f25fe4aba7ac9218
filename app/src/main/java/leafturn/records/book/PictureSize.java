package leafturn.records.book;

import java.nio.ByteBuffer;
import java.util.Set;
import leafturn.records.InputException;

/** How large a picture says it is. It is read without decoding the picture, which takes no room. */
final class PictureSize {
  /** More than cameras of phones take, and still shown by browsers, pixels; our judgement. */
  static final int MOST_PIXELS = 60_000_000;

  private static final int MILLION = 1_000_000;

  /** Markers among those of frames that begin something else: tables and an extension. */
  private static final Set<Integer> NO_FRAME = Set.of(0xC4, 0xC8, 0xCC);

  private PictureSize() {}

  /** True for a marker of a JPEG after which its size stands. */
  static boolean isFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && !NO_FRAME.contains(marker);
  }

  /** Checks the frame of a JPEG, whose content begins at a place. */
  static void ofJpeg(ByteBuffer picture, int at) {
    check(picture.getShort(at + 3) & 0xFFFF, picture.getShort(at + 1) & 0xFFFF);
  }

  /** Checks the header of a PNG, whose chunk begins at a place. */
  static void ofPng(ByteBuffer picture, int at) {
    check(picture.getInt(at + 8) & 0xFFFFFFFFL, picture.getInt(at + 12) & 0xFFFFFFFFL);
  }

  /** Checks the content of a chunk of a WebP where it tells the size. */
  static void ofWebp(String chunk, ByteBuffer content) {
    switch (chunk) {
      case "VP8X" -> check(1L + threeBytes(content, 4), 1L + threeBytes(content, 7));
      case "VP8L" -> {
        int bits = content.getInt(1);
        check(1L + (bits & 0x3FFF), 1L + (bits >>> 14 & 0x3FFF));
      }
      case "VP8 " -> check(content.getShort(6) & 0x3FFF, content.getShort(8) & 0x3FFF);
      default -> {
        // No other chunk tells a size.
      }
    }
  }

  private static int threeBytes(ByteBuffer content, int at) {
    return content.getShort(at) & 0xFFFF | (content.get(at + 2) & 0xFF) << 16;
  }

  private static void check(long width, long height) {
    if (width == 0 || height == 0) {
      throw new IllegalArgumentException("a picture without pixels");
    }
    if (width > MOST_PIXELS / height) {
      throw new InputException(
          "The photograph is %d × %d pixels large; take one of at most %d million pixels."
              .formatted(width, height, MOST_PIXELS / MILLION));
    }
  }
}
