package pilefolio.analysis.movement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A building that follows the movement of the ground between its near and its far side. Its own
 * stiffness, which would make it bend less, is not counted.
 *
 * @param trough movement of the ground
 * @param near distance of the near side from the wall, m, zero or more
 * @param far distance of the far side from the wall, m, greater than near
 */
public record BuildingOnTrough(SettlementTrough trough, double near, double far) {
  private static final double LEAST_PART = 1e-6;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /**
   * Checks the distances.
   *
   * @throws IllegalArgumentException if the far side is not farther than the near side
   */
  public BuildingOnTrough {
    if (!(near >= 0) || !(far > near)) {
      throw new IllegalArgumentException("a building reaches from its near to its far side");
    }
  }

  /** Settlement of the near side, m. */
  public double nearSettlement() {
    return trough.settlementAt(near);
  }

  /** Settlement of the far side, m. */
  public double farSettlement() {
    return trough.settlementAt(far);
  }

  /** Greatest settlement between the sides, m. */
  public double greatestSettlement() {
    double peak = trough.shape().peak() * trough.height();
    double at = Math.min(Math.max(peak, near), far);
    return trough.settlementAt(at);
  }

  /** Difference of settlement between near and far side, m, without sign. */
  public double differentialSettlement() {
    return Math.abs(nearSettlement() - farSettlement());
  }

  /** Steepest average slope between neighbouring bends of the ground under the building. */
  public double greatestSlope() {
    List<Double> cuts = cuts(trough.shape().bends());
    double most = 0;
    for (int i = 1; i < cuts.size(); i++) {
      double a = cuts.get(i - 1);
      double b = cuts.get(i);
      most =
          Math.max(
              most,
              Math.abs(
                  GroundStrain.between(trough.settlementAt(a), trough.settlementAt(b), b - a)));
    }
    return most;
  }

  /**
   * Average horizontal strain between near and far side: difference of horizontal movement over
   * length. Compression is not credited.
   */
  public double horizontalStrain() {
    return horizontalStrain(near, far);
  }

  private double horizontalStrain(double from, double to) {
    return Math.max(
        0, GroundStrain.between(trough.horizontalAt(from), trough.horizontalAt(to), to - from));
  }

  /** The parts that bend one way, from the wall outward. */
  public List<BuildingPart> parts() {
    List<Double> cuts = cuts(trough.shape().inflections());
    List<BuildingPart> parts = new ArrayList<>();
    for (int i = 1; i < cuts.size(); i++) {
      parts.add(part(cuts.get(i - 1), cuts.get(i)));
    }
    return List.copyOf(parts);
  }

  private BuildingPart part(double from, double to) {
    boolean sagging = trough.shape().sagging((from + to) / 2 / trough.height());
    double place = farthestFromChord(from, to, sagging ? 1 : -1);
    double deflection = Math.max(0, (sagging ? 1 : -1) * fromChord(from, to, place));
    return new BuildingPart(
        from,
        to,
        sagging ? DeepBeam.Bending.SAGGING : DeepBeam.Bending.HOGGING,
        place,
        deflection,
        horizontalStrain(from, to));
  }

  /** Settlement in excess of the straight between two places, m. */
  private double fromChord(double from, double to, double x) {
    double a = trough.settlementAt(from);
    double b = trough.settlementAt(to);
    return trough.settlementAt(x) - (a + (b - a) * (x - from) / (to - from));
  }

  // Within a part the distance from the chord rises to one greatest value and falls again; it may
  // sit in a corner of the shape, which is tried first so that it is met exactly.
  private double farthestFromChord(double from, double to, double sign) {
    double best = (from + to) / 2;
    double low = from;
    double high = to;
    for (int i = 0; i < 100 && high - low > 1e-9; i++) {
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      if (sign * fromChord(from, to, left) < sign * fromChord(from, to, right)) {
        low = left;
      } else {
        high = right;
      }
    }
    List<Double> candidates = new ArrayList<>(cuts(trough.shape().bends()));
    candidates.removeIf(x -> x <= from || x >= to);
    candidates.add(best);
    candidates.add((low + high) / 2);
    Comparator<Double> deflection = Comparator.comparingDouble(x -> sign * fromChord(from, to, x));
    return candidates.stream().max(deflection).orElseThrow();
  }

  /** Near side, the places of a list that lie between the sides, and the far side, m. */
  private List<Double> cuts(List<Double> ratios) {
    List<Double> cuts = new ArrayList<>();
    cuts.add(near);
    for (double r : ratios) {
      double x = r * trough.height();
      if (x > near + LEAST_PART && x < far - LEAST_PART) {
        cuts.add(x);
      }
    }
    cuts.add(far);
    return cuts;
  }
}
