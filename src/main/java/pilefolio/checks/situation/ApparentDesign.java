package pilefolio.checks.situation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.apparent.AnchorTrapezoid;
import pilefolio.analysis.apparent.ApparentEnvelope;
import pilefolio.analysis.apparent.Base;
import pilefolio.analysis.apparent.BeamOnSupports;
import pilefolio.analysis.apparent.DeepSeated;
import pilefolio.analysis.apparent.GroundBeside;
import pilefolio.analysis.apparent.Idealisation;
import pilefolio.analysis.apparent.StrutEnvelopes;
import pilefolio.analysis.apparent.Superposed;
import pilefolio.analysis.apparent.SupportReactions;
import pilefolio.analysis.earth.Mobilisation;
import pilefolio.analysis.earth.OutsideRange;
import pilefolio.analysis.earth.PressureDiagram;
import pilefolio.analysis.earth.PressureNode;
import pilefolio.analysis.earth.PressureSegment;
import pilefolio.analysis.earth.WallGround;
import pilefolio.analysis.wall.NetPressure;
import pilefolio.analysis.wall.NetSegment;
import pilefolio.analysis.wall.WallLoading;
import pilefolio.checks.Job;
import pilefolio.model.ApparentBeam;
import pilefolio.model.ApparentDiagram;
import pilefolio.model.ApparentFoot;
import pilefolio.model.ApparentMethod;
import pilefolio.model.Support;
import pilefolio.model.WallRun;
import pilefolio.standards.DesignBasis;
import pilefolio.units.Units;

/**
 * A wall with several supports under apparent pressure, in one situation.
 *
 * @param situation the situation
 * @param solved envelope and beams; empty if no published envelope applies
 * @param reason why not, as a clause; empty if solved
 */
public record ApparentDesign(DesignSituation situation, Optional<Solved> solved, String reason) {
  /** Ordinate over γ·H in soft to medium clay is 1 − 4·m/N; m where no soft clay is below. */
  public static final double M_FACTOR = 1;

  /**
   * An envelope and the beams under it; kN, m, kPa.
   *
   * @param choice which envelope and why
   * @param ground what it is for
   * @param soft soft clay below the base
   * @param envelope the envelope without factors
   * @param surchargeShare horizontal over vertical pressure of a uniform load behind
   * @param beside water and local loads, with their factors
   * @param design envelope, uniform load, water and local loads, with their factors
   * @param beam the wall on its supports
   * @param routes reactions by each idealisation
   */
  public record Solved(
      EnvelopeChoice choice,
      GroundBeside ground,
      GroundBeside.SoftBelow soft,
      ApparentEnvelope envelope,
      double surchargeShare,
      NetPressure beside,
      NetPressure design,
      BeamOnSupports beam,
      Map<Idealisation, SupportReactions> routes) {

    /** Copies the map. */
    public Solved {
      routes = Map.copyOf(routes);
    }
  }

  private record Key(String run) {}

  private record All(List<ApparentDesign> list) {}

  /** Every situation of a run that an envelope is asked for. */
  public static List<ApparentDesign> of(Job job, WallRun run) {
    return job.shared(new Key(run.id()), All.class, j -> make(j, run)).list();
  }

  private static All make(Job job, WallRun run) {
    ApparentMethod method = job.submission().methods().apparent();
    RunDesign design = RunDesign.of(job, run);
    List<ApparentDesign> all = new ArrayList<>();
    for (WallSolution s : design.solutions()) {
      int supports = s.situation().supports().size();
      boolean asked = supports > 1 || (supports == 1 && method.diagram().byLevels());
      if (asked && method.diagram() != ApparentDiagram.NONE) {
        all.add(of(s, method, design.toe()));
      }
    }
    return new All(List.copyOf(all));
  }

  private static ApparentDesign of(WallSolution s, ApparentMethod method, OptionalDouble toe) {
    DesignSituation situation = s.situation();
    if (s.loading().isEmpty()) {
      return new ApparentDesign(situation, Optional.empty(), s.reason());
    }
    if (toe.isEmpty()) {
      return new ApparentDesign(
          situation,
          Optional.empty(),
          "no toe is known, on which the pore pressures behind the wall depend");
    }
    try {
      return new ApparentDesign(
          situation,
          Optional.of(solve(situation, s.loading().get(), method, toe.getAsDouble())),
          "");
    } catch (OutsideRange e) {
      return new ApparentDesign(situation, Optional.empty(), e.getMessage());
    }
  }

  private static Solved solve(
      DesignSituation s, WallLoading loading, ApparentMethod method, double toe) {
    WallGround wall = loading.ground();
    refuse(s, wall);
    double top = s.run().levels().retained().si();
    double excavation = s.designExcavation();
    GroundBeside ground =
        GroundBeside.of(s.designProfile(), top, excavation, s.waterBehind(), wall.gammaWater());
    GroundBeside.SoftBelow soft =
        ground.kind() == GroundBeside.Kind.SAND
            ? new GroundBeside.SoftBelow(0, 0)
            : ground.softBelow(s.designProfile(), excavation);
    List<Support> supports = s.supports();
    List<Double> levels = supports.stream().map(x -> x.level().si()).toList();
    EnvelopeChoice choice = EnvelopeChoice.of(method.diagram(), ground, soft, supports);
    ApparentEnvelope envelope =
        envelope(s, choice.diagram(), ground, soft, levels, method.stiffShare().si());
    double share = surchargeShare(choice.diagram(), ground, envelope);
    double load =
        share
            * (s.factor("action.permanent.unfavourable")
                    * s.stage().permanentSurcharge().in(Units.KPA)
                + s.factor("action.variable.unfavourable")
                    * s.stage().variableSurcharge().in(Units.KPA));
    NetPressure beside = beside(loading, toe, top, excavation);
    NetPressure design =
        Superposed.of(
            scaled(envelope.pressure(), s.factor("action.apparent")),
            new NetPressure(List.of(new NetSegment(top, excavation, load, load))),
            beside);
    BeamOnSupports beam =
        new BeamOnSupports(
            design,
            levels,
            method.foot() == ApparentFoot.OVERHANG && supports.size() > 1
                ? new Base.Overhang()
                : new Base.Reaction(excavation));
    Map<Idealisation, SupportReactions> routes = new EnumMap<>(Idealisation.class);
    for (Idealisation i : Idealisation.values()) {
      routes.put(i, beam.solve(i));
    }
    return new Solved(choice, ground, soft, envelope, share, beside, design, beam, routes);
  }

  private static void refuse(DesignSituation s, WallGround wall) {
    if (s.stage().conditions().earthquake()) {
      throw new OutsideRange("apparent pressure envelopes do not hold in an earthquake");
    }
    if (s.run().analysis().slopeBehind().si() != 0) {
      throw new OutsideRange("apparent pressure envelopes are for level ground behind");
    }
    if (s.raisedByBerm() > 0) {
      throw new OutsideRange("apparent pressure envelopes are for excavations without a berm");
    }
    if (wall.front().waterLevel() > wall.front().groundLevel() + 1e-9) {
      throw new OutsideRange("apparent pressure envelopes are for excavations without free water");
    }
  }

  private static ApparentEnvelope envelope(
      DesignSituation s,
      ApparentDiagram diagram,
      GroundBeside g,
      GroundBeside.SoftBelow soft,
      List<Double> levels,
      double stiffShare) {
    double top = s.run().levels().retained().si();
    double bottom = s.designExcavation();
    double gamma = g.unitWeight();
    return switch (diagram) {
      case SAND -> StrutEnvelopes.sand(top, bottom, gamma, g.kA());
      case STIFF_CLAY -> StrutEnvelopes.stiffClay(top, bottom, gamma, stiffShare);
      case SOFT_CLAY ->
          StrutEnvelopes.softClay(
              top,
              bottom,
              gamma,
              StrutEnvelopes.softClayCoefficient(g.stabilityNumber(), M_FACTOR));
      case SOFT_CLAY_DEEP -> {
        if (!(soft.thickness() > 0)) {
          throw new OutsideRange("no soft clay is below the base, so nothing moves there");
        }
        yield StrutEnvelopes.softClay(
            top,
            bottom,
            gamma,
            DeepSeated.coefficient(
                gamma * g.height(), g.su(), soft.su(), soft.thickness() / g.height()));
      }
      case LEVELS_SAND ->
          AnchorTrapezoid.holding(
              top,
              bottom,
              levels,
              lrfd(s)
                  ? AnchorTrapezoid.sandLoadLrfd(gamma, g.height(), g.kA())
                  : AnchorTrapezoid.sandLoad(gamma, g.height(), g.kA()));
      case LEVELS_CLAY ->
          AnchorTrapezoid.holding(
              top, bottom, levels, AnchorTrapezoid.stiffClayLoad(gamma, g.height(), stiffShare));
      case BY_GROUND, NONE -> throw new IllegalArgumentException("no envelope: " + diagram);
    };
  }

  /** True if the ordinate in sand is the one of AASHTO LRFD. */
  public static boolean lrfd(DesignSituation s) {
    return s.basis().format() == DesignBasis.Format.LOAD_AND_RESISTANCE;
  }

  /** Sand as active pressure; stiff clay as more height; soft clay in full. */
  private static double surchargeShare(
      ApparentDiagram diagram, GroundBeside g, ApparentEnvelope envelope) {
    return switch (diagram) {
      case SAND, LEVELS_SAND -> g.kA();
      case STIFF_CLAY, LEVELS_CLAY -> envelope.ordinate() / (g.unitWeight() * g.height());
      default -> 1;
    };
  }

  private static NetPressure beside(
      WallLoading loading, double toe, double top, double excavation) {
    PressureDiagram behind = loading.pressures().behind(Mobilisation.ACTIVE, toe);
    List<NetSegment> out = new ArrayList<>();
    for (PressureSegment s : behind.segments()) {
      out.add(
          new NetSegment(s.top().level(), s.bottom().level(), beside(s.top()), beside(s.bottom())));
    }
    return new NetPressure(out).between(top, excavation);
  }

  private static double beside(PressureNode n) {
    return n.waterFactor() * n.u() + n.added().factored();
  }

  private static NetPressure scaled(NetPressure p, double factor) {
    return new NetPressure(
        p.segments().stream()
            .map(
                s ->
                    new NetSegment(
                        s.topLevel(),
                        s.bottomLevel(),
                        factor * s.topPressure(),
                        factor * s.bottomPressure()))
            .toList());
  }

  /** Idealisation that is designed for; with “greatest of all” the one of the greatest moment. */
  public Idealisation chosen() {
    Map<Idealisation, SupportReactions> routes = solved.orElseThrow().routes();
    return switch (beams()) {
      case HINGES -> Idealisation.HINGE;
      case TRIBUTARY -> Idealisation.TRIBUTARY;
      case CONTINUOUS -> Idealisation.CONTINUOUS;
      case GREATEST -> {
        Idealisation best = Idealisation.HINGE;
        for (Idealisation i : Idealisation.values()) {
          if (routes.get(i).greatestMoment() > routes.get(best).greatestMoment()) {
            best = i;
          }
        }
        yield best;
      }
    };
  }

  /** The beams that the user chose. */
  public ApparentBeam beams() {
    return situation.submission().methods().apparent().beam();
  }

  /** Horizontal force in a support that is designed for, kN/m. */
  public double force(int support) {
    Map<Idealisation, SupportReactions> routes = solved.orElseThrow().routes();
    if (beams() != ApparentBeam.GREATEST) {
      return routes.get(chosen()).reactions().get(support);
    }
    double greatest = Double.NEGATIVE_INFINITY;
    for (SupportReactions r : routes.values()) {
      greatest = Math.max(greatest, r.reactions().get(support));
    }
    return greatest;
  }
}
