package pilefolio.analysis.sequence;

import java.util.List;

/**
 * One pile of a secant wall as the day plan sees it.
 *
 * @param mark mark of the pile, unique in the job
 * @param kind primary or secondary
 * @param run name of the wall run
 * @param x plan coordinate, m
 * @param y plan coordinate, m
 * @param diameter diameter, m, above zero
 * @param minutes time of the rig at this pile, min, above zero
 * @param concrete concrete to be ordered, m³, zero or more
 * @param window ages at which it may be cut; for primaries only, null for secondaries
 * @param flanks marks of the primaries it cuts; for secondaries only, empty for primaries
 */
public record WallPile(
    String mark,
    Kind kind,
    String run,
    double x,
    double y,
    double diameter,
    double minutes,
    double concrete,
    StrengthWindow window,
    List<String> flanks) {

  /** Primary piles are made first; secondaries cut into them. */
  public enum Kind {
    /** Made first, of the softer mix. */
    PRIMARY,
    /** Made between two primaries and cuts both. */
    SECONDARY
  }

  /**
   * Checks that the parts fit the kind.
   *
   * @throws IllegalArgumentException if a primary has flanks or no window, a secondary has none or
   *     a window, or a number has no meaning
   */
  public WallPile {
    flanks = List.copyOf(flanks);
    boolean primary = kind == Kind.PRIMARY;
    if (primary != (window != null) || primary != flanks.isEmpty()) {
      throw new IllegalArgumentException(
          mark + ": a primary needs a window, a secondary the primaries it cuts");
    }
    if (!(diameter > 0) || !(minutes > 0) || !(concrete >= 0)) {
      throw new IllegalArgumentException(mark + ": diameter and time must be above zero");
    }
  }

  /**
   * A primary pile.
   *
   * @param mark mark of the pile
   * @param run name of the wall run
   * @param x plan coordinate, m
   * @param y plan coordinate, m
   * @param diameter diameter, m
   * @param minutes time of the rig, min
   * @param concrete concrete, m³
   * @param window ages at which it may be cut
   * @return the pile
   */
  public static WallPile primary(
      String mark,
      String run,
      double x,
      double y,
      double diameter,
      double minutes,
      double concrete,
      StrengthWindow window) {
    return new WallPile(
        mark, Kind.PRIMARY, run, x, y, diameter, minutes, concrete, window, List.of());
  }

  /**
   * A secondary pile.
   *
   * @param mark mark of the pile
   * @param run name of the wall run
   * @param x plan coordinate, m
   * @param y plan coordinate, m
   * @param diameter diameter, m
   * @param minutes time of the rig, min
   * @param concrete concrete, m³
   * @param flanks marks of the primaries it cuts
   * @return the pile
   */
  public static WallPile secondary(
      String mark,
      String run,
      double x,
      double y,
      double diameter,
      double minutes,
      double concrete,
      List<String> flanks) {
    return new WallPile(mark, Kind.SECONDARY, run, x, y, diameter, minutes, concrete, null, flanks);
  }

  /**
   * Whether this is a primary.
   *
   * @return true for a primary
   */
  public boolean isPrimary() {
    return kind == Kind.PRIMARY;
  }

  WallPile withWindow(StrengthWindow other) {
    return isPrimary()
        ? new WallPile(mark, kind, run, x, y, diameter, minutes, concrete, other, flanks)
        : this;
  }
}
