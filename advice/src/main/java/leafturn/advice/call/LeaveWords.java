package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;

/** Why a lawn is left alone and when to look again, in one sentence. */
final class LeaveWords {
  private static final int WEEK = 7;

  /** Rain of two days after which grass at rest may wake, mm (our judgement). */
  private static final double WAKING_RAIN_MM = 12;

  private final Prospect prospect;
  private final Known known;

  LeaveWords(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
  }

  String sentence(CallRule rule) {
    return switch (rule) {
      case SEASON ->
          say(
              "Leave it: the mowing season begins on %s.",
              DayNames.date(prospect.mowingSeason().startAfter(prospect.today().on())));
      case DORMANT ->
          "Do not mow, and keep off: the lawn is at rest in the drought; " + afterRain() + ".";
      case HARDLY_GROWING -> "Leave it: the grass is at rest in the drought; " + afterRain() + ".";
      case VISIT -> "Leave it: nobody can come to mow within three weeks; name a day.";
      case GREEN_UP ->
          say(
              "Wait with the one low cut: frost may still harm what turns green; %s.",
              afterFrost());
      case LABEL_WAIT -> "Do not mow yet: " + labelWait() + ".";
      case FROST -> doNotMow(rule, "frost does not leave");
      case WET_SLOPE -> say("Do not mow: the slope is likely to stay wet; %s.", inAWeek());
      case SATURATED, SOFT_GROUND -> doNotMow(rule, "the ground is too wet");
      case HEAT -> doNotMow(rule, "it is too hot");
      default -> "Leave it: " + notYet() + "; " + nextLook() + ".";
    };
  }

  private String notYet() {
    double lengthMm = prospect.lengthMm(0, prospect.cutHeightMm());
    return lengthMm < prospect.rules().threshold(CallRule.LEAST_GROWTH)
        ? "nothing to cut yet"
        : "not due yet";
  }

  private String labelWait() {
    return known
        .labelWait(prospect.today().on())
        .map(
            treatment ->
                say(
                    "the label of %s asks to wait until %s",
                    treatment.product(), DayNames.date(Known.mayBeMown(treatment))))
        .orElse("the label of what was applied asks to wait");
  }

  /** What is so on each day on which it could be mown: known of today, else by most seasons. */
  private String doNotMow(CallRule rule, String cause) {
    boolean known = prospect.nextVisit(1) < 0 && !prospect.weather().unsure(rule, 0);
    return say(
        "Do not mow: %s; %s.",
        known
            ? cause + " today"
            : "in more than half of the possible seasons " + cause + " in the days ahead",
        inAWeek());
  }

  private String inAWeek() {
    return "look again about " + DayNames.date(prospect.date(WEEK));
  }

  /** After the first rain that may wake the grass, and in a week at the latest. */
  private String afterRain() {
    double[] first = new double[prospect.seasons().size()];
    for (int season = 0; season < first.length; season++) {
      DaysAhead.Season one = prospect.seasons().get(season);
      int day =
          DaysAhead.first(
              each -> each > 0 && one.waterMm(each) + one.waterMm(each - 1) >= WAKING_RAIN_MM);
      first[season] = day < 0 ? WeatherToCome.DAYS : day;
    }
    long likely = Math.round(Spread.of(first).middle());
    LocalDate look = prospect.date((int) Math.max(2, Math.min(WEEK, likely)));
    return say("look again after rain, and on %s at the latest", DayNames.date(look));
  }

  /** Once frost is past in the possible seasons, and in a week at the latest. */
  private String afterFrost() {
    int past = new GreenUp(prospect).firstDayPastFrost();
    int look = past < 0 ? WEEK : Math.max(1, Math.min(WEEK, past));
    return "look again about " + DayNames.date(prospect.date(look));
  }

  /** A look after the last safe day would be too late. */
  private static int lookBy(Due due, int likely) {
    int lastSafe = due.lastSafeDay();
    return Math.max(1, lastSafe < 0 ? likely : Math.min(likely, lastSafe));
  }

  private String nextLook() {
    Due due = new Due(prospect);
    double[] first = new double[prospect.seasons().size()];
    for (int season = 0; season < first.length; season++) {
      DaysAhead.Season one = prospect.seasons().get(season);
      int day = DaysAhead.first(candidate -> due.on(one, candidate));
      first[season] = day < 0 ? WeatherToCome.DAYS + 1 : day;
    }
    double middle = Spread.of(first).middle();
    if (middle > WeatherToCome.DAYS) {
      return say("not due within %d days", WeatherToCome.DAYS);
    }
    return "next look about " + DayNames.date(prospect.date(lookBy(due, (int) Math.round(middle))));
  }
}
