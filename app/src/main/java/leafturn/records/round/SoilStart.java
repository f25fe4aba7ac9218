package leafturn.records.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import leafturn.records.Choice;
import leafturn.records.Dates;
import leafturn.records.SoilFields;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Analyte;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.SoilTestSheet;

/**
 * The soil a lawn's replay starts from: as its description has it, and where that leaves organic
 * matter, phosphorus or potassium empty, as a soil test found them.
 *
 * @param soil the soil with the figures of the test
 * @param notes what was taken from tests and what was not, with why, one sentence each
 * @param words where soil phosphorus and potassium start, for instance "from the soil test of 3
 *     April 2015"
 */
record SoilStart(SoilFields soil, List<String> notes, String words) {
  private static final List<Analyte> TAKEN =
      List.of(Analyte.PHOSPHORUS, Analyte.POTASSIUM, Analyte.ORGANIC_MATTER);

  SoilStart {
    notes = List.copyOf(notes);
  }

  /** The same from what a book holds of a lawn. */
  static SoilStart of(
      BookReading reading, Sheet<LawnSheet> lawn, LocalDate recordBegins, LocalDate on) {
    List<SoilTestSheet> tests =
        reading.ofLawn(Kind.SOIL_TEST, lawn.id()).stream().map(Sheet::content).toList();
    return of(lawn.content(), tests, recordBegins, on);
  }

  /**
   * The start with the latest test up to the day on which the weather record begins, or where there
   * is none, with the latest one up to the day of the advice.
   *
   * @param tests soil tests of the lawn, in any order
   */
  static SoilStart of(
      LawnSheet lawn, List<SoilTestSheet> tests, LocalDate recordBegins, LocalDate on) {
    List<SoilTestSheet> known =
        tests.stream().filter(SoilStart::tells).filter(test -> !test.day().isAfter(on)).toList();
    Optional<SoilTestSheet> before = latest(known, test -> !test.day().isAfter(recordBegins));
    Optional<SoilTestSheet> latest = latest(known, test -> true);
    SoilTestSheet chosen = before.or(() -> latest).orElse(null);
    if (chosen == null) {
      return new SoilStart(lawn.soil(), List.of(), words(lawn, List.of(), ""));
    }
    SoilTestFigures figures = new SoilTestFigures(lawn, chosen);
    SoilFields soil = figures.soil();
    List<String> notes = new ArrayList<>();
    if (!figures.taken().isEmpty()) {
      notes.add(taken(figures, chosen));
      if (before.isEmpty()) {
        notes.add(
            "No soil test is older than the weather record, which begins on %s: the model starts there from what this later one found."
                .formatted(Dates.words(recordBegins)));
      }
    }
    figures.notTaken().forEach(why -> notes.add("Of the soil test of " + date(chosen) + why));
    latest
        .filter(test -> test.day().isAfter(chosen.day()) && !figures.taken().isEmpty())
        .ifPresent(
            test ->
                notes.add(
                    "The soil test of %s is there to compare with: the model goes on from the earlier one."
                        .formatted(date(test))));
    return new SoilStart(
        soil, notes, words(lawn, figures.taken(), from(chosen, before.isEmpty(), recordBegins)));
  }

  /** A later test is no value of its own day: the model has gone on from the record's first day. */
  private static String from(SoilTestSheet test, boolean later, LocalDate recordBegins) {
    return later
        ? "reckoned from %s on as if the soil test of %s had been taken then"
            .formatted(Dates.words(recordBegins), date(test))
        : "from the soil test of " + date(test);
  }

  private static boolean tells(SoilTestSheet test) {
    return TAKEN.stream().anyMatch(analyte -> test.of(analyte).isPresent());
  }

  private static Optional<SoilTestSheet> latest(
      List<SoilTestSheet> tests, Predicate<SoilTestSheet> which) {
    return tests.stream().filter(which).max(Comparator.comparing(SoilTestSheet::day));
  }

  private static String date(SoilTestSheet test) {
    return Dates.words(test.day());
  }

  private static String taken(SoilTestFigures figures, SoilTestSheet test) {
    List<String> names = figures.taken().stream().map(Choice::word).toList();
    String last = names.get(names.size() - 1);
    String all =
        names.size() == 1
            ? last
            : String.join(", ", names.subList(0, names.size() - 1)) + " and " + last;
    String sentence =
        "%s%s start%s from the soil test of %s"
            .formatted(
                all.substring(0, 1).toUpperCase(Locale.ROOT),
                all.substring(1),
                names.size() == 1 ? "s" : "",
                date(test));
    return figures.extractantAssumed()
        ? sentence + ", which does not tell its extractant: it is read as Mehlich-3."
        : sentence + ".";
  }

  private static String words(LawnSheet lawn, List<Analyte> taken, String fromTest) {
    String phosphorus = origin(lawn, Analyte.PHOSPHORUS, taken, fromTest);
    String potassium = origin(lawn, Analyte.POTASSIUM, taken, fromTest);
    return phosphorus.equals(potassium) ? phosphorus : "P " + phosphorus + ", K " + potassium;
  }

  private static String origin(
      LawnSheet lawn, Analyte analyte, List<Analyte> taken, String fromTest) {
    if (taken.contains(analyte)) {
      return fromTest;
    }
    return SoilTestFigures.described(lawn, analyte)
        ? "from the lawn's description"
        : "from an assumed start";
  }
}
