package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.records.book.BookReading;
import leafturn.records.book.ProgrammeInForce;
import leafturn.records.round.PlacedLawn;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.web.sheet.Line;
import leafturn.web.sheet.Setting;
import leafturn.web.sheet.SheetForm;
import leafturn.web.sheet.SheetForms;
import leafturn.web.sheet.SheetLines;

/**
 * What is known of a lawn for which there is no advice.
 *
 * @param slug its name in addresses
 * @param lawnName the lawn's own name
 * @param propertyName the property it lies on
 * @param property name of that property in addresses
 * @param station id of the station of its weather; empty where none was chosen
 * @param why what is missing and who gives it where, a sentence
 * @param facts grass, area, mower and the rest of its sheet, and how its programme keeps it
 */
public record LawnFacts(
    String slug,
    String lawnName,
    String propertyName,
    String property,
    String station,
    String why,
    List<Line> facts) {
  public LawnFacts {
    facts = List.copyOf(facts);
  }

  /**
   * Reads them from the book.
   *
   * @param setting of the lawn's property
   */
  static LawnFacts of(
      BookReading reading, PlacedLawn placed, LawnWithoutCall lawn, Setting setting) {
    SheetForm<?> form = SheetForms.of(Kind.LAWN);
    List<Line> facts =
        new ArrayList<>(new SheetLines(form, setting).of(Kind.LAWN.write(placed.lawn().content())));
    facts.removeIf(line -> line.label().equals("Name"));
    facts.addAll(kept(reading, placed.lawn().id(), setting));
    return new LawnFacts(
        lawn.slug(),
        lawn.lawnName(),
        lawn.propertyName(),
        placed.property().content().address(),
        placed.station() == null ? "" : placed.station().id(),
        lawn.why(),
        facts);
  }

  private static List<Line> kept(BookReading reading, String lawn, Setting setting) {
    LocalDate today = setting.today();
    ProgrammeSheet programme = ProgrammeInForce.on(today, reading.ofLawn(Kind.PROGRAMME, lawn));
    if (programme == null) {
      return List.of();
    }
    List<Line> lines = new ArrayList<>();
    Double heightMm = programme.mowing().heightMm(today.getMonth());
    String height =
        heightMm == null ? "the usual one of the grass" : setting.words().height(heightMm);
    lines.add(new Line("Cut height this month", height));
    if (programme.mownBy() != null) {
      lines.add(new Line("Mown by", programme.mownBy()));
    }
    return lines;
  }
}
