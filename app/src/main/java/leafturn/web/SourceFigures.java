package leafturn.web;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.reports.QuantityWords;

/**
 * Running text about sources, whose figures are in the sources' own units: a reader of other units
 * finds theirs in parentheses beside them.
 *
 * @param units the reader's units
 */
record SourceFigures(Units units) {
  private static final Pattern FIGURE = Pattern.compile("(\\d[\\d.]*) (kg N/ha|mm)\\b");
  private static final double KG_PER_HA = 0.1;

  /** The text with the reader's figures, "392 kg N/ha (8 lb N/1000 ft²)". */
  String in(String text) {
    return units == Units.METRIC
        ? text
        : FIGURE
            .matcher(text)
            .replaceAll(
                found -> Matcher.quoteReplacement(found.group() + " (" + readers(found) + ")"));
  }

  private String readers(MatchResult found) {
    double figure = Double.parseDouble(found.group(1));
    return found.group(2).equals("mm")
        ? told(figure, Measure.HEIGHT)
        : told(KG_PER_HA * figure, Measure.MASS_PER_AREA).replaceFirst("/", " N/");
  }

  private String told(double kept, Measure measure) {
    return QuantityWords.plain(measure.shown(kept, units))
        + QuantityWords.THIN
        + measure.unit(units).symbol();
  }
}
