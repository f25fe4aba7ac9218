package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

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
      case SEASON -> outOfSeason();
      case DORMANT ->
          known.wilting().isPresent()
              ? say(
                  "Do not mow, and keep off: the grass wilts; %s, and mow once it stands up again.",
                  known.facts().wateringLimits().banned()
                      ? "watering is not allowed, so wait for rain"
                      : "water it where that is allowed or wait for rain")
              : "Do not mow, and keep off: the lawn is at rest in the drought; "
                  + afterRain()
                  + ".";
      case HARDLY_GROWING ->
          "Leave it: the grass is likely at rest in the drought; " + afterRain() + ".";
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

  private String outOfSeason() {
    LocalDate start = prospect.mowingSeason().startAfter(prospect.today().on());
    long days = ChronoUnit.DAYS.between(prospect.today().on(), start);
    boolean over = days <= WeatherToCome.DAYS && 2 * prospect.due().overFraction((int) days) > 1;
    return say(
        "Leave it: the mowing season begins on %s.%s",
        DayNames.date(start),
        over
            ? say(
                " Yet more than %s would likely come off by then: where it grows so early, let the season begin sooner.",
                prospect.rules().third())
            : "");
  }

  private String notYet() {
    if (!prospect.due().rooted(0)) {
      return "its new seed is not rooted yet";
    }
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
                    "the label of %s asks to wait until %s%s",
                    treatment.product(),
                    DayNames.date(Known.mayBeMown(treatment)),
                    nextVisit(Known.mayBeMown(treatment))))
        .orElse("the label of what was applied asks to wait");
  }

  /** The first day from one on, on which somebody can come, where that is a later one. */
  private String nextVisit(LocalDate from) {
    int day = (int) ChronoUnit.DAYS.between(prospect.today().on(), from);
    int visit = prospect.nextVisit(day);
    return visit <= day
        ? ""
        : say(
            "; the first day after it on which whoever mows can come is %s",
            DayNames.date(prospect.date(visit)));
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
    return "look again about " + DayNames.date(prospect.date(from() + WEEK));
  }

  /** The day that looks ahead count from: today, or the day that was chosen to mow on. */
  private int from() {
    return known.facts().visits().firstDayIsChosen() ? Math.max(0, prospect.nextVisit(0)) : 0;
  }

  /** After the first rain that may wake the grass, and in a week at the latest. */
  private String afterRain() {
    if (known.dormant().filter(rest -> rainSinceMm(rest.on()) >= WAKING_RAIN_MM).isPresent()) {
      return "rain has fallen since that was seen, so look now whether it turns green";
    }
    double[] first = new double[prospect.seasons().size()];
    for (int season = 0; season < first.length; season++) {
      DaysAhead.Season one = prospect.seasons().get(season);
      int day =
          DaysAhead.first(
              each -> each > 0 && one.waterMm(each) + one.waterMm(each - 1) >= WAKING_RAIN_MM);
      first[season] = day < 0 ? WeatherToCome.DAYS : day;
    }
    long likely = Math.round(Spread.of(first).middle());
    LocalDate look = prospect.date((int) Math.max(from() + 2, Math.min(from() + WEEK, likely)));
    return say("look again after rain, and on %s at the latest", DayNames.date(look));
  }

  private double rainSinceMm(LocalDate seen) {
    return prospect.today().past().stream()
        .filter(day -> day.day().isAfter(seen))
        .mapToDouble(Outlook.PastDay::rainMm)
        .sum();
  }

  /** Once frost is past in the possible seasons, and in a week at the latest. */
  private String afterFrost() {
    int past = new GreenUp(prospect).firstDayPastFrost();
    int latest = from() + WEEK;
    int look = past < 0 ? latest : Math.max(from() + 1, Math.min(latest, past));
    return "look again about " + DayNames.date(prospect.date(look));
  }

  /** A look after the last safe day would be too late. */
  private int lookBy(Due due, int likely) {
    int lastSafe = due.lastSafeDay();
    return Math.max(from() + 1, lastSafe < 0 ? likely : Math.min(likely, lastSafe));
  }

  private String nextLook() {
    Due due = prospect.due();
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
