package pilefolio.model;

/** Buckling curve of EN 1993-1-1, by its imperfection factor. */
public enum BucklingCurve implements Choice {
  /** Curve a0. */
  A0("a0", 0.13),
  /** Curve a: tubes finished hot. */
  A("a", 0.21),
  /** Curve b. */
  B("b", 0.34),
  /** Curve c: tubes formed cold. */
  C("c", 0.49),
  /** Curve d. */
  D("d", 0.76);

  private final String label;
  private final double imperfection;

  BucklingCurve(String label, double imperfection) {
    this.label = label;
    this.imperfection = imperfection;
  }

  @Override
  public String label() {
    return label;
  }

  /** Imperfection factor. */
  public double imperfection() {
    return imperfection;
  }
}
