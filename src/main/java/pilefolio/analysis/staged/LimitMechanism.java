package pilefolio.analysis.staged;

import java.util.Locale;
import java.util.Optional;

/**
 * Looks for a movement of the wall as a rigid body in which the limits of pressure cannot hold it:
 * a turn about any point, or a slide. Supports that would have to give way rule a movement out.
 */
final class LimitMechanism {
  private static final int REFINE = 40;
  private static final double FAR = 1e4;
  private final StageEquations equations;
  private final WallStage stage;
  private final WallMesh mesh;

  private record Turn(double pivot, int sign, double driving, double resisting) {
    double ratio() {
      return driving == 0 ? 0 : resisting == 0 ? Double.POSITIVE_INFINITY : driving / resisting;
    }
  }

  /** The mechanism, a sentence about it and its numbers. */
  record Found(Mechanism mechanism, String reason, Failure failure) {}

  LimitMechanism(StageEquations equations, WallStage stage) {
    this.equations = equations;
    this.stage = stage;
    mesh = equations.mesh();
  }

  /** The movement in which resistance falls shortest of what drives it, if it does. */
  Optional<Found> find(double tolerance) {
    double length = mesh.top() - mesh.toe();
    Turn best = new Turn(0, 0, 0, 1);
    for (int sign = -1; sign <= 1; sign += 2) {
      for (int node = 0; node < mesh.nodes(); node++) {
        best = better(best, turn(mesh.level(node), sign));
      }
      for (double out = 0.02; out < 20; out *= 1.5) {
        best = better(best, turn(mesh.top() + out * length, sign));
        best = better(best, turn(mesh.toe() - out * length, sign));
      }
      best = better(best, turn(mesh.toe() - FAR * length, sign));
    }
    if (best.sign() == 0) {
      return Optional.empty();
    }
    double width = mesh.length(0);
    for (int e = 1; e < mesh.elements(); e++) {
      width = Math.max(width, mesh.length(e));
    }
    for (int i = 0; i < REFINE; i++) {
      best = better(best, turn(best.pivot() + width, best.sign()));
      best = better(best, turn(best.pivot() - width, best.sign()));
      width *= 0.7;
    }
    return best.ratio() >= 1 - tolerance ? Optional.of(named(best)) : Optional.empty();
  }

  private static Turn better(Turn a, Turn b) {
    return b.ratio() > a.ratio() ? b : a;
  }

  // Positive: what lies above the pivot moves toward the excavation.
  private Turn turn(double pivot, int sign) {
    double scale = Math.max(Math.abs(mesh.top() - pivot), Math.abs(mesh.toe() - pivot));
    double driving = 0;
    double resisting = 0;
    Turn barred = new Turn(pivot, sign, 0, 1);
    for (SupportSpring s : equations.supports()) {
      double r = sign * (mesh.level(s.node()) - pivot) / scale;
      if (s.placing() || s.support().stiffness() == 0) {
        double work = -s.lockedForce() * r;
        driving += Math.max(0, work);
        resisting += Math.max(0, -work);
      } else if (r > 1e-6
          || (r < -1e-6 && s.support().action() == ElasticSupport.Action.BOTH_WAYS)) {
        return barred;
      }
    }
    double rToe = sign * (mesh.toe() - pivot) / scale;
    boolean turns = Math.abs(pivot - mesh.toe()) < 0.5 * FAR * (mesh.top() - mesh.toe());
    switch (equations.toe()) {
      case FIXED -> {
        return barred;
      }
      case PINNED -> {
        if (Math.abs(rToe) > 1e-6) {
          return barred;
        }
      }
      case GUIDED -> {
        if (turns) {
          return barred;
        }
      }
      case FREE -> {}
    }
    int p = 0;
    for (int e = 0; e < mesh.elements(); e++) {
      double h = mesh.length(e);
      for (int g = 0; g < GaussPoints.COUNT; g++, p++) {
        double r = sign * (mesh.level(e) - GaussPoints.AT[g] * h - pivot) / scale;
        double w = GaussPoints.WEIGHT[g] * h * r;
        double back = limit(equations.behind(), p, r < 0) + equations.behind().water[p];
        double ahead = limit(equations.front(), p, r > 0) + equations.front().water[p];
        if (!Double.isFinite(back) || !Double.isFinite(ahead)) {
          return barred;
        }
        double fromBehind = w * (back + equations.loadPressure(p));
        double fromFront = -w * ahead;
        driving += Math.max(0, fromBehind) + Math.max(0, fromFront);
        resisting += Math.max(0, -fromBehind) + Math.max(0, -fromFront);
      }
    }
    for (int i = 0; i < mesh.nodes(); i++) {
      double r = sign * (mesh.level(i) - pivot) / scale;
      double work = equations.lineLoad(i) * r + sign * equations.pointMoment(i) / scale;
      driving += Math.max(0, work);
      resisting += Math.max(0, -work);
    }
    return new Turn(pivot, sign, driving, resisting);
  }

  private static double limit(SideSprings side, int point, boolean pressed) {
    if (side.modulus[point] == 0) {
      return Math.max(side.active[point], Math.min(side.passive[point], side.atRest[point]));
    }
    return pressed ? side.passive[point] : side.active[point];
  }

  private Found named(Turn t) {
    Found found = words(t);
    boolean slides = found.mechanism() == Mechanism.TRANSLATION;
    double scale =
        slides ? 1 : Math.max(Math.abs(mesh.top() - t.pivot()), Math.abs(mesh.toe() - t.pivot()));
    return new Found(
        found.mechanism(),
        found.reason(),
        new Failure(t.pivot(), scale * t.driving(), scale * t.resisting()));
  }

  private Found words(Turn t) {
    double length = mesh.top() - mesh.toe();
    String share =
        String.format(Locale.ROOT, "%.0f %%", Double.isInfinite(t.ratio()) ? 0 : 100 / t.ratio());
    for (SupportSpring s : equations.supports()) {
      double level = mesh.level(s.node());
      if (!s.placing() && s.support().stiffness() > 0 && Math.abs(level - t.pivot()) < 1e-3) {
        return new Found(
            Mechanism.ROTATION_ABOUT_SUPPORT,
            String.format(
                Locale.ROOT,
                "the wall turns about support %s: the ground in front of its foot holds %s of the"
                    + " moment that drives it out",
                s.support().id(),
                share),
            Failure.NONE);
      }
    }
    boolean lifts =
        equations.supports().stream()
            .anyMatch(
                s ->
                    !s.placing()
                        && s.support().stiffness() > 0
                        && t.sign() * (mesh.level(s.node()) - t.pivot()) < 0);
    if (lifts) {
      return new Found(
          Mechanism.SUPPORT_LOST,
          String.format(
              Locale.ROOT,
              "the wall moves away from its supports, which cannot hold it that way: what is left"
                  + " resists %s of the drive",
              share),
          Failure.NONE);
    }
    if (t.pivot() < mesh.toe() - 5 * length || t.pivot() > mesh.top() + 5 * length) {
      return new Found(
          Mechanism.TRANSLATION,
          String.format(
              Locale.ROOT,
              "the wall slides as a whole: the ground in front resists %s of the force that drives"
                  + " it",
              share),
          Failure.NONE);
    }
    if (t.sign() > 0 && t.pivot() < stage.excavationLevel()) {
      return new Found(
          Mechanism.ROTATION_ABOUT_FOOT,
          String.format(
              Locale.ROOT,
              "the wall tips over about a point at level %.2f m: the ground resists %s of the"
                  + " moment that drives it",
              t.pivot(),
              share),
          Failure.NONE);
    }
    return new Found(
        Mechanism.FOOT_SLIDES_OUT,
        String.format(
            Locale.ROOT,
            "the foot slides out, turning about level %.2f m: the ground in front resists %s of"
                + " the moment that drives it",
            t.pivot(),
            share),
        Failure.NONE);
  }
}
