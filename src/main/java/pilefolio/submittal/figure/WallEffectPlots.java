package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.analysis.wall.PointForce;
import pilefolio.analysis.wall.WallStatics;
import pilefolio.checks.CheckResult;
import pilefolio.checks.Subject;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.WallRun;
import pilefolio.submittal.Answer;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.Curve.Role;
import pilefolio.submittal.figure.DepthPlotData.Extreme;
import pilefolio.submittal.figure.DepthPlotData.Panel;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/**
 * Shear and moment with depth in the situation with the greatest moment, and the worst combination
 * of the other stages beside it.
 */
final class WallEffectPlots {
  static final String CHECK = "wall-effects";
  private static final int STEPS = 12;
  private static final int MOST_OTHERS = 2;
  // Shear is asked for just below a level, where a force has already acted.
  private static final double JUST_BELOW = 1e-9;

  private WallEffectPlots() {}

  private record Effect(WallSolution solution, Equilibrium equilibrium, CheckResult printed) {
    double moment() {
      return printed.value("M_E");
    }

    DesignSituation situation() {
      return solution.situation();
    }
  }

  /** The plot; empty if no situation of the run has an equilibrium. */
  static Optional<DepthPlotData> of(Submittal submittal, WallRun run) {
    List<Effect> worst = worstOfStages(submittal, run);
    if (worst.isEmpty()) {
      return Optional.empty();
    }
    DrawingUnits units = new DrawingUnits(submittal.system());
    Effect governing = worst.get(0);
    DesignSituation s = governing.situation();
    return Optional.of(
        new DepthPlotData(
            "moments-" + run.id(),
            "Shear and moment with depth in run "
                + run.id()
                + ", per length of wall. The greatest moment stands in stage "
                + s.stage().number()
                + ", "
                + s.combination().id()
                + ".",
            units.scale("Level", Units.M),
            false,
            List.of(shear(units, worst), moment(units, worst)),
            marks(units, governing, RunDesign.of(submittal.job(), run))));
  }

  /** The combination with the greatest moment of each stage, the greatest of all first. */
  private static List<Effect> worstOfStages(Submittal submittal, WallRun run) {
    Map<Subject, CheckResult> printed = new LinkedHashMap<>();
    for (Answer answer : submittal.answers(CHECK)) {
      if (Results.sheet(answer.result(), "M_E").isPresent()) {
        printed.put(answer.result().subject(), answer.result());
      }
    }
    Map<Integer, Effect> stages = new LinkedHashMap<>();
    for (WallSolution solution : RunDesign.of(submittal.job(), run).solutions()) {
      CheckResult result = printed.get(solution.situation().subject());
      if (result != null && solution.equilibrium().isPresent()) {
        stages.merge(
            solution.situation().stage().number(),
            new Effect(solution, solution.equilibrium().get(), result),
            (a, b) -> b.moment() > a.moment() ? b : a);
      }
    }
    return stages.values().stream()
        .sorted(Comparator.comparingDouble(Effect::moment).reversed())
        .limit(1 + MOST_OTHERS)
        .toList();
  }

  private static Panel shear(DrawingUnits units, List<Effect> worst) {
    Effect governing = worst.get(0);
    WallStatics.ShearValue greatest = governing.equilibrium().statics().greatestShear();
    return new Panel(
        units.scale("Shear", Units.KN_M),
        curves(units, worst, Units.KN_M, WallEffectPlots::shearCurve),
        List.of(
            new Extreme(
                units.in(greatest.shear(), Units.KN_M),
                units.metres(greatest.level()),
                units.text(governing.printed().value("V_E"), Units.KN_M))));
  }

  private static Panel moment(DrawingUnits units, List<Effect> worst) {
    Effect governing = worst.get(0);
    WallStatics.Extreme greatest = governing.equilibrium().statics().governing();
    return new Panel(
        units.scale("Moment", Units.KNM_M),
        curves(units, worst, Units.KNM_M, WallEffectPlots::momentCurve),
        List.of(
            new Extreme(
                units.in(greatest.moment(), Units.KNM_M),
                units.metres(greatest.level()),
                units.text(governing.moment(), Units.KNM_M))));
  }

  private interface Line {
    List<Point> of(WallStatics statics);
  }

  private static List<Curve> curves(
      DrawingUnits units, List<Effect> worst, Unit declared, Line line) {
    Role[] roles = {Role.MAIN, Role.SECOND, Role.THIRD};
    List<Curve> curves = new ArrayList<>();
    // The governing curve is drawn last, on top.
    for (int i = worst.size() - 1; i >= 0; i--) {
      DesignSituation s = worst.get(i).situation();
      curves.add(
          new Curve(
              "stage " + s.stage().number() + ", " + s.combination().id(),
              roles[i],
              line.of(worst.get(i).equilibrium().statics()).stream()
                  .map(p -> new Point(units.in(p.x(), declared), units.metres(p.y())))
                  .toList()));
    }
    return curves;
  }

  private static List<Point> shearCurve(WallStatics statics) {
    List<Point> points = new ArrayList<>();
    points.add(new Point(0, statics.topLevel()));
    for (double[] piece : pieces(statics)) {
      for (int i = 0; i <= STEPS; i++) {
        double level = piece[0] + (piece[1] - piece[0]) * i / STEPS;
        double asked = i == 0 ? level - JUST_BELOW : level;
        points.add(new Point(statics.shearAt(asked), level));
      }
    }
    points.add(new Point(0, statics.toeLevel()));
    return points;
  }

  private static List<Point> momentCurve(WallStatics statics) {
    List<Point> points = new ArrayList<>();
    for (double[] piece : pieces(statics)) {
      for (int i = 0; i <= STEPS; i++) {
        double level = piece[0] + (piece[1] - piece[0]) * i / STEPS;
        points.add(new Point(statics.momentAt(level), level));
      }
    }
    return points;
  }

  /** Stretches between breaks of the pressure and concentrated forces, from the top down. */
  private static List<double[]> pieces(WallStatics statics) {
    TreeSet<Double> levels = new TreeSet<>();
    for (NetSegment s : statics.pressure().segments()) {
      levels.add(s.topLevel());
      levels.add(s.bottomLevel());
    }
    for (PointForce f : statics.forces()) {
      levels.add(f.level());
    }
    List<double[]> pieces = new ArrayList<>();
    Double upper = null;
    for (double lower : levels.descendingSet()) {
      if (upper == null || upper - lower > 2 * JUST_BELOW) {
        if (upper != null) {
          pieces.add(new double[] {upper, lower});
        }
        upper = lower;
      }
    }
    return pieces;
  }

  private static List<Mark> marks(DrawingUnits units, Effect governing, RunDesign design) {
    DesignSituation s = governing.situation();
    List<Mark> marks = new ArrayList<>();
    marks.add(units.level("ground", design.run().levels().retained().si()));
    s.supports().forEach(x -> marks.add(units.level("support", x.level().si())));
    marks.add(units.level("design excavation", s.designExcavation()));
    if (governing.equilibrium().supportForce().isEmpty()) {
      governing
          .equilibrium()
          .pivotLevel()
          .ifPresent(level -> marks.add(units.level("pivot", level)));
    }
    marks.add(units.level("toe in equilibrium", governing.equilibrium().toeLevel()));
    design.toe().ifPresent(level -> marks.add(units.level("toe of secondaries", level)));
    return marks;
  }
}
