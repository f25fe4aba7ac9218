package leafturn.records;

import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;
import org.jspecify.annotations.Nullable;

/** The programme of a lawn with what somebody wants otherwise. */
final class ChangedProgramme {
  private ChangedProgramme() {}

  /**
   * @param fields what is otherwise; what is not named stays
   * @param fed true when the feed plan is named, if only as empty
   */
  static Programme of(Programme present, ProgrammeFields fields, boolean fed) {
    ProgrammeFields.Mowing mowing = fields.mowing();
    Programme.Mowing own = present.mowing();
    Programme.Mowing changed =
        new Programme.Mowing(
            heights(own.heights(), mowing),
            everyDays(own, mowing.trigger()),
            or(mowing.from(), own.from()),
            or(mowing.to(), own.to()),
            practice(own.clippings(), mowing.clippings()));
    Double watered = fields.irrigation().shareOfDemand();
    return new Programme(
        changed,
        fed ? feedings(fields) : present.feedings(),
        watered == null ? present.irrigationShareOfDemand() : watered);
  }

  private static List<Programme.Feeding> feedings(ProgrammeFields fields) {
    return fields.feeding().stream()
        .filter(feeding -> feeding.day() != null)
        .map(ProgrammeSection::feeding)
        .toList();
  }

  /** A usual height of its own is that of all months, unless months are named too. */
  private static CutHeights heights(CutHeights own, ProgrammeFields.Mowing mowing) {
    Double usual = mowing.heightMm();
    Map<Month, Double> months = new EnumMap<>(Month.class);
    if (usual == null && mowing.heightMmByMonth().isEmpty()) {
      return own;
    }
    months.putAll(ProgrammeSection.heights(mowing));
    return new CutHeights(usual == null ? own.usualMm() : usual, months);
  }

  private static int everyDays(Programme.Mowing own, ProgrammeFields.@Nullable Trigger trigger) {
    Integer everyDays = ProgrammeSection.everyDays(trigger);
    return everyDays == null ? own.everyDays() : everyDays;
  }

  private static CalendarDay or(@Nullable CalendarDay day, CalendarDay own) {
    return day == null ? own : day;
  }

  private static ReturnPractice practice(ReturnPractice own, ProgrammeFields.Clippings clippings) {
    if (Boolean.TRUE.equals(clippings.byRules())) {
      return ReturnPractice.byTheRules();
    }
    Double share = clippings.returnedShare();
    return share == null ? own : ReturnPractice.always(share);
  }
}
