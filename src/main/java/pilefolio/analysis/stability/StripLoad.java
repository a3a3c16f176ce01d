package pilefolio.analysis.stability;

import pilefolio.analysis.earth.OutsideRange;

/**
 * A load on a strip of the ground surface.
 *
 * @param from edge at small x, m
 * @param to edge at large x, m; may be infinite
 * @param pressure load, kPa, zero or more
 * @param variable true if it may be absent: it is then left out where it would hold the ground back
 */
public record StripLoad(double from, double to, double pressure, boolean variable) {
  public StripLoad {
    if (!(to > from && pressure >= 0)) {
      throw new OutsideRange("a strip has a width, and its load is zero or more");
    }
  }
}
