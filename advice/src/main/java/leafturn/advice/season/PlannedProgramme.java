package leafturn.advice.season;

import leafturn.model.lawn.Programme;

/**
 * A programme that a plan looks at.
 *
 * @param name what it is called; empty where its parts say enough
 * @param origin where it comes from
 * @param programme what is done year after year
 */
public record PlannedProgramme(String name, Origin origin, Programme programme) {

  /** Where a programme comes from. */
  public enum Origin {
    /** How the lawn is kept now. */
    PRESENT,
    /** Given by the person who plans. */
    GIVEN,
    /** Made by the search. */
    SEARCH
  }
}
