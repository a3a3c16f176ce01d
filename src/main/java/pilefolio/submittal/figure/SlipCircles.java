package pilefolio.submittal.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.stability.SlipCircle;
import pilefolio.analysis.stability.SlipSlice;
import pilefolio.analysis.stability.SlipSupport;
import pilefolio.checks.stability.OverallStability;
import pilefolio.checks.stability.OverallStability.Critical;
import pilefolio.model.GroundProfile;
import pilefolio.model.WallRun;
import pilefolio.submittal.Submittal;
import pilefolio.units.Units;

/** The critical slip circle of a run in the situation with the least reserve. */
final class SlipCircles {
  static final String CHECK = "overall-stability";
  private static final double ROOM_BELOW = 0.12;

  private final DrawingUnits units;

  private SlipCircles(DrawingUnits units) {
    this.units = units;
  }

  static Optional<SlipCircleData> of(Submittal submittal, WallRun run) {
    return OverallStability.circles(submittal.job(), run).values().stream()
        .flatMap(Optional::stream)
        .min(
            Comparator.comparingDouble(SlipCircles::reserve)
                .thenComparing(c -> c.situation().title()))
        .map(c -> new SlipCircles(new DrawingUnits(submittal.system())).figure(run, c));
  }

  private static double reserve(Critical c) {
    return c.factor() / c.situation().factor("overall.safety");
  }

  private SlipCircleData figure(WallRun run, Critical c) {
    SlipCircle circle = c.found().circle();
    String factor = String.format(Locale.ROOT, "%.2f", c.factor());
    List<Double> sides = new ArrayList<>();
    for (SlipSlice slice : c.slices()) {
      sides.add(units.metres(slice.to()));
    }
    return new SlipCircleData(
        "slip-" + run.id(),
        "Critical slip circle of run "
            + run.id()
            + " in stage "
            + c.situation().stage().number()
            + ", "
            + c.situation().combination().id()
            + ", with the slices of the calculation; factor of safety "
            + factor
            + ". Heights and widths to one scale.",
        layers(c, circle),
        units.metres(run.levels().retained().si()),
        units.metres(c.situation().designExcavation()),
        drawn(c.section().water().levelBehind()),
        drawn(c.section().water().levelFront()),
        units.metres(run.levels().cutOff().si()),
        units.metres(c.toe()),
        new SlipCircleData.Circle(
            units.metres(circle.x()),
            units.metres(circle.y()),
            units.metres(circle.radius()),
            units.metres(circle.exit()),
            units.metres(circle.entry()),
            "F = " + factor),
        sides,
        c.section().supports().stream().map(this::tie).toList(),
        List.of(
            units.level("ground", run.levels().retained().si()),
            units.level("design excavation", c.situation().designExcavation()),
            units.level("toe", c.toe()),
            units.level("lowest point of the circle", circle.lowest())),
        units.symbol(Units.M));
  }

  private OptionalDouble drawn(double level) {
    return Double.isInfinite(level)
        ? OptionalDouble.empty()
        : OptionalDouble.of(units.metres(level));
  }

  private SlipCircleData.Tie tie(SlipSupport support) {
    boolean prop = Double.isInfinite(support.freeLength());
    double length = prop ? 0 : support.freeLength() + support.bondLength();
    return new SlipCircleData.Tie(
        units.metres(support.level()),
        units.metres(length * Math.cos(support.inclinationRad())),
        units.metres(length * Math.sin(support.inclinationRad())));
  }

  private List<SectionData.Layer> layers(Critical c, SlipCircle circle) {
    GroundProfile profile = c.situation().profile();
    double top = c.situation().run().levels().retained().si();
    double depth = top - circle.lowest();
    double lowest = Math.max(profile.base().si(), circle.lowest() - ROOM_BELOW * depth);
    List<SectionData.Layer> layers = new ArrayList<>();
    for (int i = 0; i < profile.layers().size(); i++) {
      var layer = profile.layers().get(i);
      double upper = Math.min(top, layer.top().si());
      double lower = Math.max(lowest, profile.bottom(i));
      if (upper > lower) {
        layers.add(
            new SectionData.Layer(
                DrawingUnits.words(layer.name()),
                WallSections.ground(layer.kind()),
                units.metres(upper),
                units.metres(lower)));
      }
    }
    return layers;
  }
}
