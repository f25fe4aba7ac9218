package leafturn.advice.call;

/**
 * A lawn of a round for which no call could be made.
 *
 * @param slug its name in addresses
 * @param propertyName the property it lies on
 * @param lawnName the lawn's own name there
 * @param why what is in the way and what would help, a sentence
 */
public record LawnWithoutCall(String slug, String propertyName, String lawnName, String why) {}
