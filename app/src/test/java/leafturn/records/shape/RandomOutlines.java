package leafturn.records.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Outlines of all sorts: a star-shaped edge with star-shaped holes in its core, decided by a seed.
 */
final class RandomOutlines {
  private final SplittableRandom random;

  RandomOutlines(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** One to three pieces side by side, anchored somewhere or not at all. */
  Outline next() {
    List<Patch> patches = new ArrayList<>();
    int pieces = 1 + random.nextInt(8) / 6;
    for (int piece = 0; piece < pieces; piece++) {
      patches.add(patch(-40 + 130 * piece, random.nextDouble(-40, 40)));
    }
    Anchor anchor =
        random.nextInt(3) == 0
            ? null
            : new Anchor(random.nextDouble(-179.9, 179.9), random.nextDouble(-80, 80));
    return new Outline(patches, anchor);
  }

  private Patch patch(double xM, double yM) {
    double radius = random.nextDouble(5, 60);
    Ring edge = star(xM, yM, 0.6 * radius, radius, 3 + random.nextInt(60));
    List<Ring> holes = new ArrayList<>();
    int wanted = edge.corners().size() < 8 ? 0 : random.nextInt(5);
    for (int hole = 0; hole < wanted; hole++) {
      double angle = 2 * Math.PI * hole / wanted;
      double x = xM + 0.25 * radius * Math.cos(angle);
      double y = yM + 0.25 * radius * Math.sin(angle);
      holes.add(star(x, y, 0.05 * radius, 0.12 * radius, 3 + random.nextInt(12)));
    }
    return new Patch(edge, holes);
  }

  /** Corners around a centre, evenly by angle, so that its line cannot cross itself. */
  private Ring star(double xM, double yM, double leastM, double mostM, int corners) {
    double turn = random.nextDouble(2 * Math.PI);
    boolean clockwise = random.nextBoolean();
    List<Corner> ring = new ArrayList<>();
    for (int corner = 0; corner < corners; corner++) {
      double angle = turn + (clockwise ? -2 : 2) * Math.PI * corner / corners;
      double radius = random.nextDouble(leastM, mostM);
      ring.add(new Corner(xM + radius * Math.cos(angle), yM + radius * Math.sin(angle)));
    }
    return new Ring(ring);
  }
}
