package pilefolio.analysis.apparent;

import java.util.ArrayList;
import java.util.List;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.analysis.wall.NetSegment;

/**
 * An envelope of measured support loads drawn as a pressure: a ramp from nothing at the ground
 * surface, a constant stretch, and a ramp back to nothing at the excavation level. A ramp of no
 * height starts or ends the envelope abruptly. It is no pressure that acts at one time.
 *
 * @param topLevel level of the ground surface behind, m
 * @param bottomLevel excavation level, m
 * @param ordinate greatest pressure, kPa, more than zero
 * @param topRamp height of the ramp at the top, m
 * @param bottomRamp height of the ramp at the bottom, m
 */
public record ApparentEnvelope(
    double topLevel, double bottomLevel, double ordinate, double topRamp, double bottomRamp) {

  public ApparentEnvelope {
    if (!(topLevel > bottomLevel)) {
      throw new OutsideRange("the ground behind must stand above the excavation");
    }
    if (!(ordinate > 0)) {
      throw new OutsideRange("the ordinate of an envelope must be more than zero");
    }
    if (!(topRamp >= 0 && bottomRamp >= 0)
        || topRamp + bottomRamp > (topLevel - bottomLevel) * (1 + 1e-9)) {
      throw new OutsideRange("the ramps of an envelope do not fit in its height");
    }
  }

  /** Height of the excavation, m. */
  public double height() {
    return topLevel - bottomLevel;
  }

  /** Resultant, kN/m. */
  public double force() {
    return ordinate * (height() - topRamp / 2 - bottomRamp / 2);
  }

  /** Pressure at a level, kPa; zero outside. At an abrupt end the inner value. */
  public double at(double level) {
    if (level > topLevel || level < bottomLevel) {
      return 0;
    }
    double fromTop = topLevel - level;
    double fromBottom = level - bottomLevel;
    if (fromTop < topRamp) {
      return ordinate * fromTop / topRamp;
    }
    return fromBottom < bottomRamp ? ordinate * fromBottom / bottomRamp : ordinate;
  }

  /** The envelope as a pressure on the wall. */
  public NetPressure pressure() {
    double upper = topLevel - topRamp;
    double lower = bottomLevel + bottomRamp;
    List<NetSegment> out = new ArrayList<>();
    if (topRamp > 0) {
      out.add(new NetSegment(topLevel, upper, 0, ordinate));
    }
    if (upper - lower > 1e-9) {
      out.add(new NetSegment(upper, lower, ordinate, ordinate));
    }
    if (bottomRamp > 0) {
      out.add(new NetSegment(upper - lower > 1e-9 ? lower : upper, bottomLevel, ordinate, 0));
    }
    return new NetPressure(out);
  }
}
