package leafturn.advice.evidence;

import static leafturn.advice.evidence.Course.DRY;

import java.util.List;
import java.util.Map;
import leafturn.advice.evidence.Treatment.Feed;
import leafturn.advice.evidence.TrialGround.Span;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.NitrogenLabel;
import leafturn.model.lawn.NitrogenTracer;

/**
 * The three-year trial on sandy loam with labelled fertiliser in its third year: yield, and where
 * the third year's N came from.
 */
final class LabelledFertiliser {
  private static final List<Integer> TWO_SPLITS = List.of(110, 245);
  private static final Plot SANDY_LOAM =
      Plot.BLUEGRASS.with(Map.of("fc", 0.23, "wp", 0.11, "sat", 0.41));

  private LabelledFertiliser() {}

  /** A plot's two unlabelled years, its labelled one, and the shares of that one's uptake. */
  private record Traced(Course before, Course labelled, double[] shares) {
    double dry(int year) {
      return year <= 2 ? before.year(year, DRY) : labelled.year(1, DRY);
    }
  }

  static List<Measured> on(TrialGround ground) {
    Traced collected = trace(ground, Treatment.collected(0));
    Traced returned = trace(ground, Treatment.returned(0));
    double[] ofCollected = collected.shares();
    double[] ofReturned = returned.shares();
    return List.of(
        Measured.of(
            "labelled",
            returned.dry(3) / collected.dry(3),
            "year 1 %.2f, year 2 %.2f",
            returned.dry(1) / collected.dry(1),
            returned.dry(2) / collected.dry(2)),
        Measured.several("labelled.collected", "soil/fertiliser", ofCollected[0], ofCollected[1]),
        Measured.several(
            "labelled.returned",
            "soil/fertiliser/clippings of all three years",
            ofReturned[0],
            ofReturned[1],
            ofReturned[2]));
  }

  private static Traced trace(TrialGround ground, Treatment keeping) {
    LawnState eve = ground.past(SANDY_LOAM, keeping.past(TrialGround.PAST_N));
    NitrogenTracer tracer = new NitrogenTracer(eve);
    Treatment firstYears = keeping.fed(new Feed(195, 0, 0, TWO_SPLITS));
    Course before = ground.run(SANDY_LOAM, firstYears, eve, new Span(1, 2), tracer);
    tracer.countAsSoil(NitrogenLabel.FERTILISER);
    double[] start = uptake(tracer);
    Treatment thirdYear = keeping.fed(new Feed(180, 0, 0, TWO_SPLITS));
    Course labelled = ground.run(SANDY_LOAM, thirdYear, before.end(), new Span(3, 1), tracer);
    double[] shares = uptake(tracer);
    double all = 0;
    for (int label = 0; label < shares.length; label++) {
      shares[label] -= start[label];
      all += shares[label];
    }
    for (int label = 0; label < shares.length; label++) {
      shares[label] /= all;
    }
    return new Traced(before, labelled, shares);
  }

  private static double[] uptake(NitrogenTracer tracer) {
    NitrogenLabel[] labels = NitrogenLabel.values();
    double[] uptake = new double[labels.length];
    for (int label = 0; label < labels.length; label++) {
      uptake[label] = tracer.uptake(labels[label]);
    }
    return uptake;
  }
}
