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
 * itself as it is. The way up of a JPEG is kept; what follows its end is left out.
 */
public final class PictureMetadata {
  private static final int JPEG_APP0 = 0xE0;
  private static final int JPEG_APP1 = 0xE1;
  private static final int JPEG_APP2 = 0xE2;
  private static final int JPEG_APP14 = 0xEE;
  private static final int JPEG_APP15 = 0xEF;
  private static final int JPEG_COMMENT = 0xFE;
  private static final int JPEG_SCAN = 0xDA;
  private static final int JPEG_END = 0xD9;
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
   * @throws InputException when the bytes are no such picture, lack its end, or tell of more pixels
   *     than can be shown
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
    boolean sized = false;
    int at = 2;
    int marker = marker(picture, at);
    while (marker != JPEG_END) {
      int end = at + 2 + (picture.getShort(at + 2) & 0xFFFF);
      if (end < at + 4 || (marker == JPEG_SCAN && !sized)) {
        throw new IllegalArgumentException("a segment of no length, or a scan before its frame");
      }
      if (PictureSize.isFrame(marker)) {
        PictureSize.ofJpeg(picture, at + 4);
        sized = true;
      }
      segment(picture, at, end, kept);
      at = end;
      if (marker == JPEG_SCAN) {
        at = endOfScan(picture, end);
        copy(picture, end, at, kept);
      }
      marker = marker(picture, at);
    }
    copy(picture, at, at + 2, kept);
    return kept.toByteArray();
  }

  private static int marker(ByteBuffer picture, int at) {
    if ((picture.get(at) & 0xFF) != 0xFF) {
      throw new IllegalArgumentException("no marker");
    }
    return picture.get(at + 1) & 0xFF;
  }

  private static void segment(ByteBuffer picture, int at, int end, ByteArrayOutputStream kept) {
    int marker = marker(picture, at);
    if (marker == JPEG_APP1) {
      int wayUp = ExifWayUp.of(picture, at + 4, end);
      kept.writeBytes(wayUp > 1 ? ExifWayUp.segment(wayUp) : new byte[0]);
    } else if (keptInJpeg(marker)) {
      copy(picture, at, end, kept);
    }
  }

  /** Where the next marker stands that is no part of the scan; a picture cut short has none. */
  private static int endOfScan(ByteBuffer picture, int from) {
    int at = from;
    while ((picture.get(at) & 0xFF) != 0xFF || withinScan(picture.get(at + 1) & 0xFF)) {
      at++;
    }
    return at;
  }

  private static boolean withinScan(int marker) {
    return marker == 0 || marker == 0xFF || (marker >= 0xD0 && marker <= 0xD7);
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
    PictureSize.ofPng(picture, PNG_HEADER);
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
      PictureSize.ofWebp(name, picture.slice(at + 8, size).order(ByteOrder.LITTLE_ENDIAN));
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
