package pilefolio.model;

import java.util.Optional;

/**
 * Where a wall run stands in plan; it is straight, and a corner is the meeting of two runs.
 *
 * @param east easting of the first pile's centre, a length
 * @param north northing of the first pile's centre, a length
 * @param bearing direction of the run, clockwise from north, an angle
 * @param spacing distance of two neighbouring piles or beams, centre to centre, a length; one that
 *     was not entered is the widest, and the engine sizes it
 * @param secondaries count of secondaries, if given
 * @param length length of the run between the centres of its end piles, if given
 * @param members count of piles or beams of a wall without primaries, if given
 */
public record RunLine(
    Value east,
    Value north,
    Value bearing,
    Value spacing,
    Optional<Value> secondaries,
    Optional<Value> length,
    Optional<Value> members) {

  /**
   * Count of secondaries: as given, or the fewest that cover the length. The run begins and ends
   * with a primary, so there is one more of these.
   */
  public int secondaryCount() {
    if (secondaries.isPresent()) {
      return (int) Math.round(secondaries.get().si());
    }
    double periods = length.orElseThrow().si() / (2 * spacing.si());
    // A length of a whole number of spacings must not gain a pile from noise in the last bits.
    return Math.max(1, (int) Math.ceil(periods - 1e-9));
  }

  /** Count of piles or beams of a wall without primaries: as given, or the fewest that cover. */
  public int memberCount() {
    if (members.isPresent()) {
      return (int) Math.round(members.get().si());
    }
    return 1 + Math.max(1, (int) Math.ceil(length.orElseThrow().si() / spacing.si() - 1e-9));
  }

  /** True if the engine chooses the spacing. */
  public boolean spacingIsSized() {
    return spacing.defaulted();
  }

  /** The same line with piles or beams at another spacing. */
  public RunLine withSpacing(Value other) {
    return new RunLine(east, north, bearing, other, secondaries, length, members);
  }
}
