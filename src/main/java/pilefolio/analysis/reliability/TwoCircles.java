package pilefolio.analysis.reliability;

/**
 * Two pile sections cut by one horizontal plane, at their true centre distance. Any one length unit
 * may be used for all three numbers; areas are in its square. Plane geometry, no citation needed.
 *
 * @param firstDiameter diameter of one pile, above zero
 * @param secondDiameter diameter of the other pile, above zero
 * @param distance true distance of the centres, zero or more
 */
public record TwoCircles(double firstDiameter, double secondDiameter, double distance) {

  /** How the two circles lie to each other. */
  public enum Contact {
    /** The circles do not meet. */
    APART,
    /** The circles cut each other in a chord. */
    CUTTING,
    /** The smaller circle lies wholly inside the larger one. */
    ENCLOSED
  }

  /**
   * Checks the dimensions.
   *
   * @throws IllegalArgumentException if a diameter is not above zero or the distance is negative
   */
  public TwoCircles {
    if (!(firstDiameter > 0) || !(secondDiameter > 0) || !(distance >= 0)) {
      throw new IllegalArgumentException(
          "diameters must be above zero and the distance zero or more: "
              + firstDiameter
              + ", "
              + secondDiameter
              + ", "
              + distance);
    }
  }

  /**
   * The section of two neighbours set out at a spacing and then moved against each other.
   *
   * @param firstDiameter diameter of one pile
   * @param secondDiameter diameter of the other pile
   * @param spacing spacing as set out
   * @param along relative movement along the wall, positive apart
   * @param across relative movement across the wall
   * @return the section at the true distance
   */
  public static TwoCircles moved(
      double firstDiameter, double secondDiameter, double spacing, double along, double across) {
    return new TwoCircles(firstDiameter, secondDiameter, Math.hypot(spacing + along, across));
  }

  private double larger() {
    return Math.max(firstDiameter, secondDiameter) / 2;
  }

  private double smaller() {
    return Math.min(firstDiameter, secondDiameter) / 2;
  }

  /**
   * Whether the circles are apart, cut each other or one lies inside the other.
   *
   * @return the kind of contact; circles that only touch count as apart
   */
  public Contact contact() {
    if (distance >= larger() + smaller()) {
      return Contact.APART;
    }
    return distance <= larger() - smaller() ? Contact.ENCLOSED : Contact.CUTTING;
  }

  /**
   * Overlap measured on the line of centres; negative is the gap.
   *
   * @return overlap in the length unit used
   */
  public double overlap() {
    return larger() + smaller() - distance;
  }

  /**
   * Length of the common chord: the thickness of the joint. Equal circles on one centre share a
   * whole diameter.
   *
   * @return the chord; zero if the circles are apart
   * @throws IllegalStateException if one circle lies inside the other, so that no chord exists
   */
  public double chord() {
    if (contact() == Contact.APART) {
      return 0;
    }
    if (distance == 0 && firstDiameter == secondDiameter) {
      return firstDiameter;
    }
    refuseEnclosure();
    double offset =
        (distance * distance - smaller() * smaller() + larger() * larger()) / (2 * distance);
    return 2 * Math.sqrt(Math.max(0, larger() * larger() - offset * offset));
  }

  /**
   * Area common to both circles: what the second pile cuts from the first.
   *
   * @return the area; zero if apart, the whole smaller circle if equal circles coincide
   * @throws IllegalStateException if one circle lies inside the other
   */
  public double commonArea() {
    double d = distance;
    double r = smaller();
    double rr = larger();
    if (contact() == Contact.APART) {
      return 0;
    }
    if (d == 0 && firstDiameter == secondDiameter) {
      return Math.PI * r * r;
    }
    refuseEnclosure();
    double kite = (-d + r + rr) * (d + r - rr) * (d - r + rr) * (d + r + rr);
    return r * r * Math.acos((d * d + r * r - rr * rr) / (2 * d * r))
        + rr * rr * Math.acos((d * d + rr * rr - r * r) / (2 * d * rr))
        - Math.sqrt(Math.max(0, kite)) / 2;
  }

  /**
   * Thickness of a plain wall with the same area as one period of the secant wall, which is twice
   * the spacing long and holds one pile of each kind.
   *
   * @return the average thickness
   * @throws IllegalStateException if one circle lies inside the other
   */
  public double averageThickness() {
    return (Math.PI * (larger() * larger() + smaller() * smaller()) - 2 * commonArea())
        / (2 * distance);
  }

  /**
   * Angle by which the chord is turned from the normal of the wall.
   *
   * @param spacing spacing as set out
   * @param along relative movement along the wall
   * @param across relative movement across the wall
   * @return the angle in radians
   */
  public static double chordTurn(double spacing, double along, double across) {
    return Math.atan(across / (spacing + along));
  }

  private void refuseEnclosure() {
    if (contact() == Contact.ENCLOSED) {
      throw new IllegalStateException(
          "one pile lies wholly inside the other at a centre distance of " + distance);
    }
  }
}
