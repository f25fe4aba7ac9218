package leafturn.records;

import java.util.List;
import leafturn.model.lawn.Lawn;

/**
 * A lawn description as read.
 *
 * @param lawn the lawn
 * @param notes what was assumed because the file leaves it out, one sentence each
 */
public record LawnReading(Lawn lawn, List<String> notes) {
  public LawnReading {
    notes = List.copyOf(notes);
  }
}
