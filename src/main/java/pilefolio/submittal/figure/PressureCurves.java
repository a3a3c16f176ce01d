package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.PressureNode;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.earth.WallPressures;
import pilefolio.analysis.wall.Equilibrium;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.checks.situation.WallSolution;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.Curve.Role;
import pilefolio.submittal.figure.SectionData.PressurePanel;
import pilefolio.units.Units;

/**
 * Pressures on a wall as curves, those from which its equilibrium is found: active behind and
 * passive in front down to the pivot, the reversed pair below it.
 *
 * @param units the units of the drawing
 */
record PressureCurves(DrawingUnits units) {

  /**
   * The panels of a solution: both sides, and the net pressure if there is equilibrium.
   *
   * @param builtToe level down to which pressures are drawn if there is no equilibrium, m
   */
  List<PressurePanel> panels(WallSolution solution, double builtToe) {
    List<PressurePanel> panels = new ArrayList<>();
    Optional<Equilibrium> equilibrium = solution.equilibrium();
    solution
        .loading()
        .ifPresent(
            l ->
                panels.add(
                    sides(
                        l.pressures(),
                        equilibrium.map(Equilibrium::toeLevel).orElse(builtToe),
                        equilibrium.map(PressureCurves::pivot).orElse(Double.NEGATIVE_INFINITY))));
    equilibrium.ifPresent(e -> panels.add(net(e.statics().pressure())));
    return panels;
  }

  private PressurePanel sides(WallPressures pressures, double toe, double pivot) {
    List<PressureSegment> behind =
        stacked(
            pressures.behind(Mobilisation.ACTIVE, toe),
            pressures.behind(Mobilisation.PASSIVE, toe),
            pivot);
    List<PressureSegment> front =
        stacked(
            pressures.front(Mobilisation.PASSIVE, toe),
            pressures.front(Mobilisation.ACTIVE, toe),
            pivot);
    List<Curve> left = new ArrayList<>();
    List<Curve> right = new ArrayList<>();
    left.add(curve("earth and water", Role.MAIN, behind, PressureNode::pressure));
    right.add(curve("earth and water", Role.MAIN, front, PressureNode::pressure));
    water(behind).ifPresent(left::add);
    water(front).ifPresent(right::add);
    return new PressurePanel(units.scale("On each side", Units.KPA), left, right);
  }

  private static double pivot(Equilibrium e) {
    // Of a supported wall the level is a hinge, and the pressures do not reverse there.
    return e.supportForce().isEmpty()
        ? e.pivotLevel().orElse(Double.NEGATIVE_INFINITY)
        : Double.NEGATIVE_INFINITY;
  }

  /** One diagram down to a level and another one below it. */
  private static List<PressureSegment> stacked(
      PressureDiagram upper, PressureDiagram lower, double level) {
    List<PressureSegment> all = new ArrayList<>();
    upper.segments().stream().map(s -> cut(s, s.top().level(), level)).forEach(all::addAll);
    lower.segments().stream().map(s -> cut(s, level, s.bottom().level())).forEach(all::addAll);
    return all;
  }

  /** The part of a stretch between two levels. */
  private static List<PressureSegment> cut(PressureSegment s, double from, double to) {
    double top = Math.min(s.top().level(), from);
    double bottom = Math.max(s.bottom().level(), to);
    return top > bottom ? List.of(new PressureSegment(at(s, top), at(s, bottom))) : List.of();
  }

  private static PressureNode at(PressureSegment s, double level) {
    PressureNode a = s.top();
    PressureNode b = s.bottom();
    double t = (a.level() - level) / (a.level() - b.level());
    return new PressureNode(
        level,
        a.depth() + t * (b.depth() - a.depth()),
        a.layer(),
        a.sigmaV() + t * (b.sigmaV() - a.sigmaV()),
        a.u() + t * (b.u() - a.u()),
        a.sigmaVEffective() + t * (b.sigmaVEffective() - a.sigmaVEffective()),
        a.k(),
        a.kc(),
        a.cohesion(),
        a.earthUnlimited() + t * (b.earthUnlimited() - a.earthUnlimited()),
        a.earth() + t * (b.earth() - a.earth()),
        a.limit(),
        a.earthFactor(),
        a.waterFactor(),
        a.added().toward(b.added(), t));
  }

  private Optional<Curve> water(List<PressureSegment> segments) {
    boolean any = segments.stream().anyMatch(s -> s.bottom().u() > 0 || s.top().u() > 0);
    return any
        ? Optional.of(curve("water", Role.WATER, segments, n -> n.waterFactor() * n.u()))
        : Optional.empty();
  }

  private Curve curve(
      String name,
      Role role,
      List<PressureSegment> segments,
      ToDoubleFunction<PressureNode> pressure) {
    List<Point> points = new ArrayList<>();
    for (PressureSegment s : segments) {
      add(points, pressure.applyAsDouble(s.top()), s.top().level());
      add(points, pressure.applyAsDouble(s.bottom()), s.bottom().level());
    }
    return new Curve(name, role, points);
  }

  private PressurePanel net(NetPressure net) {
    List<Point> behind = new ArrayList<>();
    List<Point> front = new ArrayList<>();
    for (NetSegment s : net.segments()) {
      half(behind, s, 1);
      half(front, s, -1);
    }
    return new PressurePanel(
        units.scale("Net", Units.KPA),
        List.of(new Curve("net", Role.MAIN, behind)),
        List.of(new Curve("net", Role.MAIN, front)));
  }

  /** The part of a stretch of net pressure with one sign. */
  private void half(List<Point> points, NetSegment s, int sign) {
    double top = sign * s.topPressure();
    double bottom = sign * s.bottomPressure();
    add(points, Math.max(0, top), s.topLevel());
    if (top * bottom < 0) {
      add(points, 0, s.topLevel() - s.height() * top / (top - bottom));
    }
    add(points, Math.max(0, bottom), s.bottomLevel());
  }

  private void add(List<Point> points, double kPa, double level) {
    points.add(new Point(units.in(kPa, Units.KPA), units.metres(level)));
  }
}
