package pilefolio.analysis.staged;

import java.util.List;

/**
 * The wall in equilibrium at the end of a stage.
 *
 * @param stage the stage
 * @param nodes the wall at each node, from the top down
 * @param slices pressures between neighbouring nodes, from the top down
 * @param supports forces of the supports
 * @param balance residuals of equilibrium
 * @param iterations steps of the iteration
 */
public record StageState(
    WallStage stage,
    List<WallNode> nodes,
    List<WallSlice> slices,
    List<SupportForce> supports,
    Balance balance,
    int iterations) {

  public StageState {
    nodes = List.copyOf(nodes);
    slices = List.copyOf(slices);
    supports = List.copyOf(supports);
  }

  /** A value with the level where it occurs. */
  public record At(double level, double value) {}

  /** Displacement at a level, m, by the cubic between nodes. */
  public double displacementAt(double level) {
    for (int i = 1; i < nodes.size(); i++) {
      WallNode a = nodes.get(i - 1);
      WallNode b = nodes.get(i);
      if (level >= b.level() - 1e-12) {
        double h = a.level() - b.level();
        double s = Math.max(0, (a.level() - level) / h);
        return a.displacement() * (1 - s * s * (3 - 2 * s))
            + a.rotation() * h * s * (1 - s) * (1 - s)
            + b.displacement() * s * s * (3 - 2 * s)
            + b.rotation() * h * s * s * (s - 1);
      }
    }
    return nodes.get(nodes.size() - 1).displacement();
  }

  /** Displacement of the largest absolute value. */
  public At greatestDisplacement() {
    At best = new At(nodes.get(0).level(), 0);
    for (WallNode n : nodes) {
      if (Math.abs(n.displacement()) > Math.abs(best.value())) {
        best = new At(n.level(), n.displacement());
      }
    }
    return best;
  }

  /** Largest moment with tension on the retained side, kNm/m; nil if none. */
  public At greatestMoment() {
    return extreme(1);
  }

  /** Largest moment with tension on the excavated side, negative, kNm/m; nil if none. */
  public At leastMoment() {
    return extreme(-1);
  }

  /** The moment of the largest absolute value. */
  public At governingMoment() {
    At most = greatestMoment();
    At least = leastMoment();
    return most.value() >= -least.value() ? most : least;
  }

  private At extreme(int sign) {
    At best = new At(nodes.get(0).level(), 0);
    for (int i = 0; i < nodes.size(); i++) {
      WallNode n = nodes.get(i);
      best = larger(best, n.level(), n.moment(), sign);
      if (i + 1 < nodes.size()) {
        WallNode m = nodes.get(i + 1);
        double v = n.shearBelow();
        double w = m.shearAbove();
        if (v * w < 0) {
          // Shear is nearly linear inside a short element.
          double x = (n.level() - m.level()) * v / (v - w);
          best = larger(best, n.level() - x, n.moment() + v * x / 2, sign);
        }
      }
    }
    return best;
  }

  private static At larger(At best, double level, double value, int sign) {
    return sign * value > sign * best.value() ? new At(level, value) : best;
  }

  /** Shear force of the largest absolute value, kN/m. */
  public At greatestShear() {
    At best = new At(nodes.get(0).level(), 0);
    for (WallNode n : nodes) {
      if (Math.abs(n.shearAbove()) > Math.abs(best.value())) {
        best = new At(n.level(), n.shearAbove());
      }
      if (Math.abs(n.shearBelow()) > Math.abs(best.value())) {
        best = new At(n.level(), n.shearBelow());
      }
    }
    return best;
  }

  /** Earth resistance in front that is used, over the passive limit; 0 where there is no ground. */
  public double passiveMobilisation() {
    double used = 0;
    double limit = 0;
    for (WallSlice s : slices) {
      used += s.front().earthForce();
      limit += s.front().passiveForce();
    }
    return limit > 0 && Double.isFinite(limit) ? used / limit : 0;
  }
}
