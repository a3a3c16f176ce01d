package pilefolio.analysis.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import pilefolio.analysis.earth.DrainedStrength;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;

/**
 * Ground, water, loads and supports of a section in which ground may slide.
 *
 * @param surface the surface
 * @param profile horizontal layers, cut off at the surface
 * @param water the water
 * @param loads loads on the surface
 * @param supports supports of the wall
 */
public record SlipSection(
    GroundLine surface,
    SoilProfile profile,
    SlipWater water,
    List<StripLoad> loads,
    List<SlipSupport> supports) {

  public SlipSection {
    loads = List.copyOf(loads);
    supports = List.copyOf(supports);
  }

  /** A section without water, loads and supports. */
  public static SlipSection dry(GroundLine surface, SoilProfile profile) {
    return new SlipSection(surface, profile, SlipWater.none(), List.of(), List.of());
  }

  /**
   * Cuts the sliding ground into slices. No slice crosses a break of the surface, an edge of a
   * load, the wall or, at its base, a boundary of layers or the water level.
   *
   * @param circle the circle
   * @param wanted about how many slices, at least 1
   * @return the slices from exit to entry; empty if the circle leaves the ground between its ends
   */
  public List<SlipSlice> slices(SlipCircle circle, int wanted) {
    // Cut by equal angles: a steep end would be measured too short by equal widths.
    double widest = (circle.angle(circle.entry()) - circle.angle(circle.exit())) / wanted;
    List<SlipSlice> slices = new ArrayList<>();
    Double from = null;
    for (double to : breaks(circle)) {
      if (from != null && to - from > 1e-9) {
        double first = circle.angle(from);
        double turn = circle.angle(to) - first;
        int pieces = (int) Math.ceil(turn / widest - 1e-9);
        double left = from;
        for (int i = 1; i <= pieces; i++) {
          double right =
              i == pieces ? to : circle.x() + circle.radius() * Math.sin(first + turn * i / pieces);
          SlipSlice slice = slice(circle, left, right);
          if (slice == null) {
            return List.of();
          }
          slices.add(slice);
          left = right;
        }
      }
      from = to;
    }
    return slices;
  }

  private TreeSet<Double> breaks(SlipCircle circle) {
    TreeSet<Double> at = new TreeSet<>();
    at.add(circle.exit());
    at.add(circle.entry());
    surface.points().forEach(p -> add(at, circle, p.x()));
    add(at, circle, 0);
    for (StripLoad load : loads) {
      add(at, circle, load.from());
      add(at, circle, load.to());
    }
    for (SoilLayer layer : profile.layers()) {
      crossings(at, circle, layer.bottomLevel());
    }
    crossings(at, circle, water.levelFront());
    crossings(at, circle, water.levelBehind());
    return at;
  }

  private static void crossings(TreeSet<Double> at, SlipCircle circle, double level) {
    double h = circle.y() - level;
    if (h > 0 && h < circle.radius()) {
      double half = Math.sqrt(circle.radius() * circle.radius() - h * h);
      add(at, circle, circle.x() - half);
      add(at, circle, circle.x() + half);
    }
  }

  private static void add(TreeSet<Double> at, SlipCircle circle, double x) {
    if (x > circle.exit() && x < circle.entry()) {
      at.add(x);
    }
  }

  private SlipSlice slice(SlipCircle circle, double left, double right) {
    // Midway along the arc, so that b/cos α is the length of the chord.
    double alpha = (circle.angle(left) + circle.angle(right)) / 2;
    double sin = Math.sin(alpha);
    double middle = circle.x() + circle.radius() * sin;
    double top = (surface.after(left) + surface.before(right)) / 2;
    double meanBase = circle.meanLevel(left, right);
    double base = circle.level(middle);
    if (!(top > meanBase)) {
      return null;
    }
    double width = right - left;
    double weight = width * columnWeight(middle, top, meanBase);
    double load = 0;
    for (StripLoad strip : loads) {
      boolean over = strip.from() < middle && middle < strip.to();
      if (over && !(strip.variable() && sin <= 0)) {
        load += width * strip.pressure();
      }
    }
    load += width * water.gammaWater() * Math.max(0, water.level(middle) - top);
    SoilLayer layer = profile.below(base);
    boolean undrained = layer.isUndrained();
    return new SlipSlice(
        layer.name(),
        left,
        right,
        top,
        base,
        alpha,
        weight,
        load,
        undrained ? 0 : water.pressure(middle, base),
        layer.cohesionAt(base),
        undrained ? 0 : ((DrainedStrength) layer.strength()).phiRad());
  }

  /** Weight of a column, kPa. */
  private double columnWeight(double x, double top, double base) {
    double waterLevel = water.level(x);
    double weight = 0;
    double upper = top;
    List<SoilLayer> layers = profile.layers();
    for (int i = 0; i < layers.size(); i++) {
      SoilLayer layer = layers.get(i);
      double lower = i + 1 < layers.size() ? Math.max(base, layer.bottomLevel()) : base;
      if (lower < upper) {
        double wet = Math.max(0, Math.min(upper, waterLevel) - lower);
        weight += layer.gammaBelow() * wet + layer.gammaAbove() * (upper - lower - wet);
        upper = lower;
      }
    }
    return weight;
  }

  /**
   * Moment about the centre of a circle against the slide, of supports and of free water in front;
   * free water behind works the other way, kN·m/m.
   */
  public double holdingMoment(SlipCircle circle) {
    double moment = 0;
    for (SlipSupport support : supports) {
      moment += support.moment(circle);
    }
    // Free water in front presses the standing face of the step; its own weight loads the slices.
    double front = surface.before(0);
    moment += thrust(circle, front, Math.min(water.levelFront(), surface.after(0)));
    moment -= thrust(circle, surface.before(circle.entry()), water.levelBehind());
    return moment;
  }

  private double thrust(SlipCircle circle, double ground, double waterLevel) {
    double depth = waterLevel - ground;
    return depth > 0
        ? water.gammaWater() * depth * depth / 2 * (circle.y() - ground - depth / 3)
        : 0;
  }
}
