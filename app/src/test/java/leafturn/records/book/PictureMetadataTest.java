package leafturn.records.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import leafturn.records.InputException;
import leafturn.records.book.Photographs.Picture;
import leafturn.records.sheet.PhotographSheet.MediaType;
import org.junit.jupiter.api.Test;

class PictureMetadataTest {
  private static final String PLACE = "51.4778N 0.0015W";

  @Test
  void aJpegLosesItsPlaceAndKeepsItsWayUpAndItsPixels() throws IOException {
    byte[] plain = encoded("jpg");
    byte[] exif = concat(ExifWayUp.segment(6), PLACE.getBytes(StandardCharsets.US_ASCII));
    ByteBuffer.wrap(exif).putShort(2, (short) (exif.length - 2));
    byte[] comment = segment(0xFE, PLACE);
    byte[] tagged = inserted(plain, 2, concat(exif, comment));
    assertThat(text(tagged)).contains(PLACE);
    Picture picture = Picture.of(tagged);
    assertThat(picture.type()).isEqualTo(MediaType.JPEG);
    assertThat(text(picture.bytes())).doesNotContain(PLACE);
    assertThat(picture.bytes()).startsWith(inserted(plain, 2, ExifWayUp.segment(6)));
    assertThat(pixels(picture.bytes())).isEqualTo(pixels(plain));
  }

  @Test
  void aPngLosesItsTexts() throws IOException {
    byte[] plain = encoded("png");
    byte[] tagged = inserted(plain, 33, chunk("tEXt", PLACE));
    Picture picture = Picture.of(tagged);
    assertThat(picture.type()).isEqualTo(MediaType.PNG);
    assertThat(picture.bytes()).isEqualTo(plain);
    assertThat(pixels(picture.bytes())).isEqualTo(pixels(plain));
  }

  @Test
  void aWebpLosesItsExif() {
    byte[] picture =
        concat(
            riff("VP8X", new byte[] {0x0C, 0, 0, 0, 0, 0, 0, 0, 0, 0}),
            riff("VP8 ", new byte[] {1, 2, 3}),
            riff("EXIF", PLACE.getBytes(StandardCharsets.US_ASCII)));
    byte[] tagged =
        concat("RIFF".getBytes(StandardCharsets.US_ASCII), new byte[4], webp(), picture);
    byte[] kept = Picture.of(tagged).bytes();
    assertThat(text(kept)).doesNotContain(PLACE).contains("VP8 ");
    assertThat(kept[20]).isZero();
    assertThat(ByteBuffer.wrap(kept).order(ByteOrder.LITTLE_ENDIAN).getInt(4))
        .isEqualTo(kept.length - 8);
  }

  @Test
  void whatIsNoPictureIsToldSo() {
    assertThatThrownBy(() -> Picture.of("<svg onload=x>".getBytes(StandardCharsets.US_ASCII)))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("no JPEG, PNG or WebP");
  }

  @Test
  void damagedPicturesAreTakenOrRefusedInASentence() throws IOException {
    Random random = new Random(20150528);
    byte[][] pictures = {inserted(encoded("jpg"), 2, ExifWayUp.segment(6)), encoded("png")};
    int refused = 0;
    for (int round = 0; round < 3000; round++) {
      byte[] spoilt = pictures[round % 2].clone();
      for (int flips = 1 + random.nextInt(4); flips > 0; flips--) {
        spoilt[random.nextInt(80)] = (byte) random.nextInt(256);
      }
      try {
        Picture.of(Arrays.copyOf(spoilt, 8 + random.nextInt(spoilt.length - 8)));
      } catch (InputException told) {
        assertThat(told).hasMessageStartingWith("The photograph is");
        refused++;
      }
    }
    assertThat(refused).isGreaterThan(1000);
  }

  private static byte[] encoded(String format) throws IOException {
    BufferedImage image = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 24; x++) {
      for (int y = 0; y < 16; y++) {
        image.setRGB(x, y, x * 10 << 16 | y * 15 << 8 | 90);
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, format, bytes)).isTrue();
    return bytes.toByteArray();
  }

  private static int[] pixels(byte[] picture) throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture));
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }

  private static byte[] segment(int marker, String text) {
    byte[] head = {(byte) 0xFF, (byte) marker, 0, (byte) (2 + text.length())};
    return concat(head, text.getBytes(StandardCharsets.US_ASCII));
  }

  private static byte[] chunk(String name, String text) {
    byte[] content =
        concat(name.getBytes(StandardCharsets.US_ASCII), text.getBytes(StandardCharsets.US_ASCII));
    CRC32 crc = new CRC32();
    crc.update(content);
    return ByteBuffer.allocate(content.length + 8)
        .putInt(text.length())
        .put(content)
        .putInt((int) crc.getValue())
        .array();
  }

  private static byte[] riff(String name, byte[] content) {
    return ByteBuffer.allocate(8 + content.length + content.length % 2)
        .order(ByteOrder.LITTLE_ENDIAN)
        .put(name.getBytes(StandardCharsets.US_ASCII))
        .putInt(content.length)
        .put(content)
        .array();
  }

  private static byte[] webp() {
    return "WEBP".getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] inserted(byte[] picture, int at, byte[] part) {
    return concat(
        Arrays.copyOf(picture, at), part, Arrays.copyOfRange(picture, at, picture.length));
  }

  private static byte[] concat(byte[]... parts) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      all.writeBytes(part);
    }
    return all.toByteArray();
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
