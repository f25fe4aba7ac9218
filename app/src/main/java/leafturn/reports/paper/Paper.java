package leafturn.reports.paper;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A document for paper: A4 sheets with page numbers, in the type faces of the pages, all embedded.
 * Drawings stand in it as inline SVG, with their own {@code style} and namespace. Nothing is
 * fetched from anywhere but the document itself.
 */
public final class Paper {
  private static final String FOLDER = "/leafturn/reports/paper/";
  private static final String STYLE = text("paper.css");
  private static final String INLINE = "data:";

  static {
    XRLog.setLoggingEnabled(false);
  }

  private final String xhtml;

  private Paper(String xhtml) {
    this.xhtml = xhtml;
  }

  /**
   * A document of these parts.
   *
   * @param title in plain words; it stands at the foot of every sheet
   * @param style CSS for this document alone, after the common one; may be empty
   * @param body well-formed XHTML, see {@link #escaped}
   */
  public static Paper of(String title, String style, String body) {
    return new Paper(
        """
        <html xmlns="http://www.w3.org/1999/xhtml" lang="en">
        <head><title>%s</title><style>%s
        %s</style></head>
        <body><p class="sheet-foot">%s</p>%s</body></html>
        """
            .formatted(escaped(title), STYLE, style, escaped(title), body));
  }

  /** Words as they may stand between tags or in a quoted attribute. */
  public static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** The document as a web page that needs nothing else. */
  public String html() {
    return "<!DOCTYPE html>\n" + xhtml;
  }

  /**
   * Writes the document as PDF.
   *
   * @throws IllegalStateException when the body is not well-formed
   */
  public void writePdf(OutputStream out) throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    font(builder, "atkinson-hyperlegible-next-400.ttf", "Atkinson Hyperlegible Next", 400);
    font(builder, "atkinson-hyperlegible-next-700.ttf", "Atkinson Hyperlegible Next", 700);
    font(builder, "literata-600.ttf", "Literata", 600);
    font(builder, "paper-symbols.ttf", "Paper Symbols", 400);
    builder.useUriResolver((base, address) -> ofItself(address));
    builder.withProducer("Leafturn");
    builder.useUnicodeLineBreaker(new WholeNumbers());
    builder.withHtmlContent(xhtml, null);
    builder.toStream(out);
    try (BatikSVGDrawer drawings = new BatikSVGDrawer()) {
      builder.useSVGDrawer(drawings);
      builder.run();
    } catch (RuntimeException wrong) {
      throw new IllegalStateException("a document could not be set on paper", wrong);
    }
  }

  private static @Nullable String ofItself(@Nullable String address) {
    return address != null && address.startsWith(INLINE) ? address : null;
  }

  private static void font(PdfRendererBuilder builder, String file, String family, int weight) {
    FSSupplier<InputStream> supplier = () -> open(file);
    builder.useFont(
        supplier,
        family,
        weight,
        FontStyle.NORMAL,
        true,
        EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG));
  }

  private static InputStream open(String file) {
    return Objects.requireNonNull(
        Paper.class.getResourceAsStream(FOLDER + file),
        "a part of the program is missing: " + file);
  }

  private static String text(String file) {
    try (InputStream in = open(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
