package pilefolio.analysis.staged;

/** A load on the wall itself, per metre of wall. */
public sealed interface DirectLoad {

  /**
   * A pressure that varies linearly between two levels.
   *
   * @param upper upper level, m
   * @param lower lower level, m
   * @param atUpper pressure there, kPa, positive toward the excavation
   * @param atLower pressure there, kPa
   */
  record Pressure(double upper, double lower, double atUpper, double atLower)
      implements DirectLoad {

    public Pressure {
      if (!(upper > lower)) {
        throw new IllegalArgumentException("a pressure needs an upper level above its lower one");
      }
    }
  }

  /**
   * A horizontal line load.
   *
   * @param level level, m
   * @param force force, kN/m, positive toward the excavation
   */
  record Force(double level, double force) implements DirectLoad {}

  /**
   * A moment.
   *
   * @param level level, m
   * @param moment moment, kNm/m, positive if it puts tension on the retained side below its level
   */
  record Moment(double level, double moment) implements DirectLoad {}
}
