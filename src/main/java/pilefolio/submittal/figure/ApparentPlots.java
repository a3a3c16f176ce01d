package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pilefolio.analysis.apparent.Base;
import pilefolio.analysis.apparent.Idealisation;
import pilefolio.analysis.apparent.SupportReactions;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.analysis.wall.WallStatics;
import pilefolio.checks.situation.ApparentDesign;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.submittal.figure.Curve.Point;
import pilefolio.submittal.figure.Curve.Role;
import pilefolio.submittal.figure.DepthPlotData.Extreme;
import pilefolio.submittal.figure.DepthPlotData.Panel;
import pilefolio.units.Units;

/** Envelope of apparent pressure with the reactions, and the moments under it. */
final class ApparentPlots {
  static final String CHECK = "apparent-pressure";

  private static final int STEPS = 12;
  private static final double KILO = 1000;

  private ApparentPlots() {}

  /** The figure of a run, in the situation with the greatest pressure; empty without envelope. */
  static Optional<DepthPlotData> of(Submittal submittal, WallRun run) {
    return ApparentDesign.of(submittal.job(), run).stream()
        .filter(d -> d.solved().isPresent())
        .max(Comparator.comparingDouble(d -> d.solved().orElseThrow().design().force()))
        .map(d -> plot(new DrawingUnits(submittal.system()), run, d));
  }

  private static DepthPlotData plot(DrawingUnits units, WallRun run, ApparentDesign design) {
    ApparentDesign.Solved solved = design.solved().orElseThrow();
    return new DepthPlotData(
        "apparent-" + run.id(),
        "Apparent pressure with factors, water and loads behind included, and moments under it in"
            + " run "
            + run.id()
            + ", stage "
            + design.situation().stage().number()
            + ", "
            + design.situation().combination().id()
            + ". Supports are marked with their horizontal force, as chosen for design.",
        units.scale("Level", Units.M),
        false,
        List.of(pressure(units, solved), moments(units, solved)),
        marks(units, run, design));
  }

  private static Panel pressure(DrawingUnits units, ApparentDesign.Solved solved) {
    List<Point> points = new ArrayList<>();
    NetSegment greatest = solved.design().segments().get(0);
    points.add(new Point(0, units.metres(solved.design().topLevel())));
    for (NetSegment s : solved.design().segments()) {
      points.add(new Point(units.in(s.topPressure(), Units.KPA), units.metres(s.topLevel())));
      points.add(new Point(units.in(s.bottomPressure(), Units.KPA), units.metres(s.bottomLevel())));
      greatest = largest(s) > largest(greatest) ? s : greatest;
    }
    points.add(new Point(0, units.metres(solved.design().bottomLevel())));
    double level =
        greatest.topPressure() >= greatest.bottomPressure()
            ? greatest.topLevel()
            : greatest.bottomLevel();
    return new Panel(
        units.scale("Pressure", Units.KPA),
        List.of(new Curve("envelope with water and loads", Role.MAIN, points)),
        List.of(
            new Extreme(
                units.in(largest(greatest), Units.KPA),
                units.metres(level),
                units.text(KILO * largest(greatest), Units.KPA))));
  }

  private static double largest(NetSegment s) {
    return Math.max(s.topPressure(), s.bottomPressure());
  }

  private static Panel moments(DrawingUnits units, ApparentDesign.Solved solved) {
    SupportReactions hinge = solved.routes().get(Idealisation.HINGE);
    SupportReactions continuous = solved.routes().get(Idealisation.CONTINUOUS);
    WallStatics statics = hinge.statics().orElseThrow();
    WallStatics.Extreme most = statics.governing();
    return new Panel(
        units.scale("Moment", Units.KNM_M),
        List.of(
            curve(units, "continuous beam", Role.SECOND, continuous.statics().orElseThrow()),
            curve(units, "hinges", Role.MAIN, statics)),
        List.of(
            new Extreme(
                units.in(most.moment(), Units.KNM_M),
                units.metres(most.level()),
                units.text(KILO * Math.abs(most.moment()), Units.KNM_M))));
  }

  private static Curve curve(DrawingUnits units, String name, Role role, WallStatics statics) {
    List<Point> points = new ArrayList<>();
    for (NetSegment s : statics.pressure().segments()) {
      for (int i = 0; i <= STEPS; i++) {
        double level = s.topLevel() - s.height() * i / STEPS;
        points.add(new Point(units.in(statics.momentAt(level), Units.KNM_M), units.metres(level)));
      }
    }
    return new Curve(name, role, points);
  }

  private static List<Mark> marks(DrawingUnits units, WallRun run, ApparentDesign design) {
    ApparentDesign.Solved solved = design.solved().orElseThrow();
    List<Mark> marks = new ArrayList<>();
    marks.add(units.level("ground", run.levels().retained().si()));
    for (int i = 0; i < design.situation().supports().size(); i++) {
      marks.add(
          new Mark(
              units.metres(design.situation().supports().get(i).level().si()),
              DrawingUnits.words(design.situation().supports().get(i).id())
                  + " "
                  + units.text(KILO * design.force(i), Units.KN_M)));
    }
    SupportReactions chosen = solved.routes().get(design.chosen());
    String foot =
        chosen.baseReaction().isPresent()
            ? "ground " + units.text(KILO * chosen.baseReaction().getAsDouble(), Units.KN_M)
            : "design excavation";
    double level =
        solved.beam().base() instanceof Base.Reaction r
            ? r.level()
            : design.situation().designExcavation();
    marks.add(new Mark(units.metres(level), foot));
    return marks;
  }
}
