package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.List;
import java.util.stream.Collectors;
import leafturn.model.weather.hourly.GrassDay;
import leafturn.model.weather.hourly.GrassDay.Span;
import leafturn.model.weather.hourly.GrassDay.WetFrom;

/** Puts the hours of today and tomorrow into words. All begin small, for use within a sentence. */
final class HourWords {
  private final MowingHours hours;
  private final Reader reader;
  private final Told told;

  /**
   * Which hours are told.
   *
   * @param leastFraction share of the possible weathers in which an hour must be fit, 0-1
   * @param leastHours hours in a row that must be fit: in shorter ones nobody mows by a forecast
   */
  record Told(double leastFraction, double leastHours) {
    static Told by(CallRules rules) {
      return new Told(
          rules.threshold(CallRule.DRY_HOURS_SHARE), rules.threshold(CallRule.DRY_HOURS));
    }
  }

  HourWords(MowingHours hours, Reader reader, Told told) {
    this.hours = hours;
    this.reader = reader;
    this.told = told;
  }

  private List<Span> spans(int day) {
    return hours.fit(day, told.leastFraction()).stream()
        .filter(span -> span.hours() >= told.leastHours())
        .toList();
  }

  private String none(int day) {
    return hours.fit(day, told.leastFraction()).isEmpty()
        ? "no dry hours likely"
        : say("no %s dry hours in a row likely", Words.figure(told.leastHours()));
  }

  /** The day in a few words: "wet with dew until about 9, then dry until about 18". */
  String of(int day) {
    List<Span> spans = spans(day);
    String unfit = unfit(day);
    if (spans.isEmpty()) {
      return unfit;
    }
    if (unfit.isEmpty()) {
      return dry(day);
    }
    if (spans.size() > 1) {
      return unfit + ", " + dry(day);
    }
    String dry = unfit + ", then dry";
    return untilDark(day, spans.get(0))
        ? dry
        : dry + " until about " + reader.clock(spans.get(0).to());
  }

  /** "dry from about 11 to 18", "dry all day", "no dry hours likely". */
  String dry(int day) {
    List<Span> spans = spans(day);
    if (spans.isEmpty()) {
      return none(day);
    }
    if (spans.size() == 1 && allDay(day, spans.get(0))) {
      return hours.firstHour(day) == 0 ? "dry all day" : "dry for the rest of the day";
    }
    return spans.stream()
        .map(span -> say("from about %s to %s", reader.clock(span.from()), reader.clock(span.to())))
        .collect(Collectors.joining(" and ", "dry ", ""));
  }

  private boolean allDay(int day, Span span) {
    return firstOfDay(day, span) && untilDark(day, span);
  }

  private boolean untilDark(int day, Span span) {
    return span.to() == 24 || !hours.day(day).light(span.to());
  }

  /** True when no hour of the day's light to come lies before a span. */
  private boolean firstOfDay(int day, Span span) {
    return span.from() <= hours.firstHour(day) || !hours.day(day).light(span.from() - 1);
  }

  /**
   * Why and until when the grass is not fit before its first fit hour: "wet with dew until about
   * 9", "wet with rain until about 14", "frozen until about 10", "no dry hours likely"; empty when
   * it is fit from daybreak on.
   */
  String unfit(int day) {
    GrassDay grass = hours.day(day);
    List<Span> spans = spans(day);
    int frostGone = grass.frostGoneAt();
    if (spans.isEmpty()) {
      return frostGone == 24 ? "frozen all day" : none(day);
    }
    int from = spans.get(0).from();
    if (firstOfDay(day, spans.get(0))) {
      return "";
    }
    String state = frostGone >= from ? "frozen" : "wet with " + with(grass.mostlyWetFrom(from - 1));
    return say("%s until about %s", state, reader.clock(from));
  }

  private static String with(WetFrom from) {
    return switch (from) {
      case DEW -> "dew";
      case RAIN -> "rain";
      case WATERING -> "sprinkler water";
    };
  }

  /** "ground frost until about 10", "ground frost all day"; empty without. */
  String frost(int day) {
    int gone = hours.day(day).frostGoneAt();
    if (gone == 0) {
      return "";
    }
    return gone == 24
        ? "ground frost all day"
        : say("ground frost until about %s", reader.clock(gone));
  }
}
