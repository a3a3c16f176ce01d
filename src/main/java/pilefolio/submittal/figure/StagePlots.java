package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.staged.Envelope;
import pilefolio.analysis.staged.StageState;
import pilefolio.analysis.staged.SupportForce;
import pilefolio.analysis.staged.WallNode;
import pilefolio.analysis.staged.WallSlice;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.StagedStep;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.Curve.Role;
import pilefolio.submittal.figure.DepthPlotData.Extreme;
import pilefolio.submittal.figure.DepthPlotData.Panel;
import pilefolio.units.Unit;
import pilefolio.units.Units;

/** Curves of the staged analysis with depth, and support forces stage by stage. */
final class StagePlots {
  static final String CHECK = "staged-effects";
  private static final int MOST_PANELS = 4;
  private static final double KILO = 1000;
  private static final double BAR = 0.3;

  private StagePlots() {}

  private interface Line {
    List<Point> of(StageState state);
  }

  /** Plots of a run; none without a staged analysis. */
  static List<DepthPlotData> of(Submittal submittal, WallRun run) {
    StagedDesign design = StagedDesign.of(submittal.job(), run);
    Optional<StagedSolution> worst =
        design.solutions().stream()
            .filter(s -> !s.complete().isEmpty())
            .max(Comparator.comparingDouble(StagePlots::moment));
    if (worst.isEmpty()) {
      return List.of();
    }
    DrawingUnits units = new DrawingUnits(submittal.system());
    List<DepthPlotData> plots = new ArrayList<>();
    plots.add(curves(units, run, design, worst.get()));
    supports(units, run, submittal.job().submission().supports(run), worst.get())
        .ifPresent(plots::add);
    return plots;
  }

  private static double moment(StagedSolution s) {
    return s.effectFactor()
        * s.complete().stream()
            .mapToDouble(x -> Math.abs(moment(x.state()).moment()))
            .max()
            .orElse(0);
  }

  // The node whose moment the check prints.
  private static WallNode moment(StageState s) {
    return s.nodes().stream()
        .max(Comparator.comparingDouble(n -> Math.abs(n.moment())))
        .orElseThrow();
  }

  private static StagedStep governing(StagedSolution s) {
    return s.complete().stream()
        .max(Comparator.comparingDouble(x -> Math.abs(moment(x.state()).moment())))
        .orElseThrow();
  }

  private static DepthPlotData curves(
      DrawingUnits units, WallRun run, StagedDesign design, StagedSolution worst) {
    double factor = worst.effectFactor();
    StagedStep governing = governing(worst);
    String stage = "stage " + governing.stage().number();
    List<Panel> panels = new ArrayList<>();
    design
        .service()
        .filter(s -> !s.complete().isEmpty())
        .ifPresent(s -> panels.add(displacement(units, s)));
    panels.add(
        new Panel(
            units.scale("Net pressure", Units.KPA),
            lines(units, worst, governing, Units.KPA, StagePlots::net),
            List.of()));
    List<Curve> moments =
        lines(
            units, worst, governing, Units.KNM_M, s -> nodes(s, n -> List.of(factor * n.moment())));
    moments.addAll(
        0,
        envelope(
            units,
            worst,
            Units.KNM_M,
            e -> new double[] {factor * e.leastMoment(), factor * e.greatestMoment()}));
    WallNode most = moment(governing.state());
    panels.add(
        new Panel(
            units.scale("Moment", Units.KNM_M),
            moments,
            List.of(
                new Extreme(
                    units.in(factor * most.moment(), Units.KNM_M),
                    units.metres(most.level()),
                    units.text(KILO * factor * Math.abs(most.moment()), Units.KNM_M)))));
    List<Curve> shears =
        lines(
            units,
            worst,
            governing,
            Units.KN_M,
            s -> nodes(s, n -> List.of(factor * n.shearAbove(), factor * n.shearBelow())));
    shears.addAll(
        0,
        envelope(
            units,
            worst,
            Units.KN_M,
            e -> new double[] {factor * e.leastShear(), factor * e.greatestShear()}));
    panels.add(new Panel(units.scale("Shear", Units.KN_M), shears, List.of()));
    List<Mark> marks = new ArrayList<>();
    marks.add(units.level("ground", run.levels().retained().si()));
    governing.state().supports().forEach(f -> marks.add(units.level(f.support().id(), f.level())));
    marks.add(units.level("design excavation", governing.state().stage().excavationLevel()));
    marks.add(units.level("toe", worst.wall().toeLevel()));
    return new DepthPlotData(
        "stages-" + run.id(),
        "Staged analysis of run "
            + run.id()
            + ", per length of wall: displacement with characteristic values; net pressure without"
            + " factors on effects, moment and shear in "
            + worst.combination().id()
            + ", the greatest moment standing in "
            + stage
            + ".",
        units.scale("Level", Units.M),
        false,
        panels,
        marks);
  }

  private static Panel displacement(DrawingUnits units, StagedSolution service) {
    StagedStep last =
        service.complete().stream()
            .max(
                Comparator.comparingDouble(s -> Math.abs(s.state().greatestDisplacement().value())))
            .orElseThrow();
    StageState.At most = last.state().greatestDisplacement();
    return new Panel(
        units.scale("Displacement", Units.MM),
        lines(units, service, last, Units.MM, s -> nodes(s, n -> List.of(KILO * n.displacement()))),
        List.of(
            new Extreme(
                units.in(KILO * most.value(), Units.MM),
                units.metres(most.level()),
                units.text(Math.abs(most.value()), Units.MM))));
  }

  private interface Values {
    List<Double> of(WallNode node);
  }

  private static List<Point> nodes(StageState s, Values values) {
    List<Point> points = new ArrayList<>();
    for (WallNode n : s.nodes()) {
      values.of(n).forEach(v -> points.add(new Point(v, n.level())));
    }
    return points;
  }

  private static List<Point> net(StageState s) {
    List<Point> points = new ArrayList<>();
    for (WallSlice slice : s.slices()) {
      points.add(
          new Point(
              slice.behind().top().pressure() - slice.front().top().pressure(), slice.upper()));
      points.add(
          new Point(
              slice.behind().bottom().pressure() - slice.front().bottom().pressure(),
              slice.lower()));
    }
    return points;
  }

  // The stage that governs is drawn last, on top.
  private static List<Curve> lines(
      DrawingUnits units, StagedSolution solution, StagedStep governing, Unit unit, Line line) {
    List<Curve> curves = new ArrayList<>();
    for (StagedStep step : solution.complete()) {
      if (!step.equals(governing)) {
        curves.add(curve(units, "other stages", Role.THIRD, unit, line.of(step.state())));
      }
    }
    curves.add(curve(units, "stage that governs", Role.MAIN, unit, line.of(governing.state())));
    return curves;
  }

  private static Curve curve(
      DrawingUnits units, String name, Role role, Unit unit, List<Point> points) {
    return new Curve(
        name,
        role,
        points.stream().map(p -> new Point(units.in(p.x(), unit), units.metres(p.y()))).toList());
  }

  private interface Range {
    double[] of(Envelope envelope);
  }

  private static List<Curve> envelope(
      DrawingUnits units, StagedSolution solution, Unit unit, Range range) {
    List<Point> least = new ArrayList<>();
    List<Point> greatest = new ArrayList<>();
    for (Envelope e : Envelope.of(solution.states())) {
      double[] both = range.of(e);
      least.add(new Point(both[0], e.level()));
      greatest.add(new Point(both[1], e.level()));
    }
    List<Curve> curves = new ArrayList<>();
    curves.add(curve(units, "envelope", Role.LIMIT, unit, least));
    curves.add(curve(units, "envelope", Role.LIMIT, unit, greatest));
    return curves;
  }

  private static Optional<DepthPlotData> supports(
      DrawingUnits units, WallRun run, List<Support> supports, StagedSolution solution) {
    List<Panel> panels = new ArrayList<>();
    List<StagedStep> steps = solution.complete();
    double factor = solution.effectFactor();
    for (Support support : supports.stream().limit(MOST_PANELS).toList()) {
      List<Point> points = new ArrayList<>();
      Point most = null;
      for (StagedStep step : steps) {
        for (SupportForce f : step.state().supports()) {
          if (f.support().id().equals(support.id())) {
            Point p = new Point(units.in(factor * f.force(), Units.KN_M), step.stage().number());
            // A bar for each stage.
            points.add(new Point(0, p.y() - BAR));
            points.add(new Point(p.x(), p.y() - BAR));
            points.add(new Point(p.x(), p.y() + BAR));
            points.add(new Point(0, p.y() + BAR));
            most = most == null || p.x() > most.x() ? p : most;
          }
        }
      }
      if (most != null) {
        double value = most.x();
        panels.add(
            new Panel(
                units.scale(support.id(), Units.KN_M),
                List.of(new Curve("horizontal design force", Role.MAIN, points)),
                List.of(
                    new Extreme(
                        value, most.y(), String.format(java.util.Locale.ROOT, "%.0f", value)))));
      }
    }
    if (panels.isEmpty()) {
      return Optional.empty();
    }
    List<Mark> marks =
        steps.stream()
            .map(s -> new Mark(s.stage().number(), "stage " + s.stage().number()))
            .toList();
    return Optional.of(
        new DepthPlotData(
            "support-forces-" + run.id(),
            "Forces of the supports of run "
                + run.id()
                + " stage by stage in "
                + solution.combination().id()
                + ", horizontal, per length of wall.",
            "Stage",
            true,
            panels,
            marks));
  }
}
