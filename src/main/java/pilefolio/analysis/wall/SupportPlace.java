package pilefolio.analysis.wall;

import java.util.Locale;

/** Whether a support can hold the wall where it is. */
final class SupportPlace {
  private SupportPlace() {}

  /** A support that does not lie on the exposed wall; null if it does. */
  static NoEquilibrium offWall(WallLoading loading, double supportLevel) {
    double exc = loading.excavationLevel();
    double top = loading.acting(loading.searchBottom()).topLevel();
    if (!(supportLevel > exc && supportLevel <= top)) {
      return new NoEquilibrium(
          NoEquilibrium.Cause.SUPPORT_OFF_WALL,
          String.format(
              Locale.ROOT,
              "the support at level %.2f m does not lie between the excavation at %.2f m and the"
                  + " ground behind at %.2f m",
              supportLevel,
              exc,
              top));
    }
    return null;
  }

  /** What is wrong with the place of a support; null if nothing is. */
  static NoEquilibrium fault(WallLoading loading, double supportLevel) {
    NoEquilibrium off = offWall(loading, supportLevel);
    if (off != null) {
      return off;
    }
    double exc = loading.excavationLevel();
    NetPressure exposed = loading.acting(exc);
    double about = exposed.momentAbout(supportLevel);
    if (about > 0) {
      return new NoEquilibrium(
          NoEquilibrium.Cause.SUPPORT_TOO_LOW,
          String.format(
              Locale.ROOT,
              "the pressure above the support at level %.2f m turns the wall about it by"
                  + " %.1f kNm/m more than the pressure below holds it",
              supportLevel,
              about));
    }
    return null;
  }

  static NoEquilibrium unloaded(double support) {
    return new NoEquilibrium(
        NoEquilibrium.Cause.SUPPORT_UNLOADED,
        String.format(
            Locale.ROOT,
            "equilibrium would need a support that pushes the wall into the excavation with"
                + " %.1f kN/m",
            -support));
  }
}
