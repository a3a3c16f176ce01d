package pilefolio.output.figure;

import java.util.Collection;
import pilefolio.submittal.figure.Curve;

/** Grows to hold every value shown. */
final class Range {
  private double low = Double.MAX_VALUE;
  private double high = -Double.MAX_VALUE;

  Range add(double value) {
    low = Math.min(low, value);
    high = Math.max(high, value);
    return this;
  }

  Range addX(Collection<Curve> curves) {
    curves.forEach(curve -> curve.points().forEach(point -> add(point.x())));
    return this;
  }

  Range addY(Collection<Curve> curves) {
    curves.forEach(curve -> curve.points().forEach(point -> add(point.y())));
    return this;
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }
}
