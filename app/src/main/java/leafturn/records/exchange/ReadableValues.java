package leafturn.records.exchange;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import leafturn.records.Faults;
import leafturn.records.table.Table;
import leafturn.trials.analysis.data.Spelling;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.CleanReading;
import leafturn.trials.observation.OutcomeReadings;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.ReadingValue;
import leafturn.trials.observation.UsualRange;
import org.jspecify.annotations.Nullable;

/** Whether the readings of a table can be read; a wrong unit of many rows is told once. */
final class ReadableValues {
  private final TableLook look;
  private final TrialGround ground;
  private final Map<List<String>, Set<String>> spellings = new HashMap<>();

  ReadableValues(TableLook look, TrialGround ground) {
    this.look = look;
    this.ground = ground;
  }

  /** Takes note of how a reading of the book writes its names. */
  void know(Reading reading) {
    names(reading).forEach((what, name) -> spelled(what, name).add(name));
  }

  private Set<String> spelled(String what, String name) {
    return spellings.computeIfAbsent(
        List.of(what, Spelling.plain(name)), key -> new LinkedHashSet<>());
  }

  /** Whether a value can be read in the unit of its outcome; else that is a fault. */
  boolean isReadable(Table.Row row, Column of, Outcome outcome, Reading reading) {
    try {
      var clean = OutcomeReadings.clean(outcome, reading, null);
      String other = otherSample(outcome, reading);
      if (other != null || hasNoLogarithm(outcome, clean)) {
        look.faults.add(row, of, other != null ? other : noLogarithm(outcome, reading));
        return false;
      }
      if (!clean.belowDetection()) {
        List<String> doubts = UsualRange.faults(outcome, clean.value());
        if (outcome.kind() == Outcome.Kind.RATING && !doubts.isEmpty()) {
          look.faults.add(row, of, doubts.get(0) + ".");
          return false;
        }
        doubts.forEach(doubt -> look.remarks.add(row, of, doubt + "."));
      }
      String below = ReadingValue.unwrittenLimit(reading);
      if (below != null) {
        look.remarks.add(row, of, below + ".");
      }
      return hasKnownNames(row, reading);
    } catch (OutcomeReadings.UnitFault unit) {
      look.faults.addTogether(
          row, ReadingColumns.atFault(look.reading, of, unit), unit.getMessage() + ".");
      return false;
    } catch (IllegalArgumentException e) {
      look.faults.add(row, ReadingColumns.atFault(look.reading, of, e), e.getMessage() + ".");
      return false;
    }
  }

  /** That a bag holds another kind of sample than what was measured, in a sentence. */
  private @Nullable String otherSample(Outcome outcome, Reading reading) {
    String code = reading.sample();
    TrialGround.Bag bag = code == null ? null : ground.bag(code);
    boolean sampled = outcome.kind() == Outcome.Kind.SOIL || outcome.kind() == Outcome.Kind.TISSUE;
    return bag == null || !sampled || bag.holds() == outcome.kind()
        ? null
        : "%s is the code of a bag of %s, but %s is measured in %s; put one right."
            .formatted(code, material(bag.holds()), outcome.name(), material(outcome.kind()));
  }

  private static String material(Outcome.Kind kind) {
    return kind == Outcome.Kind.SOIL ? "soil" : "leaf";
  }

  private static boolean hasNoLogarithm(Outcome outcome, CleanReading clean) {
    return outcome.scale() == Outcome.Scale.LOG && !clean.belowDetection() && clean.value() <= 0;
  }

  private static String noLogarithm(Outcome outcome, Reading reading) {
    return "%s has no logarithm, on which the plan compares %s; write what lies below the detection limit with its limit, as <5, or leave it out."
        .formatted(reading.value(), outcome.name());
  }

  private static Map<String, String> names(Reading reading) {
    Map<String, String> names = new LinkedHashMap<>();
    put(names, "rater", reading.rater());
    put(names, "laboratory", reading.laboratory());
    put(names, "method", reading.method());
    put(names, "batch", reading.batch());
    return names;
  }

  private static void put(Map<String, String> names, String what, @Nullable String name) {
    if (name != null) {
      names.put(what, name);
    }
  }

  /** Whether no name is written otherwise than before. */
  private boolean hasKnownNames(Table.Row row, Reading reading) {
    int before = look.faults.count();
    names(reading)
        .forEach(
            (what, name) -> {
              Set<String> known = spelled(what, name);
              if (!known.isEmpty() && !known.contains(name)) {
                String first = known.iterator().next();
                look.faults.add(
                    row,
                    "the %s %s is %s before, which differ %s; write them alike."
                        .formatted(
                            what,
                            Faults.quoted(name),
                            Faults.quoted(first),
                            Spelling.difference(first, name)));
              } else {
                known.add(name);
              }
            });
    return look.faults.count() == before;
  }

  /** Whether the cells of a row are free of control characters; else those are faults. */
  boolean isText(Table.Row row) {
    int before = look.faults.count();
    row.cells()
        .forEach(
            cell -> {
              OptionalInt control = Spelling.control(cell);
              if (control.isPresent()) {
                look.faults.add(
                    row,
                    "the cell %s holds the control character U+%04X; remove it."
                        .formatted(Faults.quoted(cell), control.getAsInt()));
              }
            });
    return look.faults.count() == before;
  }
}
