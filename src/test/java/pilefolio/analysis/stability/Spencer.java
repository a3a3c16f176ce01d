package pilefolio.analysis.stability;

import java.util.List;

/**
 * The method of Spencer (1967) on a circle: parallel forces between slices, equilibrium of forces
 * and of moments. A second opinion for tests.
 */
final class Spencer {
  private Spencer() {}

  /** Factor of safety without supports. */
  static double factor(List<SlipSlice> slices) {
    double low = 0;
    double high = Math.toRadians(40);
    for (int i = 0; i < 60; i++) {
      double theta = (low + high) / 2;
      // Force equilibrium asks for less than moments while the forces are too flat.
      if (solve(slices, theta, false) < solve(slices, theta, true)) {
        low = theta;
      } else {
        high = theta;
      }
    }
    return solve(slices, (low + high) / 2, true);
  }

  private static double solve(List<SlipSlice> slices, double theta, boolean moment) {
    double low = 0.3;
    double high = 10;
    for (int i = 0; i < 80; i++) {
      double f = (low + high) / 2;
      if (sum(slices, theta, f, moment) > 0) {
        low = f;
      } else {
        high = f;
      }
    }
    return (low + high) / 2;
  }

  private static double sum(List<SlipSlice> slices, double theta, double f, boolean moment) {
    double sum = 0;
    for (SlipSlice s : slices) {
      double a = s.alphaRad();
      double length = s.width() / Math.cos(a);
      double tan = Math.tan(s.phiRad()) / f;
      double q =
          (s.cohesion() * length / f
                  + tan * (s.vertical() * Math.cos(a) - s.pore() * length)
                  - s.vertical() * Math.sin(a))
              / (Math.cos(a - theta) * (1 + tan * Math.tan(a - theta)));
      sum += moment ? q * Math.cos(a - theta) : q;
    }
    return sum;
  }
}
