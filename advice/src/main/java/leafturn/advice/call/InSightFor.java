package leafturn.advice.call;

/**
 * How long clippings are seen, from their length and load, wetness and decay: assumed, no
 * measurement was found.
 *
 * @param days days from the (first) cut until nothing is seen any more, over the possible seasons
 * @param own what looks at this lawn made of it
 */
public record InSightFor(Spread days, OwnSight own) {}
