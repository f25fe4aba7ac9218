package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import leafturn.advice.call.LawnOnRound;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.round.PlacedLawn;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Nearness;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import leafturn.reports.DayWords;
import leafturn.reports.UnitWords;
import leafturn.web.sheet.LawnForm;

/** What makes all advice of a lawn or a round doubtful, in sentences that stand above it. */
final class LawnWarnings {
  private static final String CHECK =
      " The clock of the machine that holds this book may be wrong: check its date before you"
          + " follow what stands here.";

  /** So many properties are named; of more the number is told. */
  private static final int MOST_TOLD = 3;

  private static final String ANOTHER = " Choose another record on the property’s page.";

  private LawnWarnings() {}

  /** The sentences above a lawn's advice. */
  static List<String> of(BookReading reading, PlacedLawn placed, LawnOnRound lawn) {
    List<String> sentences = new ArrayList<>();
    LocalDate today = lawn.call().on();
    Stream.of(Kind.LOG, Kind.ADVICE)
        .flatMap(kind -> reading.ofLawnSince(kind, placed.lawn().id(), today.plusDays(1)).stream())
        .map(sheet -> sheet.content().day())
        .max(LocalDate::compareTo)
        .ifPresent(
            last ->
                sentences.add(
                    "The book has entries or advice of this lawn up to %s, but here it is %s."
                            .formatted(DayWords.dayAndYear(last), DayWords.dayAndYear(today))
                        + CHECK));
    if (placed.station() != null) {
      WeatherStation record = placed.station().content();
      placed
          .property()
          .content()
          .oppositeSeasons(record)
          .map(LawnWarnings::sentence)
          .ifPresent(sentences::add);
      far(reading, placed, record).map(LawnWarnings::sentence).ifPresent(sentences::add);
    }
    LawnForm.twoAreas(placed.lawn().content(), new UnitWords(lawn.call().units()))
        .ifPresent(sentences::add);
    return sentences;
  }

  private static String sentence(String told) {
    return Character.toUpperCase(told.charAt(0)) + told.substring(1) + ANOTHER;
  }

  /** That the weather of a lawn was measured too far away to be its own. */
  private static Optional<String> far(
      BookReading reading, PlacedLawn placed, WeatherStation record) {
    Property here = placed.property().content();
    return Nearness.far(here, record)
        .or(
            () ->
                record.latitudeDeg() != null || record.standIn()
                    ? Optional.empty()
                    : reading.all(Kind.PROPERTY).stream()
                        .map(Sheet::content)
                        .filter(other -> Objects.equals(other.station(), here.station()))
                        .flatMap(other -> Nearness.apart(here, record, other).stream())
                        .findFirst());
  }

  /**
   * The sentences above a round.
   *
   * @param today the day of the round
   * @param lawns of the round
   */
  static List<String> ofRound(BookReading reading, LocalDate today, List<PlacedLawn> lawns) {
    return Stream.concat(ahead(reading, today, lawns).stream(), ofSeasons(lawns).stream()).toList();
  }

  /** Of the register alone, so that it costs a round nothing. */
  private static List<String> ofSeasons(List<PlacedLawn> lawns) {
    Map<String, String> ofProperties = new LinkedHashMap<>();
    for (PlacedLawn lawn : lawns) {
      if (lawn.station() != null) {
        Property property = lawn.property().content();
        property
            .oppositeSeasons(lawn.station().content())
            .ifPresent(
                sentence ->
                    ofProperties.put(lawn.property().id(), property.name() + ": " + sentence));
      }
    }
    List<String> told = new ArrayList<>(ofProperties.values().stream().limit(MOST_TOLD).toList());
    int more = ofProperties.size() - told.size();
    if (more > 0) {
      told.add(
          more == 1
              ? "So it is with one more property."
              : "So it is with %d more properties.".formatted(more));
    }
    return told.isEmpty() ? List.of() : List.of(String.join(" ", told) + ANOTHER);
  }

  private static Optional<String> ahead(
      BookReading reading, LocalDate today, List<PlacedLawn> lawns) {
    // Where the day begins earlier than that of the round it may be tomorrow already.
    LocalDate tomorrow = today.plusDays(1);
    Map<String, LocalDate> last = new TreeMap<>(reading.latestDays(Kind.LOG, tomorrow));
    reading
        .latestDays(Kind.ADVICE, tomorrow)
        .forEach(
            (lawn, day) -> last.merge(lawn, day, (one, other) -> one.isAfter(other) ? one : other));
    List<PlacedLawn> ahead =
        lawns.stream().filter(lawn -> last.containsKey(lawn.lawn().id())).toList();
    if (ahead.isEmpty()) {
      return Optional.empty();
    }
    PlacedLawn first = ahead.get(0);
    String others =
        ahead.size() == 1
            ? ""
            : ahead.size() == 2
                ? " and of one more lawn"
                : " and of %d more lawns".formatted(ahead.size() - 1);
    return Optional.of(
        "The book has entries or advice of %s, %s%s that lie after today: up to %s, but here it is %s."
                .formatted(
                    first.lawn().content().name(),
                    first.property().content().name(),
                    others,
                    DayWords.dayAndYear(
                        ahead.stream()
                            .map(lawn -> last.get(lawn.lawn().id()))
                            .max(LocalDate::compareTo)
                            .orElseThrow()),
                    DayWords.dayAndYear(today))
            + CHECK);
  }
}
