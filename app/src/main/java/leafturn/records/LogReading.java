package leafturn.records;

import java.util.List;
import leafturn.model.lawn.LogEntry;

/**
 * A lawn's log as read.
 *
 * @param entries by day, those of one day in the order of the file
 * @param notes what a reader of the results must know, one sentence each
 */
public record LogReading(List<LogEntry> entries, List<String> notes) {
  public LogReading {
    entries = List.copyOf(entries);
    notes = List.copyOf(notes);
  }
}
