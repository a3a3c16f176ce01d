package pilefolio.analysis.apparent;

import pilefolio.analysis.earth.OutsideRange;

/**
 * Envelopes for braced excavations after Terzaghi and Peck (1967) and Peck (1969). They were drawn
 * from strut loads of cuts deeper than some 6 m with the water drawn down; water pressure is added
 * separately.
 */
public final class StrutEnvelopes {
  private static final double SAND = 0.65;
  private static final double LEAST_STIFF = 0.2;
  private static final double MOST_STIFF = 0.4;
  private static final double SOFT_MINIMUM = 0.3;
  private static final double QUARTER = 0.25;

  private StrutEnvelopes() {}

  /**
   * Sand: 0.65·K_a·γ·H over the whole height.
   *
   * @param top ground level behind, m
   * @param excavation excavation level, m
   * @param gamma unit weight, kN/m³; the effective one below water
   * @param kA active coefficient
   */
  public static ApparentEnvelope sand(double top, double excavation, double gamma, double kA) {
    return new ApparentEnvelope(top, excavation, SAND * kA * gamma * (top - excavation), 0, 0);
  }

  /**
   * Stiff clay: a trapezoid of 0.2 to 0.4·γ·H between ramps of H/4.
   *
   * @param share ordinate over γ·H
   * @throws OutsideRange if the share lies outside 0.2 to 0.4
   */
  public static ApparentEnvelope stiffClay(
      double top, double excavation, double gamma, double share) {
    if (!(share >= LEAST_STIFF && share <= MOST_STIFF)) {
      throw new OutsideRange(
          "the ordinate of the diagram for stiff clay lies between 0.2 and 0.4·γ·H, not " + share);
    }
    double h = top - excavation;
    return new ApparentEnvelope(top, excavation, share * gamma * h, QUARTER * h, QUARTER * h);
  }

  /**
   * Coefficient of the ordinate in soft to medium clay: 1 − m·4·c/(γ·H).
   *
   * @param stabilityNumber γ·H/c, more than zero
   * @param m 1 as a rule; 0.4 where soft clay continues below the base
   */
  public static double softClayCoefficient(double stabilityNumber, double m) {
    if (!(m >= 0.4 && m <= 1)) {
      throw new OutsideRange("the factor m lies between 0.4 and 1, not " + m);
    }
    return 1 - 4 * m / stabilityNumber;
  }

  /**
   * Soft to medium clay: the greater of γ·H − 4·m·c and 0.3·γ·H below a ramp of H/4 at the top.
   *
   * @param coefficient ordinate over γ·H, such as {@link #softClayCoefficient}
   */
  public static ApparentEnvelope softClay(
      double top, double excavation, double gamma, double coefficient) {
    double h = top - excavation;
    return new ApparentEnvelope(
        top, excavation, Math.max(coefficient, SOFT_MINIMUM) * gamma * h, QUARTER * h, 0);
  }
}
