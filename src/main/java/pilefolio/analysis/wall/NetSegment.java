package pilefolio.analysis.wall;

/**
 * A stretch of linear net pressure; positive pushes toward the excavation.
 *
 * @param topLevel level of its top, m
 * @param bottomLevel level of its bottom, m
 * @param topPressure pressure at its top, kPa
 * @param bottomPressure pressure at its bottom, kPa
 */
public record NetSegment(
    double topLevel, double bottomLevel, double topPressure, double bottomPressure) {

  /** Height, m. */
  public double height() {
    return topLevel - bottomLevel;
  }

  /** Pressure at a level inside, kPa. */
  public double at(double level) {
    if (height() == 0) {
      return topPressure;
    }
    return topPressure + (bottomPressure - topPressure) * (topLevel - level) / height();
  }

  /** Resultant, kN/m. */
  public double force() {
    return (topPressure + bottomPressure) / 2 * height();
  }

  /** Moment of the resultant about a level, kNm/m; positive for a force above that level. */
  public double momentAbout(double level) {
    double a = topLevel - level;
    double b = bottomLevel - level;
    return height() / 6 * (topPressure * (2 * a + b) + bottomPressure * (a + 2 * b));
  }

  NetSegment between(double upper, double lower) {
    return new NetSegment(upper, lower, at(upper), at(lower));
  }
}
