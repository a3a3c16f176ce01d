package pilefolio.analysis.stability;

/**
 * A circle along which ground may slide.
 *
 * @param x centre, m
 * @param y level of the centre, m
 * @param radius m
 * @param exit x at which it leaves the ground in front, m
 * @param entry x at which it starts on the retained side, m
 */
public record SlipCircle(double x, double y, double radius, double exit, double entry) {

  /** Level of the slip surface at a distance, m; the lower half of the circle. */
  public double level(double at) {
    double d = at - x;
    return y - Math.sqrt(Math.max(0, radius * radius - d * d));
  }

  /** Angle of the slip surface at a distance, rad, positive where it rises towards the entry. */
  public double angle(double at) {
    return Math.asin(Math.max(-1, Math.min(1, (at - x) / radius)));
  }

  /** Lowest level between exit and entry, m. */
  public double lowest() {
    return x >= exit && x <= entry ? y - radius : Math.min(level(exit), level(entry));
  }

  /** Mean level of the slip surface between two distances, m; exact. */
  public double meanLevel(double from, double to) {
    return y - (integral(to - x) - integral(from - x)) / (to - from);
  }

  private double integral(double d) {
    double ratio = Math.max(-1, Math.min(1, d / radius));
    return (d * Math.sqrt(Math.max(0, radius * radius - d * d))
            + radius * radius * Math.asin(ratio))
        / 2;
  }

  /**
   * The circle through two points of the surface with half the angle between them at the centre.
   */
  static SlipCircle through(GroundLine.Point exit, GroundLine.Point entry, double halfAngleRad) {
    double dx = entry.x() - exit.x();
    double dy = entry.level() - exit.level();
    double chord = Math.hypot(dx, dy);
    double offset = chord / 2 / Math.tan(halfAngleRad);
    return new SlipCircle(
        (exit.x() + entry.x()) / 2 - offset * dy / chord,
        (exit.level() + entry.level()) / 2 + offset * dx / chord,
        chord / 2 / Math.sin(halfAngleRad),
        exit.x(),
        entry.x());
  }
}
