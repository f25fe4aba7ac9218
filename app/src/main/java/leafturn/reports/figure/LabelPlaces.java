package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for labels in a drawing so that none covers another, a line or a mark. A label that
 * finds no free place is left out; the figure's table and caption still say what it said.
 */
final class LabelPlaces {
  private final Box frame;
  private final List<Box> taken = new ArrayList<>();
  private final List<List<Point>> lines = new ArrayList<>();

  LabelPlaces(Box frame) {
    this.frame = frame;
  }

  /** The same room, to try in. */
  LabelPlaces copy() {
    LabelPlaces copy = new LabelPlaces(frame);
    copy.taken.addAll(taken);
    copy.lines.addAll(lines);
    return copy;
  }

  /** Keeps a rectangle free of labels. */
  void keepFree(Box box) {
    taken.add(box);
  }

  /** Keeps a line free of labels. */
  void keepFree(List<Point> line) {
    lines.add(List.copyOf(line));
  }

  /** Takes the first of the places at which the label is free, if there is one. */
  Optional<Label> place(Label label, List<Point> places) {
    for (Point place : places) {
      Label moved = label.at(place);
      if (isFree(moved.box())) {
        taken.add(moved.box());
        return Optional.of(moved);
      }
    }
    return Optional.empty();
  }

  /** Whether a rectangle is free. */
  boolean isFree(Box box) {
    return box.inside(frame)
        && taken.stream().noneMatch(box::overlaps)
        && lines.stream().noneMatch(line -> crosses(line, box));
  }

  private static boolean crosses(List<Point> line, Box box) {
    for (int i = 1; i < line.size(); i++) {
      if (box.isCrossedBy(line.get(i - 1), line.get(i))) {
        return true;
      }
    }
    return false;
  }
}
