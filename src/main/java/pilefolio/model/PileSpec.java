package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * What the primaries, or the secondaries, of a run have in common.
 *
 * @param at the first cell of the row
 * @param kind primary or secondary
 * @param diameter over the cutting edge, a length
 * @param toe level of the toe, an elevation; absent means the engine sizes it
 * @param mix id of the mix
 * @param beam the beam, if there is one
 * @param load vertical load on each pile, if there is one
 */
public record PileSpec(
    CellRef at,
    PileKind kind,
    Value diameter,
    Optional<Value> toe,
    String mix,
    Optional<BeamInPile> beam,
    Optional<AxialLoad> load) {

  /** The same piles with another toe level. */
  public PileSpec withToe(Value level) {
    return new PileSpec(at, kind, diameter, Optional.of(level), mix, beam, load);
  }
}
