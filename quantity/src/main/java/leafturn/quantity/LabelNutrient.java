package leafturn.quantity;

/**
 * Nutrients that fertiliser labels and many bulletins state as an oxide. Leafturn keeps the element
 * and converts only at the edge. Factors are ratios of molar masses (IUPAC conventional atomic
 * masses); trade tables round them to 0.44 and 0.83.
 */
public enum LabelNutrient {
  /** Phosphorus, on labels as P2O5. */
  PHOSPHORUS("P", "P₂O₅", 30.973761998, 5),
  /** Potassium, on labels as K2O. */
  POTASSIUM("K", "K₂O", 39.0983, 1);

  private final String elementSymbol;
  private final String oxideSymbol;
  private final double elementPerOxide;

  LabelNutrient(
      String elementSymbol, String oxideSymbol, double elementGPerMol, int oxygenAtomsPerTwo) {
    this.elementSymbol = elementSymbol;
    this.oxideSymbol = oxideSymbol;
    double oxygenGPerMol = 15.999;
    double elementMass = 2 * elementGPerMol;
    this.elementPerOxide = elementMass / (elementMass + oxygenAtomsPerTwo * oxygenGPerMol);
  }

  /** Symbol of the element. */
  public String elementSymbol() {
    return elementSymbol;
  }

  /** Formula of the oxide. */
  public String oxideSymbol() {
    return oxideSymbol;
  }

  /** Mass of the element in a mass of the oxide, in the same unit. */
  public double elementFromOxide(double oxide) {
    return oxide * elementPerOxide;
  }

  /** Mass of the oxide that holds a mass of the element, in the same unit. */
  public double oxideFromElement(double element) {
    return element / elementPerOxide;
  }
}
