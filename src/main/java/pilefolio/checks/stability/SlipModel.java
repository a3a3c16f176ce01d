package pilefolio.checks.stability;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.SoilLayer;
import pilefolio.analysis.earth.SoilProfile;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.seepage.FlowNet;
import pilefolio.analysis.stability.GroundLine;
import pilefolio.analysis.stability.SlipSection;
import pilefolio.analysis.stability.SlipSupport;
import pilefolio.analysis.stability.SlipWater;
import pilefolio.analysis.stability.StripLoad;
import pilefolio.analysis.staged.SupportForce;
import pilefolio.checks.Job;
import pilefolio.checks.situation.DesignSituation;
import pilefolio.checks.situation.GroundWater;
import pilefolio.checks.situation.RunDesign;
import pilefolio.checks.situation.StagedDesign;
import pilefolio.checks.situation.StagedSolution;
import pilefolio.checks.situation.StagedStep;
import pilefolio.checks.situation.WallSolution;
import pilefolio.model.GroundProfile;
import pilefolio.model.Layer;
import pilefolio.model.LocalLoad;
import pilefolio.model.Support;
import pilefolio.model.SupportKind;
import pilefolio.model.Value;
import pilefolio.model.WaterRegime;
import pilefolio.units.Units;

/** The section of a run in a situation as the search for slip circles sees it, design values. */
final class SlipModel {
  private static final double KILO = 1000;
  private static final double NONE = Double.NEGATIVE_INFINITY;

  /** A line or a point is spread over this width across the wall, m. */
  private static final double NARROW = 0.2;

  private SlipModel() {}

  static SlipSection section(Job job, DesignSituation s, double toe) {
    return new SlipSection(surface(s, toe), profile(s), water(s, toe), loads(s), supports(job, s));
  }

  private static GroundLine surface(DesignSituation s, double toe) {
    double front = s.designExcavation();
    double behind = s.run().levels().retained().si();
    double slope = s.run().analysis().slopeBehind().si();
    if (slope == 0) {
      return GroundLine.step(front, behind);
    }
    double reach = 5 * (behind - toe);
    return new GroundLine(
        List.of(
            new GroundLine.Point(0, front),
            new GroundLine.Point(0, behind),
            new GroundLine.Point(reach, behind + reach * Math.tan(slope))));
  }

  /** Weights carry the factor of permanent actions on both sides, since they are one source. */
  private static SoilProfile profile(DesignSituation s) {
    double factor = s.factor("overall.permanent");
    return new SoilProfile(
        s.designProfile().layers().stream()
            .map(
                l ->
                    new SoilLayer(
                        l.name(),
                        l.topLevel(),
                        l.bottomLevel(),
                        factor * l.gammaAbove(),
                        factor * l.gammaBelow(),
                        l.strength()))
            .toList());
  }

  /** Water level in front, m; drawn down with unplanned excavation. */
  static double waterFront(DesignSituation s) {
    double entered = s.stage().waterFront().map(Value::si).orElse(NONE);
    return entered <= s.stage().excavation().si()
        ? Math.min(entered, s.designExcavation())
        : entered;
  }

  /** Water level behind, m; negative infinity if there is none. */
  static double waterBehind(DesignSituation s) {
    return s.stage().waterBehind().map(Value::si).orElse(NONE);
  }

  private static SlipWater water(DesignSituation s, double toe) {
    double front = waterFront(s);
    double behind = waterBehind(s);
    double ground = s.designExcavation();
    double head = front;
    double pathBehind = Math.min(behind, s.run().levels().retained().si()) - toe;
    double pathFront = Math.min(front, ground) - toe;
    boolean seepage = s.submission().methods().waterRegime() == WaterRegime.LINEAR_SEEPAGE;
    if (seepage && pathBehind > 0 && pathFront > 0) {
      head = behind - (behind - front) * pathBehind / (pathBehind + pathFront);
    }
    if (s.submission().methods().waterRegime() == WaterRegime.FLOW_NET) {
      head = GroundWater.net(s).map(FlowNet::headAtToe).orElse(front);
    }
    List<SlipWater.Confined> confined = new ArrayList<>();
    GroundProfile profile = s.profile();
    for (int i = 0; i < profile.layers().size(); i++) {
      Layer layer = profile.layers().get(i);
      double bottom = i + 1 < profile.layers().size() ? profile.bottom(i) : NONE;
      layer
          .state()
          .piezometricLevel()
          .ifPresent(
              level -> confined.add(new SlipWater.Confined(layer.top().si(), bottom, level.si())));
    }
    return new SlipWater(
        front,
        behind,
        ground,
        Math.min(toe, ground - 1e-6),
        head,
        s.factor("overall.permanent") * WallGround.GAMMA_WATER,
        confined);
  }

  private static List<StripLoad> loads(DesignSituation s) {
    List<StripLoad> loads = new ArrayList<>();
    double permanent = s.factor("overall.permanent");
    double variable = s.factor("overall.variable");
    double far = Double.POSITIVE_INFINITY;
    add(loads, 0, far, permanent * s.stage().permanentSurcharge().in(Units.KPA), false);
    add(loads, 0, far, variable * s.stage().variableSurcharge().in(Units.KPA), true);
    for (LocalLoad load : s.submission().localLoads(s.stage())) {
      double factor = load.variable() ? variable : permanent;
      double from = Math.max(0, load.distance().si());
      switch (load.kind()) {
        case STRIP, FOOTING ->
            add(
                loads,
                from,
                from + load.width().orElseThrow().si(),
                factor * load.pressure().orElseThrow().in(Units.KPA),
                load.variable());
        case LINE ->
            add(
                loads,
                from,
                from + NARROW,
                factor * load.lineLoad().orElseThrow().si() / KILO / NARROW,
                load.variable());
        case POINT ->
            // Spread along the wall over twice the distance, at least over a metre.
            add(
                loads,
                from,
                from + NARROW,
                factor * load.force().orElseThrow().si() / KILO / NARROW / Math.max(1, 2 * from),
                load.variable());
      }
    }
    return loads;
  }

  private static void add(
      List<StripLoad> loads, double from, double to, double pressure, boolean variable) {
    if (pressure > 0) {
      loads.add(new StripLoad(from, to, pressure, variable));
    }
  }

  /**
   * Supports with the force that the wall calculation gives them, brought to the load factors of
   * this check. Anchors count with the share of their bond beyond a circle, where its length is
   * known; rakers and buried blocks are left out.
   */
  private static List<SlipSupport> supports(Job job, DesignSituation s) {
    List<SlipSupport> supports = new ArrayList<>();
    double share = s.factor("overall.permanent") / s.factor("action.permanent.unfavourable");
    for (Support support : s.supports()) {
      OptionalDouble force = horizontalForce(job, s, support);
      if (force.isEmpty() || !(force.getAsDouble() > 0)) {
        continue;
      }
      double horizontal = share * force.getAsDouble();
      if (support.kind() == SupportKind.PROP || support.kind() == SupportKind.SLAB) {
        supports.add(SlipSupport.prop(support.level().si(), horizontal));
      }
      if (support.kind() == SupportKind.ANCHOR) {
        anchor(s, support, horizontal).ifPresent(supports::add);
      }
    }
    return supports;
  }

  private static Optional<SlipSupport> anchor(
      DesignSituation s, Support support, double horizontal) {
    double inclination = support.inclination().si();
    return s.submission()
        .members()
        .anchor(support)
        .filter(a -> a.freeLength().isPresent() && a.bondLength().isPresent())
        .map(
            a ->
                new SlipSupport(
                    support.level().si(),
                    horizontal / Math.cos(inclination),
                    inclination,
                    a.freeLength().get().si(),
                    a.bondLength().get().si()));
  }

  /**
   * Horizontal force of a support, kN/m, a design effect: of the equilibrium of the wall with one
   * support, of the staged analysis with several; empty if neither gives it.
   */
  static OptionalDouble horizontalForce(Job job, DesignSituation s, Support support) {
    if (s.supports().size() == 1) {
      for (WallSolution w : RunDesign.of(job, s.run()).solutions()) {
        if (w.situation().equals(s) && w.equilibrium().isPresent()) {
          return w.equilibrium().get().supportForce();
        }
      }
      return OptionalDouble.empty();
    }
    for (StagedSolution staged : StagedDesign.of(job, s.run()).solutions()) {
      if (staged.combination().equals(s.combination())) {
        for (StagedStep step : staged.complete()) {
          for (SupportForce force : step.state().supports()) {
            if (step.stage().equals(s.stage()) && force.support().id().equals(support.id())) {
              return OptionalDouble.of(staged.effectFactor() * force.force());
            }
          }
        }
      }
    }
    return OptionalDouble.empty();
  }
}
