package leafturn.advice.call;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.CutKind.NitrogenAtFirst;
import leafturn.model.Flows;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnRun;
import org.jspecify.annotations.Nullable;

/** Clippings returned in the past months and the days they lay through, for looks at the lawn. */
final class FallenCuts implements DayListener {
  private static final int KEPT_DAYS = 400;
  private static final double SOONEST_DAYS = 0.5;
  private static final double BROKEN_DOWN = 0.1;
  private static final int MOST_SHOWN = 8;

  /**
   * A returned cut.
   *
   * @param waterMm rain and irrigation of its day
   */
  private record Fallen(
      LocalDate day,
      double dryGPerM2,
      double nitrogenFraction,
      double lengthMm,
      double fastFraction,
      double waterMm) {}

  /** A cut followed to the last known day. */
  private record Followed(double leftFraction, InSight sight, int days) {}

  /** Share of the fast and of the slow clippings that decayed on a day. */
  private record Decay(LocalDate day, double fast, double slow) {}

  private final LocalDate from;
  private final List<Fallen> cuts = new ArrayList<>();
  private final List<Decay> decays = new ArrayList<>();

  /**
   * @param on the day of the call
   */
  FallenCuts(LocalDate on) {
    this.from = on.minusDays(KEPT_DAYS);
  }

  @Override
  public void dayDone(LawnRun run) {
    LocalDate day = run.terms().date(run.day());
    if (day.isBefore(from)) {
      return;
    }
    double scale = run.flow(Flows.DECAY_SCALE);
    decays.add(
        new Decay(
            day,
            scale * run.flow(Flows.DECAY_FRACTION),
            scale * run.flow(Flows.DECAY_FRACTION + 1)));
    fell(
        day,
        run.flow(Flows.RETURNED_G),
        run.flow(Flows.RAIN_MM) + run.flow(Flows.IRRIGATION_MM),
        run);
  }

  /**
   * A cut of a day, whose weather may still be to come.
   *
   * @param returnedG dry clippings returned, g/m2; nothing falls where it is 0
   * @param waterMm rain and irrigation of the day, as far as they are known
   * @param run just after the cut
   */
  void fell(LocalDate day, double returnedG, double waterMm, LawnRun run) {
    if (returnedG > 0) {
      cuts.add(
          new Fallen(
              day,
              returnedG,
              run.flow(Flows.CUT_N_FRACTION),
              run.flow(Flows.CUT_LENGTH_MM),
              run.flow(Flows.CUT_FAST_FRACTION),
              waterMm));
    }
  }

  /**
   * What people saw of them. A look is taken to be at the last cut returned before its day; looks
   * on the day of a cut tell nothing.
   */
  OwnSight ownSight(Circumstances known, LocalDate on, CallRules rules) {
    List<OwnSight.Look> looks = new ArrayList<>();
    for (Sighting sighting : known.sightings()) {
      if (sighting.sight() == Sight.CLIPPINGS_STILL_SEEN && !sighting.on().isAfter(on)) {
        Fallen cut = lastBefore(sighting.on());
        if (cut != null) {
          looks.add(
              new OwnSight.Look(
                  reckonedDays(cut, rules),
                  ChronoUnit.DAYS.between(cut.day(), sighting.on()),
                  sighting.there()));
        }
      }
    }
    return OwnSight.of(looks);
  }

  private @Nullable Fallen lastBefore(LocalDate day) {
    Fallen last = null;
    for (Fallen cut : cuts) {
      if (cut.day().isBefore(day)) {
        last = cut;
      }
    }
    return last;
  }

  /** Days after which a cut should be out of sight on a usual lawn. */
  private double reckonedDays(Fallen cut, CallRules rules) {
    Followed usual = follow(cut, Sinking.of(rules), rules.threshold(CallRule.WET));
    int days = usual.sight().daysToUnseen();
    return Math.max(SOONEST_DAYS, days < 0 ? usual.days() + usual.sight().daysToGo() : days);
  }

  private Followed follow(Fallen cut, Sinking sinking, double wetMm) {
    InSight sight = new InSight(sinking);
    sight.fall(cut.dryGPerM2(), cut.lengthMm(), cut.waterMm() > wetMm);
    double fast = cut.fastFraction();
    double slow = 1 - fast;
    int days = 0;
    for (Decay decay : decays) {
      if (decay.day().isAfter(cut.day())) {
        double before = fast + slow;
        fast *= 1 - decay.fast();
        slow *= 1 - decay.slow();
        sight.day((fast + slow) / before);
        days++;
      }
    }
    return new Followed(fast + slow, sight, days);
  }

  /**
   * Cuts of which more than a tenth has not broken down, the latest first.
   *
   * @param carbonFraction C in dry matter, g/g
   * @param known what was logged, and how long this lawn's clippings stay in sight
   */
  List<LyingCut> lying(double carbonFraction, Known known, CallRules rules) {
    OwnSight own = known.ownSight();
    List<LyingCut> lying = new ArrayList<>();
    for (int last = cuts.size() - 1; last >= 0 && lying.size() < MOST_SHOWN; last--) {
      Fallen cut = cuts.get(last);
      Followed now =
          follow(cut, Sinking.of(rules).slower(own.times()), rules.threshold(CallRule.WET));
      if (now.leftFraction() > BROKEN_DOWN && cut.nitrogenFraction() > 0) {
        double carbonPerNitrogen = carbonFraction / cut.nitrogenFraction();
        lying.add(
            new LyingCut(
                cut.day(),
                known.mowingLogged(cut.day()),
                cut.dryGPerM2(),
                carbonPerNitrogen,
                NitrogenAtFirst.of(carbonPerNitrogen, rules),
                now.leftFraction(),
                now.sight().daysToUnseen() < 0));
      }
    }
    return lying;
  }
}
