package leafturn.model.lawn;

/** A day whose account does not close: a fault of the model, never of its user. */
public final class BalanceException extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  BalanceException(String message) {
    super(message);
  }
}
