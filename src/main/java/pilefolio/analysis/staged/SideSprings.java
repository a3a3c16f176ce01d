package pilefolio.analysis.staged;

/** The laws of one side at every Gauss point, in arrays. */
final class SideSprings {
  final double[] atRest;
  final double[] active;
  final double[] passive;
  final double[] modulus;
  final double[] water;

  /** Plastic movement into this ground that is remembered, m. */
  final double[] plastic;

  private SideSprings(int points, double[] plastic) {
    atRest = new double[points];
    active = new double[points];
    passive = new double[points];
    modulus = new double[points];
    water = new double[points];
    this.plastic = plastic;
  }

  static SideSprings of(SoilSide side, WallMesh mesh, double[] plastic) {
    SideSprings s = new SideSprings(mesh.elements() * GaussPoints.COUNT, plastic);
    int p = 0;
    for (int e = 0; e < mesh.elements(); e++) {
      for (int g = 0; g < GaussPoints.COUNT; g++) {
        double level = mesh.level(e) - GaussPoints.AT[g] * mesh.length(e);
        // An end is seen from inside its element.
        double inside = level + (mesh.level(e) - mesh.length(e) / 2 - level) * 1e-3;
        SpringLaw law = side.at(level, inside);
        s.atRest[p] = law.atRest();
        s.active[p] = law.active();
        s.passive[p] = law.passive();
        s.modulus[p] = law.modulus();
        s.water[p] = law.water();
        p++;
      }
    }
    return s;
  }

  /** Laws on the way from those of an earlier stage to these. */
  SideSprings from(SideSprings earlier, double share) {
    SideSprings s = new SideSprings(atRest.length, plastic);
    for (int p = 0; p < atRest.length; p++) {
      s.atRest[p] = mix(earlier.atRest[p], atRest[p], share);
      s.active[p] = mix(earlier.active[p], active[p], share);
      s.passive[p] = mix(earlier.passive[p], passive[p], share);
      s.modulus[p] = mix(earlier.modulus[p], modulus[p], share);
      s.water[p] = mix(earlier.water[p], water[p], share);
    }
    return s;
  }

  /** The same limits reached more slowly. */
  SideSprings softened(double share) {
    SideSprings s = from(this, 1);
    for (int p = 0; p < atRest.length; p++) {
      s.modulus[p] *= share;
    }
    return s;
  }

  private static double mix(double from, double to, double share) {
    return from == to ? to : from + (to - from) * share;
  }

  double earth(int point, double movement) {
    double free = atRest[point] + modulus[point] * (movement - plastic[point]);
    return Math.max(active[point], Math.min(passive[point], free));
  }

  double tangent(int point, double movement) {
    double free = atRest[point] + modulus[point] * (movement - plastic[point]);
    return free > active[point] && free < passive[point] ? modulus[point] : 0;
  }

  /** Plastic movement after this movement. */
  double plasticAfter(int point, double movement) {
    double k = modulus[point];
    if (k == 0) {
      return plastic[point];
    }
    double free = atRest[point] + k * (movement - plastic[point]);
    if (free < active[point]) {
      return movement - (active[point] - atRest[point]) / k;
    }
    if (free > passive[point]) {
      return movement - (passive[point] - atRest[point]) / k;
    }
    return plastic[point];
  }
}
