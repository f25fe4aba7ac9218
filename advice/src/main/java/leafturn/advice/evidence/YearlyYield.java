package leafturn.advice.evidence;

import static leafturn.advice.evidence.Course.CLIPPING_N;
import static leafturn.advice.evidence.Course.DRY;

import java.util.ArrayList;
import java.util.List;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.lawn.YearAccount;

/** Yearly clippings of collected plots, their N, and the whole budget; yield by cut height. */
final class YearlyYield {
  private static final double USUAL_N = 147;
  private static final int YEARS = 4;

  private YearlyYield() {}

  static List<Measured> on(TrialGround ground) {
    List<Measured> measured = new ArrayList<>();
    measured.addAll(of("tf", Plot.TALL_FESCUE, ground));
    measured.addAll(of("prg", Plot.RYEGRASS, ground));
    measured.addAll(of("kbg", Plot.BLUEGRASS, ground));
    measured.add(byHeight(ground));
    return measured;
  }

  private static List<Measured> of(String name, Plot plot, TrialGround ground) {
    Course course = ground.run(plot, Treatment.collected(USUAL_N), YEARS);
    double dry = course.mean(DRY);
    double nitrogen = course.mean(CLIPPING_N);
    return List.of(
        Measured.of("yield." + name, dry, "years %s", course.yearly(DRY, 0, "/")),
        Measured.of("yield." + name + ".n", nitrogen, "%.2f %% N", 100 * nitrogen / dry),
        budget("budget." + name, plot, ground, course));
  }

  private static Measured budget(String id, Plot plot, TrialGround ground, Course course) {
    double carbonFraction = Parameters.of(plot.grass()).get("cC");
    double humusBefore = ground.past(plot, Treatment.collected(USUAL_N)).store(Stores.HUMUS_N);
    return Measured.of(
        id,
        course.mean(year -> year.clippings().uptakeNKgPerHa()),
        "leached %.1f, ammonia %.1f, denitrified %.1f kg N/ha a year; soil organic N %+.0f kg/ha"
            + " a year; net production %.0f g/m2; stubble %.0f, root %.0f g/m2; thatch %.1f mm;"
            + " drainage %.0f, runoff %.0f mm",
        course.mean(Course.LEACHED),
        course.mean(year -> year.losses().volatilisedKgPerHa()),
        course.mean(year -> year.losses().denitrifiedKgPerHa()),
        10 * (course.end().store(Stores.HUMUS_N) - humusBefore) / YEARS,
        course.mean(Course.GROWTH) / 10,
        course.end().store(Stores.STUBBLE_C) / carbonFraction,
        course.end().store(Stores.ROOT_C) / carbonFraction,
        last(course).end().thatchMm(),
        course.mean(year -> year.water().drainageMm()),
        course.mean(year -> year.water().runoffMm()));
  }

  private static YearAccount last(Course course) {
    return course.years().get(course.years().size() - 1);
  }

  private static Measured byHeight(TrialGround ground) {
    Treatment byThirds = Treatment.collected(USUAL_N).mown(Treatment.Mowing.ONE_THIRD);
    double low = ground.run(Plot.TALL_FESCUE.cutAt(51), byThirds, YEARS).mean(DRY);
    double high = ground.run(Plot.TALL_FESCUE.cutAt(76), byThirds, YEARS).mean(DRY);
    return Measured.of("height", low / high, "%.0f/%.0f kg/ha", low, high);
  }
}
