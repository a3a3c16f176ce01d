package pilefolio.analysis.staged;

/**
 * Five Gauss points in each element, its two ends without weight, and the cubic shape functions
 * there. Products of two shape functions and a linear modulus are integrated exactly, and a change
 * from elastic to plastic inside an element is seen where it happens. The ends only remember
 * plastic movement, so that pressures can be reported there.
 */
final class GaussPoints {
  static final int COUNT = 7;
  private static final double INNER = Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3;
  private static final double OUTER = Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3;

  /** Places in an element of length 1, from its top. */
  static final double[] AT = {
    0, (1 - OUTER) / 2, (1 - INNER) / 2, 0.5, (1 + INNER) / 2, (1 + OUTER) / 2, 1
  };

  /** Weights in an element of length 1. */
  static final double[] WEIGHT = {
    0,
    (322 - 13 * Math.sqrt(70)) / 1800,
    (322 + 13 * Math.sqrt(70)) / 1800,
    64.0 / 225,
    (322 + 13 * Math.sqrt(70)) / 1800,
    (322 - 13 * Math.sqrt(70)) / 1800,
    0
  };

  // Displacement at a point = N1·y1 + N2·h·θ1 + N3·y2 + N4·h·θ2.
  static final double[] N1 = new double[COUNT];
  static final double[] N2 = new double[COUNT];
  static final double[] N3 = new double[COUNT];
  static final double[] N4 = new double[COUNT];

  static {
    for (int g = 0; g < COUNT; g++) {
      double s = AT[g];
      N1[g] = 1 - s * s * (3 - 2 * s);
      N2[g] = s * (1 - s) * (1 - s);
      N3[g] = s * s * (3 - 2 * s);
      N4[g] = s * s * (s - 1);
    }
  }

  private GaussPoints() {}
}
