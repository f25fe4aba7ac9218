package leafturn.web;

/**
 * Whose entries a log page makes.
 *
 * @param id id of the person
 * @param name what they are called
 */
public record LogPerson(String id, String name) {}
