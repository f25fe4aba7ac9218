package leafturn.records;

import java.util.List;
import leafturn.model.lawn.LogEntry;
import org.jspecify.annotations.Nullable;

/**
 * A lawn's log as read.
 *
 * @param lines by day, those of one day in the order of the file
 * @param notes what a reader of the results must know, one sentence each
 * @param unused what it tells beyond what the model takes, one sentence each
 */
public record LogReading(List<Line> lines, List<String> notes, List<String> unused) {
  public LogReading {
    lines = List.copyOf(lines);
    notes = List.copyOf(notes);
    unused = List.copyOf(unused);
  }

  /**
   * One line of the file.
   *
   * @param number its place in the file, from 1
   * @param entry what was done
   * @param note its remark, or null
   */
  public record Line(long number, LogEntry entry, @Nullable String note) {}

  /** What was done, by day. */
  public List<LogEntry> entries() {
    return lines.stream().map(Line::entry).toList();
  }
}
