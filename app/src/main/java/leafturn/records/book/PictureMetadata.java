package leafturn.records.book;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import leafturn.records.InputException;
import leafturn.records.sheet.PhotographSheet.MediaType;

/**
 * Takes out of a picture what tells where, when and with what it was taken, and leaves the picture
 * itself as it is. The way up of a JPEG is kept.
 */
public final class PictureMetadata {
  private static final int JPEG_APP0 = 0xE0;
  private static final int JPEG_APP1 = 0xE1;
  private static final int JPEG_APP2 = 0xE2;
  private static final int JPEG_APP14 = 0xEE;
  private static final int JPEG_APP15 = 0xEF;
  private static final int JPEG_COMMENT = 0xFE;
  private static final int JPEG_SCAN = 0xDA;
  private static final int PNG_HEADER = 8;
  private static final int PNG_CHUNK = 12;
  private static final int RIFF_HEADER = 12;
  private static final int WEBP_EXIF_AND_XMP = 0x0C;
  private static final Set<String> PNG_KEPT =
      Set.of(
          "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "cHRM", "gAMA", "iCCP", "sBIT", "sRGB", "bKGD",
          "pHYs", "hIST", "sPLT");

  private PictureMetadata() {}

  /**
   * The picture without them.
   *
   * @throws InputException when the bytes are no such picture
   */
  public static byte[] removed(MediaType type, byte[] picture) {
    try {
      return switch (type) {
        case JPEG -> jpeg(ByteBuffer.wrap(picture));
        case PNG -> png(ByteBuffer.wrap(picture));
        case WEBP -> webp(ByteBuffer.wrap(picture).order(ByteOrder.LITTLE_ENDIAN));
      };
    } catch (IndexOutOfBoundsException | IllegalArgumentException cut) {
      throw new InputException("The photograph is damaged or cut short; choose another file.");
    }
  }

  private static byte[] jpeg(ByteBuffer picture) {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(picture.capacity());
    copy(picture, 0, 2, kept);
    int at = 2;
    while (true) {
      if ((picture.get(at) & 0xFF) != 0xFF) {
        throw new IllegalArgumentException("no marker");
      }
      int marker = picture.get(at + 1) & 0xFF;
      if (marker == JPEG_SCAN) {
        copy(picture, at, picture.capacity(), kept);
        return kept.toByteArray();
      }
      int end = at + 2 + (picture.getShort(at + 2) & 0xFFFF);
      if (end < at + 4) {
        throw new IllegalArgumentException("a segment of no length");
      }
      if (marker == JPEG_APP1) {
        int wayUp = ExifWayUp.of(picture, at + 4, end);
        kept.writeBytes(wayUp > 1 ? ExifWayUp.segment(wayUp) : new byte[0]);
      } else if (keptInJpeg(marker)) {
        copy(picture, at, end, kept);
      }
      at = end;
    }
  }

  private static boolean keptInJpeg(int marker) {
    boolean application = marker >= JPEG_APP0 && marker <= JPEG_APP15;
    return marker != JPEG_COMMENT
        && (!application || Set.of(JPEG_APP0, JPEG_APP2, JPEG_APP14).contains(marker));
  }

  private static byte[] png(ByteBuffer picture) {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(picture.capacity());
    copy(picture, 0, PNG_HEADER, kept);
    String name = "";
    for (int at = PNG_HEADER; !name.equals("IEND"); ) {
      int end = Math.addExact(at, Math.addExact(length(picture.getInt(at)), PNG_CHUNK));
      name = name(picture, at + 4);
      if (PNG_KEPT.contains(name)) {
        copy(picture, at, end, kept);
      }
      at = end;
    }
    return kept.toByteArray();
  }

  private static byte[] webp(ByteBuffer picture) {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(picture.capacity());
    copy(picture, 0, RIFF_HEADER, kept);
    int at = RIFF_HEADER;
    while (at < picture.capacity()) {
      String name = name(picture, at);
      int size = length(picture.getInt(at + 4));
      int end = Math.addExact(at, Math.addExact(8, size + size % 2));
      if (!name.equals("EXIF") && !name.equals("XMP ")) {
        copy(picture, at, end, kept);
      }
      at = end;
    }
    ByteBuffer whole = ByteBuffer.wrap(kept.toByteArray()).order(ByteOrder.LITTLE_ENDIAN);
    whole.putInt(4, whole.capacity() - 8);
    if (name(whole, RIFF_HEADER).equals("VP8X")) {
      int flags = RIFF_HEADER + 8;
      whole.put(flags, (byte) (whole.get(flags) & ~WEBP_EXIF_AND_XMP));
    }
    return whole.array();
  }

  private static int length(int length) {
    if (length < 0) {
      throw new IllegalArgumentException("a length below nothing");
    }
    return length;
  }

  private static String name(ByteBuffer picture, int at) {
    byte[] letters = new byte[4];
    picture.get(at, letters);
    return new String(letters, StandardCharsets.US_ASCII);
  }

  private static void copy(ByteBuffer from, int start, int end, ByteArrayOutputStream to) {
    if (end > from.capacity()) {
      throw new IndexOutOfBoundsException(end);
    }
    to.write(from.array(), start, end - start);
  }
}
