package leafturn.web;

/** A request that is not answered as asked; the page tells why. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int status;
  private final String headline;
  private final String more;

  /**
   * @param status HTTP status of the answer
   * @param headline what is the matter, a sentence
   * @param more what to do, a sentence or two
   */
  Refusal(int status, String headline, String more) {
    super(headline);
    this.status = status;
    this.headline = headline;
    this.more = more;
  }

  int status() {
    return status;
  }

  String headline() {
    return headline;
  }

  String more() {
    return more;
  }

  /** There is nothing here, or nothing this visitor may know of. */
  static Refusal notFound() {
    return new Refusal(
        404,
        "There is no page at this address.",
        "It may have been mistyped, or the lawn may have left the round.");
  }

  /** The visitor's role does not allow this. */
  static Refusal notAllowed() {
    return new Refusal(
        403, "Your role does not allow this.", "The owner of the book can give you another one.");
  }

  /** Nobody has signed in. */
  static Refusal notSignedIn() {
    return new Refusal(
        401,
        "You are not signed in.",
        "Sign in, go back to the page and send it again; what you typed is still there.");
  }

  /** The request did not come from a page of ours. */
  static Refusal notFromOurPage() {
    return new Refusal(
        403,
        "This did not come from a page of this book.",
        "Open the page again and send it from there. Nothing was saved.");
  }

  /** The request cannot be read. */
  static Refusal unreadable() {
    return new Refusal(
        400,
        "This request cannot be read.",
        "The browser sent something that is no proper form. Nothing was saved.");
  }

  /** The request brings more than the page takes. */
  static Refusal tooLarge(long mostBytes) {
    return new Refusal(
        413,
        "This is too large.",
        "At most %d MB can be sent here at once. Nothing was saved."
            .formatted(Math.max(1, mostBytes / 1_000_000)));
  }

  /** The request does not say how long it is. */
  static Refusal withoutLength() {
    return new Refusal(
        411, "This request does not say how long it is.", "Nothing of it was read or saved.");
  }

  /** The request brings something of another kind than the page takes. */
  static Refusal ofAnotherKind(String mediaType) {
    return new Refusal(
        415, "This is not what the page takes.", "It takes " + mediaType + ". Nothing was saved.");
  }

  /** The way of asking is not one the address answers. */
  static Refusal notAsked() {
    return new Refusal(
        405,
        "This address does not answer to that.",
        "Pages are read, and forms are sent; nothing else is done here.");
  }
}
