package pilefolio.checks.situation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.Side;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.earth.WaterField;
import pilefolio.analysis.load.PressurePolyline;
import pilefolio.analysis.load.PressurePolyline.Point;
import pilefolio.analysis.seepage.FlowNet;
import pilefolio.analysis.seepage.FlowProblem;
import pilefolio.analysis.seepage.PermeableLayer;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.Value;
import pilefolio.model.WaterRegime;

/**
 * Ground water of a situation where two water levels do not say all: flow nets, artesian layers.
 */
public final class GroundWater {
  private static final double BELOW_TOE = 500;
  private static final double FEWER_POINTS = 0.004;
  private static final int KEPT = 64;

  // A flow net depends on its problem alone; stages and combinations ask for the same one again.
  private static final Map<FlowProblem, FlowNet> NETS =
      Collections.synchronizedMap(
          new LinkedHashMap<>(KEPT, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<FlowProblem, FlowNet> eldest) {
              return size() > KEPT;
            }
          });

  private GroundWater() {}

  /** Pore pressures in place of those of the water levels, if any. */
  static Optional<WaterField> field(DesignSituation s, Side behind, Side front) {
    Map<String, Double> own = new LinkedHashMap<>();
    for (Layer layer : s.profile().layers()) {
      layer.state().piezometricLevel().ifPresent(v -> own.put(layer.name(), v.si()));
    }
    Optional<FlowNet> net = net(s, behind, front);
    if (net.isEmpty()) {
      return own.isEmpty() ? Optional.empty() : Optional.of(WaterField.ofLayers(own));
    }
    return Optional.of(
        WaterField.ofLayers(own)
            .withFaces(
                pressures(net.get(), net.get().behind()), pressures(net.get(), net.get().front())));
  }

  private static PressurePolyline pressures(FlowNet net, List<FlowNet.Head> heads) {
    double gamma = WallGround.GAMMA_WATER;
    List<Point> points = new ArrayList<>();
    for (FlowNet.Head h : heads) {
      points.add(new Point(h.level(), gamma * (h.head() - h.level())));
    }
    PressurePolyline thin =
        new PressurePolyline(points)
            .thinned(FEWER_POINTS * gamma * Math.abs(net.problem().headLoss()));
    List<Point> all = new ArrayList<>(thin.points());
    // Below the toe of the net both faces have the head at the toe.
    Point toe = all.get(all.size() - 1);
    all.add(new Point(toe.level() - BELOW_TOE, toe.pressure() + gamma * BELOW_TOE));
    return new PressurePolyline(all);
  }

  /**
   * The flow net of a situation, if the method is chosen and water flows toward the excavation.
   *
   * @throws OutsideRange if a layer lacks its permeability, or the toe does not end in known ground
   */
  public static Optional<FlowNet> net(DesignSituation s) {
    return net(s, s.behind(), s.front());
  }

  private static Optional<FlowNet> net(DesignSituation s, Side behind, Side front) {
    return problem(s, behind, front).map(p -> NETS.computeIfAbsent(p, FlowNet::solve));
  }

  private static Optional<FlowProblem> problem(DesignSituation s, Side behind, Side front) {
    double base = s.profile().base().si();
    if (s.submission().methods().waterRegime() != WaterRegime.FLOW_NET
        || !(behind.waterLevel() > front.waterLevel())) {
      return Optional.empty();
    }
    double surfaceBehind = Math.min(behind.waterLevel(), behind.groundLevel());
    double surfaceFront = Math.min(front.waterLevel(), front.groundLevel());
    if (surfaceFront <= base + 1e-9) {
      throw new OutsideRange(
          "a flow net needs the water level in front, at the excavation or at the level to which it"
              + " is lowered");
    }
    double toe = toe(s);
    try {
      List<PermeableLayer> layers = layers(s.profile());
      FlowProblem wide =
          FlowProblem.wide(
              layers, surfaceBehind, behind.waterLevel(), surfaceFront, front.waterLevel(), toe);
      Optional<Value> width = s.run().analysis().excavationWidth();
      return Optional.of(
          width
              .map(
                  w ->
                      new FlowProblem(
                          layers,
                          surfaceBehind,
                          behind.waterLevel(),
                          surfaceFront,
                          front.waterLevel(),
                          toe,
                          wide.widthBehind(),
                          Math.min(wide.widthFront(), w.si() / 2)))
              .orElse(wide));
    } catch (OutsideRange e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw new OutsideRange("flow net: " + e.getMessage());
    }
  }

  private static List<PermeableLayer> layers(GroundProfile profile) {
    List<PermeableLayer> layers = new ArrayList<>();
    for (int i = 0; i < profile.layers().size(); i++) {
      Layer layer = profile.layers().get(i);
      double k =
          layer
              .state()
              .permeability()
              .orElseThrow(
                  () ->
                      new OutsideRange(
                          "the flow net needs the permeability of layer " + layer.name()))
              .si();
      layers.add(PermeableLayer.isotropic(layer.top().si(), profile.bottom(i), k));
    }
    return layers;
  }

  /** The toe round which water flows: the built one, or the one that simplified seepage needs. */
  private static double toe(DesignSituation s) {
    OptionalDouble given = s.givenToe();
    if (given.isPresent()) {
      return given.getAsDouble();
    }
    WallSolution simplified = WallSolution.withSimplifiedSeepage(s);
    if (simplified.equilibrium().isEmpty()) {
      throw new OutsideRange(
          "the flow net needs a toe level; with simplified seepage none is found: "
              + simplified.reason());
    }
    return simplified.requiredToe();
  }
}
