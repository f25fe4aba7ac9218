package leafturn.model.lawn;

/** Where nitrogen in a lawn came from, last of all. */
public enum NitrogenLabel {
  /** In the lawn when tracing began, or brought by rain since. */
  SOIL,
  /** Spread as fertiliser since tracing began. */
  FERTILISER,
  /** Passed through clippings that fell on the turf since tracing began. */
  CLIPPINGS
}
