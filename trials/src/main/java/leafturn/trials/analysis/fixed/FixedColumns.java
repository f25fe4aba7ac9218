package leafturn.trials.analysis.fixed;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.Factor;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;

/**
 * The columns of the fixed part in one coding: a factor in a term is coded by differences if the
 * term without it is in the model too, and by a column for each level if not.
 *
 * @source chambers1992, section 2.4
 */
public final class FixedColumns {
  /** The column of the mean. */
  public static final String INTERCEPT = "(intercept)";

  private final TrialModel model;
  private final ModelFrame frame;
  private final Coding coding;
  private final List<Column> columns = new ArrayList<>();

  /** One variable's share in a column; {@code column} counts within its coding. */
  private record Part(String variable, Coding coding, int column, int levels) {
    double at(Cell cell) {
      return levels == 0
          ? cell.value().applyAsDouble(variable)
          : coding.value(cell.level().applyAsInt(variable), column, levels);
    }
  }

  /** A product of parts; its term counts from 0, the mean is -1. */
  private record Column(int term, List<Part> parts) {}

  /** The columns of a model's fixed part. */
  public FixedColumns(TrialModel model, ModelFrame frame, Coding coding) {
    this.model = model;
    this.frame = frame;
    this.coding = coding;
    if (model.intercept()) {
      columns.add(new Column(-1, List.of()));
    }
    for (int t = 0; t < model.fixed().size(); t++) {
      addTerm(t, model.fixed().get(t));
    }
  }

  /** How many columns there are. */
  public int size() {
    return columns.size();
  }

  /** The term of a column, from 0; -1 for the mean. */
  public int termOf(int column) {
    return columns.get(column).term;
  }

  /** The columns of a term; -1 for the mean. */
  public int[] columnsOf(int term) {
    return IntStream.range(0, size()).filter(j -> termOf(j) == term).toArray();
  }

  /** The name of a column, as {@code variety[Victory]*nitrogen[0.2]}. */
  public String name(int column) {
    Column of = columns.get(column);
    if (of.parts.isEmpty()) {
      return INTERCEPT;
    }
    return String.join("*", of.parts.stream().map(this::name).toList());
  }

  /** The row of a combination of levels and covariates. */
  public double[] row(Cell cell) {
    double[] row = new double[columns.size()];
    for (int j = 0; j < row.length; j++) {
      row[j] = 1;
      for (Part part : columns.get(j).parts) {
        row[j] *= part.at(cell);
      }
    }
    return row;
  }

  /** The rows of all observations. */
  public double[][] rows() {
    double[][] rows = new double[frame.rows()][columns.size()];
    for (int j = 0; j < columns.size(); j++) {
      for (double[] row : rows) {
        row[j] = 1;
      }
      for (Part part : columns.get(j).parts) {
        multiply(rows, j, part);
      }
    }
    return rows;
  }

  private void multiply(double[][] rows, int column, Part part) {
    if (part.levels == 0) {
      double[] values = frame.covariate(part.variable);
      for (int i = 0; i < rows.length; i++) {
        rows[i][column] *= values[i];
      }
    } else {
      int[] codes = frame.factor(part.variable).codes();
      for (int i = 0; i < rows.length; i++) {
        rows[i][column] *= part.coding.value(codes[i], part.column, part.levels);
      }
    }
  }

  /**
   * The effects of a term as differences from the first level, products of differences for a
   * product: functions of all coefficients, one for each column of the term.
   *
   * @param term from 0; -1 for the mean
   * @return {@code [function][column]}
   */
  public double[][] differences(int term) {
    int[] own = columnsOf(term);
    double[][] functions = new double[own.length][size()];
    for (int i = 0; i < own.length; i++) {
      for (int j : own) {
        functions[i][j] = difference(columns.get(own[i]).parts, columns.get(j).parts);
      }
    }
    return functions;
  }

  private static double difference(List<Part> rowParts, List<Part> columnParts) {
    double product = 1;
    for (int k = 0; k < rowParts.size(); k++) {
      Part row = rowParts.get(k);
      int column = columnParts.get(k).column;
      if (row.levels > 0 && row.coding == Coding.FULL) {
        product *= row.column == column ? 1 : 0;
      } else if (row.levels > 0) {
        double above = row.coding.value(row.column + 1, column, row.levels);
        product *= above - row.coding.value(0, column, row.levels);
      }
    }
    return product;
  }

  private void addTerm(int index, Term term) {
    List<List<Part>> products = new ArrayList<>();
    products.add(List.of());
    for (String variable : term.variables()) {
      products = times(products, parts(term, variable));
    }
    products.forEach(parts -> columns.add(new Column(index, parts)));
  }

  /** Products in the order in which the first variable's level changes fastest. */
  private static List<List<Part>> times(List<List<Part>> products, List<Part> parts) {
    List<List<Part>> result = new ArrayList<>();
    for (Part part : parts) {
      for (List<Part> product : products) {
        List<Part> longer = new ArrayList<>(product);
        longer.add(part);
        result.add(longer);
      }
    }
    return result;
  }

  private List<Part> parts(Term term, String variable) {
    if (!model.isFactor(variable)) {
      return List.of(new Part(variable, coding, 0, 0));
    }
    Factor factor = frame.factor(variable);
    Coding used = hasMargin(term, variable) ? coding : Coding.FULL;
    int levels = factor.levels().size();
    List<Part> parts = new ArrayList<>();
    for (int j = 0; j < used.columns(levels); j++) {
      parts.add(new Part(variable, used, j, levels));
    }
    return parts;
  }

  private boolean hasMargin(Term term, String variable) {
    List<String> margin = new ArrayList<>(term.variables());
    margin.remove(variable);
    if (margin.isEmpty()) {
      boolean first = firstMainEffect().equals(variable);
      return model.intercept() || !first;
    }
    return model.fixed().stream().anyMatch(other -> other.sameAs(margin));
  }

  private String firstMainEffect() {
    return model.fixed().stream()
        .filter(term -> term.variables().size() == 1)
        .flatMap(term -> new LinkedHashSet<>(term.variables()).stream())
        .filter(model::isFactor)
        .findFirst()
        .orElse("");
  }

  private String name(Part part) {
    if (part.levels == 0) {
      return part.variable;
    }
    String level = frame.factor(part.variable).levels().get(part.coding.levelOf(part.column));
    return part.variable + "[" + level + "]";
  }
}
