package leafturn.records.archive;

import java.io.Closeable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import leafturn.records.Faults;
import leafturn.records.sheet.Kind;
import org.jspecify.annotations.Nullable;

/** Goes through the sheets of an archive in the order in which they were entered in the book. */
final class SheetMerge implements Closeable {
  private final List<ZipReading.Lines> open = new ArrayList<>();
  private final PriorityQueue<Head> heads =
      new PriorityQueue<>(Comparator.comparingLong(head -> head.line.entry()));

  /** The line of a kind's file that comes next. */
  private static final class Head {
    private final Kind<?> kind;
    private final ZipReading.Lines lines;
    private final Faults faults;
    private SheetLine<?> line;

    Head(Kind<?> kind, ZipReading.Lines lines, Faults faults, SheetLine<?> line) {
      this.kind = kind;
      this.lines = lines;
      this.faults = faults;
      this.line = line;
    }
  }

  /**
   * A sheet and where it stands, for messages.
   *
   * @param sheet the sheet
   * @param number number of its line
   * @param faults collects the faults of its file
   */
  record Placed(SheetLine<?> sheet, long number, Faults faults) {
    void fault(String field, String sentence) {
      faults.add(number, field, sentence);
    }
  }

  private SheetMerge() {}

  /**
   * Hands over every readable sheet; faults of the others are collected by file.
   *
   * @return the faults of each file
   */
  static List<Faults> forEach(ZipReading archive, Consumer<Placed> use) {
    List<Faults> all = new ArrayList<>();
    try (SheetMerge merge = new SheetMerge()) {
      for (Kind<?> kind : Kind.all()) {
        if (archive.manifest().member(Members.sheets(kind)) != null) {
          all.add(merge.add(archive, kind));
        }
      }
      merge.run(use);
    }
    return all;
  }

  private Faults add(ZipReading archive, Kind<?> kind) {
    ZipReading.Lines lines = archive.lines(Members.sheets(kind));
    open.add(lines);
    Faults faults = new Faults(archive.place(lines.member()));
    SheetLine<?> first = next(kind, lines, faults);
    if (first != null) {
      heads.add(new Head(kind, lines, faults, first));
    }
    return faults;
  }

  private void run(Consumer<Placed> use) {
    for (Head head = heads.poll(); head != null; head = heads.poll()) {
      use.accept(new Placed(head.line, head.lines.number(), head.faults));
      SheetLine<?> next = next(head.kind, head.lines, head.faults);
      if (next == null) {
        continue;
      }
      if (next.entry() <= head.line.entry()) {
        head.faults.add(
            head.lines.number(), "entry", "the lines must stand in the order of their entries.");
      }
      head.line = next;
      heads.add(head);
    }
  }

  private static @Nullable SheetLine<?> next(Kind<?> kind, ZipReading.Lines lines, Faults faults) {
    for (String text = lines.next(); text != null; text = lines.next()) {
      SheetLine<?> line = SheetLine.read(kind, text, lines.number(), faults);
      if (line != null) {
        return line;
      }
    }
    return null;
  }

  @Override
  public void close() {
    open.forEach(ZipReading.Lines::close);
  }
}
