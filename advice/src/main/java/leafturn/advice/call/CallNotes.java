package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.ParameterTable;
import leafturn.model.grass.Species;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.LogKeeper.Correction;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;

/** What a call filled in, corrected, assumed or does not know. */
final class CallNotes {
  private static final int FEW_SEASONS = 10;
  private static final int CORRECTIONS_SHOWN = 3;

  /** So far below the cut height a measured height contradicts it, mm; our judgement. */
  private static final double LOWER_MM = 5;

  /** A smaller likelihood of seed heads is not worth telling. */
  private static final double LEAST_LIKELY = 0.05;

  private static final String TOO_LOW =
      "Unless it is fine turf kept for that, raise the cut by steps: so low, a lawn thins, dries out and lets weeds in (common practice, no source).";
  private static final String TOO_HIGH =
      "Lower it by steps, never more than %s at once: so high, a lawn lies over and shades itself (common practice, no source).";

  private final Reader reader;
  private final List<String> notes = new ArrayList<>();

  CallNotes(Reader reader) {
    this.reader = reader;
  }

  List<String> notes() {
    return List.copyOf(notes);
  }

  /** Entries of the log that the replay does not use. */
  void log(List<LogEntry> log, WeatherSeries weather, LocalDate on) {
    long later = log.stream().filter(entry -> entry.day().isAfter(on)).count();
    if (later > 0) {
      notes.add(say("%s after %s left out.", entries(later), on));
    }
    long earlier = log.stream().filter(entry -> entry.day().isBefore(weather.firstDay())).count();
    if (earlier > 0) {
      notes.add(
          say(
              "%s before the weather record begins on %s left out.",
              entries(earlier), weather.firstDay()));
    }
    if (log.size() == later + earlier) {
      notes.add(
          "The log holds no entry to replay: the lawn was kept by its programme up to today.");
    }
  }

  /** That replayed feed takes the place of the programme's, where both have some. */
  void feed(Lawn lawn, List<LogEntry> replayed) {
    boolean logged = replayed.stream().anyMatch(LogEntry.Fed.class::isInstance);
    if (logged && !lawn.programme().feedings().isEmpty()) {
      replayed.stream()
          .map(LogEntry::day)
          .min(LocalDate::compareTo)
          .map(
              first ->
                  say(
                      "Feed is in the log, so the log's alone counts from its first entry on, %s, and none of the programme's: log whatever is given.",
                      DayNames.date(first) + " " + first.getYear()))
          .ifPresent(notes::add);
    }
  }

  /** Stretches without a logged mowing, of the entries that are replayed. */
  void gaps(Lawn lawn, List<LogEntry> replayed, LocalDate on) {
    notes.addAll(new LogGaps(new MowingSeason(lawn.programme().mowing()), replayed, on).notes());
  }

  private static String entries(long count) {
    return count == 1 ? "1 log entry" : count + " log entries";
  }

  /**
   * Heights the model was set to.
   *
   * @param lawn whose cut heights say below what the model knows no grass
   */
  void corrections(List<Correction> corrections, Lawn lawn) {
    int first = Math.max(0, corrections.size() - CORRECTIONS_SHOWN);
    if (first > 0) {
      notes.add(say("The model was set to %d earlier measured heights as well.", first));
    }
    for (Correction correction : corrections.subList(first, corrections.size())) {
      boolean atVisit = correction.measured().atVisit();
      String height = reader.height(correction.measuredMm());
      double cutMm = lawn.programmeOn(correction.day()).mowing().heights().on(correction.day());
      if (correction.measuredMm() < cutMm - LOWER_MM) {
        notes.add(lower(correction, cutMm));
        continue;
      }
      notes.add(
          say(
              "On %s %s where the model had %s; the model was set to %s, which %s %s.",
              DayNames.date(correction.day()),
              atVisit ? height + " was measured at the visit" : "the log says " + height,
              reader.height(correction.modelMm()),
              atVisit ? "that" : "the log",
              correction.nitrogenGPerM2() < 0 ? "took" : "added",
              reader.onArea(Math.abs(correction.nitrogenGPerM2()), "nitrogen")));
    }
  }

  private String lower(Correction correction, double cutMm) {
    return say(
        "On %s %s was measured, below the cut height of %s. The model knows no grass that low and takes the lawn as just mown, so its days come too early: set the cut height that is mown to.",
        DayNames.date(correction.day()),
        reader.height(correction.measuredMm()),
        reader.height(cutMm));
  }

  /** How the lawn's own growth was reckoned with. */
  void growth(OwnGrowth growth) {
    if (growth.measured() > 0) {
      notes.add(
          say(
              "By %s this lawn is reckoned to grow %.2f times as fast as its description says (eight in ten: %.2f to %.2f).",
              growth.measured() == 1
                  ? "one measured height"
                  : growth.measured() + " measured heights",
              growth.factor().middle(),
              growth.factor().low(),
              growth.factor().high()));
    }
  }

  /** How today and the days to come are known. */
  void weather(Lawn lawn, LawnToday today, SiteClimate climate, WeatherToCome toCome) {
    notes.add(today(today, climate));
    int count = toCome.seasons().size();
    if (toCome.ownYear()) {
      notes.add(
          "The record holds no other year: the days that really followed had to stand in for possible seasons, so this advice knows what it should not.");
    } else if (count < FEW_SEASONS) {
      notes.add(
          say(
              "Only %d possible season%s: the ranges are rough, and rarer weather than that is not in them.",
              count, count == 1 ? "" : "s"));
    }
    notes.addAll(toCome.notes());
    if (Replay.borrowsItsFirstYear(lawn, climate.weather(), today.on())) {
      notes.add(
          "The record's first year had not passed by today, so the spin-up years borrow its later days.");
    }
  }

  private static String today(LawnToday today, SiteClimate climate) {
    if (today.weatherKnown()) {
      return "Today is taken from the weather record, as the day's own forecast or measurement; its growth is in the height.";
    }
    return climate.measuredDays() < climate.weather().days()
        ? "Nobody measured yesterday's weather: heights rest on days that stand in, and today's weather is that of the possible seasons."
        : "The weather record ends yesterday: heights are those of last evening, and today's weather is that of the possible seasons. A cut of today comes before today's growth, one of a later day after that day's.";
  }

  /** Outcomes at the end of the run. */
  void beyondTheRun() {
    notes.add(
        say(
            "Where a range of days ends at %d or %d, it may be later: the run stops there.",
            WeatherToCome.DAYS, WeatherToCome.LONGEST_DAYS));
  }

  /** A cut height outside the usual range of its grass. */
  void cutHeight(Lawn lawn, double cutHeightMm, String third) {
    Species grass = lawn.ground().grass();
    ParameterTable.find("Href", grass)
        .filter(usual -> !usual.plausible(cutHeightMm))
        .ifPresent(
            usual ->
                notes.add(
                    say(
                        "Cut to %s, %s is kept %s the %s to %s usual for lawns of it (%s). %s",
                        reader.height(cutHeightMm),
                        grass.commonName(),
                        cutHeightMm < usual.low() ? "below" : "above",
                        reader.height(usual.low()),
                        reader.height(usual.high()),
                        usual.source(),
                        cutHeightMm < usual.low() ? TOO_LOW : say(TOO_HIGH, third))));
  }

  /** What the lawn's description lacks. */
  void description(Lawn lawn) {
    Lawn.Mower mower = lawn.ground().mower();
    if (lawn.ground().areaM2() == null) {
      notes.add("Kilograms, litres, bags and minutes need the lawn's area (areaM2).");
    } else if (mower == null || mower.deckWidthMm() == null || mower.speedKmPerH() == null) {
      notes.add("Minutes need the mower's deckWidthMm and speedKmPerH, bags its bagLitres.");
    }
    if (!lawn.ground().grass().runAgainstStudies()) {
      notes.add(
          say(
              "The model of %s rests on literature ranges; it was run against no field study.",
              lawn.ground().grass().commonName()));
    }
  }

  /** How likely annual bluegrass is in seed, where that is no reason of the advice. */
  void seedHeads(Prospect prospect) {
    SeedHeads heads = prospect.known().seedHeads();
    boolean matters =
        heads.windowFraction() >= LEAST_LIKELY
            && heads.basis() != SeedHeads.Basis.NONE_GROWS
            && prospect.grass() != Species.ANNUAL_BLUEGRASS
            && !prospect.known().inSeed();
    if (!matters) {
      return;
    }
    LocalDate looked = heads.lookedOn();
    notes.add(
        looked == null
            ? say(
                "Annual bluegrass, where it grows, stands in seed with a likelihood of %s by the %s. That decides from %s on, and where it is unwanted; a look at the lawn overrules it.",
                Words.percent(heads.likelihood()),
                heads.likelyBy(),
                Words.percent(prospect.rules().threshold(CallRule.SEED_HEADS)))
            : say(
                "By the time of the year annual bluegrass would stand in seed with a likelihood of %s; none was seen on %s, and that counts for more.",
                Words.percent(heads.windowFraction()), DayNames.date(looked)));
  }

  /** That figures leave out the tree leaves on the turf, where some lie there. */
  void fallenLeaves(Known known) {
    if (known.leafCoverFraction() > 0) {
      notes.add(
          "Bags, litres, minutes, carbon and days are those of the grass alone: fallen leaves add to what is collected (or to what lies on the turf).");
    }
  }

  /** What no daily model of weather and grass can tell. */
  void unknown() {
    notes.add(
        "Not known unless somebody tells: seed heads and stalks, rest in drought, disease, weeds, treatments, fallen leaves. What was seen counts for more than what was reckoned.");
    notes.add(
        "The limits for clumps, wet leaves and soft ground are our judgement; no published figures were found. Set your own where you know better.");
  }
}
