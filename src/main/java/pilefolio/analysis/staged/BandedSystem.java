package pilefolio.analysis.staged;

import java.util.Arrays;

/** A symmetric system of equations with three entries beside the diagonal, solved by LDLᵀ. */
final class BandedSystem {
  private static final int BAND = 4;
  private final int size;
  // a[BAND·i + j] is the entry in row i, column i − j.
  private final double[] a;

  BandedSystem(int size) {
    this.size = size;
    a = new double[BAND * size];
  }

  void clear() {
    Arrays.fill(a, 0);
  }

  /** Adds to the entry in a row and a column no greater than the row. */
  void add(int row, int column, double value) {
    a[BAND * row + row - column] += value;
  }

  /** Makes the unknown nil whatever the right-hand side. */
  void hold(int unknown) {
    for (int j = 1; j < BAND; j++) {
      a[BAND * unknown + j] = 0;
      if (unknown + j < size) {
        a[BAND * (unknown + j) + j] = 0;
      }
    }
    a[BAND * unknown] = 1;
  }

  /** Factorises in place; false if a pivot is not clearly positive. */
  boolean factorise(double leastPivot) {
    for (int i = 0; i < size; i++) {
      int at = BAND * i;
      double diagonal = a[at];
      double pivot = diagonal;
      int first = Math.max(0, i - BAND + 1);
      for (int k = first; k < i; k++) {
        // l holds L·D until it is divided by the pivot of its column.
        double sum = a[at + i - k];
        for (int m = first; m < k; m++) {
          if (k - m < BAND) {
            sum -= a[at + i - m] * a[BAND * k + k - m];
          }
        }
        a[at + i - k] = sum;
      }
      for (int k = first; k < i; k++) {
        double ld = a[at + i - k];
        double l = ld / a[BAND * k];
        pivot -= ld * l;
        a[at + i - k] = l;
      }
      if (!(pivot > leastPivot * diagonal)) {
        return false;
      }
      a[at] = pivot;
    }
    return true;
  }

  /** Solves with the factors; the right-hand side becomes the solution. */
  void solve(double[] b) {
    for (int i = 0; i < size; i++) {
      double sum = b[i];
      for (int j = 1; j < BAND && j <= i; j++) {
        sum -= a[BAND * i + j] * b[i - j];
      }
      b[i] = sum;
    }
    for (int i = 0; i < size; i++) {
      b[i] /= a[BAND * i];
    }
    for (int i = size - 1; i >= 0; i--) {
      double sum = b[i];
      for (int j = 1; j < BAND && i + j < size; j++) {
        sum -= a[BAND * (i + j) + j] * b[i + j];
      }
      b[i] = sum;
    }
  }
}
