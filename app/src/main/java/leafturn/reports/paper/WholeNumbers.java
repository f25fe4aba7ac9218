package leafturn.reports.paper;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/**
 * Where a line may be broken on paper: as in any English text, but never before a figure that
 * follows a point, comma or hyphen, because the platform would break "±0.5", "−0.35" and the code
 * of a plot, "B10-1", there.
 */
final class WholeNumbers implements FSTextBreaker {
  private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ENGLISH);
  private String text = "";

  @Override
  public void setText(String newText) {
    text = newText;
    breaks.setText(newText);
  }

  @Override
  public int next() {
    int at = breaks.next();
    while (at != BreakIterator.DONE && isInNumber(at)) {
      at = breaks.next();
    }
    return at;
  }

  private boolean isInNumber(int at) {
    if (at < 2 || at >= text.length()) {
      return false;
    }
    char mark = text.charAt(at - 1);
    return (mark == '.' || mark == ',' || mark == '-')
        && Character.isDigit(text.charAt(at - 2))
        && Character.isDigit(text.charAt(at));
  }
}
