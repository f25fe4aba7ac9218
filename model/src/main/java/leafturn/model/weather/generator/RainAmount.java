package leafturn.model.weather.generator;

import leafturn.model.RandomStream;

/** How much it rains on a wet day. */
public sealed interface RainAmount permits MixedExponentialAmount, GammaAmount {

  /** Mean of a wet day, mm. */
  double meanMm();

  /** Rain of one wet day, mm, above 0. */
  double drawnMm(RandomStream random);
}
