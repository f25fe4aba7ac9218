package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.HeapSheet;
import leafturn.records.sheet.IntakeSheet;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.PhotographSheet;
import leafturn.records.sheet.SoilTestSheet;
import leafturn.records.sheet.ThatchSheet;
import leafturn.records.sheet.VisitSheet;
import org.jspecify.annotations.Nullable;

/**
 * Checks that what a sheet tells as done or seen was not still to come. Programmes, forecasts and
 * trials may tell of days ahead.
 */
final class DayCheck {
  private final LocalDate today;
  private final String place;
  private final List<Fault> faults = new ArrayList<>();

  private DayCheck(LocalDate today, String place) {
    this.today = today;
    this.place = place;
  }

  /**
   * Checks the days of what is about to be written.
   *
   * @param today the day it is where the sheet belongs
   * @throws InputException with every fault
   */
  static void check(Content content, LocalDate today) {
    boolean ofLawn = content.lawn() != null || content instanceof LawnSheet;
    DayCheck check = new DayCheck(today, ofLawn ? "lawn" : "property");
    check.days(content);
    if (!check.faults.isEmpty()) {
      throw InputException.of(check.faults);
    }
  }

  private void days(Content content) {
    if (content instanceof VisitSheet
        || content instanceof SoilTestSheet
        || content instanceof ThatchSheet
        || content instanceof PhotographSheet) {
      past("day", content.day());
    } else if (content instanceof IntakeSheet intake) {
      past("day", intake.day());
      past("mowing.lastSharpened", intake.mowing().lastSharpened());
      for (int i = 0; i < intake.productsUsed().size(); i++) {
        past("productsUsed[" + i + "].lastUsed", intake.productsUsed().get(i).lastUsed());
      }
    } else if (content instanceof HeapSheet heap) {
      past("started", heap.started());
      for (int i = 0; i < heap.heat().size(); i++) {
        past("heat[" + i + "].day", heap.heat().get(i).day());
      }
    } else if (content instanceof LawnSheet lawn && lawn.mower() != null) {
      past("mower.lastSharpened", lawn.mower().lastSharpened());
    }
  }

  private void past(String field, @Nullable LocalDate day) {
    if (day != null && day.isAfter(today)) {
      String sentence = LogCheck.notYet(day, today, place);
      faults.add(new Fault(field, sentence, sentence));
    }
  }
}
