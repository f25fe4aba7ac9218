package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.List;

/** How V⁻¹ moves with each element of the covariances of random effects, by way of Z'V⁻¹Z. */
final class EffectMoves {
  private final CrossProducts cross;
  private final double[] between;
  private final double[] weighted;
  private final int directions;
  private final List<Element> elements = new ArrayList<>();

  /** One element of the covariance of a set. */
  private record Element(int set, int row, int column) {
    /** Its places in the whole matrix, one on the diagonal and two off it. */
    int[][] places() {
      return row == column ? new int[][] {{row, row}} : new int[][] {{row, column}, {column, row}};
    }
  }

  /**
   * @param between Z'V⁻¹Z, row by row
   * @param weighted Z'V⁻¹Q, row by row
   */
  EffectMoves(CrossProducts cross, double[] between, double[] weighted, int directions) {
    this.cross = cross;
    this.between = between;
    this.weighted = weighted;
    this.directions = directions;
    for (int set = 0; set < cross.sets(); set++) {
      for (int a = 0; a < cross.size(set); a++) {
        for (int b = 0; b <= a; b++) {
          elements.add(new Element(set, a, b));
        }
      }
    }
  }

  BlockFactor.Moves moves() {
    BlockFactor.Moves moves = BlockFactor.Moves.none(elements.size(), directions);
    for (int i = 0; i < elements.size(); i++) {
      addCross(moves.first()[i], elements.get(i), weighted);
      moves.single()[i] = single(elements.get(i));
    }
    for (int j = 0; j < elements.size(); j++) {
      double[] moved = moved(elements.get(j));
      for (int i = j; i < elements.size(); i++) {
        addCross(moves.second()[i][j], elements.get(i), moved);
        moves.traces()[i][j] = trace(elements.get(i), elements.get(j));
        moves.traces()[j][i] = moves.traces()[i][j];
      }
    }
    return moves;
  }

  private int at(Element element, int group) {
    return cross.start(element.set) + group * cross.size(element.set);
  }

  /** Adds the sum of (Z_g'V⁻¹Q)' E x_g over the groups. */
  private void addCross(double[][] sum, Element element, double[] x) {
    for (int[] place : element.places()) {
      for (int group = 0; group < cross.groups(element.set); group++) {
        int left = (at(element, group) + place[0]) * directions;
        int right = (at(element, group) + place[1]) * directions;
        for (int j = 0; j < directions; j++) {
          double factor = weighted[left + j];
          for (int k = 0; k < directions; k++) {
            sum[j][k] += factor * x[right + k];
          }
        }
      }
    }
  }

  private double single(Element element) {
    double sum = 0;
    for (int[] place : element.places()) {
      for (int group = 0; group < cross.groups(element.set); group++) {
        int at = at(element, group);
        sum += between[(at + place[0]) * cross.effects() + at + place[1]];
      }
    }
    return sum;
  }

  /** Z'V⁻¹V_jV⁻¹Q. */
  private double[] moved(Element element) {
    int effects = cross.effects();
    double[] moved = new double[effects * directions];
    for (int[] place : element.places()) {
      for (int group = 0; group < cross.groups(element.set); group++) {
        int from = at(element, group) + place[0];
        int of = (at(element, group) + place[1]) * directions;
        for (int i = 0; i < effects; i++) {
          double factor = between[from * effects + i];
          for (int k = 0; k < directions; k++) {
            moved[i * directions + k] += factor * weighted[of + k];
          }
        }
      }
    }
    return moved;
  }

  private double trace(Element one, Element other) {
    double sum = 0;
    for (int[] left : one.places()) {
      for (int[] right : other.places()) {
        for (int g = 0; g < cross.groups(one.set); g++) {
          int first = (at(one, g) + left[0]) * cross.effects();
          int second = (at(one, g) + left[1]) * cross.effects();
          for (int h = 0; h < cross.groups(other.set); h++) {
            int at = at(other, h);
            sum += between[first + at + right[1]] * between[second + at + right[0]];
          }
        }
      }
    }
    return sum;
  }
}
