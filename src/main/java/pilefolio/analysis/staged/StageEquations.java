package pilefolio.analysis.staged;

import java.util.Arrays;
import java.util.List;

/**
 * Equilibrium of the wall in one stage. Unknowns are displacement and rotation of each node; the
 * out-of-balance forces are the gradient of a convex energy, which the iteration makes least.
 */
final class StageEquations {
  private final WallMesh mesh;
  private final double stiffness;
  // Curvature at which the wall has no moment, at the top and bottom of each element, 1/m.
  private final double[] unbent;
  private final SideSprings behind;
  private final SideSprings front;
  private final List<SupportSpring> supports;
  private final ToeCondition toe;
  private final double[] loads;
  private final double[] loadPressure;

  StageEquations(
      WallMesh mesh,
      double stiffness,
      double[] unbent,
      SideSprings behind,
      SideSprings front,
      List<SupportSpring> supports,
      ToeCondition toe,
      List<DirectLoad> directLoads) {
    this.mesh = mesh;
    this.stiffness = stiffness;
    this.unbent = unbent;
    this.behind = behind;
    this.front = front;
    this.supports = supports;
    this.toe = toe;
    loads = new double[unknowns()];
    loadPressure = new double[mesh.elements() * GaussPoints.COUNT];
    directLoads.forEach(this::add);
  }

  private StageEquations(
      StageEquations o, SideSprings behind, SideSprings front, double[] loads, double[] pressure) {
    mesh = o.mesh;
    stiffness = o.stiffness;
    unbent = o.unbent;
    this.behind = behind;
    this.front = front;
    supports = o.supports;
    toe = o.toe;
    this.loads = loads;
    loadPressure = pressure;
  }

  /** Equations on the way from an earlier stage to this one; without it, from no pressure. */
  StageEquations from(StageEquations earlier, double share) {
    double[] some = loads.clone();
    double[] pressure = loadPressure.clone();
    for (int i = 0; i < some.length; i++) {
      some[i] = mix(earlier == null ? 0 : earlier.loads[i], loads[i], share);
    }
    for (int i = 0; i < pressure.length; i++) {
      pressure[i] = mix(earlier == null ? 0 : earlier.loadPressure[i], loadPressure[i], share);
    }
    return new StageEquations(
        this,
        earlier == null ? behind : behind.from(earlier.behind, share),
        earlier == null ? front : front.from(earlier.front, share),
        some,
        pressure);
  }

  /** The same equations in softer ground. */
  StageEquations softened(double share) {
    return new StageEquations(
        this, behind.softened(share), front.softened(share), loads, loadPressure);
  }

  private static double mix(double from, double to, double share) {
    return from + (to - from) * share;
  }

  private void add(DirectLoad load) {
    if (load instanceof DirectLoad.Pressure p) {
      for (int e = 0; e < mesh.elements(); e++) {
        for (int g = 0; g < GaussPoints.COUNT; g++) {
          double level = mesh.level(e) - GaussPoints.AT[g] * mesh.length(e);
          if (level < p.upper() && level > p.lower()) {
            double t = (p.upper() - level) / (p.upper() - p.lower());
            loadPressure[e * GaussPoints.COUNT + g] +=
                p.atUpper() + t * (p.atLower() - p.atUpper());
          }
        }
      }
    } else if (load instanceof DirectLoad.Force f) {
      loads[2 * mesh.nearest(f.level())] += f.force();
    } else if (load instanceof DirectLoad.Moment m) {
      loads[2 * mesh.nearest(m.level()) + 1] -= m.moment();
    }
  }

  int unknowns() {
    return 2 * mesh.nodes();
  }

  WallMesh mesh() {
    return mesh;
  }

  SideSprings behind() {
    return behind;
  }

  SideSprings front() {
    return front;
  }

  List<SupportSpring> supports() {
    return supports;
  }

  ToeCondition toe() {
    return toe;
  }

  double stiffness() {
    return stiffness;
  }

  double[] unbent() {
    return unbent;
  }

  /** Horizontal force on a node from line loads, kN/m. */
  double lineLoad(int node) {
    return loads[2 * node];
  }

  /** Moment on a node from loads, kNm/m, positive with tension on the retained side below. */
  double pointMoment(int node) {
    return -loads[2 * node + 1];
  }

  double loadPressure(int point) {
    return loadPressure[point];
  }

  double displacement(double[] u, int element, int gauss) {
    int i = 2 * element;
    double h = mesh.length(element);
    return GaussPoints.N1[gauss] * u[i]
        + GaussPoints.N2[gauss] * h * u[i + 1]
        + GaussPoints.N3[gauss] * u[i + 2]
        + GaussPoints.N4[gauss] * h * u[i + 3];
  }

  /** Curvature at the top (0) or bottom (1) of an element, 1/m. */
  double curvature(double[] u, int element, int end) {
    int i = 2 * element;
    double h = mesh.length(element);
    double chord = (u[i + 2] - u[i]) / h;
    double a = u[i + 1] - chord;
    double b = u[i + 3] - chord;
    return end == 0 ? -(4 * a + 2 * b) / h : (2 * a + 4 * b) / h;
  }

  private double bending(double[] u, int element, int end) {
    return stiffness * (curvature(u, element, end) - unbent[2 * element + end]);
  }

  /** Out-of-balance force at each unknown; nil where the toe is held. */
  void outOfBalance(double[] u, double[] g) {
    fullGradient(u, g);
    int last = g.length;
    if (toe == ToeCondition.PINNED || toe == ToeCondition.FIXED) {
      g[last - 2] = 0;
    }
    if (toe == ToeCondition.GUIDED || toe == ToeCondition.FIXED) {
      g[last - 1] = 0;
    }
  }

  /** The same with the reactions of a held toe left in it. */
  void fullGradient(double[] u, double[] g) {
    for (int i = 0; i < g.length; i++) {
      g[i] = -loads[i];
    }
    int p = 0;
    for (int e = 0; e < mesh.elements(); e++) {
      int i = 2 * e;
      double h = mesh.length(e);
      double m1 = bending(u, e, 0);
      double m2 = bending(u, e, 1);
      // Forces that follow from the end moments balance each other whatever the rounding.
      double q = (m2 - m1) / h;
      double g0 = q;
      double g1 = -m1;
      double g2 = -q;
      double g3 = m2;
      for (int k = 0; k < GaussPoints.COUNT; k++, p++) {
        if (GaussPoints.WEIGHT[k] == 0) {
          continue;
        }
        double y = displacement(u, e, k);
        double net =
            front.earth(p, y)
                + front.water[p]
                - behind.earth(p, -y)
                - behind.water[p]
                - loadPressure[p];
        double f = GaussPoints.WEIGHT[k] * h * net;
        g0 += f * GaussPoints.N1[k];
        g1 += f * h * GaussPoints.N2[k];
        g2 += f * GaussPoints.N3[k];
        g3 += f * h * GaussPoints.N4[k];
      }
      g[i] += g0;
      g[i + 1] += g1;
      g[i + 2] += g2;
      g[i + 3] += g3;
    }
    for (SupportSpring s : supports) {
      g[2 * s.node()] += s.force(u[2 * s.node()]);
    }
  }

  /** Exact tangent, with a soft extra spring everywhere if {@code extra} is more than zero. */
  void tangent(double[] u, double extra, BandedSystem k) {
    k.clear();
    double[] n = new double[4];
    double[] sub = new double[16];
    int p = 0;
    for (int e = 0; e < mesh.elements(); e++) {
      double h = mesh.length(e);
      Arrays.fill(sub, 0);
      for (int g = 0; g < GaussPoints.COUNT; g++, p++) {
        if (GaussPoints.WEIGHT[g] == 0) {
          continue;
        }
        double y = displacement(u, e, g);
        double c = front.tangent(p, y) + behind.tangent(p, -y) + extra;
        if (c == 0) {
          continue;
        }
        c *= GaussPoints.WEIGHT[g] * h;
        n[0] = GaussPoints.N1[g];
        n[1] = GaussPoints.N2[g] * h;
        n[2] = GaussPoints.N3[g];
        n[3] = GaussPoints.N4[g] * h;
        for (int r = 0; r < 4; r++) {
          for (int s = 0; s <= r; s++) {
            sub[4 * r + s] += c * n[r] * n[s];
          }
        }
      }
      double b = stiffness / (h * h * h);
      sub[0] += 12 * b;
      sub[4] += 6 * h * b;
      sub[5] += 4 * h * h * b;
      sub[8] -= 12 * b;
      sub[9] -= 6 * h * b;
      sub[10] += 12 * b;
      sub[12] += 6 * h * b;
      sub[13] += 2 * h * h * b;
      sub[14] -= 6 * h * b;
      sub[15] += 4 * h * h * b;
      for (int r = 0; r < 4; r++) {
        for (int s = 0; s <= r; s++) {
          k.add(2 * e + r, 2 * e + s, sub[4 * r + s]);
        }
      }
    }
    for (SupportSpring s : supports) {
      k.add(2 * s.node(), 2 * s.node(), s.tangent(u[2 * s.node()]));
    }
    int last = unknowns();
    if (toe == ToeCondition.PINNED || toe == ToeCondition.FIXED) {
      k.hold(last - 2);
    }
    if (toe == ToeCondition.GUIDED || toe == ToeCondition.FIXED) {
      k.hold(last - 1);
    }
  }

  /** Force of what pushes the wall from behind and of the loads on it; 1 if there is none. */
  double appliedForce(double[] u) {
    double sum = 0;
    int p = 0;
    for (int e = 0; e < mesh.elements(); e++) {
      double h = mesh.length(e);
      for (int g = 0; g < GaussPoints.COUNT; g++, p++) {
        double y = displacement(u, e, g);
        sum +=
            GaussPoints.WEIGHT[g]
                * h
                * (Math.abs(behind.earth(p, -y) + behind.water[p]) + Math.abs(loadPressure[p]));
      }
    }
    for (int i = 0; i < mesh.nodes(); i++) {
      sum += Math.abs(loads[2 * i]);
    }
    return sum > 0 ? sum : 1;
  }

  /** Moment of the same about the toe, every part taken positive; 1 if there is none. */
  double appliedMoment(double[] u) {
    double sum = 0;
    int p = 0;
    for (int e = 0; e < mesh.elements(); e++) {
      double h = mesh.length(e);
      for (int g = 0; g < GaussPoints.COUNT; g++, p++) {
        double y = displacement(u, e, g);
        double arm = mesh.level(e) - GaussPoints.AT[g] * h - mesh.toe();
        sum +=
            GaussPoints.WEIGHT[g]
                * h
                * arm
                * (Math.abs(behind.earth(p, -y) + behind.water[p]) + Math.abs(loadPressure[p]));
      }
    }
    for (int i = 0; i < mesh.nodes(); i++) {
      sum += Math.abs(loads[2 * i]) * (mesh.level(i) - mesh.toe()) + Math.abs(loads[2 * i + 1]);
    }
    return sum > 0 ? sum : 1;
  }

  double greatestModulus() {
    double greatest = 0;
    for (int p = 0; p < behind.modulus.length; p++) {
      greatest = Math.max(greatest, Math.max(behind.modulus[p], front.modulus[p]));
    }
    return greatest;
  }
}
