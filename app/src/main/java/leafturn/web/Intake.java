package leafturn.web;

/** What a route takes with a request, and how much of it at most. */
enum Intake {
  /** Nothing at all. */
  NOTHING("", 0),

  /** The fields of a form. */
  FORM("application/x-www-form-urlencoded", 1_000_000),

  /** A JSON document; the token of its page comes in a header. */
  JSON("application/json", 1_000_000),

  /** A form with an outline, which may come as a file. */
  SHAPE("multipart/form-data", 3_000_000),

  /** A form with a photograph. */
  PHOTOGRAPH("multipart/form-data", 10_000_000),

  /** A form with a table, shape or archive to import. */
  IMPORT("multipart/form-data", 50_000_000);

  private final String mediaType;
  private final long mostBytes;

  Intake(String mediaType, long mostBytes) {
    this.mediaType = mediaType;
    this.mostBytes = mostBytes;
  }

  /** The media type of the body. */
  String mediaType() {
    return mediaType;
  }

  /** Whether it takes a media type; a form that may bring a file need not bring one. */
  boolean takes(String type) {
    return type.equals(mediaType)
        || (this == PHOTOGRAPH || this == SHAPE) && type.equals(FORM.mediaType);
  }

  /** The largest body, bytes. */
  long mostBytes() {
    return mostBytes;
  }
}
