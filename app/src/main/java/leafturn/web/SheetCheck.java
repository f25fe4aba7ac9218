package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.LawnFile;
import leafturn.records.SourceText;
import leafturn.records.book.BookReading;
import leafturn.records.book.ProgrammeInForce;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.IntakeSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnDocument;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import org.jspecify.annotations.Nullable;

/** Checks that sheets that are right one by one make a lawn the model can run. */
final class SheetCheck {
  private SheetCheck() {}

  /**
   * Checks what is about to be written against what it belongs to.
   *
   * @param id id of its sheet
   * @throws leafturn.records.InputException with every fault
   */
  static void together(BookReading reading, String id, Content content) {
    List<Fault> faults = new ArrayList<>();
    keep(faults, () -> PlaceCheck.check(reading, id, content));
    if (content instanceof Property property) {
      keep(faults, () -> NameCheck.check(reading, id, property));
    }
    if (content instanceof ProgrammeSheet programme && begins(reading, id, programme)) {
      keep(faults, () -> beginsAlone(reading, id, programme));
    }
    keep(faults, () -> withOthers(reading, id, content));
    if (!faults.isEmpty()) {
      throw InputException.of(faults);
    }
  }

  private static void keep(List<Fault> faults, Runnable check) {
    try {
      check.run();
    } catch (InputException found) {
      faults.addAll(found.faultsByField());
    }
  }

  private static void withOthers(BookReading reading, String id, Content content) {
    if (content instanceof LawnSheet lawn) {
      List<Sheet<ProgrammeSheet>> programmes = reading.ofLawn(Kind.PROGRAMME, id);
      together(reading, lawn, null);
      programmes.forEach(programme -> together(reading, lawn, programme.content()));
    } else if (content instanceof ProgrammeSheet programme) {
      reading
          .find(Kind.LAWN, programme.lawn())
          .ifPresent(lawn -> together(reading, lawn.content(), programme));
    } else if (content instanceof IntakeSheet intake && saysNothing(intake)) {
      String sentence = "nothing but the day is filled in; answer at least one question.";
      throw InputException.of(List.of(fault("usedBy", sentence)));
    } else if (content instanceof Property property
        && property.station() != null
        && station(reading, property) == null) {
      String sentence = "there is no such station in this book; choose one of those listed.";
      throw InputException.of(List.of(fault("station", sentence)));
    }
  }

  /** False for a correction that leaves the day as it is: what the book has already stays. */
  private static boolean begins(BookReading reading, String id, ProgrammeSheet programme) {
    return reading
        .find(Kind.PROGRAMME, id)
        .filter(before -> before.content().from().equals(programme.from()))
        .isEmpty();
  }

  /**
   * Checks that no other programme of its lawn begins on the same day, and that it does not come
   * before the first one, which holds for all days before it.
   *
   * @throws InputException when it does
   */
  static void beginsAlone(BookReading reading, String id, ProgrammeSheet programme) {
    List<Sheet<ProgrammeSheet>> others =
        reading.ofLawn(Kind.PROGRAMME, programme.lawn()).stream()
            .filter(sheet -> !sheet.id().equals(id))
            .toList();
    String sentence = ProgrammeInForce.taken(programme.from(), others);
    if (sentence.isEmpty()) {
      Optional<LocalDate> before =
          reading.find(Kind.PROGRAMME, id).map(sheet -> sheet.content().from());
      sentence = ProgrammeInForce.beforeFirst(before.orElse(LocalDate.MAX), programme, others);
    }
    if (!sentence.isEmpty()) {
      throw InputException.of(List.of(fault("from", sentence)));
    }
  }

  private static Fault fault(String field, String sentence) {
    return new Fault(field, sentence, field + ": " + sentence);
  }

  private static boolean saysNothing(IntakeSheet intake) {
    String bare =
        "{\"property\": \"%s\", \"day\": \"%s\"}".formatted(intake.property(), intake.day());
    return Kind.INTAKE.read(new SourceText("intake", bare)).equals(intake);
  }

  private static void together(
      BookReading reading, LawnSheet lawn, @Nullable ProgrammeSheet programme) {
    reading
        .find(Kind.PROPERTY, lawn.property())
        .map(Sheet::content)
        .ifPresent(
            property ->
                LawnFile.read(
                    LawnDocument.compose(property, station(reading, property), lawn, programme)));
  }

  private static @Nullable WeatherStation station(BookReading reading, Property property) {
    String station = property.station();
    return station == null
        ? null
        : reading.find(Kind.STATION, station).map(Sheet::content).orElse(null);
  }
}
