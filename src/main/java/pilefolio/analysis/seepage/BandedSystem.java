package pilefolio.analysis.seepage;

/** Symmetric positive definite equations with a narrow band, solved by Cholesky's method. */
final class BandedSystem {
  private final int size;
  private final int band;
  // Row i holds columns i - band to i; the last entry is the diagonal.
  private final double[][] rows;
  private final double[] right;

  BandedSystem(int size, int band) {
    this.size = size;
    this.band = band;
    rows = new double[size][band + 1];
    right = new double[size];
  }

  /** Joins two unknowns by a conductance. */
  void join(int i, int j, double conductance) {
    rows[i][band] += conductance;
    rows[j][band] += conductance;
    int low = Math.min(i, j);
    int high = Math.max(i, j);
    rows[high][band - (high - low)] -= conductance;
  }

  /** Joins an unknown to a given value by a conductance. */
  void tie(int i, double conductance, double value) {
    rows[i][band] += conductance;
    right[i] += conductance * value;
  }

  /** Solves; the matrix is used up. */
  double[] solve() {
    for (int i = 0; i < size; i++) {
      double[] ri = rows[i];
      int first = Math.max(0, i - band);
      for (int j = first; j < i; j++) {
        double[] rj = rows[j];
        double sum = ri[band - i + j];
        int from = Math.max(first, j - band);
        int a = band - i + from;
        int b = band - j + from;
        for (int k = from; k < j; k++) {
          sum -= ri[a++] * rj[b++];
        }
        ri[band - i + j] = sum / rj[band];
      }
      double d = ri[band];
      for (int k = first; k < i; k++) {
        double v = ri[band - i + k];
        d -= v * v;
      }
      ri[band] = Math.sqrt(d);
    }
    double[] x = new double[size];
    for (int i = 0; i < size; i++) {
      double sum = right[i];
      for (int k = Math.max(0, i - band); k < i; k++) {
        sum -= rows[i][band - i + k] * x[k];
      }
      x[i] = sum / rows[i][band];
    }
    for (int i = size - 1; i >= 0; i--) {
      x[i] /= rows[i][band];
      for (int k = Math.max(0, i - band); k < i; k++) {
        x[k] -= rows[i][band - i + k] * x[i];
      }
    }
    return x;
  }
}
