package pilefolio.analysis.earth;

/**
 * A stretch of one side over which the pressure is linear.
 *
 * @param top values at its top, as seen from inside the stretch
 * @param bottom values at its bottom, as seen from inside the stretch
 */
public record PressureSegment(PressureNode top, PressureNode bottom) {

  /** Pressure at a level within the stretch, kPa, factored. */
  public double pressureAt(double level) {
    double h = top.level() - bottom.level();
    double t = (top.level() - level) / h;
    return top.pressure() + t * (bottom.pressure() - top.pressure());
  }

  /** The same stretch acting on shares of the length of wall. */
  PressureSegment on(double earthShare, double waterShare) {
    return new PressureSegment(top.on(earthShare, waterShare), bottom.on(earthShare, waterShare));
  }
}
