package leafturn.model.lawn;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.model.weather.Site;

/** Lawns, sites and keepers made from random numbers. */
final class RandomLawn {
  private RandomLawn() {}

  /** A species with some parameters anywhere in their plausible ranges. */
  static LawnEquations equations(SplittableRandom random) {
    Species grass = Species.values()[random.nextInt(Species.values().length)];
    double changedShare = random.nextDouble();
    while (true) {
      try {
        return new LawnEquations(Parameters.of(grass).with(changes(random, grass, changedShare)));
      } catch (IllegalArgumentException contradiction) {
        // Values each in its range may contradict one another; draw again, fewer of them.
        changedShare *= 0.9;
      }
    }
  }

  private static Map<String, Double> changes(
      SplittableRandom random, Species grass, double changedShare) {
    Map<String, Double> changes = new HashMap<>();
    for (Parameter row : ParameterTable.rows()) {
      boolean own = row.species() == null || row.species() == grass;
      if (own && random.nextDouble() < changedShare) {
        changes.put(row.name(), value(random, row));
      }
    }
    return changes;
  }

  private static double value(SplittableRandom random, Parameter row) {
    return switch (random.nextInt(4)) {
      case 0 -> row.low();
      case 1 -> row.high();
      default ->
          row.unit().equals("0 or 1")
              ? random.nextInt(2)
              : row.low() + (row.high() - row.low()) * random.nextDouble();
    };
  }

  static Site site(SplittableRandom random) {
    return Site.at(random.nextDouble(-66, 66), random.nextDouble(0, 3000));
  }

  /** Feeds, waters, measures, raises and lowers the deck and mows on random days. */
  static Keeper keeper(SplittableRandom random) {
    double zeal = random.nextDouble(0.02, 0.5);
    return new Keeper() {
      @Override
      public void morning(LawnRun run) {
        if (random.nextDouble() < 0.2 * zeal) {
          run.feed(upTo(15), upTo(15), upTo(5), upTo(15));
        }
        if (random.nextDouble() < zeal) {
          run.water(upTo(60));
        }
      }

      @Override
      public void evening(LawnRun run) {
        if (random.nextDouble() < 0.2 * zeal) {
          run.correctHeight(upTo(250));
        }
        if (random.nextDouble() < 0.2 * zeal) {
          run.setCutHeight(random.nextDouble(3, 200));
        }
        if (random.nextDouble() < zeal) {
          run.cut(random.nextDouble(3, 200), share());
        }
      }

      private double upTo(double most) {
        return random.nextInt(3) == 0 ? 0 : most * random.nextDouble();
      }

      private double share() {
        int kind = random.nextInt(3);
        return kind < 2 ? kind : random.nextDouble();
      }
    };
  }
}
