package pilefolio.model;

import java.util.Optional;

/**
 * A steel beam set into a pile.
 *
 * @param beam id of the beam
 * @param top level of its top, an elevation
 * @param toe level of its foot, an elevation; absent means level with the toe of the pile
 * @param minimumCover least concrete between the corner of the beam and the bore, a length
 */
public record BeamInPile(String beam, Value top, Optional<Value> toe, Value minimumCover) {}
