package leafturn.records.trial;

import java.util.Locale;
import java.util.Objects;
import leafturn.records.Sha256;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import org.locationtech.jts.geom.Coordinate;

/**
 * What of a layout must not change once something was read: which plot lies where, to the
 * centimetre, and which treatment it has.
 */
public final class LayoutText {
  private LayoutText() {}

  /** SHA-256 of a line for each plot, in hexadecimal. */
  public static String sha256(TrialLayout layout) {
    StringBuilder text = new StringBuilder();
    for (LaidLawn lawn : layout.lawns()) {
      lawn.plots().forEach(plot -> plot(text, lawn, plot));
    }
    return Sha256.of(text.toString());
  }

  private static void plot(StringBuilder text, LaidLawn lawn, LaidPlot plot) {
    text.append(plot.code()).append('\t').append(lawn.lawn().name());
    text.append('\t').append(plot.unit().arm());
    text.append('\t').append(Objects.requireNonNullElse(plot.unit().secondArm(), ""));
    for (Coordinate corner : plot.place().measured().getCoordinates()) {
      // Adding 0 makes -0.00 plain.
      double xM = Math.rint(corner.x * 100) / 100 + 0.0;
      double yM = Math.rint(corner.y * 100) / 100 + 0.0;
      text.append(String.format(Locale.ROOT, "\t%.2f %.2f", xM, yM));
    }
    text.append('\n');
  }
}
