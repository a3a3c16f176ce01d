package pilefolio.analysis.stability;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pilefolio.analysis.earth.OutsideRange;

/**
 * Looks for the circle with the least factor of safety.
 *
 * <p>A circle is set by where it leaves the ground, where it starts and how round it is: from the
 * flattest that passes a wall's toe to the roundest that does not overhang at its start nor pass
 * below the ground that is known. A grid is followed by descents in shrinking steps from its best
 * circles; the number of circles is bounded, so the search ends whatever the ground.
 *
 * @param section the section
 * @param exitFrom least x of the exit, m
 * @param exitTo greatest x of the exit, m
 * @param entryFrom least x of the start, m
 * @param entryTo greatest x of the start, m
 * @param wallToe level that circles must pass at or below at x = 0, m; empty without a wall
 * @param floor level below which no circle passes, m; may be negative infinity
 */
public record SlipSearch(
    SlipSection section,
    double exitFrom,
    double exitTo,
    double entryFrom,
    double entryTo,
    OptionalDouble wallToe,
    double floor) {

  private static final int EXITS = 10;
  private static final int ENTRIES = 12;
  private static final int ANGLES = 6;
  private static final int STARTS = 3;
  private static final int DESCENT = 60;
  private static final double SMALLEST_STEP = 2e-3;
  private static final int SECTIONS = 6;
  private static final double GOLDEN = 0.6180339887498949;
  private static final double FLATTEST = 0.05;
  private static final int SEARCH_SLICES = 30;

  public SlipSearch {
    if (!(exitFrom < exitTo && entryFrom < entryTo && exitTo <= entryFrom)) {
      throw new OutsideRange("exits of circles lie before their starts");
    }
  }

  /**
   * Circles below the toe of a wall at x = 0, as far to either side as four times the depth of the
   * toe below the retained ground.
   *
   * @param section the section
   * @param toe level of the toe, m
   * @param floor level to which the ground is known, m, or of hard ground
   */
  public static SlipSearch belowWall(SlipSection section, double toe, double floor) {
    double reach = 4 * (section.surface().after(0) - toe);
    return new SlipSearch(
        section, -reach, -reach / 100, reach / 100, reach, OptionalDouble.of(toe), floor);
  }

  /**
   * What the search found.
   *
   * @param circle the circle with the least factor
   * @param factor its factor of safety
   * @param examined number of circles with an answer
   * @param atEdge true if it reaches the edge of the range of exits or starts
   */
  public record Found(SlipCircle circle, double factor, int examined, boolean atEdge) {}

  /** The circle with the least factor; empty if no circle of the range has an answer. */
  public Optional<Found> find() {
    Count count = new Count();
    List<Trial> grid = new ArrayList<>();
    for (int i = 0; i <= EXITS; i++) {
      for (int j = 0; j <= ENTRIES; j++) {
        for (int k = 0; k <= ANGLES; k++) {
          // Squares: closer together near the wall.
          double a = 1 - Math.pow(1 - (double) i / EXITS, 2);
          double b = Math.pow((double) j / ENTRIES, 2);
          grid.add(trial(a, b, (double) k / ANGLES, count));
        }
      }
    }
    grid.sort(Comparator.comparingDouble(Trial::factor));
    Trial best = grid.get(0);
    for (int i = 0; i < STARTS; i++) {
      Trial end = descend(grid.get(i), count);
      if (end.factor() < best.factor()) {
        best = end;
      }
    }
    if (Double.isInfinite(best.factor())) {
      return Optional.empty();
    }
    boolean edge = best.exit() <= 0 || best.entry() >= 1;
    return Optional.of(new Found(best.circle(), best.factor(), count.answered, edge));
  }

  /** Shares of the ranges of exit, entry and roundness, and what came of them. */
  private record Trial(double exit, double entry, double round, SlipCircle circle, double factor) {}

  private static final class Count {
    private int answered;
  }

  private Trial descend(Trial start, Count count) {
    Trial best = start;
    double step = 1;
    for (int i = 0; i < DESCENT && step > SMALLEST_STEP; i++) {
      Trial better = best;
      for (int a = -1; a <= 1; a++) {
        for (int b = -1; b <= 1; b++) {
          double exit = clamp(best.exit() + a * step / EXITS);
          double entry = clamp(best.entry() + b * step / ENTRIES);
          Trial t = roundness(exit, entry, best.round(), step / ANGLES, count);
          if (t.factor() < better.factor()) {
            better = t;
          }
        }
      }
      if (better.factor() >= best.factor()) {
        step /= 2;
      }
      best = better;
    }
    return best;
  }

  private static double clamp(double share) {
    return Math.max(0, Math.min(1, share));
  }

  /** The best roundness near a given one, by golden section. */
  private Trial roundness(double exit, double entry, double near, double reach, Count count) {
    double low = clamp(near - reach);
    double high = clamp(near + reach);
    Trial left = trial(exit, entry, high - GOLDEN * (high - low), count);
    Trial right = trial(exit, entry, low + GOLDEN * (high - low), count);
    Trial best = better(left, right);
    for (int i = 0; i < SECTIONS; i++) {
      if (left.factor() < right.factor()) {
        high = right.round();
        right = left;
        left = trial(exit, entry, high - GOLDEN * (high - low), count);
        best = better(best, left);
      } else {
        low = left.round();
        left = right;
        right = trial(exit, entry, low + GOLDEN * (high - low), count);
        best = better(best, right);
      }
    }
    // The best may stand on an end, such as the circle that just passes the toe.
    Trial ends = better(trial(exit, entry, low, count), trial(exit, entry, high, count));
    return better(best, ends);
  }

  private static Trial better(Trial a, Trial b) {
    return b.factor() < a.factor() ? b : a;
  }

  private Trial trial(double exitShare, double entryShare, double round, Count count) {
    double exit = exitFrom + exitShare * (exitTo - exitFrom);
    double entry = entryFrom + entryShare * (entryTo - entryFrom);
    GroundLine.Point low = new GroundLine.Point(exit, section.surface().before(exit));
    GroundLine.Point high = new GroundLine.Point(entry, section.surface().after(entry));
    double flat = flattest(low, high);
    double upright = roundest(low, high, flat);
    if (!(upright >= flat) || high.level() < low.level() || entry - exit < 1e-6) {
      return new Trial(exitShare, entryShare, round, null, Double.POSITIVE_INFINITY);
    }
    SlipCircle circle = SlipCircle.through(low, high, flat + round * (upright - flat));
    OptionalDouble factor = factor(circle, SEARCH_SLICES);
    if (factor.isPresent()) {
      count.answered++;
    }
    return new Trial(exitShare, entryShare, round, circle, factor.orElse(Double.POSITIVE_INFINITY));
  }

  /** Factor of safety of a circle with about so many slices; empty if there is no answer. */
  public OptionalDouble factor(SlipCircle circle, int slices) {
    return Bishop.factor(
        section.slices(circle, slices), section.holdingMoment(circle) / circle.radius());
  }

  /** Half the central angle of the flattest circle. */
  private double flattest(GroundLine.Point low, GroundLine.Point high) {
    if (wallToe.isEmpty()) {
      return FLATTEST;
    }
    double dx = high.x() - low.x();
    double dy = high.level() - low.level();
    double half = Math.hypot(dx, dy) / 2;
    double vx = -(low.x() + high.x()) / 2;
    double vy = wallToe.getAsDouble() - (low.level() + high.level()) / 2;
    double across = (-dy * vx + dx * vy) / (2 * half);
    double offset = (vx * vx + vy * vy - half * half) / (2 * across);
    // The toe above the chord: every circle passes below it.
    return across >= 0 ? FLATTEST : Math.max(FLATTEST, Math.atan2(half, offset));
  }

  /** Half the central angle of the roundest circle: upright at its start, or touching the floor. */
  private double roundest(GroundLine.Point low, GroundLine.Point high, double flat) {
    double dx = high.x() - low.x();
    double dy = high.level() - low.level();
    double upright = Math.atan2(dx, dy);
    if (SlipCircle.through(low, high, upright).lowest() >= floor) {
      return upright;
    }
    if (SlipCircle.through(low, high, flat).lowest() < floor) {
      return Double.NaN;
    }
    double a = flat;
    double b = upright;
    for (int i = 0; i < 40; i++) {
      double m = (a + b) / 2;
      if (SlipCircle.through(low, high, m).lowest() >= floor) {
        a = m;
      } else {
        b = m;
      }
    }
    return a;
  }
}
