package leafturn.records.book;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Which way up a camera held a picture: tag 0x0112 of an Exif segment (CIPA DC-008). */
final class ExifWayUp {
  private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};
  private static final int ORIENTATION = 0x0112;
  private static final int SHORT = 3;
  private static final int ENTRY = 12;
  private static final int UPRIGHT = 1;
  private static final int LAST = 8;

  private ExifWayUp() {}

  /** The way up, 1 to 8; 1 where a segment does not tell. */
  static int of(ByteBuffer picture, int start, int end) {
    for (int i = 0; i < EXIF.length; i++) {
      if (picture.get(start + i) != EXIF[i]) {
        return UPRIGHT;
      }
    }
    int base = start + EXIF.length;
    ByteBuffer tiff = picture.slice(base, end - base);
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = tiff.getInt(4);
    int entries = tiff.getShort(directory) & 0xFFFF;
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + i * ENTRY;
      if ((tiff.getShort(entry) & 0xFFFF) == ORIENTATION && tiff.getShort(entry + 2) == SHORT) {
        int value = tiff.getShort(entry + 8);
        return value >= UPRIGHT && value <= LAST ? value : UPRIGHT;
      }
    }
    return UPRIGHT;
  }

  /** A segment that tells the way up and nothing else. */
  static byte[] segment(int wayUp) {
    ByteBuffer segment = ByteBuffer.allocate(2 + 2 + EXIF.length + 8 + 2 + ENTRY + 4);
    segment.put((byte) 0xFF).put((byte) 0xE1).putShort((short) (segment.capacity() - 2)).put(EXIF);
    segment.put((byte) 'M').put((byte) 'M').putShort((short) 42).putInt(8);
    segment.putShort((short) 1);
    segment.putShort((short) ORIENTATION).putShort((short) SHORT).putInt(1);
    segment.putShort((short) wayUp).putShort((short) 0).putInt(0);
    return segment.array();
  }
}
