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
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import leafturn.records.InputException;
import leafturn.records.book.Photographs.Picture;
import leafturn.records.sheet.PhotographSheet.MediaType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
  void aJpegOfManyScansKeepsThemAll() throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream output = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(output);
      writer.write(null, new IIOImage(image(), null, null), param);
    }
    byte[] plain = bytes.toByteArray();
    byte[] scans = {(byte) 0xFF, (byte) 0xDA};
    assertThat(text(plain).split(text(scans), -1)).hasSizeGreaterThan(5);
    assertThat(Picture.of(plain).bytes()).isEqualTo(plain);
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
            riff("VP8 ", new byte[] {0, 0, 0, (byte) 0x9D, 1, 0x2A, 1, 0, 1, 0}),
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
  void whatFollowsTheEndOfAJpegIsLeftOut() throws IOException {
    byte[] plain = encoded("jpg");
    byte[] more = concat(plain, PLACE.getBytes(StandardCharsets.US_ASCII));
    assertThat(Picture.of(more).bytes()).isEqualTo(plain);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpg", "png"})
  void aPictureWithoutItsEndIsRefused(String format) throws IOException {
    byte[] plain = encoded(format);
    for (int length = plain.length / 2; length < plain.length; length++) {
      byte[] cut = Arrays.copyOf(plain, length);
      assertThatThrownBy(() -> Picture.of(cut))
          .isInstanceOf(InputException.class)
          .hasMessage("The photograph is damaged or cut short; choose another file.");
    }
  }

  @Test
  void aPictureThatSaysItIsHugeIsRefusedWithoutBeingDecoded() throws IOException {
    byte[] png = encoded("png");
    ByteBuffer.wrap(png).putInt(16, 30000).putInt(20, 30000);
    byte[] jpeg = encoded("jpg");
    int frame = 0;
    while ((jpeg[frame] & 0xFF) != 0xFF || (jpeg[frame + 1] & 0xFF) != 0xC0) {
      frame++;
    }
    ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 30000).putShort(frame + 7, (short) 30000);
    byte[] canvas = {0, 0, 0, 0, 0x2F, 0x75, 0, 0x2F, 0x75, 0};
    byte[] webp =
        concat(
            "RIFF".getBytes(StandardCharsets.US_ASCII), new byte[4], webp(), riff("VP8X", canvas));
    for (byte[] huge : new byte[][] {png, jpeg, webp}) {
      assertThatThrownBy(() -> Picture.of(huge))
          .isInstanceOf(InputException.class)
          .hasMessage(
              "The photograph is 30000 × 30000 pixels large; take one of at most 60 million"
                  + " pixels.");
    }
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

  private static BufferedImage image() {
    BufferedImage image = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 24; x++) {
      for (int y = 0; y < 16; y++) {
        image.setRGB(x, y, x * 10 << 16 | y * 15 << 8 | 90);
      }
    }
    return image;
  }

  private static byte[] encoded(String format) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image(), format, bytes)).isTrue();
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
