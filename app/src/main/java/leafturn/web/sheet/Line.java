package leafturn.web.sheet;

/**
 * Something a sheet says.
 *
 * @param label what it is about
 * @param words what it says
 */
public record Line(String label, String words) {}
