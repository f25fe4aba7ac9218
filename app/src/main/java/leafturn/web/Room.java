package leafturn.web;

/** A part of the site with addresses of its own. */
interface Room {
  /** Says which addresses it answers. */
  void open(Routes routes);
}
