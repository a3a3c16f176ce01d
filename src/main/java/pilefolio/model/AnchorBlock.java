package pilefolio.model;

import java.util.Optional;
import pilefolio.findings.CellRef;

/**
 * The blocks to which ties are anchored, or the wall.
 *
 * @param at the first cell of the row
 * @param support id of the support
 * @param top depth of its top below the ground behind the wall, a length
 * @param height a length
 * @param length of block for one tie, a length; absent means it is continuous
 * @param distance from the wall, a length
 */
public record AnchorBlock(
    CellRef at, String support, Value top, Value height, Optional<Value> length, Value distance) {}
