package leafturn.advice.call;

/**
 * A lawn of a round for which there is no call.
 *
 * @param slug its name in addresses
 * @param propertyName the property it lies on
 * @param lawnName the lawn's own name there
 * @param why what is in the way and what would help, a sentence
 * @param underWay true when the call is being made and will be there soon
 */
public record LawnWithoutCall(
    String slug, String propertyName, String lawnName, String why, boolean underWay) {}
