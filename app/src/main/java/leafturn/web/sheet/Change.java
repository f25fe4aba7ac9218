package leafturn.web.sheet;

/**
 * A field in which two versions of a sheet differ.
 *
 * @param label the field
 * @param before what the one says; empty where it says nothing
 * @param after what the other says; empty where it says nothing
 */
public record Change(String label, String before, String after) {}
