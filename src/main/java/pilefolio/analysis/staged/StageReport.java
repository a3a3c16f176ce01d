package pilefolio.analysis.staged;

import java.util.ArrayList;
import java.util.List;

/** Turns the unknowns of a solved stage into what is reported. */
final class StageReport {
  private final WallStage stage;
  private final StageEquations equations;
  private final WallMesh mesh;
  private final double[] u;

  StageReport(WallStage stage, StageEquations equations, double[] u) {
    this.stage = stage;
    this.equations = equations;
    mesh = equations.mesh();
    this.u = u;
  }

  StageState state(int iterations) {
    List<WallSlice> slices = new ArrayList<>();
    for (int e = 0; e < mesh.elements(); e++) {
      slices.add(slice(e));
    }
    double[] atNode = new double[mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      atNode[i] = equations.lineLoad(i);
    }
    List<SupportForce> supports = new ArrayList<>();
    for (SupportSpring s : equations.supports()) {
      double y = u[2 * s.node()];
      double force = s.force(y);
      atNode[s.node()] -= force;
      supports.add(
          new SupportForce(
              s.support(),
              mesh.level(s.node()),
              force,
              y,
              s.placing() ? y : s.lockedDisplacement(),
              s.lockedForce(),
              s.placing()));
    }
    // Shear and moment are added up from the pressures, so they stand or fall with equilibrium.
    List<WallNode> nodes = new ArrayList<>();
    double v = 0;
    double m = 0;
    int last = mesh.nodes() - 1;
    for (int i = 0; i <= last; i++) {
      if (i > 0) {
        WallSlice s = slices.get(i - 1);
        double h = s.upper() - s.lower();
        m += v * h + s.netMoment();
        v += s.netForce();
      }
      double below = v + atNode[i];
      m += equations.pointMoment(i);
      nodes.add(new WallNode(mesh.level(i), u[2 * i], u[2 * i + 1], m, v, below));
      v = below;
    }
    double sumOfMoments = m;
    boolean holdsForce =
        equations.toe() == ToeCondition.PINNED || equations.toe() == ToeCondition.FIXED;
    boolean holdsMoment =
        equations.toe() == ToeCondition.GUIDED || equations.toe() == ToeCondition.FIXED;
    double[] full = new double[equations.unknowns()];
    equations.fullGradient(u, full);
    // The gradient left at a held toe is what its holding supplies.
    double toeForce = holdsForce ? full[full.length - 2] : 0;
    double toeMoment = holdsMoment ? -full[full.length - 1] : 0;
    Balance balance =
        new Balance(
            v + toeForce,
            sumOfMoments + toeMoment,
            equations.appliedForce(u),
            equations.appliedMoment(u),
            toeForce,
            toeMoment);
    return new StageState(stage, nodes, slices, supports, balance, iterations);
  }

  private WallSlice slice(int e) {
    double h = mesh.length(e);
    double load = 0;
    double loadMoment = 0;
    for (int g = 0; g < GaussPoints.COUNT; g++) {
      double f = GaussPoints.WEIGHT[g] * h * equations.loadPressure(e * GaussPoints.COUNT + g);
      load += f;
      loadMoment += f * h * (1 - GaussPoints.AT[g]);
    }
    return new WallSlice(
        mesh.level(e),
        mesh.level(e + 1),
        side(e, stage.behind(), equations.behind(), -1),
        side(e, stage.front(), equations.front(), 1),
        load,
        loadMoment);
  }

  private SideSlice side(int e, SoilSide soil, SideSprings springs, int into) {
    double h = mesh.length(e);
    double force = 0;
    double moment = 0;
    double earthForce = 0;
    double passive = 0;
    for (int g = 0; g < GaussPoints.COUNT; g++) {
      int p = e * GaussPoints.COUNT + g;
      double earth = springs.earth(p, into * equations.displacement(u, e, g));
      double w = GaussPoints.WEIGHT[g] * h;
      double f = w * (earth + springs.water[p]);
      force += f;
      moment += f * h * (1 - GaussPoints.AT[g]);
      earthForce += w * earth;
      passive += w * springs.passive[p];
    }
    return new SideSlice(
        point(e, 0, soil, springs, into),
        point(e, 1, soil, springs, into),
        force,
        moment,
        earthForce,
        passive);
  }

  private SidePoint point(int e, int end, SoilSide soil, SideSprings springs, int into) {
    double mid = (mesh.level(e) + mesh.level(e + 1)) / 2;
    double level = mesh.level(e + end);
    double inside = level + (mid - level) * 1e-3;
    SpringLaw law = soil.at(level, inside);
    double movement = into * u[2 * (e + end)];
    int p = e * GaussPoints.COUNT + (end == 0 ? 0 : GaussPoints.COUNT - 1);
    double plastic = springs.plastic[p];
    return new SidePoint(
        law, movement, plastic, law.earth(movement - plastic), law.state(movement - plastic));
  }
}
