package leafturn.quantity;

/** The units a person reads and writes; what is kept and computed is metric for everyone. */
public enum Units {
  METRIC,
  US
}
