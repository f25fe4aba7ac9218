package leafturn.reports;

import leafturn.advice.call.Call;
import leafturn.advice.call.Choice;
import leafturn.advice.call.Spread;
import leafturn.quantity.ShareWords;

/** The days by which a lawn wants mowing, in words. */
public final class MowBy {
  private MowBy() {}

  /** For instance "Mow by Wed 3 June (1–5 June)"; a sentence without its stop. */
  public static String words(Call call) {
    Spread mowBy = call.mowBy();
    double share = call.limits().heightTakenFraction();
    if (mowBy == null && 1 - call.today().cutHeightMm() / call.today().heightMm() > share) {
      return "More than " + ShareWords.of(share) + " would come off today already";
    }
    if (mowBy == null) {
      return "No day in sight on which " + ShareWords.of(share) + " would come off";
    }
    if (mowBy.high() < 0.5) {
      return ShareWords.beginning(share) + " would come off today already";
    }
    String days = DayWords.spreadOfDays(call.on(), mowBy).inLine();
    return call.choice() == Choice.LEAVE_ALONE
        ? ShareWords.beginning(share) + " would come off by " + days
        : "Mow by " + days;
  }
}
