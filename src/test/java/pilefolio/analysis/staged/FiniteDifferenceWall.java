package pilefolio.analysis.staged;

import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;

/**
 * A second way to the same wall: central differences for EI·y'''' = q at equal steps with two
 * fictitious points beyond each free end, ground that has no memory, and a dense solution. Shares
 * nothing with the finite elements but the laws of the ground.
 */
final class FiniteDifferenceWall {
  private final double top;
  private final double step;
  private final int intervals;

  FiniteDifferenceWall(double top, double toe, int intervals) {
    this.top = top;
    this.intervals = intervals;
    step = (top - toe) / intervals;
  }

  double level(int point) {
    return top - point * step;
  }

  int point(double level) {
    return (int) Math.round((top - level) / step);
  }

  /**
   * Displacements at the points.
   *
   * @param forces constant force toward the ground at a point, kN/m
   * @param springs supports {point: stiffness, displacement at lock-off, force at lock-off}
   */
  double[] solve(WallStage stage, Map<Integer, Double> forces, Map<Integer, double[]> springs) {
    int n = intervals + 5;
    double[] y = new double[n];
    for (int iteration = 0; iteration < 60; iteration++) {
      Array2DRowRealMatrix a = new Array2DRowRealMatrix(n, n);
      RealVector b = new ArrayRealVector(n);
      double c = stage.stiffness() / Math.pow(step, 4);
      for (int i = 0; i <= intervals; i++) {
        int r = i + 2;
        double[] weights = {1, -4, 6, -4, 1};
        for (int k = 0; k < 5; k++) {
          a.addToEntry(r, r - 2 + k, c * weights[k]);
        }
        double z = level(i);
        double net = 0;
        double slope = 0;
        for (double from : new double[] {z + 1e-6, z - 1e-6}) {
          SpringLaw back = stage.behind().at(z, from);
          SpringLaw ahead = stage.front().at(z, from);
          net += (back.earth(-y[r]) + back.water() - ahead.earth(y[r]) - ahead.water()) / 2;
          slope +=
              ((back.state(-y[r]) == SoilState.ELASTIC ? back.modulus() : 0)
                      + (ahead.state(y[r]) == SoilState.ELASTIC ? ahead.modulus() : 0))
                  / 2;
        }
        // At an end a point stands for half a step, and so do the beam's own forces there.
        double share = i == 0 || i == intervals ? 2 : 1;
        net -= share * forces.getOrDefault(i, 0.0) / step;
        double[] spring = springs.get(i);
        if (spring != null) {
          net -= share * (spring[2] + spring[0] * (y[r] - spring[1])) / step;
          slope += share * spring[0] / step;
        }
        a.addToEntry(r, r, slope);
        b.setEntry(r, net + slope * y[r]);
      }
      // No moment and no shear at either end.
      for (int end = 0; end < 2; end++) {
        int at = end == 0 ? 2 : n - 3;
        int row = end == 0 ? 0 : n - 2;
        a.addToEntry(row, at - 1, 1);
        a.addToEntry(row, at, -2);
        a.addToEntry(row, at + 1, 1);
        a.addToEntry(row + 1, at - 2, -1);
        a.addToEntry(row + 1, at - 1, 2);
        a.addToEntry(row + 1, at + 1, -2);
        a.addToEntry(row + 1, at + 2, 1);
      }
      RealVector next = new LUDecomposition(a).getSolver().solve(b);
      double change = 0;
      for (int i = 0; i < n; i++) {
        change = Math.max(change, Math.abs(next.getEntry(i) - y[i]));
        y[i] = next.getEntry(i);
      }
      if (change < 1e-8) {
        double[] inside = new double[intervals + 1];
        System.arraycopy(y, 2, inside, 0, intervals + 1);
        return inside;
      }
    }
    throw new IllegalStateException("no solution");
  }

  /** Moment at a point by differences, kNm/m. */
  double moment(double[] y, int i, double stiffness) {
    return stiffness * (y[i - 1] - 2 * y[i] + y[i + 1]) / (step * step);
  }
}
