package leafturn.records;

import java.util.List;
import leafturn.advice.call.Circumstances;
import leafturn.model.lawn.Lawn;

/**
 * A lawn description as read.
 *
 * @param lawn the lawn
 * @param notes what was assumed because the file leaves it out, one sentence each
 * @param known what it says beyond what the model needs
 */
public record LawnReading(Lawn lawn, List<String> notes, Circumstances known) {
  public LawnReading {
    notes = List.copyOf(notes);
  }
}
