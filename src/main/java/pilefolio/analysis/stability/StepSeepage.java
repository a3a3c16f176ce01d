package pilefolio.analysis.stability;

import java.util.function.DoubleUnaryOperator;
import pilefolio.analysis.earth.OutsideRange;

/**
 * Steady seepage under an impermeable wall in deep uniform isotropic ground whose surface stands
 * higher on one side: exact, by conformal mapping.
 *
 * <p>With ζ = u + iv the section is z = A·(sinh ζ − b·ζ), x = A·(sinh u·cos v − b·u) in front of
 * the wall and depth below the ground in front = A·(cosh u·sin v − b·v); the head above the one in
 * front is h·v/π. On the wall u = 0; the tip lies where cos v = b. For equal levels b = 0 and the
 * equipotentials are confocal hyperbolas.
 *
 * @param front depth of the tip below the surface where water leaves, m, more than zero
 * @param behind depth of the tip below the surface where water enters, m, not less than {@code
 *     front}
 * @param headLoss difference of head h, m, zero or more
 * @param tipAngleRad v at the tip, more than 0 and not more than π/2
 */
public record StepSeepage(double front, double behind, double headLoss, double tipAngleRad) {
  private static final int STEPS = 400;
  private static final int HALVINGS = 80;

  /**
   * Solves a section.
   *
   * @param front depth of the tip below the surface where water leaves, m
   * @param behind depth of the tip below the surface where water enters, m
   * @param headLoss difference of head, m
   * @throws OutsideRange if the depths are not positive or water enters lower than it leaves
   */
  public static StepSeepage of(double front, double behind, double headLoss) {
    if (!(front > 0 && behind >= front && headLoss >= 0)) {
      throw new OutsideRange(
          "seepage needs embedment in front, and as much or more behind, and a head of zero or more");
    }
    // front/behind = (sin v − v·cos v)/(sin v + (π − v)·cos v) grows from 0 to 1 with v.
    double tip =
        bisect(
            v -> tipDepth(v) * behind - (tipDepth(v) + Math.PI * Math.cos(v)) * front,
            0,
            Math.PI / 2);
    return new StepSeepage(front, behind, headLoss, tip);
  }

  private static double tipDepth(double v) {
    return Math.sin(v) - v * Math.cos(v);
  }

  /** b of the mapping. */
  public double shift() {
    return Math.cos(tipAngleRad);
  }

  /** A of the mapping, m. */
  public double scale() {
    return front / tipDepth(tipAngleRad);
  }

  /** Head at the tip above the head in front, m. */
  public double headAtTip() {
    return headLoss * tipAngleRad / Math.PI;
  }

  /** Upward gradient where the wall meets the ground in front. */
  public double exitGradient() {
    return headLoss / (Math.PI * scale() * (1 - shift()));
  }

  /**
   * A point on the level of the tip.
   *
   * @param u first coordinate of the mapping
   * @param v second coordinate
   * @param x distance from the wall, m
   * @param head head above the one in front, m
   */
  public record Point(double u, double v, double x, double head) {}

  /**
   * The point on the level of the tip with a given u.
   *
   * @param u zero or more
   */
  public Point atTipLevel(double u) {
    double target = front / scale();
    double b = shift();
    double cosh = Math.cosh(u);
    double v =
        u == 0
            ? tipAngleRad
            : bisect(w -> cosh * Math.sin(w) - b * w - target, 0, Math.acos(b / cosh));
    return new Point(u, v, scale() * (Math.sinh(u) * Math.cos(v) - b * u), headLoss * v / Math.PI);
  }

  /**
   * The point on the level of the tip at a distance from the wall.
   *
   * @param x distance, m, more than zero
   */
  public Point atDistance(double x) {
    double far = 1;
    while (atTipLevel(far).x() < x) {
      far *= 2;
    }
    return atTipLevel(bisect(w -> atTipLevel(w).x() - x, 0, far));
  }

  /**
   * Mean head above the one in front on the level of the tip, from the wall to half its depth, m.
   */
  public double meanHeadUnderPrism() {
    double last = atDistance(front / 2).u();
    double area = 0;
    Point previous = atTipLevel(0);
    for (int i = 1; i <= STEPS; i++) {
      Point next = atTipLevel(last * i / STEPS);
      area += (previous.head() + next.head()) / 2 * (next.x() - previous.x());
      previous = next;
    }
    return area / (front / 2);
  }

  /** The root of a function that grows from below zero to above it. */
  private static double bisect(DoubleUnaryOperator f, double low, double high) {
    double a = low;
    double b = high;
    for (int i = 0; i < HALVINGS; i++) {
      double m = (a + b) / 2;
      if (f.applyAsDouble(m) > 0) {
        b = m;
      } else {
        a = m;
      }
    }
    return (a + b) / 2;
  }
}
