package pilefolio.model;

/**
 * Published shapes of the settlement behind a wall over the distance from it; H is the retained
 * height.
 */
public enum SettlementShape implements Choice {
  /** Straight from the wall to 2 H. */
  SAND_TRIANGLE("Sand, triangle to 2 H"),
  /** Straight from the wall to 3 H. */
  STIFF_CLAY_TRIANGLE("Stiff clay, triangle to 3 H"),
  /** Level to 0.75 H, straight to 2 H. */
  SOFT_CLAY_TO_2H("Soft clay, Clough and O'Rourke, to 2 H"),
  /** Level to 0.75 H, straight to 1.5 H. */
  SOFT_CLAY_TO_1_5H("Soft clay, UFC, to 1.5 H"),
  /** Greatest at half a height from the wall, ends at 4 H. */
  CONCAVE("Concave, Hsieh and Ou, to 4 H"),
  /** Falls with the root of the distance, ends at 4 H. */
  SPANDREL("Spandrel, Hsieh and Ou, to 4 H");

  private final String label;

  SettlementShape(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
