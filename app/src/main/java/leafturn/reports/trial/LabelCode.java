package leafturn.reports.trial;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** A code that a phone or a laboratory's reader takes from a label (QR code, ISO/IEC 18004). */
final class LabelCode {
  /** Blank modules around it, as the standard asks. */
  private static final int QUIET = 4;

  private LabelCode() {}

  /**
   * The code as an inline drawing.
   *
   * @param text what a reader tells, letters and digits
   * @param sizePx whole number
   */
  static String svg(String text, int sizePx) {
    BitMatrix modules = modules(text);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      for (int x = 0; x < modules.getWidth(); x++) {
        if (modules.get(x, y)) {
          path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
        }
      }
    }
    return ("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"Code %s\""
            + " width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\"><path fill=\"#000000\""
            + " d=\"%s\"/></svg>")
        .formatted(text, sizePx, sizePx, modules.getWidth(), modules.getHeight(), path);
  }

  private static BitMatrix modules(String text) {
    try {
      return new QRCodeWriter()
          .encode(
              text,
              BarcodeFormat.QR_CODE,
              0,
              0,
              Map.of(
                  EncodeHintType.ERROR_CORRECTION,
                  ErrorCorrectionLevel.M,
                  EncodeHintType.MARGIN,
                  QUIET));
    } catch (WriterException e) {
      throw new IllegalStateException("a short code always fits", e);
    }
  }
}
