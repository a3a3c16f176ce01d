package pilefolio.analysis.stability;

/**
 * Laplace's equation under a wall with a step of the surface, by differences on a square grid and
 * over-relaxation. A second formulation for tests.
 */
public final class SeepageGrid {
  private final double spacing;
  private final int wall;
  private final int tip;
  private final int frontTop;
  private final double[][] head;

  /**
   * Solves a section.
   *
   * @param front depth of the tip below the ground in front, m
   * @param behind depth of the tip below the ground behind, m
   * @param loss difference of head, m
   * @param spacing of the grid, m
   * @param left width behind the wall, m
   * @param right width in front, to a middle that nothing crosses, m
   * @param depth below the ground behind, m
   */
  public SeepageGrid(
      double front,
      double behind,
      double loss,
      double spacing,
      double left,
      double right,
      double depth) {
    this.spacing = spacing;
    int nx = (int) Math.round(left / spacing) + (int) Math.round(right / spacing) + 2;
    int nz = (int) Math.round(depth / spacing);
    // Two columns of nodes stand on the wall: the last of the left half, the first of the right.
    wall = (int) Math.round(left / spacing) + 1;
    tip = (int) Math.round(behind / spacing);
    frontTop = (int) Math.round((behind - front) / spacing);
    head = new double[nz + 1][nx];
    for (int j = 0; j < nx; j++) {
      for (int i = 0; i <= nz; i++) {
        head[i][j] = j < wall ? loss : 0;
      }
    }
    double relax = 1.94;
    for (int sweep = 0; sweep < 3000; sweep++) {
      for (int i = 0; i <= nz; i++) {
        for (int j = 0; j < nx; j++) {
          if (j < wall ? i > 0 : i > frontTop) {
            boolean twin = j == wall && i >= tip;
            head[i][j] += (twin ? 1 : relax) * (target(i, j, nz, nx) - head[i][j]);
          }
        }
      }
    }
  }

  /** The value a node takes from its neighbours; impermeable sides are mirrors. */
  private double target(int i, int j, int nz, int nx) {
    double up = head[i - 1][j];
    double down = i == nz ? up : head[i + 1][j];
    double left = j == 0 ? head[i][1] : head[i][j - 1];
    double right = j == nx - 1 ? head[i][j - 1] : head[i][j + 1];
    if (j == wall - 1) {
      // Below the tip both columns are one line of nodes.
      right = i >= tip ? head[i][wall + 1] : left;
      if (i == tip) {
        up = (up + head[i - 1][wall]) / 2;
      }
    }
    if (j == wall) {
      if (i >= tip) {
        return head[i][wall - 1];
      }
      left = right;
    }
    return (up + down + left + right) / 4;
  }

  /** Head at the tip above that in front, m. */
  public double headAtTip() {
    return head[tip][wall];
  }

  /** Mean head on the level of the tip over a width in front, m. */
  public double meanHead(double width) {
    int cells = (int) Math.round(width / spacing);
    double sum = 0;
    for (int k = 0; k < cells; k++) {
      sum += (head[tip][wall + k] + head[tip][wall + k + 1]) / 2;
    }
    return sum / cells;
  }
}
